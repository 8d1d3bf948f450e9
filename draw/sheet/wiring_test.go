package sheet_test

import (
	"fmt"
	"strings"
	"testing"

	"tumblehome/draw"
	"tumblehome/draw/sheet"
)

// Fourteen lamps in a row as wide as a hand: their numbers have no room where they are, stand beside it and are led there.
func TestCrowdedNumbersOfCablesStandApartAndAreLedToTheirPlaces(t *testing.T) {
	var fittings, circuits []string
	for i := range 14 {
		fittings = append(fittings, fmt.Sprintf(`"lamp-%d": {"buy": "led-spot-3w", "at": {"x": %d, "y": 0, "z": 1200}, "size": {"x": 20, "y": 20, "z": 20}, "held": "screwed"}`, i, 1900+24*i))
		circuits = append(circuits, fmt.Sprintf(`"lamp-%d": {"from": "house", "loads": ["lamp-%d"], "current": 0.5, "cable": "1 mm2", "fuse": 3}`, i, i))
	}
	r := changed(t, "dipper", `{"fittings": {`+strings.Join(fittings, ", ")+`}, "power": {"circuits": {`+strings.Join(circuits, ", ")+`}}}`)
	s := sheet.WiringPlan(r, "drive", "")
	flawless(t, s)
	wiring := found(s)["plan-wiring"]
	lettered := letters(draw.Scene{Marks: []draw.Mark{wiring}})
	for _, c := range r.Cables.Cables {
		if strings.HasPrefix(c.ID, "lamp-") && !strings.Contains(lettered, "\n"+c.Number+"\n") {
			t.Errorf("%s does not stand on the drawing", c.Label())
		}
	}
	if n := strings.Count(wiring.String(), string(draw.PenLeader)+" M"); n < 5 {
		t.Errorf("%d leaders lead to fourteen places", n)
	}
}

func TestTheWiringSheetTellsWhatIsDangerousAndWhatIsAssumed(t *testing.T) {
	key := func(s draw.Scene) string {
		g := found(s)["key"]
		return g.String() + letters(draw.Scene{Marks: []draw.Mark{g}})
	}
	bad := key(sheet.WiringPlan(changed(t, "dipper", `{"power": {"circuits": {"lights": {"fuse": "none"}}}}`), "drive", ""))
	for _, piece := range []string{"danger: see margin notes before you connect it", "nobody has measured this way", "Dashed: nobody wrote a way"} {
		if !strings.Contains(strings.Join(strings.Fields(bad), " "), piece) {
			t.Errorf("the key lacks %q", piece)
		}
	}
	if sound := key(sheet.WiringPlan(demo(t, "dipper"), "drive", "")); strings.Contains(sound, "danger") {
		t.Error("a sound van is called dangerous")
	}
}

// A flag without its note, or a dimension through the number of a cable, helps nobody who lays cables.
func TestTheWiringSheetHasNeitherFlagsNorDimensionsAndNamesWhereCablesBegin(t *testing.T) {
	for _, name := range demos {
		r := demo(t, name)
		s := sheet.WiringPlan(r, "drive", "")
		flawless(t, s)
		all := found(s)
		for _, id := range []string{"flags", "plan-measures", "side-measures", "cross-measures"} {
			if _, ok := all[id]; ok {
				t.Errorf("%s: it has %s", name, id)
			}
		}
		lettered := letters(draw.Scene{Marks: []draw.Mark{all["plan-wiring"]}})
		for _, supply := range r.Cables.Supplies {
			for _, b := range supply.Batteries {
				named := strings.ReplaceAll(b.ID, "-", " ")
				if f := r.Document.Fittings[b.ID]; f.Called != "" {
					named = f.Called
				}
				if !strings.Contains(lettered, named+"\n") {
					t.Errorf("%s: %s has no name", name, named)
				}
			}
		}
		for _, route := range r.Runs.Routes {
			if start := route.Circuit.Start; start != nil && start.Fitting != "" && !strings.Contains(lettered, start.Name+"\n") {
				t.Errorf("%s: %s, where cables begin, has no name", name, start.Name)
			}
		}
	}
}
