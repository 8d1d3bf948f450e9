package store_test

import (
	"context"
	"database/sql"
	"fmt"
	"os"
	"strings"
	"testing"
	"time"

	"tumblehome/internal/store"
)

// hold lets another program hold a lock on the file until the function it gives is called.
func hold(t *testing.T, path, begin string) func() {
	t.Helper()
	db, err := sql.Open("sqlite", "file:"+path)
	if err != nil {
		t.Fatal(err)
	}
	db.SetMaxOpenConns(1)
	if _, err := db.Exec(begin); err != nil {
		t.Fatal(err)
	}
	return func() { db.Close() }
}

func TestAnotherProgramHoldsTheFile(t *testing.T) {
	t.Parallel()
	t.Run("while the build is open", func(t *testing.T) {
		s := newShed(t)
		kept := s.begin("wherry.tumblehome")
		letGo := hold(t, s.path("wherry.tumblehome"), "BEGIN IMMEDIATE")
		begun := time.Now()
		_, err := kept.Save(context.Background(), set(kept, "build.budget", "3100"))
		wantTrouble(t, err, store.ErrBusy, "Another program", "Nothing of this change was saved")
		if waited := time.Since(begun); waited < 400*time.Millisecond {
			t.Errorf("it waited only %v", waited)
		}
		_, err = kept.Attach(context.Background(), "a", "b", strings.NewReader("c"))
		wantTrouble(t, err, store.ErrBusy, "was not saved")
		if got := textAt(t, kept, 1); got != text(kept) {
			t.Error("reading was held up")
		}
		letGo()
		save(t, kept, set(kept, "build.budget", "3100")) // without opening it again
	})
	t.Run("for less than the wait", func(t *testing.T) {
		s := newShed(t)
		kept := s.begin("wherry.tumblehome")
		letGo := hold(t, s.path("wherry.tumblehome"), "BEGIN IMMEDIATE")
		time.AfterFunc(100*time.Millisecond, letGo)
		save(t, kept, set(kept, "build.budget", "3100"))
	})
	t.Run("for writing when the build is opened", func(t *testing.T) {
		s := newShed(t)
		s.sealed("wherry.tumblehome", 2)
		letGo := hold(t, s.path("wherry.tumblehome"), "BEGIN IMMEDIATE")
		kept := s.open("wherry.tumblehome")
		letGo()
		save(t, kept, set(kept, "build.budget", "3100"))
	})
	t.Run("alone when the build is opened", func(t *testing.T) {
		s := newShed(t)
		s.sealed("wherry.tumblehome", 2)
		letGo := hold(t, s.path("wherry.tumblehome"), "PRAGMA locking_mode = EXCLUSIVE; BEGIN EXCLUSIVE; UPDATE revision SET words = words; COMMIT")
		s.refuses("wherry.tumblehome", store.ErrBusy, "Another program")
		letGo()
		s.open("wherry.tumblehome")
	})
}

func TestTheFileIsMovedAwayWhileItIsOpen(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		says   string
		away   func(s *shed, path string) error
		pieces string
	}{
		{"renamed", func(s *shed, path string) error { return os.Rename(path, path+".old") }, "moved, renamed or deleted"},
		{"deleted", func(s *shed, path string) error { return os.Remove(path) }, "moved, renamed or deleted"},
		{"replaced", func(s *shed, path string) error {
			return firstOf(os.Rename(path, path+".old"), os.WriteFile(path, []byte("a backup"), 0o600))
		}, "taken the place"},
	} {
		t.Run(c.says, func(t *testing.T) {
			s := newShed(t)
			kept := s.begin("wherry.tumblehome")
			widen(t, kept, 1)
			if err := c.away(s, s.path("wherry.tumblehome")); err != nil {
				t.Fatal(err)
			}
			_, err := kept.Save(context.Background(), set(kept, "build.budget", "3100"))
			wantTrouble(t, err, store.ErrGone, c.pieces, "Nothing of this change was saved")
			_, err = kept.Attach(context.Background(), "a", "b", strings.NewReader("c"))
			wantTrouble(t, err, store.ErrGone, c.pieces)
		})
	}
	t.Run("and put back", func(t *testing.T) {
		s := newShed(t)
		kept := s.begin("wherry.tumblehome")
		path := s.path("wherry.tumblehome")
		if err := os.Rename(path, path+".old"); err != nil {
			t.Fatal(err)
		}
		if _, err := kept.Save(context.Background(), set(kept, "build.budget", "3100")); err == nil {
			t.Error("it was saved to nowhere")
		}
		if err := os.Rename(path+".old", path); err != nil {
			t.Fatal(err)
		}
		save(t, kept, set(kept, "build.budget", "3100"))
	})
}

func firstOf(errs ...error) error {
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return nil
}

func TestTheLogIsTidiedAwayWhileTheBuildIsOpen(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	widen(t, kept, 2)
	if err := os.Remove(s.path("wherry.tumblehome-wal")); err != nil {
		t.Fatal(err)
	}
	widen(t, kept, 1)
	// As a power cut would leave it: the file alone.
	writeFile(t, s.path("copy.tumblehome"), bytesOf(t, s.path("wherry.tumblehome")))
	if again := s.open("copy.tumblehome"); text(again) != text(kept) {
		t.Error("what was saved after the log was deleted is not in the file")
	}
}

func TestALogLeftByADeletedBuildIsNotMixedIntoANewOne(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	widen(t, kept, 5)
	log := bytesOf(t, s.path("wherry.tumblehome-wal"))
	kept.Close()
	if err := os.Remove(s.path("wherry.tumblehome")); err != nil {
		t.Fatal(err)
	}
	writeFile(t, s.path("wherry.tumblehome-wal"), log)
	fresh := s.begin("wherry.tumblehome")
	if head, _ := fresh.Head(); head.N != 1 {
		t.Errorf("the new build begins with revision %d", head.N)
	}
	if got := string(bytesOf(t, s.path("wherry-left-over.tumblehome-wal"))); got != string(log) {
		t.Error("the old log was not kept")
	}
}

func TestAFileCopiedWhileItIsOpen(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	widen(t, kept, 60)
	path := s.path("wherry.tumblehome")
	t.Run("alone, while people save, is an earlier revision", func(t *testing.T) {
		writeFile(t, s.path("alone.tumblehome"), bytesOf(t, path))
		again := s.open("alone.tumblehome")
		head, _ := again.Head()
		if text(again) != textAt(t, kept, head.N) {
			t.Errorf("the copy at revision %d reads as no revision ever did", head.N)
		}
	})
	t.Run("with its log, is the newest revision", func(t *testing.T) {
		writeFile(t, s.path("both.tumblehome"), bytesOf(t, path))
		writeFile(t, s.path("both.tumblehome-wal"), bytesOf(t, path+"-wal"))
		if again := s.open("both.tumblehome"); text(again) != text(kept) {
			t.Error("the copy is not the newest revision")
		}
	})
	t.Run("alone, when nobody has saved for a while, is the newest revision", func(t *testing.T) {
		time.Sleep(store.QuietAfter + 300*time.Millisecond)
		writeFile(t, s.path("quiet.tumblehome"), bytesOf(t, path))
		if again := s.open("quiet.tumblehome"); text(again) != text(kept) {
			t.Error("the copy is not the newest revision")
		}
	})
}

// TestAFileCopiedWithALogOfAnotherMoment mixes files and logs as a copying program does that is slower than those who save. What opens
// is a revision as it was; all else is refused and left as it is.
func TestAFileCopiedWithALogOfAnotherMoment(t *testing.T) {
	notShort(t)
	t.Parallel()
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	path := s.path("wherry.tumblehome")
	var moments [][2][]byte
	for range 12 {
		widen(t, kept, 7)
		kept.SettleNow()
		widen(t, kept, 2) // begins the log again
		moments = append(moments, [2][]byte{bytesOf(t, path), bytesOf(t, path+"-wal")})
	}
	opened, refused := 0, 0
	for i, early := range moments {
		for j, late := range moments {
			name := fmt.Sprintf("torn-%d-%d.tumblehome", i, j)
			writeFile(t, s.path(name), early[0])
			writeFile(t, s.path(name)+"-wal", late[1])
			again, err := store.Open(context.Background(), s.path(name), s.options())
			if err != nil {
				refused++
				wantTrouble(t, err, store.ErrDamaged, "backup")
				if string(bytesOf(t, s.path(name))) != string(early[0]) || string(bytesOf(t, s.path(name)+"-wal")) != string(late[1]) {
					t.Errorf("file %d with log %d was refused and written to", i, j)
				}
				continue
			}
			opened++
			if head, _ := again.Head(); text(again) != textAt(t, kept, head.N) {
				t.Errorf("file %d with log %d opens as what no revision was", i, j)
			}
			again.Close()
		}
	}
	t.Logf("%d mixtures opened as a revision that was saved, %d were refused", opened, refused)
	if opened < len(moments) || refused == 0 {
		t.Error("the test mixed nothing")
	}
}
