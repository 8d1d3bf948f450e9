package web_test

import (
	"net/http"
	"strconv"
	"strings"
	"testing"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/trade/cables"
)

// at is what stands at a place of the newest revision.
func (w *workshop) at(t *testing.T, place string) string {
	t.Helper()
	_, doc := w.store.Head()
	if n := build.Encode(doc).At(tree.Pointer(place)); n != nil {
		return strings.Join(strings.Fields(string(tree.JSON(n))), " ")
	}
	return ""
}

func TestAWayIsMadeOnThePage(t *testing.T) {
	w := open(t, dipper)
	before, _ := w.store.Head()
	got := w.answer(post("/power/ways", "base", "1", "back", "/power", "new", "Left way", "manner", "conduit-17", "from", "front", "to", "rear", "path", "floor-left", "cable", "/power/circuits/heater", "cable", "/power/circuits/lights"))
	if got.Code != http.StatusSeeOther || got.Header().Get("Location") != "/power" {
		t.Fatalf("it answers %d %s", got.Code, got.Body)
	}
	after, _ := w.store.Head()
	if after.N != before.N+1 || after.Words != "added the way left way, along the floor, left" {
		t.Errorf("revision %d, %q", after.N, after.Words)
	}
	if way := w.at(t, "/runs/left-way"); !strings.Contains(way, `"bore":17`) || !strings.Contains(way, `"floor + 60"`) || !strings.Contains(way, `"left - `) {
		t.Errorf("the way is %s", way)
	}
	if along := w.at(t, "/power/circuits/heater/along"); along != `["heater-way","left-way"]` {
		t.Errorf("the heater's cable takes %s", along)
	}
	if along := w.at(t, "/power/circuits/reading/along"); strings.Contains(along, "left-way") {
		t.Errorf("a cable that was not ticked takes %s", along)
	}
	page := w.answer(get("/power")).Body.String()
	for _, piece := range []string{"Left way: ", "conduit 17 mm inside", "/runs/left-way/points/0/x", "a corner after 1", "strike out left way"} {
		if !strings.Contains(page, piece) {
			t.Errorf("the page lacks %q", piece)
		}
	}
}

func TestWaysThatCannotBeMade(t *testing.T) {
	run(t, dipper, []scenario{
		{name: "from and to the same place", request: post("/power/ways", "base", "1", "back", "/power", "manner", "loose", "from", "rear", "to", "rear", "path", "floor-left"), status: http.StatusUnprocessableEntity, holds: []string{"begin and end at the same place"}},
		{name: "to what stands nowhere", request: post("/power/ways", "base", "1", "back", "/power", "manner", "loose", "from", "rear", "to", "grand-piano", "path", "floor-left"), status: http.StatusUnprocessableEntity, holds: []string{"has no place in the van yet"}},
		{name: "along a line that nobody knows", request: post("/power/ways", "base", "1", "back", "/power", "manner", "loose", "from", "rear", "to", "front", "path", "moon"), status: http.StatusBadRequest, holds: []string{"which path the way takes"}},
	})
}

// Everything else on a way is done by buttons of the page, each of which is one change: its own hidden fields are sent here.
func TestButtonsOfTheWays(t *testing.T) {
	w := open(t, dipper)
	press := func(button string) { t.Helper(); w.press(t, button) }
	corners := func() int { return strings.Count(w.at(t, "/runs/engine-way/points"), `"x"`) }
	press(`aria-label="a corner after 2: the way engine way"`)
	if got := w.at(t, "/runs/engine-way/points/2"); corners() != 4 || !strings.Contains(got, `"715"`) && !strings.Contains(got, `715`) || !strings.Contains(got, "right + 15") || !strings.Contains(got, "floor + 90") {
		t.Errorf("half-way between 30 and 1400 along the same side there is %s", got)
	}
	press(`aria-label="take out 2: the way engine way"`)
	if got := w.at(t, "/runs/engine-way/points/1/x"); corners() != 3 || !strings.Contains(got, "715") {
		t.Errorf("the second of %d corners is at %s", corners(), got)
	}
	press(`aria-label="strike out engine way: the way"`)
	if way, along := w.at(t, "/runs/engine-way"), w.at(t, "/power/sources/engine/along"); way != "" || along != "" {
		t.Errorf("left over are %q and %q", way, along)
	}
	for _, c := range []string{"heater", "reading", "socket"} {
		press(`aria-label="strike out ` + c + ` way: the way"`)
	}
	for _, c := range []string{"heater", "reading", "sockets"} {
		before := w.at(t, "/power/circuits/"+c+"/along")
		press(`aria-label="Lead ` + w.number(t, c))
		if after := w.at(t, "/power/circuits/"+c+"/along"); before != "" || after == "" {
			t.Errorf("the cable to the %s took %q and takes %q", c, before, after)
		}
	}
}

// number is that of a circuit's cable.
func (w *workshop) number(t *testing.T, circuit string) string {
	t.Helper()
	_, doc := w.store.Head()
	for _, c := range reckon.NewMachine().Reckon(doc, quantity.Date{}).Cables.Cables {
		if c.About == "/power/circuits/"+circuit {
			return c.Number + " "
		}
	}
	t.Fatalf("there is no cable for %s", circuit)
	return ""
}

func TestListsAreTicked(t *testing.T) {
	w := open(t, dipper)
	loads := "/power/circuits/lights/loads"
	w.answer(post("/edit", "base", "1", "back", "/power", "ticks", loads, "ticked", loads+" strip-right", "ticked", "/elsewhere strip-left"))
	if got := w.at(t, loads); strings.Contains(got, "strip-left") || !strings.Contains(got, "strip-right") {
		t.Errorf("the lights feed %s", got)
	}
	page := w.answer(get(w.unfolded("power"))).Body.String()
	for _, piece := range []string{`value="` + loads + ` strip-right" checked`, `value="` + loads + ` strip-left"> strip left`, "Strip left is in no circuit"} {
		if !strings.Contains(strings.ReplaceAll(page, "/>", ">"), piece) {
			t.Errorf("the page lacks %q", piece)
		}
	}
	w.answer(post("/edit", "base", "2", "back", "/power", "ticks", loads))
	if got := w.at(t, loads); got != "" {
		t.Errorf("with nothing ticked the lights feed %s", got)
	}
}

// A source has a line and a lead, and both stand in the schedule under the source where nothing is written of the lead: what takes a way is
// the line.
func TestAWayCarriesTheLineOfASourceAndNotItsLead(t *testing.T) {
	w := open(t, dipper)
	for n, source := range []string{"engine", "sun"} {
		if got := w.answer(post("/edit", "path", "/power/sources/"+source+"/lead", "value", "", "base", strconv.Itoa(n+1))); got.Code != http.StatusSeeOther {
			t.Fatalf("striking out the lead of %s: %d", source, got.Code)
		}
	}
	page := w.answer(get("/power")).Body.String()
	_, section, _ := strings.Cut(page, `id="ways"`)
	for _, c := range w.reckoned().Cables.Cables {
		switch said := strings.Contains(section, c.Number+" "+c.To.Words); {
		case c.Role == cables.Charge && !said:
			t.Errorf("the line %s to %s is not among the cables of the ways", c.Number, c.To.Words)
		case c.Role == cables.Lead && said:
			t.Errorf("the lead %s to %s is told as a cable with a way", c.Number, c.To.Words)
		case c.Role == cables.Lead && !strings.Contains(section, c.Number):
			t.Errorf("of the lead %s nothing is said", c.Number)
		}
	}
}
