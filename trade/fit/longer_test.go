package fit_test

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"tumblehome/trade/fit"
)

// The sleeper of 1830 wants 1945; the room is 2900 long.
func TestABedIsMadeLongerAtTheEndWhereThereIsRoom(t *testing.T) {
	for _, tt := range []struct {
		name     string
		from, to float64 // the bed
		cupboard float64 // one stands up to here before it; 0 is none
		want     string
	}{
		{"room behind", 0, 1840, 0, "make bed 105 mm longer"},
		{"room before", 1060, 2900, 0, "make bed 105 mm longer towards the front"},
		{"room at both ends", 500, 2340, 0, "make bed 105 mm longer; make bed 105 mm longer towards the front"},
		{"some at either", 1000, 2840, 950, "make bed 105 mm longer, 45 at the front and 60 at the rear"},
		{"enough to lie", 1050, 2890, 1040, "make bed 20 mm longer, 10 at the front and 10 at the rear, as far as there is room: enough to lie, not to stretch; make bed 15 mm longer, 5 at the front and 10 at the rear: enough to lie, not to stretch"},
		{"none", 1060, 2900, 1060, ""},
	} {
		v := in(high).person("a", 1830).put(fit.Fitting{ID: "bed", Rests: true}, box(tt.from, tt.to, -350, 350, 400, 460))
		if tt.cupboard > 0 {
			v.put(fit.Fitting{ID: "cupboard"}, box(300, tt.cupboard, -400, 400, 40, 1000))
		}
		v.mode("night", nil, fit.Pose{Person: "a", Does: "lies", At: "bed"})
		v.in.Stretch = func(id string, axis int, low, high float64) (json.RawMessage, bool) {
			return json.RawMessage(fmt.Sprintf(`{"fittings":{"%s":{"note":"%g %g"}}}`, id, low, high)), axis == 0
		}
		got := ""
		for _, f := range fit.Work(v.in).Findings {
			if f.Code == "fit.bed.length" {
				for _, p := range f.Proposals {
					got += "; " + p.Words
				}
			}
		}
		if got = strings.TrimPrefix(got, "; "); got != tt.want {
			t.Errorf("%s: proposed is %q, not %q", tt.name, got, tt.want)
		}
	}
}
