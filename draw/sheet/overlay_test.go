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
