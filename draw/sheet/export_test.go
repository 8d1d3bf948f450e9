package sheet

import (
	"math"

	"tumblehome/draw"
	"tumblehome/reckon"
	"tumblehome/trade/cables"
)

// Trial is what a circuit diagram is made of, for tests.
type Trial struct {
	Scene       draw.Scene
	Wires       [][2]draw.Point
	Dots        []draw.Point
	Plus, Minus float64
	Symbols     []draw.Group
}

// WiringOf draws the diagram of a bank, sheet by sheet.
func WiringOf(res *cables.Result) []Trial {
	return SignedWiringOf(res, unsigned)
}

// SignedWiringOf is that with signs at the cables.
func SignedWiringOf(res *cables.Result, sign func(*cables.Cable) draw.Severity) []Trial {
	var out []Trial
	whole := newCircuitry(res, "", func(string) string { return "" })
	whole.sign = sign
	for _, c := range whole.pages() {
		w := Trial{Scene: c.sheet("a trial", []draw.Cell{{Label: "build", Value: "a trial"}}), Wires: c.wires, Dots: c.dots, Plus: c.plus, Minus: c.minus}
		for _, m := range c.marks {
			if g, ok := m.(draw.Group); ok && g.Class == "symbol" {
				w.Symbols = append(w.Symbols, g)
			}
		}
		out = append(out, w)
	}
	return out
}

// EqualRisk is for tests.
var EqualRisk = equalRisk

// Extents are how low and how high each person of a mode is drawn in the long section, and floor and roof where they are.
func Extents(r *reckon.Reckoning, mode string) map[string][4]float64 {
	out := map[string][4]float64{}
	d := newDrawing(r, View{Mode: mode})
	for i := range d.people {
		w := &d.people[i]
		low, high := math.Inf(1), math.Inf(-1)
		for _, view := range []string{Side, Cross} {
			b := around(w.parts(view))
			low, high = min(low, b[2]), max(high, b[3])
		}
		room := r.Lining.Room
		out[w.id] = [4]float64{low, high, room.Floor(), room.Roof(w.at[0], w.at[1])}
	}
	return out
}

// Footprints are the spaces about the people of a mode, seen from above: from x, to x, from y, to y.
func Footprints(r *reckon.Reckoning, mode string) map[string][4]float64 {
	out := map[string][4]float64{}
	d := newDrawing(r, View{Mode: mode})
	for i := range d.people {
		out[d.people[i].id] = around(d.people[i].parts(Plan))
	}
	return out
}

// Walked is the box about the floor that is drawn as walkable, and the one about the van from above.
func Walked(r *reckon.Reckoning, mode string) (floor, van [4]float64) {
	d := newDrawing(r, View{Mode: mode, Show: Way})
	return around(d.walked(d.floorOf())), around([][]place{d.skinPlan()})
}

// Hands is how far ahead of the hips the hands of who sits bent lie from above, and how far their head, as shares of stature.
func Hands(r *reckon.Reckoning, mode, who string) (hands, head float64) {
	d := newDrawing(r, View{Mode: mode})
	for i := range d.people {
		if w := &d.people[i]; w.id == who {
			above := w.form().above
			last := len(above) - 1
			return around(above[last-4 : last-2])[1], around(above[last:])[1]
		}
	}
	return 0, 0
}
