package fit_test

import (
	"strings"
	"testing"

	"tumblehome/trade/fit"
)

func TestWhatLiesOnTheRoofIsNotLiftedOffIt(t *testing.T) {
	r := fit.Work(in(flat).
		put(fit.Fitting{ID: "fan", For: "shell.openings.fan"}, box(1000, 1400, -200, 200, 1650, 1900)).
		put(fit.Fitting{ID: "panel", Where: "outside"}, box(1300, 2500, -200, 400, 1790, 1825)).mode("day", nil).in)
	for _, f := range r.Findings {
		if f.Code == "fit.foul" && strings.Contains(f.Words, "panel 100 mm rearwards") {
			return
		}
	}
	t.Errorf("the panel does not go rearwards off the fan:\n%s\n%+v", told(r), r.Findings)
}
