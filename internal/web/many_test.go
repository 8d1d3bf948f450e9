package web_test

import (
	"fmt"
	"strings"
	"testing"
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
			holds: []string{`href="/arrangement?mode=night&amp;open=galley#fitting-galley"`}, lacks: []string{`value="/fittings/galley/at/x"`}},
		{name: "without script the page shows those of one thing", request: get("/arrangement?mode=night&open=galley"), status: 200,
			holds: []string{`value="/fittings/galley/at/x"`, `name="back" value="/arrangement?mode=night&amp;open=galley"`}, lacks: []string{`value="/fittings/table/at/x"`}},
		{name: "with script the list goes on showing those of several", request: get("/region/fittings?open=galley&open=table"), status: 200,
			holds: []string{`value="/fittings/galley/at/x"`, `value="/fittings/table/at/x"`, `&amp;open=galley&amp;open=table"`}},
		{name: "what stands on another thing is not hidden under it", request: get("/region/fittings?open=hob"), status: 200, holds: []string{`value="/fittings/hob/at/x"`, `<details class="carries" open>`}},
		{name: "of what is not there nothing is shown", request: get("/arrangement?open=zeppelin"), status: 200, lacks: []string{"zeppelin"}},
	})
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
