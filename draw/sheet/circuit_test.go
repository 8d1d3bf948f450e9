package sheet_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"tumblehome/draw"
	"tumblehome/draw/sheet"
	"tumblehome/trade/cables"
)

func TestTheCircuitDiagramIsFitToBeSeen(t *testing.T) {
	for _, name := range demos {
		t.Run(name, func(t *testing.T) {
			for _, s := range sheet.Circuit(demo(t, name), "", "214, 25 November") {
				flawless(t, s)
			}
		})
	}
}

func TestEverythingOfTheWiringIsDrawnOnce(t *testing.T) {
	for _, name := range demos {
		r := demo(t, name)
		drawn := map[string]int{}
		var count func(marks []draw.Mark)
		count = func(marks []draw.Mark) {
			for _, m := range marks {
				if g, ok := m.(draw.Group); ok {
					for _, id := range strings.Fields(g.Data["fitting"]) {
						drawn[id]++
					}
					count(g.Marks)
				}
			}
		}
		text := ""
		for _, s := range sheet.Circuit(r, "", "") {
			count(s.Marks)
			text += letters(s)
		}
		want := map[string]bool{}
		p := r.Document.Power
		for _, b := range p.Batteries {
			for _, id := range b.Is {
				want[id] = true
			}
		}
		for _, c := range p.Circuits {
			for _, id := range c.Loads {
				want[id] = true
			}
		}
		for _, s := range p.Sources {
			for _, id := range append(slices.Clone(s.Is), s.By) {
				if id != "" {
					want[id] = true
				}
			}
		}
		s := &r.Cables.Supplies[0]
		for _, part := range []*cables.Part{s.Isolator, s.Shunt, s.Busbar, s.FuseBoard} {
			if part != nil {
				want[part.ID] = true
			}
		}
		for id := range want {
			if drawn[id] != 1 {
				t.Errorf("%s: %s is drawn %d times", name, id, drawn[id])
			}
		}
		for id := range drawn {
			if !want[id] {
				t.Errorf("%s: %s is drawn, and nobody wrote it", name, id)
			}
		}
		for _, c := range r.Cables.Cables {
			if strings.Count(text, "\n"+c.Number+"\n")+strings.Count(text, "\n"+c.Number+"  ") != 2 {
				t.Errorf("%s: cable %s does not stand once in the diagram and once in the table", name, c.Number)
			}
		}
	}
}

// letters is all lettering of a scene, a line each.
func letters(s draw.Scene) string {
	text := "\n"
	var walk func(marks []draw.Mark)
	walk = func(marks []draw.Mark) {
		for _, m := range marks {
			switch m := m.(type) {
			case draw.Group:
				walk(m.Marks)
			case draw.Lettering:
				text += m.Text + "\n\n"
			}
		}
	}
	walk(s.Marks)
	return text
}

func TestWiresOfTheDemosDoNotCross(t *testing.T) {
	for _, name := range demos {
		r := demo(t, name)
		for _, w := range sheet.WiringOf(&r.Cables) {
			clean(t, name, w)
		}
	}
}

func TestWiresOfRandomTreesDoNotCross(t *testing.T) {
	for seed := range uint64(50) {
		res := randomTree(rand.New(rand.NewPCG(seed, 3)))
		for i, w := range sheet.WiringOf(&res) {
			clean(t, fmt.Sprintf("tree %d, sheet %d", seed, i+1), w)
		}
	}
}

// clean holds a diagram to its manners: no two texts overlap, no wire runs through lettering, and wires meet only where there is a dot or an end.
func clean(t *testing.T, name string, w sheet.Trial) {
	t.Helper()
	for _, f := range w.Scene.Check() {
		if f.Kind != draw.FlawSmall { // a sheet larger than A3 is printed on a larger sheet
			t.Errorf("%s: %s: %s", name, f.Kind, f.Says)
		}
	}
	boxes := w.Scene.Letters()
	for _, one := range w.Wires {
		for _, b := range boxes {
			if through(one, b) {
				t.Errorf("%s: the wire %v runs through the lettering at %v", name, one, b)
			}
		}
		if low, high := math.Min(one[0].Y, one[1].Y), math.Max(one[0].Y, one[1].Y); low < w.Plus-0.01 || high > w.Minus+9.01 {
			t.Errorf("%s: the wire %v leaves the busbars behind", name, one)
		}
	}
	for i, a := range w.Wires {
		for _, b := range w.Wires[:i] {
			if at, meet := meeting(a, b); meet && !ends(a, b, at) && !slices.ContainsFunc(w.Dots, func(d draw.Point) bool { return d.Distance(at) < 0.01 }) {
				t.Errorf("%s: the wires %v and %v meet at %v without a dot", name, a, b, at)
			}
		}
	}
}

// through says whether an upright or level wire runs through a box.
func through(w [2]draw.Point, b draw.Rect) bool {
	const hair = 0.05
	return math.Max(w[0].X, w[1].X) > b.Min.X+hair && math.Min(w[0].X, w[1].X) < b.Max.X-hair && math.Max(w[0].Y, w[1].Y) > b.Min.Y+hair && math.Min(w[0].Y, w[1].Y) < b.Max.Y-hair
}

// meeting is where two upright or level wires meet. Two that lie on one line meet where they overlap.
func meeting(a, b [2]draw.Point) (draw.Point, bool) {
	x0, x1 := math.Max(math.Min(a[0].X, a[1].X), math.Min(b[0].X, b[1].X)), math.Min(math.Max(a[0].X, a[1].X), math.Max(b[0].X, b[1].X))
	y0, y1 := math.Max(math.Min(a[0].Y, a[1].Y), math.Min(b[0].Y, b[1].Y)), math.Min(math.Max(a[0].Y, a[1].Y), math.Max(b[0].Y, b[1].Y))
	if x1 < x0-1e-6 || y1 < y0-1e-6 {
		return draw.Point{}, false
	}
	return draw.Pt((x0+x1)/2, (y0+y1)/2), true
}

// ends says whether both wires end at a place: there they go on into one another.
func ends(a, b [2]draw.Point, at draw.Point) bool {
	end := func(w [2]draw.Point) bool { return w[0].Distance(at) < 0.01 || w[1].Distance(at) < 0.01 }
	return end(a) && end(b)
}

// randomTree is wiring of any shape: several batteries, sources of all kinds, circuits with several loads that feed one another.
func randomTree(r *rand.Rand) cables.Result {
	s := cables.Supply{Bank: cables.Bank{ID: "house"}}
	for i := range 1 + r.IntN(3) {
		s.Batteries = append(s.Batteries, cables.Battery{ID: fmt.Sprint("b", i), Name: word(r), AmpHours: 100})
	}
	for _, part := range []**cables.Part{&s.Isolator, &s.Shunt, &s.Busbar, &s.FuseBoard} {
		if r.IntN(2) == 0 {
			*part = &cables.Part{ID: word(r), Name: word(r) + " " + word(r)}
		}
	}
	res := cables.Result{Supplies: []cables.Supply{s}}
	add := func(c cables.Cable) cables.Cable {
		c.Number, c.Bank, c.Title = fmt.Sprint("W", len(res.Cables)+1), "house", word(r)
		c.Section.MM2, c.Length, c.Current, c.Fuse.Amps, c.Volts = 2.5, cables.Length{MM: 1000 + 9000*r.Float64(), Known: cables.Assumed}, 20*r.Float64(), 15, 12.8
		res.Cables = append(res.Cables, c)
		return c
	}
	feeds := []cables.Cable{add(cables.Cable{Role: cables.Trunk})}
	for i := range r.IntN(12) {
		c := cables.Cable{Role: cables.Feed, FedBy: feeds[0].Number, Body: r.IntN(6) == 0}
		if r.IntN(3) == 0 {
			c.FedBy = feeds[r.IntN(len(feeds))].Number
		}
		c.Fuse.None = r.IntN(8) == 0
		for k := range r.IntN(4) {
			c.Loads = append(c.Loads, cables.Load{ID: fmt.Sprint("l", i, "-", k), Name: word(r) + " " + word(r) + " " + word(r), Kind: kinds[r.IntN(len(kinds))]})
		}
		feeds = append(feeds, add(c))
	}
	for range r.IntN(4) {
		c := cables.Cable{Role: cables.Charge, Source: []cables.SourceKind{cables.Engine, cables.Split, cables.Sun, cables.Shore}[r.IntN(4)], Body: r.IntN(4) == 0}
		c.Loads = []cables.Load{{ID: word(r), Name: word(r) + " " + word(r)}}
		c.Fuse.None = r.IntN(3) == 0
		line := add(c)
		if c.Source != cables.Shore {
			lead := cables.Cable{Role: cables.Lead, Source: c.Source, FedBy: line.Number, Body: c.Body, Fuse: cables.Protection{None: r.IntN(4) == 0}}
			if c.Source == cables.Split || r.IntN(4) == 0 {
				lead.To.Symbol = cables.SymbolBattery
			}
			add(lead)
		}
	}
	add(cables.Cable{Role: cables.Bond})
	return res
}

var kinds = []cables.Appliance{cables.Fridge, cables.Pump, cables.Fan, cables.Heater, cables.Light, cables.Socket, cables.Inverter, cables.Other}

func word(r *rand.Rand) string {
	var b strings.Builder
	for range 2 + r.IntN(12) {
		b.WriteByte(byte('a' + r.IntN(26)))
	}
	return b.String()
}
