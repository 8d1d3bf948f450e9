package web_test

import (
	"strings"
	"testing"
)

const named = roomy + `
fittings:
  bunk-low: {called: lower bunk, make: bunk, at: {x: 1900, y: mid 0, z: 420}, size: {x: 720, y: 1500, z: 60}}
  l1: {called: tall open locker, make: locker, at: {x: 100, y: right}, size: {x: 400, y: 400, z: 1200}}
  l2: {called: tall open locker, make: locker, at: {x: 700, y: right}, size: {x: 400, y: 400, z: 1200}}
  box-1: {make: box, at: {x: 1300, y: right}, size: {x: 300, y: 300, z: 300}}
`

// Messages and the history call things as the list does, tell two of one name apart, and keep a figure at the end of a name off a length.
func TestMessagesCallThingsByTheirNames(t *testing.T) {
	for move, want := range map[string]string{
		`{"fitting": "bunk-low", "dx": -50}`:                                   "lower bunk 50 mm forwards",
		`{"fitting": "l2", "dx": 20}`:                                          "tall open locker (2) 20 mm rearwards",
		`{"fitting": "box-1", "dx": 61}`:                                       "“box 1” 61 mm rearwards",
		`{"fitting": "box-1", "dx": 20, "snap": {"x": "l2.rear"}}`:             "against tall open locker (2) rear",
		`{"fitting": "box-1", "dx": 20, "snap": {"x": "from bunk-low.front"}}`: "flush with lower bunk front",
	} {
		w := openText(t, named)
		if got := w.answer(moved(move)); got.Code >= 400 {
			t.Errorf("%s: %d %s", move, got.Code, got.Body)
		}
		if head, _ := w.store.Head(); !strings.Contains(head.Words, want) {
			t.Errorf("%s is told as %q, want %q", move, head.Words, want)
		}
	}
	w := openText(t, named)
	if got := w.answer(post("/edit", "path", "/fittings/l2/size/x", "value", "450", "base", "1")); got.Code >= 400 {
		t.Fatal(got.Code, got.Body)
	}
	if head, _ := w.store.Head(); !strings.HasPrefix(head.Words, "tall open locker (2), ") {
		t.Errorf("a change is told as %q", head.Words)
	}
	if page := w.answer(get("/region/fittings")).Body.String(); !strings.Contains(page, `data-name="tall open locker (2)"`) {
		t.Error("the list does not tell two lockers apart")
	}
}
