//go:build linux

package store_test

import (
	"fmt"
	"math/rand/v2"
	"os"
	"os/signal"
	"strings"
	"syscall"
	"testing"
	"time"
)

func init() {
	children["brings up to date"] = bringsUpToDate
	children["brings up to date with little room"] = func(path string) error {
		signal.Ignore(syscall.SIGXFSZ)
		var room uint64
		if _, err := fmt.Scan(&room); err != nil {
			return err
		}
		if err := syscall.Setrlimit(syscall.RLIMIT_FSIZE, &syscall.Rlimit{Cur: room, Max: room}); err != nil {
			return err
		}
		return bringsUpToDate(path)
	}
}

func bringsUpToDate(path string) error {
	fmt.Println("ready")
	kept, err := openInChild(path)
	if err != nil {
		fmt.Println("refused:", err)
		return nil
	}
	fmt.Println("done")
	return kept.Close()
}

func TestAProgramIsKilledInTheMiddleOfAnUpgrade(t *testing.T) {
	notShort(t)
	t.Parallel()
	times := min(kills(t)/5, 400)
	s := newShed(t)
	dice := rand.New(rand.NewPCG(8, 8))
	finished := 0
	for i := range times {
		name := fmt.Sprintf("wherry-%d.tumblehome", i)
		s.old(name)
		c := startChild(t, "brings up to date", s.path(name))
		_, _ = c.out.ReadString('\n')
		time.Sleep(time.Duration(dice.IntN(200_000)) * time.Microsecond)
		if err := c.Process.Kill(); err != nil {
			t.Fatal(err)
		}
		if lines := c.lines(); len(lines) > 0 {
			finished++
		}
		kept := s.open(name)
		wantOld(t, kept)
		kept.Close()
		for _, left := range files(t, s.folder) {
			os.Remove(s.path(left))
		}
	}
	t.Logf("%d programs killed, %d of them after the upgrade", times, finished)
}

func TestThereIsNoRoomForAnUpgrade(t *testing.T) {
	notShort(t)
	t.Parallel()
	s := newShed(t)
	done, refused := 0, 0
	for room := uint64(4096); room < 260_000; room += 16_384 {
		name := fmt.Sprintf("wherry-%d.tumblehome", room)
		old := s.old(name)
		c := startChild(t, "brings up to date with little room", s.path(name))
		fmt.Fprintln(c.in, room)
		lines := strings.Join(c.lines(), "\n")
		if strings.Contains(lines, "done") {
			done++
			continue
		}
		refused++
		if !strings.Contains(lines, "was not brought up to date") || !strings.Contains(lines, "left as it is") {
			t.Errorf("with room for %d bytes: %q", room, lines)
		}
		if string(bytesOf(t, s.path(name))) != string(old) {
			t.Errorf("with room for %d bytes the old file was changed", room)
		}
		wantOld(t, s.open(name))
	}
	if done == 0 || refused < 3 {
		t.Errorf("%d had room, %d had not", done, refused)
	}
	for _, name := range files(t, s.folder) {
		if strings.Contains(name, "unfinished") {
			t.Errorf("%s was left behind", name)
		}
	}
}
