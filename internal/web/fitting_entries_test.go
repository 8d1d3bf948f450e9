package web

import (
	"slices"
	"testing"

	"tumblehome/build"
)

func TestTheFormOfAFitting(t *testing.T) {
	doc := &build.Document{
		Fittings: map[string]build.Fitting{"ladder": {Where: "outside"}, "seat": {Buy: "seat-double-belted"}},
		Shell:    build.Shell{Openings: map[string]build.Opening{"rear": {Through: "rear", Door: "two leaves"}, "window": {Through: "left"}}},
	}
	for _, tt := range []struct {
		name, fitting, field string
		offers               []choice // none: the field is not there
	}{
		{"how a seat is held can be said", "seat", "/held", []choice{{"", "not said"}, {"screwed", "screwed"}, {"bolted", "bolted"}, {"strapped", "strapped"}, {"latched", "latched"}, {"wedged", "wedged"}, {"bonded", "bonded"}, {"loose", "loose"}}},
		{"what stands outside may hang on a door, and on no window", "ladder", "/on-door", []choice{{"", "on none"}, {"rear", "rear"}}},
		{"what stands inside does not", "seat", "/on-door", nil},
	} {
		t.Run(tt.name, func(t *testing.T) {
			var got []choice
			for _, e := range fittingEntries(doc, tt.fitting) {
				if e.Path == "/fittings/"+tt.fitting+tt.field {
					got = e.Choices
				}
			}
			if !slices.Equal(got, tt.offers) {
				t.Errorf("offers %v, not %v", got, tt.offers)
			}
		})
	}
}
