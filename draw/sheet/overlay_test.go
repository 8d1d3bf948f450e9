package sheet_test

import (
	"strings"
	"testing"

	"tumblehome/draw"
	"tumblehome/draw/sheet"
)

func TestOverlaysAreLegibleAndShowWhatTheySay(t *testing.T) {
	shows := map[sheet.Overlay]string{sheet.Moves: "plan-moves", sheet.Way: "plan-way", sheet.Upright: "plan-headroom", sheet.Wiring: "plan-wiring"}
	for _, name := range []string{"dipper", "twite", "godwit"} {
		for _, overlay := range sheet.Overlays {
			for _, mode := range []string{"day", "night"} {
				s := sheet.Arrangement(demo(t, name), sheet.View{Mode: mode, Show: overlay})
				for _, flaw := range s.Check() {
					t.Errorf("%s, %s, %s: %v", name, mode, overlay, flaw)
				}
				var text strings.Builder
				if err := s.SVG(&text, draw.SVGOptions{}); err != nil {
					t.Fatal(err)
				}
				if mode == "day" && !strings.Contains(text.String(), shows[overlay]) {
					t.Errorf("%s by day does not show %s", name, overlay)
				}
			}
		}
	}
}

func TestTheFloorOfAnOverlayIsNotOfTheColourOfCushions(t *testing.T) {
	var text strings.Builder
	if err := sheet.Arrangement(demo(t, "dipper"), sheet.View{Mode: "day", Show: sheet.Way}).SVG(&text, draw.SVGOptions{}); err != nil {
		t.Fatal(err)
	}
	_, floor, _ := strings.Cut(text.String(), `id="plan-floor"`)
	floor, _, _ = strings.Cut(floor, "</g>")
	if !strings.Contains(floor, "fill-good-wash") || strings.Contains(floor, "fill-water-2") {
		t.Errorf("the floor is drawn as %.200s", floor)
	}
}

func TestTheWaysOutAreDrawnWhereTheyAreToldOf(t *testing.T) {
	r := demo(t, "dipper")
	var text strings.Builder
	if err := sheet.Arrangement(r, sheet.View{Mode: "night", Show: sheet.Way}).SVG(&text, draw.SVGOptions{}); err != nil {
		t.Fatal(err)
	}
	told := 0
	for _, way := range r.Fit.Routes() {
		if way.Mode == "night" {
			told++
		}
	}
	_, ways, _ := strings.Cut(text.String(), `id="plan-way"`)
	ways, _, _ = strings.Cut(ways, "</g>")
	if drawn := strings.Count(ways, "pen-"+string(draw.PenFollowed)) / 2; told == 0 || drawn != told {
		t.Errorf("%d ways out are told of, %d drawn", told, drawn)
	}
}

// What lies before the doors would be drawn over the scale and the measures.
func TestTheFloorOfAnOverlayEndsWithTheVan(t *testing.T) {
	for _, name := range []string{"dipper", "twite", "godwit"} {
		floor, van := sheet.Walked(demo(t, name), "day")
		if cell := 25.0; floor[0] < van[0]-cell || floor[1] > van[1]+cell || floor[2] < van[2]-cell || floor[3] > van[3]+cell {
			t.Errorf("%s: the floor is drawn over %.0f, the van over %.0f", name, floor, van)
		}
	}
}
