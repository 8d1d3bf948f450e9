package store_test

import (
	"context"
	"errors"
	"io/fs"
	"strings"
	"testing"
	"time"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/internal/store"
)

func TestARoundTrip(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	first := s.begin("wherry.tumblehome")
	if got, want := text(first), string(build.WriteYAML(document(t))); got != want {
		t.Fatalf("the first revision reads\n%s\nwant\n%s", got, want)
	}
	r := save(t, first, set(first, "build.budget", "3200"))
	if r.N != 2 || r.Parent != 1 || r.Kind != store.Made || r.Words != "build.budget to 3200" || r.By != "tall" {
		t.Errorf("the revision is %+v", r)
	}
	before := text(first)
	if err := first.Close(); err != nil {
		t.Fatal(err)
	}
	again := s.open("wherry.tumblehome")
	head, _ := again.Head()
	if text(again) != before || head.N != 2 || !head.When.Equal(r.When) {
		t.Errorf("after closing and opening the head is %+v\n%s", head, text(again))
	}
	if got := files(t, s.folder); len(got) != 3 { // the file, its log and the log's index
		t.Errorf("in the folder lie %v", got)
	}
}

func TestEveryRevisionReadsAsItWas(t *testing.T) {
	notShort(t)
	t.Parallel()
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	want := []string{"", text(kept)}
	for range 120 { // over three whole documents
		widen(t, kept, 1)
		want = append(want, text(kept))
	}
	for _, opened := range []*store.Store{kept, s.open("wherry.tumblehome")} {
		for n := 1; n < len(want); n++ {
			if textAt(t, opened, n) != want[n] {
				t.Fatalf("revision %d reads differently afterwards", n)
			}
		}
	}
	for _, n := range []int{-1, 0, len(want), 1 << 40} {
		if _, err := kept.At(context.Background(), n); !errors.Is(err, store.ErrNoRevision) {
			t.Errorf("revision %d: %v", n, err)
		}
	}
}

func TestRevisionsAreListedNewestFirst(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	widen(t, kept, 9)
	for _, c := range []struct {
		says          string
		before, limit int
		first, count  int
	}{
		{"from the newest", 0, 3, 10, 3},
		{"older than one", 4, 10, 3, 3},
		{"none is older than the first", 1, 10, 0, 0},
		{"none are wanted", 0, 0, 0, 0},
		{"fewer than none are wanted", 0, -1, 0, 0},
	} {
		t.Run(c.says, func(t *testing.T) {
			got, err := kept.Revisions(context.Background(), c.before, c.limit)
			if err != nil || len(got) != c.count || c.count > 0 && got[0].N != c.first {
				t.Errorf("got %d revisions, %v: %+v", len(got), err, got)
			}
		})
	}
}

func TestAnEditThatChangesNothingMakesNoRevision(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	for _, same := range []string{"3000", "3000.00"} {
		if _, err := kept.Save(context.Background(), set(kept, "build.budget", same)); !errors.Is(err, store.ErrNoChange) {
			t.Errorf("%s: %v", same, err)
		}
	}
	if head, _ := kept.Head(); head.N != 1 {
		t.Errorf("the head is revision %d", head.N)
	}
}

func TestAnEditThatBreaksARuleIsRefusedWithTheRule(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	before := text(kept)
	_, err := kept.Save(context.Background(), store.Edit{Base: 1, Patch: tree.Deleting("/fittings/settle")})
	var faults build.Faults
	if !errors.As(err, &faults) || !strings.Contains(err.Error(), "bed") {
		t.Errorf("deleting what the bed stands on: %v", err)
	}
	if text(kept) != before {
		t.Error("the refused edit left a trace")
	}
}

func TestWordsAreKeptAsOnePlainLine(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	for _, c := range []struct{ says, words, want string }{
		{"a line end and a nought", "wider\nby\x00one", "wider by one"},
		{"what is no UTF-8", "wider\xff", "wider\uFFFD"},
		{"a whole page", strings.Repeat("wider ", 500), strings.Repeat("wider ", 66) + "wid…"},
		{"quotes and signs of SQL", `'; DROP TABLE revision; --"`, `'; DROP TABLE revision; --"`},
		{"other alphabets", "ширше, 広く, πλατύτερο", "ширше, 広く, πλατύτερο"},
	} {
		t.Run(c.says, func(t *testing.T) {
			head, _ := kept.Head()
			e := setAt(head.N, "build.budget", head.When.Format("405"))
			e.Words, e.By = c.words, c.words
			r := save(t, kept, e)
			if r.Words != c.want || r.By != c.want {
				t.Errorf("kept %q by %q, want %q", r.Words, r.By, c.want)
			}
			if err := errors.Join(kept.Close()); err != nil {
				t.Fatal(err)
			}
			kept = s.open("wherry.tumblehome")
			if again, _ := kept.Head(); again.Words != c.want {
				t.Errorf("read again %q", again.Words)
			}
		})
	}
}

func TestADocumentThatGrowsTooLargeIsRefused(t *testing.T) {
	notShort(t)
	t.Parallel()
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	_, err := kept.Save(context.Background(), store.Edit{Base: 1, Patch: tree.Setting("/build/note", tree.Text(strings.Repeat("long ", 900_000)))})
	if !errors.Is(err, store.ErrTooLarge) {
		t.Errorf("four and a half megabytes of remarks: %v", err)
	}
	save(t, kept, store.Edit{Base: 1, Patch: tree.Setting("/build/note", tree.Text(strings.Repeat("long ", 100_000)))})
	kept.Close()
	s.open("wherry.tumblehome")
}

func TestABuildIsNeverMadeOverAFile(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	writeFile(t, s.path("wherry.tumblehome"), []byte("somebody's letter"))
	_, err := store.Create(context.Background(), s.path("wherry.tumblehome"), document(t), s.options())
	wantTrouble(t, err, store.ErrTaken, "exists already")
	if got := string(bytesOf(t, s.path("wherry.tumblehome"))); got != "somebody's letter" {
		t.Errorf("the letter reads %q", got)
	}
	_, err = store.Create(context.Background(), s.path("no/such/wherry.tumblehome"), document(t), s.options())
	if !errors.Is(err, fs.ErrNotExist) {
		t.Errorf("in a folder that is not there: %v", err)
	}
	if got := files(t, s.folder); len(got) != 1 {
		t.Errorf("in the folder lie %v", got)
	}
}

func TestNamesOfFilesMayBeAnything(t *testing.T) {
	t.Parallel()
	for _, name := range []string{"our van.tumblehome", "50%20 & more?x=1#top.tumblehome", "Überfahrt «ö».tumblehome", "mode=ro&immutable=1.tumblehome", "a'b\"c.tumblehome", "no ending"} {
		t.Run(name, func(t *testing.T) {
			s := newShed(t)
			kept := s.begin(name)
			widen(t, kept, 2)
			kept.Close()
			s.open(name)
			if got := files(t, s.folder); len(got) != 3 || got[0] != name {
				t.Errorf("in the folder lie %q", got)
			}
		})
	}
}

func TestAClockSetBackChangesNoOrder(t *testing.T) {
	t.Parallel()
	s := newShed(t)
	kept := s.begin("wherry.tumblehome")
	a := save(t, kept, set(kept, "build.budget", "3100"))
	s.clock.set(time.Date(1999, 12, 31, 23, 0, 0, 0, time.UTC))
	b := save(t, kept, set(kept, "build.budget", "3200"))
	if !b.When.Before(a.When) || b.N != a.N+1 {
		t.Fatalf("the clock was not set back: %v after %v", b.When, a.When)
	}
	kept.Close()
	kept = s.open("wherry.tumblehome")
	if head, _ := kept.Head(); head.N != b.N {
		t.Errorf("the head is revision %d, want the last one saved", head.N)
	}
	if r, err := kept.Undo(context.Background(), "tall"); err != nil || textAt(t, kept, a.N) != text(kept) {
		t.Errorf("undo took back %q, %v", r.Words, err)
	}
	if list, err := kept.Revisions(context.Background(), 0, 2); err != nil || list[0].N != 4 || list[1].N != 3 {
		t.Errorf("the list begins %v, %v", list, err)
	}
}
