package web_test

import (
	"fmt"
	"net/http"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"tumblehome/internal/browser"
)

// many adds so many lockers to a build: on the wall where there is room, the others all over the van.
func many(n int) func(string) string {
	return func(text string) string {
		var lockers strings.Builder
		for i := range n {
			x, y, z := 100+i%20*140, -700+i/20%14*100, 60+i/280*150
			fmt.Fprintf(&lockers, "  locker-%d: {make: carcass, at: {x: %d, y: %d, z: %d}, size: {x: 90, y: 60, z: 90}, of: ply-poplar-12}\n", i, x, y, z)
		}
		return strings.Replace(text, "\nfittings:\n", "\nfittings:\n"+lockers.String(), 1)
	}
}

// A page of many things goes over the air to a phone, and is taken apart by a slow one.
func TestAPageOfManyThingsStaysSmall(t *testing.T) {
	page := open(t, dipper, many(170)).answer(get("/arrangement")).Body.Len()
	if page > 600_000 {
		t.Errorf("a page of some 200 things is of %d bytes, want 600 000 at most", page)
	}
}

func TestFieldsComeWhenTheyAreAskedFor(t *testing.T) {
	run(t, dipper, []scenario{
		{name: "until then a link leads to them", request: get("/arrangement?mode=night"), status: 200,
			holds: []string{`href="/arrangement?mode=night&amp;open=%2Ffittings%2Fgalley#fitting-galley"`}, lacks: []string{`value="/fittings/galley/at/x"`}},
		{name: "without script the page shows those of one thing", request: get("/arrangement?mode=night&open=/fittings/galley"), status: 200,
			holds: []string{`value="/fittings/galley/at/x"`, `name="back" value="/arrangement?mode=night&amp;open=%2Ffittings%2Fgalley"`}, lacks: []string{`value="/fittings/table/at/x"`}},
		{name: "with script the list goes on showing those of several", request: get("/region/fittings?open=/fittings/galley&open=/fittings/table"), status: 200,
			holds: []string{`value="/fittings/galley/at/x"`, `value="/fittings/table/at/x"`, `&amp;open=%2Ffittings%2Fgalley&amp;open=%2Ffittings%2Ftable"`}},
		{name: "what stands on another thing is not hidden under it", request: get("/region/fittings?open=/fittings/hob"), status: 200, holds: []string{`value="/fittings/hob/at/x"`, `<details class="carries" open>`}},
		{name: "those of a cable come so too", request: get("/power?month=6"), status: 200, lacks: []string{`value="/power/circuits/lights/route"`},
			holds: []string{`href="/power?month=6&amp;open=%2Fpower%2Fcircuits%2Flights#change-power-circuits-lights"`, `id="change-power-circuits-lights"`}},
		{name: "and only for it", request: get("/region/cables?page=power&open=/power/circuits/lights"), status: 200, lacks: []string{`value="/power/circuits/fridge/route"`},
			holds: []string{`value="/power/circuits/lights/route"`, `data-src="/region/cables?mode=day&amp;page=power&amp;open=%2Fpower%2Fcircuits%2Flights"`}},
		{name: "with script only the line comes that was asked for", request: get("/region/fittings?open=/fittings/hob&open=/fittings/galley&line=/fittings/hob"), status: 200,
			holds: []string{`value="/fittings/hob/at/x"`, `id="fitting-hob"`, `name="base" value="1-`, `&amp;open=%2Ffittings%2Fgalley`},
			lacks: []string{`id="fitting-galley"`, "data-region"}},
		{name: "and that of a cable", request: get("/region/cables?page=power&open=/power/circuits/lights&line=/power/circuits/lights"), status: 200,
			holds: []string{`value="/power/circuits/lights/route"`, `id="change-power-circuits-lights"`}, lacks: []string{"change-power-circuits-fridge", "data-region"}},
		{name: "a line that is none does not come", request: get("/region/fittings?line=/fittings/zeppelin"), status: http.StatusNotFound},
		{name: "nor that of a region without lines", request: get("/region/weight?line=/fittings/galley"), status: http.StatusNotFound},
		{name: "of what is not there nothing is shown", request: get("/arrangement?open=/fittings/zeppelin"), status: 200, lacks: []string{"zeppelin"}},
	})
}

// What the margin leaves out is told true, and comes with one press; without script by the same link, and a flag leads to it.
func TestTheGravestNotesComeFirstAndTheOthersWhenAsked(t *testing.T) {
	w := open(t, dipper, many(170))
	notes := func(address string) (shown, left int) {
		text := w.answer(get(address)).Body.String()
		if found := regexp.MustCompile(`open=notes#notes-title">(\d+) more notes`).FindStringSubmatch(text); found != nil {
			left, _ = strconv.Atoi(found[1])
		}
		return strings.Count(text, `data-number="`), left
	}
	all, none := notes("/arrangement?open=notes")
	shown, left := notes("/arrangement")
	if shown != 40 || left != all-40 || none != 0 {
		t.Errorf("of %d notes (%d left out) the page shows %d and leaves %d", all, none, shown, left)
	}
	if shown, _ := notes("/region/notes?open=notes"); shown != all {
		t.Errorf("the region shows %d of %d notes when asked for all", shown, all)
	}
	run(t, dipper, []scenario{{name: "a few are all shown", request: get("/arrangement"), status: 200, lacks: []string{"unfolds-all"}}})
}

func BenchmarkArrangementPageOf200(b *testing.B)  { benchMany(b, 170) }
func BenchmarkArrangementPageOf1000(b *testing.B) { benchMany(b, 970) }

func benchMany(b *testing.B, n int) {
	w := open(b, dipper, many(n))
	sizes := map[string]int{}
	for b.Loop() {
		sizes["whole"] = w.answer(get("/arrangement?mode=day")).Body.Len()
	}
	for _, name := range []string{"drawing", "mode", "suits", "fittings", "notes", "headline", "said"} {
		sizes[name] = w.answer(get("/region/" + name + "?mode=day")).Body.Len()
	}
	b.Logf("%v", sizes)
	b.ReportMetric(float64(sizes["whole"]), "bytes")
}

// From a press until the thing is shown as chosen, on a page of 1000.
func BenchmarkAPressAmong1000(b *testing.B) {
	w := open(b, dipper, many(970))
	w.answer(get("/arrangement")) // reckoned once
	for b.Loop() {
		p := browser.Open(b, w.http.URL+"/arrangement?mode=day", browser.Desk)
		p.WaitFor(`document.querySelector(".paper-tools")`)
		took := browser.Eval[float64](p, `new Promise(done => {
			const on = document.querySelector("#plan-locker-500 path"), r = on.getBoundingClientRect();
			const at = {bubbles: true, clientX: r.left + r.width / 2, clientY: r.top + r.height / 2, pointerId: 1, isPrimary: true, pointerType: "mouse", button: 0};
			const begun = performance.now();
			on.dispatchEvent(new PointerEvent("pointerdown", at));
			requestAnimationFrame(() => setTimeout(() => done(document.querySelector("svg .is-selected") ? performance.now() - begun : -1)));
		})`)
		b.ReportMetric(took, "ms-press")
	}
}
