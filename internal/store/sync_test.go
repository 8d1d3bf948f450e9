//go:build linux

package store_test

import (
	"context"
	"fmt"
	"os"
	"os/exec"
	"strings"
	"testing"
)

func init() {
	children["saves a few"] = func(path string) error {
		kept, err := openInChild(path)
		if err != nil {
			return err
		}
		defer kept.Close()
		for range 20 {
			head, _ := kept.Head()
			r, err := kept.Save(context.Background(), note(head.N, fmt.Sprint("mark ", head.N+1)))
			if err != nil {
				return err
			}
			fmt.Println("saved", r.N)
		}
		return nil
	}
}

// traced runs the child that saves a few under strace, which sees every call of the system and can make one fail. It gives what the
// child printed and the calls in their order.
func (s *shed) traced(name string, options ...string) (said, calls []string) {
	s.Helper()
	if _, err := exec.LookPath("strace"); err != nil {
		s.Skip("strace is not installed")
	}
	trace := s.path(name + ".trace")
	c := newChild(s, "saves a few", s.path(name))
	args := append([]string{"-f", "-y", "-o", trace, "-e", "trace=fsync,fdatasync,pwrite64,write"}, options...)
	traced := exec.Command("strace", append(append(args, c.Path), c.Args[1:]...)...)
	traced.Env = c.Env
	out, err := traced.Output()
	if err != nil && len(out) == 0 {
		s.Skip("strace may not look into programs here: ", err)
	}
	return strings.Split(strings.TrimSpace(string(out)), "\n"), strings.Split(string(bytesOf(s, trace)), "\n")
}

func TestTheDiskHasItBeforeItIsCalledSaved(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	s.sealed("wherry.tumblehome", 2)
	_, calls := s.traced("wherry.tumblehome")
	written, onDisk, acknowledged := false, false, 0
	for _, call := range calls {
		switch {
		case strings.Contains(call, "pwrite64(") && strings.Contains(call, "-wal>"):
			written, onDisk = true, false
		case strings.Contains(call, "sync") && strings.HasSuffix(call, "= 0"):
			onDisk = written
		case strings.Contains(call, `write(1<`) && strings.Contains(call, `"saved `):
			if acknowledged++; !onDisk {
				t.Errorf("called saved before the disk had it: %s", call)
			}
			written, onDisk = false, false
		}
	}
	if acknowledged != 20 {
		t.Errorf("%d of 20 saves were seen", acknowledged)
	}
}

func TestTheDiskFailsToKeepWhatIsWritten(t *testing.T) {
	t.Parallel()
	for _, when := range []int{1, 2, 3, 7} {
		s := newShed(t)
		s.sealed("wherry.tumblehome", 2)
		said, _ := s.traced("wherry.tumblehome", "-e", fmt.Sprintf("inject=fsync,fdatasync:error=EIO:when=%d+", when))
		last := said[len(said)-1]
		if !strings.HasPrefix(last, "failed: ") || !strings.Contains(last, "may be full, unplugged or failing") || !strings.Contains(last, "saved before it is kept") {
			t.Errorf("when sync %d fails: %q", when, last)
		}
		os.Remove(s.path("wherry.tumblehome.trace"))
		kept := s.open("wherry.tumblehome")
		head, _ := kept.Head()
		if saved := 2 + len(said) - 1; head.N < saved || head.N > saved+1 {
			t.Errorf("when sync %d fails: %d revisions were called saved, the head is %d", when, saved, head.N)
		}
		widen(t, kept, 1)
	}
}
