package sheet

import (
	"tumblehome/draw"
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
	var out []Trial
	for _, c := range newCircuitry(res, "", func(string) string { return "" }).pages() {
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
