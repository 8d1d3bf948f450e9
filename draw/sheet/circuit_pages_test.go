package sheet_test

import (
	"fmt"
	"strings"
	"testing"

	"tumblehome/draw"
	"tumblehome/draw/sheet"
	"tumblehome/trade/cables"
)

// Thirty circuits go on several sheets of A3, each of them once, and the busbars say where they go on.
func TestManyCircuitsGoOnOverSeveralSheets(t *testing.T) {
	res := cables.Result{Supplies: []cables.Supply{{Bank: cables.Bank{ID: "house", Batteries: []cables.Battery{{ID: "b", Name: "battery", AmpHours: 100}}}}}}
	for i := range 31 {
		c := cables.Cable{Number: fmt.Sprint("W", i+1), Bank: "house", Role: cables.Feed, FedBy: "W1", Title: fmt.Sprint("circuit ", i), Length: cables.Length{MM: 3000}, Current: 2, Volts: 12.8}
		c.Section.MM2, c.Fuse.Amps = 2.5, 5
		c.Loads = []cables.Load{{ID: fmt.Sprint("l", i), Name: "the thing " + strings.Repeat("far away behind the locker ", 6) + strings.Repeat("x", 60)}}
		if i == 0 {
			c.Role, c.FedBy, c.Loads = cables.Trunk, "", nil
		}
		res.Cables = append(res.Cables, c)
	}
	pages := sheet.WiringOf(&res)
	if len(pages) < 2 {
		t.Fatalf("all of it is on %d sheet", len(pages))
	}
	all := ""
	for i, p := range pages {
		heads := arrowheads(found(p.Scene))
		if len(heads) < 2 {
			t.Errorf("sheet %d has %d arrows", i+1, len(heads))
		}
		for _, tip := range heads {
			if tip[0].X <= tip[1].X {
				t.Errorf("on sheet %d an arrow points against the order of the sheets", i+1)
			}
		}
		clean(t, fmt.Sprint("sheet ", i+1), p)
		if p.Scene.Size != draw.A3 {
			t.Errorf("sheet %d is %v large", i+1, p.Scene.Size)
		}
		text := letters(p.Scene)
		if on := fmt.Sprintf("to sheet %d", i+2); strings.Count(text, on) != 2 && i+1 < len(pages) {
			t.Errorf("sheet %d does not say on both busbars that it goes on", i+1)
		}
		if from := fmt.Sprintf("from sheet %d", i); strings.Count(text, from) != 2 && i > 0 {
			t.Errorf("sheet %d does not say on both busbars where it comes from", i+1)
		}
		all += text
	}
	for _, c := range res.Cables {
		if strings.Count(all, "\n"+c.Number+"\n") != 2 {
			t.Errorf("%s does not stand once in the diagram and once in a table", c.Number)
		}
	}
	if strings.Contains(all, strings.Repeat("x", 40)) {
		t.Error("a word of sixty letters is not cut short")
	}
}

// arrowheads are the tip and the tail of each triangle on the busbars.
func arrowheads(all map[string]draw.Group) [][2]draw.Point {
	var out [][2]draw.Point
	for _, bar := range []string{"circuit-plus", "circuit-minus"} {
		for _, m := range all[bar].Marks {
			if s, ok := m.(draw.Shape); ok {
				var a, b, c draw.Point
				if _, err := fmt.Sscanf(s.Path.String(), "M%f %f L%f %f L%f %fZ", &a.X, &a.Y, &b.X, &b.Y, &c.X, &c.Y); err == nil && b.X == c.X {
					out = append(out, [2]draw.Point{a, b})
				}
			}
		}
	}
	return out
}
