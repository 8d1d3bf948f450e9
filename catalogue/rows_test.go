package catalogue_test

import (
	"fmt"
	"math"
	"regexp"
	"testing"

	"tumblehome/catalogue"
	"tumblehome/internal/proof"
	"tumblehome/quantity"
)

var idForm = regexp.MustCompile(`^[a-z][a-z0-9]*(-[a-z0-9]+)*$`)

func TestEveryRowIsWhole(t *testing.T) {
	c := catalogue.Builtin()
	names := map[string]string{}
	for _, id := range c.RowIDs() {
		r, ok := c.Row(id)
		if !ok || !idForm.MatchString(id) || len(id) > 40 {
			t.Errorf("%s: found %v; an id is small letters, digits and hyphens, at most 40", id, ok)
		}
		if names[r.Name] != "" {
			t.Errorf("%s and %s are both called %q", id, names[r.Name], r.Name)
		}
		names[r.Name] = id
		if r.Kind == "" || r.Group == "" || r.Each == "" || r.Source == "" {
			t.Errorf("%s: kind %q, group %q, each %q, source %q", id, r.Kind, r.Group, r.Each, r.Source)
		}
		if mass, ok := c.UnitMass(id); !ok || mass.Likely <= 0 || mass.Low <= 0 {
			t.Errorf("%s weighs %v", id, mass)
		}
		for _, currency := range []string{"GBP", "EUR"} {
			if price, ok := c.Price(id, currency); !ok || price.Likely.Float() <= 0 && id != "card-template" || price.Likely.Currency != currency {
				t.Errorf("%s costs %v in %s", id, price, currency)
			}
		}
	}
}

// Builtin is read from a table without repeated ids; a map would hide one.
func TestEveryIDStandsOnce(t *testing.T) {
	if got := len(catalogue.Builtin().RowIDs()); got != 560 {
		t.Errorf("%d different ids, the table has 560", got)
	}
}

func TestMassIsSizeTimesDensity(t *testing.T) {
	packs := map[string]bool{"vinyl-plank-click": true, "tile-ceramic-100x200": true}
	c := catalogue.Builtin()
	checked := 0
	for _, id := range c.RowIDs() {
		r, _ := c.Row(id)
		if packs[id] || r.Long == nil || r.Wide == nil || r.Thick == nil || r.Density == nil {
			continue
		}
		checked++
		product := r.Long.Float() * r.Wide.Float() * r.Thick.Float() * r.Density.Float() / 1e9
		if off := math.Abs(r.Mass.Amount/product - 1); off > 0.005 { // three figures
			t.Errorf("%s: %g kg is written, size times density is %.4g", id, r.Mass.Amount, product)
		}
	}
	if checked < 200 {
		t.Errorf("only %d rows could be checked", checked)
	}
}

func TestPublishedMasses(t *testing.T) {
	c := catalogue.Builtin()
	unit := func(id string) float64 {
		m, _ := c.UnitMass(id)
		return m.Likely.Float()
	}
	for id, kg := range map[string]float64{"4": 7.9, "6-5": 13.0, "9": 19.0, "12": 24.8, "15": 30.8, "18": 36.7, "21": 42.5, "24": 48.6} {
		proof.Check(t, proof.Case{Name: "birch plywood " + id + " mm, a sheet", Source: "an importer's data sheet for birch plywood",
			Inputs: "2440 x 1220 mm", Expected: kg, Got: unit("ply-birch-" + id + "-2440x1220"), Tolerance: 0.1, Unit: "kg"})
	}
	for mm, kg := range map[string]float64{"4": 1.8, "6": 2.7, "9": 4.1, "12": 5.4, "15": 6.8, "18": 8.1} {
		m, _ := c.Material("ply-marine-light-" + mm)
		proof.Check(t, proof.Case{Name: "okoume plywood " + mm + " mm, a square metre", Source: "a panel maker's page on okoume plywood",
			Inputs: "450 kg/m3", Expected: kg, Got: m.PerArea.Float(), Tolerance: 0.05, Unit: "kg/m2"})
	}
	const source = "section times length times density, worked by hand"
	proof.Check(t, proof.Case{Name: "aluminium angle 25 x 25 x 2, 2.5 m", Source: source,
		Inputs: "96 mm2, 2.5 m, 2700 kg/m3", Expected: 0.648, Got: unit("alu-angle-25x25x2"), Tolerance: 0.0005, Unit: "kg"})
	proof.Check(t, proof.Case{Name: "PIR board 25 mm, 2400 x 1200", Source: source,
		Inputs: "2.88 m2, 0.025 m, 32 kg/m3", Expected: 2.304, Got: unit("pir-25-2400x1200"), Tolerance: 0.005, Unit: "kg"})
}

func TestPriceOfABoardRisesWithThickness(t *testing.T) {
	c := catalogue.Builtin()
	for _, family := range [][]string{
		{"ply-birch-4-2440x1220", "ply-birch-6-5-2440x1220", "ply-birch-9-2440x1220", "ply-birch-12-2440x1220", "ply-birch-18-2440x1220", "ply-birch-24-2440x1220"},
		{"ply-poplar-3-6-2440x1220", "ply-poplar-9-2440x1220", "ply-poplar-12-2440x1220", "ply-poplar-18-2440x1220"},
		{"xps-20-2400x600", "xps-30-2400x600", "xps-50-2400x600"},
		{"alu-sheet-1-5-2500x1250", "alu-sheet-2-2500x1250"},
	} {
		for i := 1; i < len(family); i++ {
			thin, _ := c.Price(family[i-1], "GBP")
			thick, _ := c.Price(family[i], "GBP")
			if thick.Likely.Float() <= thin.Likely.Float() {
				t.Errorf("%s costs %v, %s %v", family[i-1], thin.Likely, family[i], thick.Likely)
			}
		}
	}
}

func TestSpreads(t *testing.T) {
	c := catalogue.Builtin()
	own := quantity.Share(0.02)
	for _, tt := range []struct {
		name, id string
		row      catalogue.Row
		want     float64
	}{
		{"birch plywood is steady", "ply-birch-12-2440x1220", catalogue.Row{}, 0.07},
		{"mixed-core plywood is not", "ply-hardwood-9-2440x1220", catalogue.Row{}, 0.20},
		{"foam has its group's", "foam-xlpe-10-roll", catalogue.Row{}, 0.25},
		{"what nothing is known of has a quarter", "strip-600", catalogue.Row{Kind: "piece"}, 0.25},
		{"a row's own spread wins", "ply-birch-12-2440x1220", catalogue.Row{Spread: &own}, 0.02},
	} {
		row, ok := c.Row(tt.id)
		if !ok || tt.row.Spread != nil {
			row = tt.row
		}
		if got := catalogue.MassSpread(tt.id, row); got != tt.want {
			t.Errorf("%s: %g, want %g", tt.name, got, tt.want)
		}
	}
	for standing, want := range map[string][2]float64{"guess": {0.7, 1.5}, "quote": {0.95, 1.05}, "paid": {1, 1}, "free": {1, 1}} {
		if low, high := catalogue.PriceSpread(standing); low != want[0] || high != want[1] {
			t.Errorf("%s: %g to %g, want %v", standing, low, high, want)
		}
	}
}

func ExampleCatalogue_UnitMass() {
	mass, _ := catalogue.Builtin().UnitMass("battery-lfp-100ah")
	fmt.Println(mass, "kg")
	// Output: 11.5 ± 1.15 kg
}
