package reckon_test

import (
	"strings"
	"testing"

	"tumblehome/quantity"
)

// What one has bought and put in lets air in, though nobody has written it down as an opening; what is written down wins.
func TestVentsThatStandInTheVanCountAsAir(t *testing.T) {
	mushroom := `"mushroom": {"buy": "vent-mushroom-100", "where": "outside", "at": {"x": 600, "y": 0}}`
	grille := `"grille": {"buy": "vent-grille-floor", "at": {"x": 300, "y": 0}}`
	for _, c := range []struct {
		name, patch string
		high, low   float64
		said        bool
	}{
		{"nothing is said and nothing bought", `{"air": null}`, 0, 0, false},
		{"a mushroom vent on the roof", `{"air": null, "fittings": {` + mushroom + `}}`, 78, 0, true},
		{"and a grille in the floor", `{"air": null, "fittings": {` + mushroom + `, ` + grille + `}}`, 78, 40, true},
		{"what is bought later does not", `{"air": null, "fittings": {` + strings.Replace(grille, `"buy"`, `"later": "yes", "buy"`, 1) + `}}`, 0, 0, false},
		{"what is written down wins", `{"air": {"always-open": []}, "fittings": {` + mushroom + `, ` + grille + `}}`, 0, 0, true},
	} {
		r := quick().Reckon(demoAfter(t, "dipper", c.patch), quantity.Date{})
		if f, said := r.Warmth.Fixed, r.Warmth.Told().AirSaid; f.High != c.high || f.Low != c.low || said != c.said {
			t.Errorf("%s: %.0f cm2 high, %.0f low, said %v", c.name, f.High, f.Low, said)
		}
	}
}
