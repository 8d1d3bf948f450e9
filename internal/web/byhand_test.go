package web_test

import (
	"fmt"
	"net/http"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"tumblehome/build"
)

// preview is a question of script about moves.
func preview(moves string) *http.Request {
	return postJSON("/preview", fmt.Sprintf(`{"revision": 1, "mode": "day", "moves": [%s]}`, moves))
}

func moved(moves string) *http.Request {
	return postJSON("/edit", fmt.Sprintf(`{"revision": 1, "mode": "day", "moves": [%s]}`, moves))
}

func TestArrangingByHand(t *testing.T) {
	lock := func(id string) *http.Request {
		return post("/edit", "path", "/fittings/"+id+"/locked", "value", "yes", "base", "1")
	}
	run(t, dipper, []scenario{
		{name: "a face is stretched", before: []*http.Request{moved(`{"fitting": "galley", "stretch": [{"face": "rear", "by": -50}]}`)}, request: get("/arrangement?open=/fittings/galley"), status: 200,
			holds: []string{`value="900"`, "Galley stretched, its rear face 50 mm forwards"}},
		{name: "a stretch can be asked about", request: preview(`{"fitting": "galley", "stretch": [{"face": "top", "by": 20}]}`), status: 200, holds: []string{"its top face 20 mm up"}},
		{name: "a scribed face says why it stays", request: preview(`{"fitting": "galley", "stretch": [{"face": "right", "by": 20}]}`), status: http.StatusBadRequest,
			holds: []string{"Galley stays as it is: its right face is cut to the lining"}},
		{name: "a face that is none is refused", request: preview(`{"fitting": "galley", "stretch": [{"face": "nose", "by": 20}]}`), status: http.StatusBadRequest},
		{name: "several go in one revision", before: []*http.Request{moved(`{"fitting": "galley", "dx": 5}, {"fitting": "table", "dx": 5}, {"fitting": "dry-locker", "dx": 5}`)},
			request: get("/arrangement"), status: 200, holds: []string{`data-revision="2"`, "3 things moved together"}},
		{name: "what is locked shows a padlock and is not dragged", before: []*http.Request{lock("galley")}, request: get("/region/fittings?open=/fittings/galley"), status: 200,
			holds: []string{"padlock-mark", "Unlock galley"}},
		{name: "dragged, it says that it is locked", before: []*http.Request{lock("galley")}, request: postJSON("/preview", `{"revision": 2, "mode": "day", "moves": [{"fitting": "galley", "dx": 20}]}`),
			status: http.StatusBadRequest, holds: []string{"Galley stays as it is: it is locked"}},
		{name: "it goes along with what carries it", before: []*http.Request{lock("worktop")}, status: 200,
			request: postJSON("/preview", `{"revision": 2, "mode": "day", "moves": [{"fitting": "galley", "dx": 20}]}`)},
		{name: "unlocked, it is as it was", before: []*http.Request{lock("galley"), post("/edit", "path", "/fittings/galley/locked", "value", "", "base", "2")},
			request: get("/region/fittings?open=/fittings/galley"), status: 200, holds: []string{"Lock galley where it is"}, lacks: []string{"padlock-mark"}},
		{name: "several are taken out at once", before: []*http.Request{post("/fittings/alarm-co,alarm-smoke/delete", "base", "1")}, request: get("/region/fittings"), status: 200,
			lacks: []string{`data-fitting="alarm-co"`, `data-fitting="alarm-smoke"`}},
		{name: "if one of them is wanted elsewhere, all stay", request: post("/fittings/alarm-co,galley/delete", "base", "1"), status: http.StatusUnprocessableEntity,
			holds: []string{" and galley are still wanted elsewhere"}},
		{name: "one that is not there is refused", request: post("/fittings/galley,zeppelin/delete", "base", "1"), status: http.StatusBadRequest},
		{name: "several are doubled at once, and script is told their names", request: with(post("/fittings/galley,worktop/duplicate", "base", "1"), byScript), status: 200,
			holds: []string{`"made":["galley-2","worktop-2"]`}},
		{name: "what waits without a place has buttons for one", before: []*http.Request{post("/edit", "path", "/fittings/table/at", "value", "undecided", "base", "1")},
			request: get("/region/fittings"), status: 200, holds: []string{"on the floor in the middle", `action="/fittings/table/put"`}},
		{name: "a place in words has no unit", request: get("/region/fittings?open=/fittings/galley"), status: 200, holds: []string{"made of the board", "<span>rearwards</span>", `value="right" size="6"></label>`}, lacks: []string{"of which board"}},
		{name: "nowhere is no place", request: post("/fittings/table/put", "at", "moon", "base", "1"), status: http.StatusBadRequest},
		{name: "many notes about one thing stand under one line", before: []*http.Request{moved(`{"fitting": "galley", "dx": 700}`)}, request: get("/region/notes?mode=day"), status: 200,
			holds: []string{`class="notes-of fault"`, "faults where it stands"}},
		{name: "a sentence about it names a few notes and counts the rest", before: []*http.Request{moved(`{"fitting": "galley", "dx": 700}`)}, request: get("/region/said"), status: 200,
			holds: []string{"New fault:", "more new."}},
		{name: "few notes stand each for itself", request: get("/region/notes?mode=day"), status: 200, lacks: []string{"notes-of"}},
	})
}

// fitting is one of the newest revision.
func (w *workshop) fitting(id string) build.Fitting {
	w.t.Helper()
	_, doc := w.store.Head()
	f, ok := doc.Fittings[id]
	if !ok {
		w.t.Fatalf("there is no %s", id)
	}
	return f
}

func TestACopyStandsOnCopies(t *testing.T) {
	w := open(t, dipper)
	if got := w.answer(post("/fittings/galley,worktop/duplicate", "base", "1", "back", "/arrangement")); got.Code != http.StatusSeeOther {
		t.Fatal(got.Code, got.Body)
	}
	if got := w.fitting("worktop-2").Upon; got != "galley-2" {
		t.Errorf("the copied worktop lies upon %q", got)
	}
	if was, is := w.fitting("galley").At, w.fitting("galley-2").At; *was == *is {
		t.Errorf("the copy stands in the original, at %v", *is)
	}
	if w.fitting("galley-2").Fitted != nil {
		t.Error("a copy is in the van already")
	}
}

func TestACopyIsNotPutIntoTheCab(t *testing.T) {
	w := open(t, dipper)
	if got := w.answer(post("/fittings/galley/duplicate", "base", "1", "back", "/arrangement")); got.Code != http.StatusSeeOther {
		t.Fatal(got.Code, got.Body)
	}
	if at := w.fitting("galley-2").At; !at.Undecided {
		t.Errorf("where there is no free place beside the galley its copy stands at %v", *at)
	}
	if page := w.answer(get("/arrangement")).Body.String(); !strings.Contains(page, `action="/fittings/galley-2/put"`) {
		t.Error("the copy is not offered a place")
	}
}

func TestCopiesOfSeveralStayTogether(t *testing.T) {
	w := open(t, dipper)
	for i, request := range []*http.Request{
		postJSON("/edit", `{"revision": 1, "mode": "day", "moves": [{"fitting": "dry-locker", "dx": -280}]}`), // beside the table, where there is no room for two more
		post("/fittings/table,dry-locker/duplicate", "base", "2", "back", "/arrangement"),
	} {
		if got := w.answer(request); got.Code >= http.StatusBadRequest {
			t.Fatal(i, got.Code, got.Body)
		}
	}
	for _, id := range []string{"table-2", "dry-locker-2"} {
		if at := w.fitting(id).At; at.Undecided {
			t.Errorf("%s has lost its place beside the other", id)
		}
	}
}

func TestACopyTakesAlongWhatItCarries(t *testing.T) {
	w := open(t, dipper)
	_, before := w.store.Head()
	carried := 0
	for _, f := range before.Fittings {
		if f.In == "settle" || f.Upon == "settle" {
			carried++
		}
	}
	if got := w.answer(post("/fittings/settle/duplicate", "base", "1", "back", "/arrangement")); got.Code != http.StatusSeeOther {
		t.Fatal(got.Code, got.Body)
	}
	revision, after := w.store.Head()
	copies := 0
	for id, f := range after.Fittings {
		if _, old := before.Fittings[id]; !old && (f.In == "settle-2" || f.Upon == "settle-2") {
			copies++
		}
		if _, old := before.Fittings[id]; !old && f.Called != "" && !strings.HasSuffix(f.Called, " 2") {
			t.Errorf("the copy %s is called %q as the original is", id, f.Called)
		}
	}
	if carried == 0 || copies != carried || revision.N != 2 {
		t.Errorf("of %d things the settle carries, its copy carries %d, at revision %d", carried, copies, revision.N)
	}
	if got := w.answer(post("/undo", "base", "2", "back", "/arrangement")); got.Code != http.StatusSeeOther {
		t.Fatal(got.Code, got.Body)
	}
	if _, undone := w.store.Head(); len(undone.Fittings) != len(before.Fittings) {
		t.Errorf("one step back leaves %d of %d things", len(undone.Fittings), len(before.Fittings))
	}
}

// What is added gets a place where it is in nobody's way, or waits and is put where the builder says.
func TestWhatIsAddedFindsAPlace(t *testing.T) {
	empty := filepath.Join(t.TempDir(), "barely.yaml")
	if err := os.WriteFile(empty, []byte(barely), 0o600); err != nil {
		t.Fatal(err)
	}
	for _, tt := range []struct{ words, offer, at string }{
		{"galley, about 1 m", "carcass", "right"}, {"locker", "locker", "right"}, {"bench", "bench", "right"},
	} {
		w := open(t, empty)
		if got := w.answer(post("/fittings/add", "words", tt.words, "make", tt.offer, "base", "1")); got.Code != http.StatusSeeOther {
			t.Fatal(tt.words, got.Code, got.Body)
		}
		_, doc := w.store.Head()
		for id, f := range doc.Fittings {
			if f.At == nil || f.At.Undecided || !strings.Contains(f.At.Y.String(), tt.at) {
				t.Errorf("%s is put at %v", id, f.At)
			}
		}
	}
	w := open(t, dipper)
	if got := w.answer(post("/edit", "path", "/fittings/dry-locker/at", "value", "undecided", "base", "1")); got.Code >= 400 {
		t.Fatal(got.Code, got.Body)
	}
	for i, at := range []string{"left", "right", "rear", "middle"} {
		if got := w.answer(post("/fittings/dry-locker/put", "at", at, "base", fmt.Sprint(i+2))); got.Code != http.StatusSeeOther {
			t.Fatal(at, got.Code, got.Body)
		}
		head, _ := w.store.Head()
		t.Logf("%s: %s; x %s, y %s", at, head.Words, w.fitting("dry-locker").At.X, w.fitting("dry-locker").At.Y)
	}
	if got := w.fitting("dry-locker").At.Y.String(); got != "mid 0" {
		t.Errorf("put in the middle it stands at %q across", got)
	}
}

func TestWhatIsPutAtTheOtherSideIsTurnedOverWithAllUponIt(t *testing.T) {
	w := open(t, dipper)
	for i, request := range []*http.Request{
		post("/edit", "path", "/fittings/settle/at", "value", "undecided", "base", "1"),
		post("/fittings/settle/put", "at", "left", "base", "2"),
	} {
		if got := w.answer(request); got.Code >= http.StatusBadRequest {
			t.Fatal(i, got.Code, got.Body)
		}
	}
	settle, bed := w.fitting("settle"), w.fitting("pullout")
	if settle.At.Y.String() != "left" || !slices.Equal(settle.Scribe, []string{"left"}) || settle.Moves["lid"].Hinge.A != "left" {
		t.Errorf("the settle stands at %s, is cut at its %v and opens about %v", settle.At.Y, settle.Scribe, settle.Moves["lid"].Hinge)
	}
	if bed.At.Y.String() != "left" || !slices.Equal(bed.Scribe, []string{"left"}) || bed.Moves["out"].Slide.Back {
		t.Errorf("the bed upon it lies at %s, is cut at its %v and is pulled out along %v", bed.At.Y, bed.Scribe, bed.Moves["out"].Slide)
	}
	if head, _ := w.store.Head(); !strings.Contains(head.Words, "turned over to that side") {
		t.Errorf("it says %q", head.Words)
	}
}
