//go:build unix

package store_test

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"tumblehome/internal/store"
)

func init() {
	children["nobody opens"] = nobodyOpens
}

// nobodyOpens lays down the rights of root, which no mode stops, opens a file and tries to save.
func nobodyOpens(path string) error {
	if os.Getuid() == 0 {
		const nobody = 65534
		if err := errors.Join(syscall.Setgroups(nil), syscall.Setgid(nobody), syscall.Setuid(nobody)); err != nil {
			return err
		}
	}
	kept, err := openInChild(path)
	if err != nil {
		fmt.Println("refused:", err)
		return nil
	}
	defer kept.Close()
	head, _ := kept.Head()
	fmt.Println("opened at", head.N, head.Words)
	if _, err := kept.Save(context.Background(), note(head.N, "mine")); err != nil {
		fmt.Println("not saved:", err)
		return nil
	}
	fmt.Println("saved")
	return nil
}

func TestWhatCanOnlyBeRead(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		says                     string
		file, folder             os.FileMode
		killed                   bool // a program was killed while it had the build open, and its log lies beside it
		opened, saved, unchanged bool
		pieces                   string
	}{
		{"all is free", 0o666, 0o777, false, true, true, false, ""},
		{"the file is marked read-only", 0o444, 0o777, false, true, false, true, "marked read-only"},
		{"the folder can not be written to", 0o666, 0o555, false, true, false, true, "can not be written to"},
		{"neither can be written to", 0o444, 0o555, false, true, false, true, "marked read-only"},
		{"the file belongs to somebody else", 0o644, 0o777, false, true, false, true, "can not be written to"},
		{"marked read-only, with the log of a killed program", 0o444, 0o777, true, true, false, true, "marked read-only"},
		{"a folder that can not be written to, with the log of a killed program", 0o644, 0o555, true, true, false, true, "can not be written to"},
		{"the file can not even be read", 0o000, 0o777, false, false, false, true, ""},
	} {
		t.Run(c.says, func(t *testing.T) {
			if c.says == "the file belongs to somebody else" && os.Getuid() != 0 {
				t.Skip("it takes root to have somebody else")
			}
			s := newShed(t)
			if err := os.Chmod(filepath.Dir(s.folder), 0o755); err != nil {
				t.Fatal(err)
			}
			path := s.path("wherry.tumblehome")
			revisions := 3
			kept := s.begin("wherry.tumblehome")
			widen(t, kept, 2)
			if c.killed {
				path = s.killedCopy(kept, "killed.tumblehome")
			} else {
				kept.Close()
			}
			for _, name := range files(t, s.folder) {
				if err := os.Chmod(s.path(name), c.file); err != nil {
					t.Fatal(err)
				}
			}
			if err := os.Chmod(s.folder, c.folder); err != nil {
				t.Fatal(err)
			}
			before := snapshot(t, s.folder)
			got := strings.Join(runChild(t, "nobody opens", path), "\n")
			if err := os.Chmod(s.folder, 0o755); err != nil {
				t.Fatal(err)
			}
			if opened := strings.Contains(got, fmt.Sprint("opened at ", revisions)); opened != c.opened {
				t.Errorf("opened %v, want %v: %s", opened, c.opened, got)
			}
			if saved := strings.Contains(got, "\nsaved"); saved != c.saved {
				t.Errorf("saved %v, want %v: %s", saved, c.saved, got)
			}
			if !strings.Contains(got, c.pieces) {
				t.Errorf("the words %q do not say %q", got, c.pieces)
			}
			if c.unchanged {
				wantSame(t, s.folder, before)
			}
		})
	}
}

// killedCopy copies the file and its log as they are when the program that has them open is killed, and gives the copy's path.
func (s *shed) killedCopy(kept *store.Store, name string) string {
	s.Helper()
	source := s.path("wherry.tumblehome")
	writeFile(s, s.path(name), bytesOf(s, source))
	log := bytesOf(s, source+"-wal")
	if len(log) == 0 {
		s.Fatal("there is no log")
	}
	writeFile(s, s.path(name)+"-wal", log)
	if err := kept.Close(); err != nil {
		s.Fatal(err)
	}
	return s.path(name)
}

func TestAFileMarkedReadOnlyStaysSoEvenForRoot(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	s.sealed("wherry.tumblehome", 5)
	if err := os.Chmod(s.path("wherry.tumblehome"), 0o400); err != nil {
		t.Fatal(err)
	}
	before := snapshot(t, s.folder)
	kept := s.open("wherry.tumblehome")
	if !errors.Is(kept.Barred(), store.ErrReadOnly) {
		t.Errorf("barred is %v", kept.Barred())
	}
	for what, err := range map[string]error{
		"save":   last(kept.Save(context.Background(), set(kept, "build.budget", "1"))),
		"undo":   last(kept.Undo(context.Background(), "tall")),
		"redo":   last(kept.Redo(context.Background(), "tall")),
		"attach": last(kept.Attach(context.Background(), "a", "b", strings.NewReader("c"))),
	} {
		wantTrouble(t, err, store.ErrReadOnly, "marked read-only", "copy it to another place")
		_ = what
	}
	if got := textAt(t, kept, 2); got == "" {
		t.Error("an older revision can not be read")
	}
	kept.Close()
	wantSame(t, s.folder, before)
}

func last[T any](_ T, err error) error { return err }
