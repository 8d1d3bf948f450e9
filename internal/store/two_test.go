package store_test

import (
	"context"
	"errors"
	"fmt"
	"strings"
	"sync"
	"testing"
	"time"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/internal/store"
)

// edit is a patch as JSON.
func edit(t *testing.T, base int, patch string) store.Edit {
	t.Helper()
	p, err := tree.ParsePatch([]byte(patch))
	if err != nil {
		t.Fatal(err)
	}
	return store.Edit{Base: base, Patch: p, Words: patch, By: "small"}
}

// TestTwoPeople lets both edit revision 1: the first is saved, the second is tried.
func TestTwoPeople(t *testing.T) {
	t.Parallel()
	const galley = `{"fittings": {"galley": %s}}`
	for _, c := range []struct {
		says, first, second string
		clash               string // "place: theirs | mine" where both want it; "rules" where only the rules forbid it; else it is merged
		reads               string // a piece of what the document says in the end
	}{
		{"the same value", `{"build": {"budget": 3100}}`, `{"build": {"budget": 3200}}`, "build.budget: 3100 | 3200", "budget: 3100"},
		{"the same value, set alike", `{"build": {"budget": 3100}}`, `{"build": {"budget": 3100}}`, "nothing", "budget: 3100"},
		{"the same value alike, and another besides", `{"build": {"budget": 3100}}`, `{"build": {"budget": 3100, "weekends": 9}}`, "", "weekends: 9"},
		{"different things", `{"build": {"budget": 3100}}`, fmt.Sprintf(galley, `{"size": {"x": 900}}`), "", "x: 900"},
		{"different values of one thing", fmt.Sprintf(galley, `{"size": {"y": 500}}`), fmt.Sprintf(galley, `{"size": {"x": 900}}`), "", "size: {x: 900, y: 500"},
		{"one deletes what the other changes", fmt.Sprintf(galley, `null`), fmt.Sprintf(galley, `{"size": {"x": 900}}`), `fittings.galley.size.x:  | 900`, "fittings:\n  bed"},
		{"one changes what the other deletes", fmt.Sprintf(galley, `{"size": {"x": 900}}`), fmt.Sprintf(galley, `null`), `fittings.galley: {"make":"carcass","at":{"x":40,"y":"right"},"size":{"x":900,"y":450,"z":880}} | `, "x: 900"},
		{"both delete it", fmt.Sprintf(galley, `null`), fmt.Sprintf(galley, `null`), "nothing", "fittings:\n  bed"},
		{"one deletes what the other begins to use", fmt.Sprintf(galley, `null`), `{"fittings": {"tap": {"buy": "tap-micro-switch", "upon": "galley", "at": {"x": "front", "y": "right"}}}}`, "rules", "fittings:\n  bed"},
		{"one uses what the other deletes", `{"fittings": {"tap": {"buy": "tap-micro-switch", "upon": "galley", "at": {"x": "front", "y": "right"}}}}`, fmt.Sprintf(galley, `null`), "rules", "upon: galley"},
		{"both add a thing under one id", `{"people": {"child": {"stature": 1100, "mass": 20}}}`, `{"people": {"child": {"stature": 1200, "mass": 20, "note": "grows"}}}`, `people.child: {"mass":20,"stature":1100} | {"mass":20,"stature":1200,"note":"grows"}`, "stature: 1100"},
		{"both add a thing under one id, each with other keys", `{"removed": {"bulkhead": {"mass": 30}}}`, `{"removed": {"bulkhead": {"mass": 30, "x": 0}}}`, `removed.bulkhead: {"mass":30} | {"mass":30,"x":0}`, "bulkhead: {mass: 30}"},
		{"both add a thing, under two ids, to a section that was not there", `{"removed": {"racks": {"mass": 36}}}`, `{"removed": {"bulkhead": {"mass": 30}}}`, "", "bulkhead: {mass: 30}"},
		{"both lengthen one list", `{"lining": {"floor": [{"lay": "ply-softwood-15"}, {"lay": "floor-cork-4"}]}}`, `{"lining": {"floor": [{"lay": "ply-softwood-15", "times": 2}]}}`, "lining.floor: ", "floor:"},
		{"one replaces what holds the other's value", `{"fittings": {"galley": {"mass": 12}}}`, `{"fittings": {"galley": {"mass": {"likely": 12, "low": 9, "high": 20}}}}`, `fittings.galley.mass: 12 | {"likely":12,"low":9,"high":20}`, "mass: 12"},
	} {
		t.Run(c.says, func(t *testing.T) {
			s := newShed(t)
			kept := s.begin("wherry.tumblehome")
			if _, err := kept.Save(context.Background(), edit(t, 1, c.first)); err != nil {
				t.Fatal("the first edit: ", err)
			}
			_, err := kept.Save(context.Background(), edit(t, 1, c.second))
			var conflict *store.Conflict
			var faults build.Faults
			switch {
			case c.clash == "":
				if err != nil {
					t.Fatal(err)
				}
			case c.clash == "nothing":
				if !errors.Is(err, store.ErrNoChange) {
					t.Errorf("got %v, want that it changes nothing", err)
				}
			case c.clash == "rules":
				if !errors.As(err, &conflict) || len(conflict.Clashes) != 0 || !errors.As(err, &faults) {
					t.Errorf("got %v, want a conflict of rules and the rule", err)
				}
			case !errors.As(err, &conflict) || len(conflict.Clashes) == 0:
				t.Fatalf("got %v, want a conflict", err)
			default:
				got := conflict.Clashes[0]
				if line := got.Pointer.Path() + ": " + got.Theirs + " | " + got.Mine; !strings.HasPrefix(line, c.clash) {
					t.Errorf("got %s, want %s", line, c.clash)
				}
			}
			if !strings.Contains(text(kept), c.reads) {
				t.Errorf("the document does not say %q:\n%s", c.reads, text(kept))
			}
		})
	}
}

func TestOneOfTwoValuesIsChosen(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	save(t, kept, setAt(1, "build.budget", "3100"))
	_, err := kept.Save(context.Background(), setAt(1, "build.budget", "3200"))
	var conflict *store.Conflict
	if !errors.As(err, &conflict) {
		t.Fatal(err)
	}
	if want := "build.budget was changed to 3100 meanwhile (revision 2); you wanted 3200"; err.Error() != want {
		t.Errorf("the words are %q, want %q", err, want)
	}
	chosen := conflict.Clashes[0]
	save(t, kept, setAt(conflict.Head, chosen.Pointer.Path(), chosen.Mine))
	if !strings.Contains(text(kept), "budget: 3200") {
		t.Errorf("the chosen value is not there:\n%s", text(kept))
	}
}

func TestAPageLeftOpenOverNight(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	widen(t, kept, 200)
	save(t, kept, setAt(1, "build.budget", "3100")) // moved over 200 revisions
	_, err := kept.Save(context.Background(), setAt(1, "fittings.settle.size.y", "999"))
	var conflict *store.Conflict
	if !errors.As(err, &conflict) || conflict.Clashes[0].Theirs == "" || conflict.Clashes[0].Mine != "999" {
		t.Errorf("a value that changed in the night: %v", err)
	}
	kept.Close()
	kept = s.open("wherry.tumblehome") // the program was stopped and started under the page
	save(t, kept, setAt(1, "build.weekends", "12"))
	if _, err := kept.Save(context.Background(), setAt(1000, "build.weekends", "13")); !errors.Is(err, store.ErrNoRevision) {
		t.Errorf("a page of a build that was restored to an earlier state: %v", err)
	}
	for _, piece := range []string{"budget: 3100", "weekends: 12"} {
		if !strings.Contains(text(kept), piece) {
			t.Errorf("%s is not there", piece)
		}
	}
}

func TestAnEditMadeAndTakenBackInTheNightIsNoConflict(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	save(t, kept, setAt(1, "build.budget", "3100"))
	if _, err := kept.Undo(context.Background(), "tall"); err != nil {
		t.Fatal(err)
	}
	save(t, kept, setAt(1, "build.budget", "3200"))
}

func TestTwoProgramsOnOneFile(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	one := s.begin("wherry.tumblehome")
	two := s.open("wherry.tumblehome")
	save(t, one, set(one, "build.budget", "3100"))
	if head, _ := two.Head(); head.N != 1 {
		t.Fatal("the second program can not know yet")
	}
	if changed, err := two.Refresh(context.Background()); !changed || err != nil {
		t.Errorf("asked, it sees no change: %v", err)
	}
	if text(one) != text(two) {
		t.Error("the two read differently")
	}
	save(t, two, setAt(1, "build.weekends", "12"))
	save(t, one, setAt(2, "build.title", "Wherry the second"))
	if r, err := two.Undo(context.Background(), "small"); err != nil || !strings.Contains(r.Words, "title") {
		t.Errorf("the newest edit was the other program's; undone was %q, %v", r.Words, err)
	}
	if _, err := one.Save(context.Background(), setAt(2, "build.weekends", "13")); err == nil {
		t.Error("the other program's value was overwritten")
	}
}

func TestManyAtOnceLoseNothing(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	s.wait = time.Minute // SQLite gives the file to whoever asks in the right moment; on a busy machine one may have to ask long
	stores := []*store.Store{s.begin("wherry.tumblehome"), s.open("wherry.tumblehome")}
	const people, edits = 4, 12
	var all sync.WaitGroup
	for p := range people {
		all.Go(func() {
			kept := stores[p%2]
			for i := range edits {
				head, _ := kept.Head()
				e := store.Edit{Base: head.N, Patch: tree.Setting(tree.PointerTo("removed", fmt.Sprintf("p%d-%d", p, i)), tree.MapOf(tree.Entry{Key: "mass", Value: tree.Plain("1")}))}
				if _, err := kept.Save(context.Background(), e); err != nil {
					t.Errorf("person %d, edit %d: %v", p, i, err)
				}
				if i%4 == 3 {
					kept.CanUndo(context.Background())
					kept.Revisions(context.Background(), 0, 5)
				}
			}
		})
	}
	all.Wait()
	for _, kept := range stores {
		kept.Refresh(context.Background())
		_, doc := kept.Head()
		if len(doc.Removed) != people*edits {
			t.Errorf("%d of %d edits are there", len(doc.Removed), people*edits)
		}
	}
}
