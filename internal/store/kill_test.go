//go:build unix

package store_test

import (
	"context"
	"errors"
	"fmt"
	"math/rand/v2"
	"os"
	"strconv"
	"strings"
	"testing"
	"time"

	"tumblehome/internal/store"
)

func init() {
	children["saves in bursts"] = savesInBursts
}

// savesInBursts saves, undoes and attaches as fast as it can and prints each thing only when it has been acknowledged, until it is
// killed. What it does follows from a number that the parent sends it.
func savesInBursts(path string) error {
	var seed uint64
	if _, err := fmt.Scan(&seed); err != nil {
		return err
	}
	dice := rand.New(rand.NewPCG(seed, 7))
	kept, err := openInChild(path)
	if err != nil {
		return err
	}
	if dice.IntN(2) == 0 { // bring the log in all the time, so that kills hit that too
		if err := kept.Do("PRAGMA wal_autocheckpoint = 8"); err != nil {
			return err
		}
	}
	fmt.Println("ready")
	for i := 0; ; i++ {
		if err := burst(kept, dice, fmt.Sprintf("mark-%d-%d", seed, i)); err != nil {
			return err
		}
	}
}

func burst(kept *store.Store, dice *rand.Rand, mark string) error {
	ctx := context.Background()
	if dice.IntN(12) == 0 {
		id, err := kept.Attach(ctx, mark, "image/jpeg", strings.NewReader(strings.Repeat(mark, 1+dice.IntN(4000))))
		if err == nil {
			fmt.Println("photo", id, mark)
		}
		return err
	}
	var r store.Revision
	var err error
	switch dice.IntN(8) {
	case 0:
		r, err = kept.Undo(ctx, mark)
	case 1:
		r, err = kept.Redo(ctx, mark)
	default:
		head, _ := kept.Head()
		r, err = kept.Save(ctx, note(head.N, mark))
	}
	var conflict *store.Conflict
	if errors.Is(err, store.ErrNothingToUndo) || errors.Is(err, store.ErrNothingToRedo) || errors.As(err, &conflict) {
		return nil // the other program was faster
	}
	if err == nil {
		fmt.Println("revision", r.N, r.Kind, string(r.Patch.JSON()))
	}
	return err
}

// kills is how many programs are killed: some in make test, two thousand in make kills.
func kills(t *testing.T) int {
	if n, err := strconv.Atoi(os.Getenv("TUMBLEHOME_KILLS")); err == nil {
		return n
	}
	return 200
}

// TestEveryAcknowledgedEditOutlivesAKill kills programs in bursts of saves, one at a time or two that write to one file, and looks for
// everything they had said was saved.
func TestEveryAcknowledgedEditOutlivesAKill(t *testing.T) {
	notShort(t)
	t.Parallel()
	all := kills(t)
	s := newShed(t)
	dice := rand.New(rand.NewPCG(20260919, 3))
	var sum tally
	for killed := 0; killed < all; {
		name := fmt.Sprintf("wherry-%d.tumblehome", killed)
		if err := s.begin(name).Close(); err != nil {
			t.Fatal(err)
		}
		said := ledger{}
		var last tally
		for round := 0; round < 10 && killed < all; round++ { // ten on one file, so that each finds what the last one left
			together := 1 + dice.IntN(2)
			killed += together
			s.killOnce(dice, name, together, said)
			last = s.lookFor(name, said)
		}
		sum.acknowledged, sum.found, sum.more = sum.acknowledged+last.acknowledged, sum.found+last.found, sum.more+last.more
		for _, left := range files(t, s.folder) {
			if err := os.Remove(s.path(left)); err != nil {
				t.Fatal(err)
			}
		}
	}
	t.Logf("%d programs killed; %d edits and photos acknowledged, %d found, %d lost; %d more were written but not acknowledged before the kill",
		all, sum.acknowledged, sum.found, sum.acknowledged-sum.found, sum.more)
	if sum.acknowledged < 2*all {
		t.Errorf("only %d were acknowledged: the bursts are too short", sum.acknowledged)
	}
}

// ledger is what was acknowledged: a line for each revision and photo.
type ledger map[string]bool

type tally struct{ acknowledged, found, more int }

// killOnce starts programs on a file, kills them after a moment and notes what they had said.
func (s *shed) killOnce(dice *rand.Rand, name string, together int, said ledger) {
	s.Helper()
	running := make([]*child, together)
	for i := range running {
		running[i] = startChild(s, "saves in bursts", s.path(name))
		fmt.Fprintln(running[i].in, dice.Uint64())
	}
	if dice.IntN(6) > 0 { // else the kill meets the opening, and what it does with what the last kill left
		for _, c := range running {
			_, _ = c.out.ReadString('\n') // a child that failed says so below
		}
	}
	time.Sleep(time.Duration(dice.IntN(60)) * time.Millisecond)
	for _, c := range running {
		if err := c.Process.Kill(); err != nil { // SIGKILL: it can not clean up
			s.Fatal(err)
		}
	}
	for _, c := range running {
		for _, line := range c.lines() {
			if strings.HasPrefix(line, "failed") {
				s.Error(line)
			} else if line != "ready" {
				said[line] = true
			}
		}
	}
}

// lookFor opens the file and looks for all that was ever acknowledged on it.
func (s *shed) lookFor(name string, said ledger) (count tally) {
	s.Helper()
	kept, err := store.Open(context.Background(), s.path(name), s.options())
	if err != nil {
		s.Fatal(err)
	}
	defer kept.Close()
	there := s.contents(kept)
	for line := range said {
		count.acknowledged++
		if there[line] {
			count.found++
		} else {
			s.Errorf("lost: %s", line)
		}
	}
	count.more = len(there) - count.found
	return count
}

// contents is what a file holds, as ledgers have it, but for the first revision.
func (s *shed) contents(kept *store.Store) ledger {
	s.Helper()
	there := ledger{}
	list, err := kept.Revisions(context.Background(), 0, 1<<30)
	if err != nil {
		s.Fatal(err)
	}
	for _, r := range list[:len(list)-1] {
		there[fmt.Sprintf("revision %d %s %s", r.N, r.Kind, r.Patch.JSON())] = true
	}
	photos, err := kept.Attachments(context.Background())
	if err != nil {
		s.Fatal(err)
	}
	for _, a := range photos {
		if whole, err := kept.Attachment(context.Background(), a.ID); err != nil || !strings.HasPrefix(string(whole.Content), a.Name) {
			s.Errorf("photo %s: %v", a.ID, err)
		}
		there[fmt.Sprintf("photo %s %s", a.ID, a.Name)] = true
	}
	return there
}
