package store_test

import (
	"context"
	"errors"
	"fmt"
	"strings"
	"testing"

	"tumblehome/internal/store"
)

// play runs a line of letters: an edit sets the budget to the next hundred (e), u undoes, r redoes. A capital letter wants a refusal.
func play(t *testing.T, kept *store.Store, line string) {
	t.Helper()
	for _, letter := range line {
		var err error
		switch letter {
		case 'e':
			head, _ := kept.Head()
			save(t, kept, set(kept, "build.budget", fmt.Sprint(5000+100*head.N)))
		case 'u', 'U':
			_, err = kept.Undo(context.Background(), "small")
		case 'r', 'R':
			_, err = kept.Redo(context.Background(), "small")
		}
		wanted := map[rune]error{'U': store.ErrNothingToUndo, 'R': store.ErrNothingToRedo}[letter]
		if !errors.Is(err, wanted) {
			t.Fatalf("%c in %s: %v, want %v", letter, line, err, wanted)
		}
	}
}

func TestUndoAndRedo(t *testing.T) {
	for _, c := range []struct {
		says, line string
		same       int // the revision that the document must equal in the end
	}{
		{"nothing was done", "UR", 1},
		{"an edit is taken back", "eu", 1},
		{"an edit is taken back and brought back", "eur", 2},
		{"three are taken back, and then there is nothing", "eeeuuuU", 1},
		{"all come back in order, and then there is nothing", "eeuurrR", 3},
		{"an edit ends redo", "eeuueR", 6},
		{"the first edit is taken back after the second was, with another between", "eeueuu", 1},
		{"back and forth", "eurururu", 1},
		{"back and forth and on", "eurueR", 6},
		{"a redo can be undone to the bottom", "eeuururuU", 1},
	} {
		t.Run(c.says, func(t *testing.T) {
			s := newShed(t)
			kept := s.begin("wherry.tumblehome")
			play(t, kept, c.line)
			if text(kept) != textAt(t, kept, c.same) {
				t.Errorf("after %s the document is not that of revision %d:\n%s", c.line, c.same, text(kept))
			}
			undo, redo, err := kept.CanUndo(context.Background())
			kept.Close()
			again := s.open("wherry.tumblehome") // the stacks are read from the history
			u, r, err2 := again.CanUndo(context.Background())
			if undo != u || redo != r || err != nil || err2 != nil {
				t.Errorf("before closing undo %v redo %v, after opening %v %v; %v %v", undo, redo, u, r, err, err2)
			}
		})
	}
}

func TestUndoSaysWhatItTakesBackAndWhoseItWas(t *testing.T) {
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	save(t, kept, set(kept, "build.budget", "3100")) // by tall
	for _, c := range []struct {
		by   string
		do   func(context.Context, string) (store.Revision, error)
		want string
	}{
		{"small", kept.Undo, "undo: build.budget to 3100 (by tall)"},
		{"small", kept.Redo, "redo: build.budget to 3100 (by tall)"},
		{"tall", kept.Undo, "undo: build.budget to 3100 (by tall)"},
		{"tall", kept.Redo, "redo: build.budget to 3100 (by tall)"},
	} {
		if r, err := c.do(context.Background(), c.by); err != nil || r.Words != c.want || r.By != c.by {
			t.Errorf("%q by %s, %v; want %q", r.Words, r.By, err, c.want)
		}
	}
	save(t, kept, set(kept, "build.budget", "3300"))
	if r, err := kept.Undo(context.Background(), "tall"); err != nil || strings.Contains(r.Words, "by") {
		t.Errorf("his own edit: %q, %v", r.Words, err)
	}
}

func TestTwoPeopleWhoUndoTheSameEditTakeBackOne(t *testing.T) {
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	widen(t, kept, 2)
	if _, err := kept.UndoSeen(context.Background(), 3, "tall"); err != nil {
		t.Fatal(err)
	}
	if _, err := kept.UndoSeen(context.Background(), 3, "small"); !errors.Is(err, store.ErrMovedOn) {
		t.Errorf("the second undo of what both saw: %v", err)
	}
	if _, err := kept.RedoSeen(context.Background(), 3, "small"); !errors.Is(err, store.ErrMovedOn) {
		t.Errorf("a redo on an old page: %v", err)
	}
	if text(kept) != textAt(t, kept, 2) {
		t.Error("more than one edit was taken back")
	}
}
