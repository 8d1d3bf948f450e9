package store_test

import (
	"context"
	"errors"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"tumblehome/internal/store"
)

func (s *shed) backUp(name string, keep int) store.Backup {
	s.Helper()
	made, _, err := store.BackUp(context.Background(), s.path(name), store.BackupFolder(s.path(name)), keep, s.options())
	if err != nil {
		s.Fatal(err)
	}
	return made
}

func TestABackupOfAnOpenBuildHoldsAllThatWasSaved(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	widen(t, kept, 60)
	id, err := kept.Attach(context.Background(), "seam.jpg", "image/jpeg", strings.NewReader("a photo"))
	if err != nil {
		t.Fatal(err)
	}
	made := s.backUp("wherry.tumblehome", 5)
	if want := s.path("wherry-backups/wherry-backup-0001-revision-61-2026-09-19.tumblehome"); made.Path != want || made.Revision != 61 {
		t.Errorf("the backup is %+v, want %s", made, want)
	}
	if got := files(t, s.path("wherry-backups")); len(got) != 1 {
		t.Errorf("beside it lie %v", got)
	}
	widen(t, kept, 1) // the build goes on
	copied, err := store.Open(context.Background(), made.Path, s.options())
	if err != nil {
		t.Fatal(err)
	}
	s.closing(copied)
	if text(copied) != textAt(t, kept, 61) {
		t.Error("the backup reads differently")
	}
	if a, err := copied.Attachment(context.Background(), id); err != nil || string(a.Content) != "a photo" {
		t.Errorf("the photo reads %q, %v", a.Content, err)
	}
	if info, err := os.Stat(made.Path); err != nil || info.Mode().Perm() != 0o600 {
		t.Errorf("anybody may read it: %v, %v", info.Mode(), err)
	}
}

func TestABackupIsKeptUpOnlyWhenThereIsSomethingNew(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	for i, want := range []bool{true, false, true, false} {
		if i == 2 {
			widen(t, kept, 1) // it lies in the log alone
		}
		b, made, err := store.KeepUp(context.Background(), s.path("wherry.tumblehome"), 5, s.options())
		if head, _ := kept.Head(); err != nil || made != want || b.Revision != head.N {
			t.Errorf("time %d: made %v, want %v: %+v, %v", i, made, want, b, err)
		}
	}
}

func TestBackupsRotate(t *testing.T) {
	notShort(t)
	t.Parallel()
	s := newShed(t)
	s.sealed("wherry.tumblehome", 2)
	writeFile(t, s.path("wherry.yaml"), nil)
	var last store.Backup
	for i := range 34 {
		if i == 20 {
			s.clock.set(time.Date(2001, 1, 1, 0, 0, 0, 0, time.UTC)) // numbers count on, whatever the clock says
		}
		last = s.backUp("wherry.tumblehome", 3)
		if i == 5 {
			writeFile(t, s.path("wherry-backups/wherry-backup-of-mine.tumblehome"), []byte("a copy by hand"))
		}
	}
	var numbers []int
	for _, b := range store.Backups(s.path("wherry.tumblehome"), s.path("wherry-backups")) {
		numbers = append(numbers, b.Number)
	}
	if want := []int{34, 33, 32, 30, 20, 10}; !slices.Equal(numbers, want) {
		t.Errorf("kept are %v, want the last three and three tenths %v", numbers, want)
	}
	if last.Number != 34 || !strings.Contains(last.Path, "2001-01-01") {
		t.Errorf("the last is %+v", last)
	}
	if got := string(bytesOf(t, s.path("wherry-backups/wherry-backup-of-mine.tumblehome"))); got != "a copy by hand" {
		t.Error("a file that is not ours was taken away")
	}
}

func TestANewBuildUnderAnOldNameLeavesTheOldBackups(t *testing.T) {
	notShort(t)
	t.Parallel()
	s := newShed(t)
	s.sealed("wherry.tumblehome", 2)
	s.backUp("wherry.tumblehome", 1)
	if err := os.Remove(s.path("wherry.tumblehome")); err != nil {
		t.Fatal(err)
	}
	s.sealed("wherry.tumblehome", 2)
	for range 4 {
		s.backUp("wherry.tumblehome", 1)
	}
	left := store.Backups(s.path("wherry.tumblehome"), s.path("wherry-backups"))
	if len(left) != 2 || left[0].Number != 5 || left[1].Number != 1 {
		t.Errorf("left are %+v, want the new build's newest and the old build's", left)
	}
}

func TestADamagedBuildPushesNoBackupOut(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	s.sealed("wherry.tumblehome", 20)
	s.backUp("wherry.tumblehome", 1)
	before := snapshot(t, s.path("wherry-backups"))
	tamper(t, s.path("wherry.tumblehome"), "UPDATE revision SET words = 'nothing' WHERE n = 3")
	_, _, err := store.BackUp(context.Background(), s.path("wherry.tumblehome"), s.path("wherry-backups"), 1, s.options())
	wantTrouble(t, err, store.ErrDamaged, "revision 3")
	wantSame(t, s.path("wherry-backups"), before)
}

func TestABackupIsRestoredAndWhatLayThereIsKept(t *testing.T) {
	notShort(t)
	t.Parallel()
	ctx := context.Background()
	for _, c := range []struct {
		says     string
		revision int                        // of the build that is kept; 0 where it is kept byte for byte
		lies     func(s *shed, path string) // what lies under the build's name by then
	}{
		{"a later state", 27, func(s *shed, path string) {
			kept := s.open("wherry.tumblehome")
			widen(s, kept, 7)
			kept.Close()
		}},
		{"a later state of which the last part is in the log of a killed program", 27, func(s *shed, path string) {
			kept := s.open("wherry.tumblehome")
			widen(s, kept, 7)
			file, log := bytesOf(s, path), bytesOf(s, path+"-wal")
			kept.Close()
			writeFile(s, path, file)
			writeFile(s, path+"-wal", log)
		}},
		{"a damaged build", 0, func(s *shed, path string) {
			tamper(s, path, "UPDATE revision SET words = 'nothing' WHERE n = 3")
		}},
		{"a damaged build with a log", 0, func(s *shed, path string) {
			kept := s.open("wherry.tumblehome")
			widen(s, kept, 7)
			file, log := bytesOf(s, path), bytesOf(s, path+"-wal")
			kept.Close()
			file[len(file)/2] ^= 255
			file[len(file)/2+5] ^= 255
			file[5000] ^= 255
			writeFile(s, path, file)
			writeFile(s, path+"-wal", log)
		}},
		{"half a build", 0, func(s *shed, path string) { writeFile(s, path, bytesOf(s, path)[:9000]) }},
		{"an empty file", 0, func(s *shed, path string) { writeFile(s, path, nil) }},
		{"somebody's letter", 0, func(s *shed, path string) { writeFile(s, path, []byte("Dear Sir or Madam")) }},
		{"a build of an older format", 68, func(s *shed, path string) { s.old("wherry.tumblehome") }},
		{"a file marked read-only", 20, func(s *shed, path string) { os.Chmod(path, 0o400) }},
	} {
		t.Run(c.says, func(t *testing.T) {
			s := newShed(t)
			s.sealed("wherry.tumblehome", 20)
			made := s.backUp("wherry.tumblehome", 5)
			want := bytesOf(t, made.Path)
			path := s.path("wherry.tumblehome")
			c.lies(s, path)
			file, log := bytesOf(t, path), sizeOf(path+"-wal")
			report, kept, err := store.Restore(ctx, made.Path, path, s.options())
			if err != nil {
				t.Fatal(err)
			}
			if report.Revisions != 20 || report.Title != "Wherry" || filepath.Base(kept) != "wherry-before-restore.tumblehome" {
				t.Errorf("%+v, kept %s", report, kept)
			}
			again := s.open("wherry.tumblehome")
			if head, _ := again.Head(); head.N != 20 {
				t.Errorf("restored is revision %d", head.N)
			}
			save(t, again, set(again, "build.budget", "1000"))
			if c.revision > 0 {
				opened := s.open("wherry-before-restore.tumblehome")
				if head, _ := opened.Head(); head.N != c.revision {
					t.Errorf("kept is revision %d, want %d", head.N, c.revision)
				}
			} else if string(bytesOf(t, kept)) != string(file) || sizeOf(kept+"-wal") != log {
				t.Error("what lay there was not kept as it was")
			}
			if string(bytesOf(t, made.Path)) != string(want) {
				t.Error("the backup was changed")
			}
		})
	}
}

func sizeOf(path string) int64 {
	info, err := os.Stat(path)
	if err != nil {
		return 0
	}
	return info.Size()
}

func TestRestoringIsRefused(t *testing.T) {
	t.Parallel()
	ctx := context.Background()
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	widen(t, kept, 5)
	made := s.backUp("wherry.tumblehome", 5)
	before := text(kept)

	_, _, err := store.Restore(ctx, made.Path, s.path("wherry.tumblehome"), s.options())
	wantTrouble(t, err, store.ErrBusy, "Stop it first", "Nothing was restored")
	widen(t, kept, 1) // it goes on undisturbed

	damaged := bytesOf(t, made.Path)
	writeFile(t, s.path("bad.tumblehome"), damaged[:len(damaged)-5000])
	_, _, err = store.Restore(ctx, s.path("bad.tumblehome"), s.path("wherry.tumblehome"), s.options())
	wantTrouble(t, err, store.ErrDamaged, "Nothing was restored")
	_, _, err = store.Restore(ctx, s.path("no-such.tumblehome"), s.path("wherry.tumblehome"), s.options())
	if !errors.Is(err, os.ErrNotExist) {
		t.Errorf("no backup: %v", err)
	}
	if textAt(t, kept, 6) != before {
		t.Error("the build has changed")
	}
	for _, name := range files(t, s.folder) {
		if strings.Contains(name, "unfinished") || strings.Contains(name, "before") {
			t.Errorf("%s was left behind", name)
		}
	}
}

func TestWhatAKilledBackupLeftIsSweptAwayOnceNobodyCanBeAtIt(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	s.sealed("wherry.tumblehome", 3)
	folder := filepath.Dir(s.backUp("wherry.tumblehome", 5).Path)
	old, young := filepath.Join(folder, ".wherry.tumblehome.unfinished-OLD"), filepath.Join(folder, ".wherry.tumblehome.unfinished-YOUNG")
	for name, age := range map[string]time.Duration{old: 2 * time.Hour, young: time.Minute} {
		if err := os.WriteFile(name, nil, 0o600); err != nil {
			t.Fatal(err)
		}
		when := time.Now().Add(-age)
		if err := os.Chtimes(name, when, when); err != nil {
			t.Fatal(err)
		}
	}
	s.backUp("wherry.tumblehome", 5)
	if _, err := os.Stat(old); !errors.Is(err, os.ErrNotExist) {
		t.Errorf("the old one: %v", err)
	}
	if _, err := os.Stat(young); err != nil {
		t.Errorf("somebody may still be at the young one: %v", err)
	}
}

func TestRestoringTwiceKeepsBoth(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	s.sealed("wherry.tumblehome", 3)
	made := s.backUp("wherry.tumblehome", 5)
	var names []string
	for range 3 {
		_, kept, err := store.Restore(context.Background(), made.Path, s.path("wherry.tumblehome"), s.options())
		if err != nil {
			t.Fatal(err)
		}
		names = append(names, filepath.Base(kept))
	}
	if want := []string{"wherry-before-restore.tumblehome", "wherry-before-restore-2.tumblehome", "wherry-before-restore-3.tumblehome"}; !slices.Equal(names, want) {
		t.Errorf("kept are %v", names)
	}
}

func TestABackupIsRestoredWhereThereIsNothing(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	s.sealed("wherry.tumblehome", 3)
	made := s.backUp("wherry.tumblehome", 5)
	os.Remove(s.path("wherry.tumblehome"))
	writeFile(t, s.path("wherry.tumblehome-wal"), []byte("the log of the build that was deleted"))
	if _, kept, err := store.Restore(context.Background(), made.Path, s.path("wherry.tumblehome"), s.options()); err != nil || kept != "" {
		t.Fatalf("kept %q, %v", kept, err)
	}
	if head, _ := s.open("wherry.tumblehome").Head(); head.N != 3 {
		t.Errorf("restored is revision %d", head.N)
	}
	if got := string(bytesOf(t, s.path("wherry-left-over.tumblehome-wal"))); !strings.HasPrefix(got, "the log") {
		t.Error("the old log was not kept")
	}
}

func TestVerifyFindsWhatOpeningDoesNotLookFor(t *testing.T) {
	notShort(t)
	t.Parallel()
	for _, c := range []struct{ says, statement string }{
		{"a photo", "UPDATE piece SET content = zeroblob(length(content))"},
		{"an older whole document", "UPDATE whole SET document = replace(document, 'Wherry', 'Ferry') WHERE n = 1"},
		{"a whole document that is missing", "DELETE FROM whole WHERE n = 51"},
	} {
		t.Run(c.says, func(t *testing.T) {
			s := newShed(t)
			kept := s.begin("wherry.tumblehome")
			widen(t, kept, 120)
			if _, err := kept.Attach(context.Background(), "seam.jpg", "image/jpeg", strings.NewReader("a photo")); err != nil {
				t.Fatal(err)
			}
			kept.Close()
			before := files(t, s.folder)
			if r, err := store.Verify(context.Background(), s.path("wherry.tumblehome"), s.options()); err != nil || r.Revisions != 121 || r.Attachments != 1 || r.Bytes != 7 {
				t.Fatalf("%+v, %v", r, err)
			}
			if after := files(t, s.folder); !slices.Equal(before, after) {
				t.Errorf("verifying has left %v", after)
			}
			tamper(t, s.path("wherry.tumblehome"), c.statement)
			_, err := store.Verify(context.Background(), s.path("wherry.tumblehome"), s.options())
			wantTrouble(t, err, store.ErrDamaged, "is damaged", "estore a backup")
		})
	}
}
