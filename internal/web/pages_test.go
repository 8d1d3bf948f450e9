package web_test

import (
	"net/http"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// forbidden are words of the workshop's files and of the program that no page may show, and what the content policy refuses.
var forbidden = []string{"P80", "P50", "take-off", "half-breadth", "JSON", "patch</", "merge patch", "derating", "<style", "style=\"", "onclick", "javascript:", "NaN", "Inf", "%!"}

func TestEveryPageReadsWithoutScript(t *testing.T) {
	run(t, dipper, []scenario{
		{name: "the front door leads to the arrangement", request: get("/"), status: http.StatusSeeOther, location: "/arrangement"},
		{name: "the arrangement shows drawing, list, notes and headline", request: get("/arrangement?mode=night"), status: 200, lacks: forbidden,
			holds: []string{"<h1>What are we building?</h1>", `data-mode="night"`, `data-page="arrangement"`, `data-revision="1"`, `<svg`, `class="drawing"`,
				`<ol class="fittings">`, `data-fitting="settle"`, `data-region="notes"`, `data-region="headline"`, `role="status" aria-live="polite"`, `aria-current="page"`}},
		{name: "a mode that does not exist is the day", request: get("/arrangement?mode=flying"), status: 200, holds: []string{`data-mode="day"`}},
		{name: "the van of today lists only what is in it", request: get("/arrangement?mode=today"), status: 200,
			holds: []string{"as it stands today", `data-fitting="settle"`}, lacks: []string{`<li id="fitting-galley"`}},
		{name: "the shell has its readings in fields", request: get("/shell"), status: 200, lacks: forbidden,
			holds: []string{"<h1>What have we got?</h1>", `value="/shell/offsets/stations/s2/half/3"`, `value="934"`, "Ribs and bows", "Bread racks"}},
		{name: "the build-up has every layer and a cut", request: get("/build-up"), status: 200, lacks: forbidden,
			holds: []string{"<h1>What goes on the steel?</h1>", `id="section-sides"`, `value="/lining/floor/1/lay"`, "nearer the steel"}},
		{name: "the warmth page answers in words, draws the night and says where the heat goes", request: get("/warmth"), status: 200, lacks: forbidden,
			holds: []string{"<h1>Will we sleep warm and dry?</h1>", "On a usual night in February", `id="night-wide"`, `href="/how/warmth.u.roof"`, "Carbon monoxide", `value="/use/climate"`, `value="/air/always-open"`, `value="/use/trips/winter-hills/keep"`}},
		{name: "the power page answers in words, draws the year and lists every cable with its fuse", request: get("/power"), status: 200, lacks: forbidden,
			holds: []string{"<h1>Will the lights stay on, and is the cable safe?</h1>", "In December a day in the van takes about", `id="power-year-wide"`, `value="/use/habits"`, `value="/power/circuits/lights/cable"`,
				`value="/power/circuits/lights/fuse"`, "licensed electrician", "work it out"}},
		{name: "another month of power is shown when it is asked for", request: get("/power?month=6"), status: 200, lacks: forbidden,
			holds: []string{"The battery through a day in June", `data-src="/region/power?mode=day&amp;page=power&amp;month=6"`}},
		{name: "a month without trips shows the darkest with", request: get("/power?month=8"), status: 200, holds: []string{"The battery through a day in December"}},
		{name: "a colder night of another month is shown when it is asked for", request: get("/warmth?month=12&night=cold"), status: 200, lacks: forbidden,
			holds: []string{"In December, a night that only one in ten is colder than", `data-src="/region/warmth?mode=day&amp;page=warmth&amp;month=12&amp;night=cold"`, `value="/warmth?month=12&amp;night=cold"`}},
		{name: "a month that there is not shows the coldest", request: get("/warmth?month=13"), status: 200, holds: []string{"A usual night in February"}},
		{name: "the build-up says what the ribs let through, with the rib drawn", request: get("/build-up"), status: 200, holds: []string{"the ribs let through", `id="rib-sides-wide"`}},
		{name: "the weight page lays each case against the plate", request: get("/weight"), status: 200, lacks: forbidden,
			holds: []string{"<h1>Is it legal, does it sit level?</h1>", "On the rear axle", "Two aboard, full fuel, gear, both cans full", "As it stands today", "On the scales", `value="215/70 R15C 109/107"`}},
		{name: "the cost page has budget, payments and prices", request: get("/cost"), status: 200, lacks: forbidden,
			holds: []string{"<h1>What has it cost, what will it?</h1>", `value="/build/budget"`, `value="5200"`, "write it down", "heard in a shop"}},
		{name: "the revisions page has history and alternatives", request: get("/revisions"), status: 200, lacks: forbidden,
			holds: []string{"<h1>What did that change?</h1>", "Begun", "no panel", "thinner settle"}},
		{name: "a figure shows how it came about, with links to where its inputs can be changed", request: get("/how/weight.rear-axle"), status: 200,
			holds: []string{"On the rear axle", "Source:", `href="/weight"`, "<!doctype html>"}},
		{name: "a note is explained", request: get("/how/weight.tyre.age"), status: 200, holds: []string{"What usually clears it:", "Two tyres past nine years"}},
		{name: "a figure that does not exist is not found", request: get("/how/weight.of-the-moon"), status: http.StatusNotFound, holds: []string{"There is no such page"}},
		{name: "an unknown page is not found, in words", request: get("/elsewhere"), status: http.StatusNotFound, holds: []string{"There is no such page", `class="ways"`}},
		{name: "an alternative is laid beside the build", request: get("/alternatives/no-toilet"), status: 200, holds: []string{"take it", "Cost", "one thing less to empty"}},
		{name: "later trades are not in the list of pages", request: get("/arrangement"), status: 200, holds: []string{`href="/warmth"`}, lacks: []string{`href="/water"`, `href="/weekends"`}},
	})
}

func TestASheetCanBeTakenAway(t *testing.T) {
	w := open(t, dipper)
	for name, begins := range map[string]string{"/sheet.svg": "<?xml", "/sheet.pdf": "%PDF", "/sheet.png": "\x89PNG"} {
		got := w.answer(get(name + "?mode=night"))
		if got.Code != 200 || !strings.HasPrefix(got.Body.String(), begins) || !strings.Contains(got.Header().Get("Content-Disposition"), "attachment") {
			t.Errorf("%s: %d, %.20q, %s", name, got.Code, got.Body, got.Header())
		}
	}
}

func TestASheetThatThereIsNotIsToldInWords(t *testing.T) {
	run(t, dipper, []scenario{
		{name: "a name that nobody knows", request: get("/sheet.pdf?sheet=rubbish"), status: http.StatusNotFound, holds: []string{"There is no such sheet", "arrangement, wiring, circuit, cables, tests"}},
		{name: "several sheets go on no picture", request: get("/sheet.png?sheet=tests"), status: http.StatusNotFound, holds: []string{"/sheet.pdf?sheet=tests"}},
		{name: "no name is the arrangement", request: get("/sheet.svg"), status: 200, holds: []string{"The drawing of Dipper"}},
	})
}

func TestAllCircuitDiagramsStandOnThePageAndInWords(t *testing.T) {
	second := post("/edit", "patch", `{"fittings": {"battery-2": {"buy": "battery-lfp-100ah", "at": {"x": 1900, "y": 0}}}, "power": {"batteries": {"spare": {"is": ["battery-2"], "main-fuse": 100}}}}`, "base", "1")
	run(t, dipper, []scenario{
		{name: "of one battery", request: get("/power"), status: 200, holds: []string{`id="circuit-diagram"`, "the same in words", "<li>W5 lights: from the fuse board to strip left and strip right, 1.5 mm², 7.2 m.</li>"}},
		{name: "of two", before: []*http.Request{second}, request: get("/power"), status: 200, holds: []string{`id="circuit-diagram-1"`, `id="circuit-diagram-2"`, `id="circuit-plus"`, `id="circuit-plus-2"`, "sheet 2 of 2"}},
	})
}

func TestTheTestSheetOfThePageSaysWhatToDoIfItIsNotSo(t *testing.T) {
	run(t, dipper, []scenario{{name: "on the page", request: get("/power"), status: 200,
		holds: []string{"<h4>Nothing gives current</h4>", "<h4>Plus and minus at every plug</h4>", "If not: a minus before the number: plus and minus are changed. Swap them before you plug in"}}})
}

// Every id stands once, every label and reference leads somewhere.
func TestIdsOfAPageAreSound(t *testing.T) {
	w := open(t, dipper)
	ids := regexp.MustCompile(`\sid="([^"]*)"`)
	refers := regexp.MustCompile(`\s(?:for|aria-labelledby|aria-describedby|list)="([^"]*)"`)
	for _, name := range allPages {
		text := w.answer(get("/" + name)).Body.String()
		known := map[string]bool{}
		for _, m := range ids.FindAllStringSubmatch(text, -1) {
			if known[m[1]] {
				t.Errorf("%s: id %q stands twice", name, m[1])
			}
			known[m[1]] = true
		}
		for _, m := range refers.FindAllStringSubmatch(text, -1) {
			if !known[m[1]] {
				t.Errorf("%s: nothing has the id %q", name, m[1])
			}
		}
	}
}

func TestAnOverlayIsSaidInWords(t *testing.T) {
	run(t, dipper, []scenario{
		{name: "how one gets out of bed", request: get("/arrangement?mode=night&show=way"), status: 200, holds: []string{"Green is the floor", " Out from ", ": by "}},
		{name: "for whom it is high enough", request: get("/arrangement?mode=day&show=headroom"), status: 200, holds: []string{"Nowhere does the tall one", "in shoes, stand upright"}},
		{name: "what the lines of the wiring are", request: get("/arrangement?mode=day&show=wiring"), status: 200, holds: []string{"ways of the cables"}},
		{name: "nothing is laid over it", request: get("/arrangement?mode=day"), status: 200, lacks: []string{`class="overlaid"`}},
	})
	least := filepath.Join(t.TempDir(), "barely.yaml")
	if err := os.WriteFile(least, []byte(barely), 0o600); err != nil {
		t.Fatal(err)
	}
	w := open(t, least)
	if got := w.answer(get("/arrangement?show=wiring")).Body.String(); !strings.Contains(got, "No cables are written down yet") {
		t.Error("an empty wiring does not say so")
	}
}
