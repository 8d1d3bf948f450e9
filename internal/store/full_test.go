//go:build linux

package store_test

import (
	"context"
	"errors"
	"fmt"
	"os"
	"os/signal"
	"path/filepath"
	"strconv"
	"strings"
	"syscall"
	"testing"

	"tumblehome/internal/store"
)

func init() {
	children["fills a limited file"] = fillsLimitedFile
	children["fills a small disk"] = fillsSmallDisk
}

// fillsLimitedFile saves until no file may grow any more, tries everything else that writes, takes the limit off and saves again.
func fillsLimitedFile(path string) error {
	signal.Ignore(syscall.SIGXFSZ) // the system's way of telling a program that knows no errors
	kept, err := openInChild(path)
	if err != nil {
		return err
	}
	defer kept.Close()
	var before syscall.Rlimit
	if err := syscall.Getrlimit(syscall.RLIMIT_FSIZE, &before); err != nil {
		return err
	}
	if err := syscall.Setrlimit(syscall.RLIMIT_FSIZE, &syscall.Rlimit{Cur: 300_000, Max: before.Max}); err != nil {
		return err
	}
	if err := fill(kept, filepath.Dir(path)); err != nil {
		return err
	}
	if err := syscall.Setrlimit(syscall.RLIMIT_FSIZE, &before); err != nil {
		return err
	}
	return goOn(kept)
}

// fillsSmallDisk does the same on a disk of its own, of a megabyte and a half.
func fillsSmallDisk(path string) error {
	disk := filepath.Dir(path)
	if err := firstOf(syscall.Mount("none", "/", "", syscall.MS_REC|syscall.MS_PRIVATE, ""),
		syscall.Mount("tmpfs", disk, "tmpfs", 0, "size=1536k")); err != nil {
		fmt.Println("no small disk:", err)
		return nil
	}
	doc, err := readDocument()
	if err != nil {
		return err
	}
	kept, err := store.Create(context.Background(), path, doc, childOptions())
	if err != nil {
		return err
	}
	defer kept.Close()
	ballast := filepath.Join(disk, "ballast")
	if err := os.WriteFile(ballast, make([]byte, 1<<20), 0o600); err != nil {
		return err
	}
	if err := fill(kept, disk); err != nil {
		return err
	}
	if err := os.Remove(ballast); err != nil {
		return err
	}
	if err := goOn(kept); err != nil {
		return err
	}
	kept.Close()
	again, err := openInChild(path)
	if err != nil {
		return err
	}
	defer again.Close()
	head, _ := again.Head()
	fmt.Println("opened again at", head.N, head.Words)
	return nil
}

// fill saves until it is refused.
func fill(kept *store.Store, folder string) error {
	for {
		head, _ := kept.Head()
		r, err := kept.Save(context.Background(), note(head.N, fmt.Sprint("mark ", head.N+1, strings.Repeat(" and much more to be said about it", 100))))
		if err == nil {
			fmt.Println("saved", r.N)
			continue
		}
		fmt.Println("refused:", err)
		if now, _ := kept.Head(); now.N != head.N {
			return errors.New("the head has moved")
		}
		if _, err := kept.At(context.Background(), head.N-1); err != nil {
			return fmt.Errorf("reading after that: %w", err)
		}
		_, err = kept.Attach(context.Background(), "a", "b", strings.NewReader(strings.Repeat("c", 400_000)))
		fmt.Println("photo:", err)
		_, err = kept.Undo(context.Background(), "child")
		fmt.Println("undo:", err)
		return nil
	}
}

// goOn saves once more, without opening the file again.
func goOn(kept *store.Store) error {
	head, _ := kept.Head()
	r, err := kept.Save(context.Background(), note(head.N, "there is room again"))
	if err != nil {
		return err
	}
	fmt.Println("saved", r.N)
	return nil
}

func TestTheDiskIsFull(t *testing.T) {
	t.Parallel()
	t.Run("a file may not grow", func(t *testing.T) {
		s := newShed(t)
		s.sealed("wherry.tumblehome", 2)
		lines := runChild(t, "fills a limited file", s.path("wherry.tumblehome"))
		wantFull(t, lines, store.ErrDisk)
		kept := s.open("wherry.tumblehome")
		if head, _ := kept.Head(); fmt.Sprint("saved ", head.N) != lines[len(lines)-1] || head.Words != "there is room again" {
			t.Errorf("the head is %d %q, the last line %q", head.N, head.Words, lines[len(lines)-1])
		}
	})
	t.Run("a disk has no room", func(t *testing.T) {
		if os.Getuid() != 0 {
			t.Skip("it takes root to make a small disk")
		}
		s := newShed(t)
		c := newChild(t, "fills a small disk", s.path("wherry.tumblehome"))
		c.SysProcAttr = &syscall.SysProcAttr{Unshareflags: syscall.CLONE_NEWNS} // the disk is seen by the child alone
		if err := c.Start(); err != nil {
			t.Skip("no small disk: ", err)
		}
		lines := c.lines()
		if strings.HasPrefix(lines[0], "no small disk") {
			t.Skip(lines[0])
		}
		wantFull(t, lines, store.ErrFull)
		saved := strings.TrimPrefix(lines[len(lines)-2], "saved ")
		if want := "opened again at " + saved + " there is room again"; lines[len(lines)-1] != want {
			t.Errorf("%q, want %q", lines[len(lines)-1], want)
		}
	})
	t.Run("the file has as many pages as it may", func(t *testing.T) { // SQLite's own word for it
		s := newShed(t)
		kept := s.begin("wherry.tumblehome")
		if err := kept.Do("PRAGMA max_page_count = 20"); err != nil {
			t.Fatal(err)
		}
		_, err := kept.Attach(context.Background(), "a", "b", strings.NewReader(strings.Repeat("c", 400_000)))
		wantTrouble(t, err, store.ErrFull, "The disk is full; make room", "was not saved")
	})
}

// wantFull wants some edits saved, then all refused in good words, then one saved.
func wantFull(t *testing.T, lines []string, kind error) {
	t.Helper()
	word := map[error]string{store.ErrFull: "The disk is full; make room and try again.", store.ErrDisk: "it may be full, unplugged or failing"}[kind]
	saved, refused := 0, 0
	for _, line := range lines {
		what, words, _ := strings.Cut(line, ":")
		switch {
		case strings.HasPrefix(line, "saved "):
			if n, err := strconv.Atoi(line[6:]); err != nil || n < saved {
				t.Errorf("%q after revision %d", line, saved)
			} else {
				saved = n
			}
		case what == "refused" || what == "photo" || what == "undo":
			refused++
			if !strings.Contains(words, word) || !strings.Contains(words, "saved") {
				t.Errorf("%s: the words %q do not say %q", what, words, word)
			}
		}
	}
	if saved < 3 || refused != 3 {
		t.Errorf("saved up to %d, refused %d: %s", saved, refused, strings.Join(lines, "\n"))
	}
}
