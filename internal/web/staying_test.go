package web_test

import (
	"math"
	"net/http"
	"strings"
	"testing"
)

// What stood against a bed stays where it stands when the bed is taken out, what lay on it goes with it, and who lay on it lies nowhere yet.
func TestWhatStoodAgainstABedStays(t *testing.T) {
	w := openText(t, roomy+`
fittings:
  bed: {called: fixed bed, make: platform, at: {x: rear, y: right}, size: {x: 1850, y: 900, z: 600}}
  mattress: {make: cushions, upon: bed, at: {x: front, y: mid 0}, size: {x: 1800, y: 800, z: 75}}
  galley: {make: carcass, at: {x: bed.front - 20, y: right}, size: {x: 800, y: 450, z: 880}}
  lamp: {make: shelf, upon: galley, at: {x: to bed.front - 60, y: right}, size: {x: 200, y: 100, z: 60}}
  overlocker: {make: overlocker, at: {x: bed.front..rear, y: left, z: roof}, size: {y: 300, z: 280}}
modes:
  night: {people: {one: {lies: bed, head: front}}}
`)
	asked := w.answer(post("/fittings/bed/delete", "base", "1"))
	for _, want := range []string{"Fixed bed is still wanted elsewhere", "Goes with it", "Mattress", "Stays where it stands now", "Galley", "One lies nowhere yet (night)"} {
		if asked.Code != http.StatusUnprocessableEntity || !strings.Contains(asked.Body.String(), want) {
			t.Errorf("asked, the page does not say %q (%d)", want, asked.Code)
		}
	}
	before := w.reckoned().Places
	if got := w.answer(post("/fittings/bed/delete", "base", "1", "with", "yes")); got.Code >= 400 {
		t.Fatal(got.Code, got.Body)
	}
	after := w.reckoned().Places
	for _, id := range []string{"galley", "lamp", "overlocker"} {
		was, is := before.Find(id), after.Find(id)
		if is == nil || !is.Placed() || math.Abs(is.Box.MinX-was.Box.MinX) > 1 || math.Abs(is.Box.MaxX-was.Box.MaxX) > 1 || math.Abs(is.Box.MinY-was.Box.MinY) > 1 {
			t.Errorf("the %s stood at %v and stands at %v", id, was.Box, is)
		}
	}
	if got := w.fitting("galley").At.Y.String(); got != "right" {
		t.Errorf("across, the galley stands at %q", got)
	}
	if got := w.fitting("overlocker").At.X.String(); !strings.HasSuffix(got, "..rear") {
		t.Errorf("the locker goes from %q", got)
	}
}
