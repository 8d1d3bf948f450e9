package catalogue_test

import (
	"fmt"
	"slices"
	"testing"

	"tumblehome/catalogue"
	"tumblehome/quantity"
)

func some[T any](v T) *T { return &v }

func lay(t *testing.T, text string) *quantity.Lay {
	t.Helper()
	l, err := quantity.ParseLay(text)
	if err != nil {
		t.Fatal(err)
	}
	return &l
}

func TestMaterialNames(t *testing.T) {
	c := catalogue.Builtin()
	for _, tt := range []struct {
		name, material string
		thick          quantity.Length
		area           quantity.PerArea
		length         quantity.PerLength
		stock          int
	}{
		{"every sheet size of a plywood", "ply-poplar-12", 12, 5.28, 0, 3},
		{"one sheet size by its id", "ply-poplar-12-2440x1220", 12, 5.28, 0, 1},
		{"a thickness with a decimal", "ply-poplar-3-6", 3.6, 1.584, 0, 2},
		{"a foam of one roll", "foam-xlpe-10", 10, 0.3, 0, 1},
		{"an id that is also a beginning", "sound-butyl-2mm", 2, 3.3, 0, 2},
		{"a batten is known by the metre", "pse-20-5x44", 20.5, 9.84, 0.43333333333333335, 2},
		{"a board in two sizes", "xps-20", 20, 0.64, 0, 2},
		{"boards that overlap weigh more than their own area", "cladding-tg-9x95", 9, 4.828431372549020, 0.41041666666666665, 2},
		{"a cloth whose id names no thickness", "cloth-blackout", 0.4, 0.24817518248175183, 0, 1},
		{"a pack of tiles", "tile-ceramic-100x200", 7, 15.4, 0, 1},
	} {
		t.Run(tt.name, func(t *testing.T) {
			m, ok := c.Material(tt.material)
			if !ok || m.ID != tt.material || m.Thick != tt.thick || !near(float64(m.PerArea), float64(tt.area)) || !near(float64(m.PerLength), float64(tt.length)) || len(m.Stock) != tt.stock {
				t.Errorf("%s: %v, %+v", tt.material, ok, m)
			}
		})
	}
	for name, material := range map[string]string{
		"a family without its thickness": "ply-poplar", "half a decimal": "ply-birch-6", "half a section": "pse-20-5x20",
		"half a decimal of a profile": "alu-angle-20x20x1", "a tin of paint": "paint-acrylic-satin-1", "a fridge": "fridge-compressor-50",
		"nothing": "", "a word": "carpet", "something unknown": "ply-oak-12",
	} {
		if m, ok := c.Material(material); ok {
			t.Errorf("%s: %q is the material %+v", name, material, m)
		}
	}
}

func near(a, b float64) bool { return a-b < 1e-9 && b-a < 1e-9 }

func TestInsulationIsTold(t *testing.T) {
	c := catalogue.Builtin()
	for name, want := range map[string]bool{"xps-20": true, "wool-sheep-50": true, "foam-xlpe-10": true, "sound-butyl-2mm": false, "tape-alu-50x45": false, "ply-poplar-12": false} {
		if m, ok := c.Material(name); !ok || m.Insulates != want {
			t.Errorf("%s: found %v, insulates %v, want %v", name, ok, m.Insulates, want)
		}
	}
}

func TestOwnRowsWin(t *testing.T) {
	base := catalogue.Builtin()
	c := base.Overlay(map[string]catalogue.Row{
		"strip-600":               {Kind: "piece", Volts: some(quantity.Voltage(12)), Watts: some(quantity.Power(6)), Mass: lay(t, "0.2")},
		"linoleum-2-5":            {Kind: "roll", Thick: some(quantity.Length(2.5)), Mass: lay(t, "3.1 kg/m2")},
		"battery-lfp-100ah":       {Kind: "appliance", Mass: lay(t, "12.4"), Spread: some(quantity.Share(0))},
		"ply-poplar-12-2440x1220": {Kind: "sheet", Mass: lay(t, "14.9")},
		"ply-poplar-12-odd":       {Kind: "sheet", Thick: some(quantity.Length(11)), Mass: lay(t, "4.9 kg/m2")},
	})

	t.Run("a new row stands beside the built-in ones", func(t *testing.T) {
		if r, ok := c.Row("strip-600"); !ok || *r.Watts != 6 || !c.IsOwn("strip-600") || c.IsOwn("xps-20-2400x600") {
			t.Errorf("strip-600: %v %+v", ok, r)
		}
		if len(c.RowIDs()) != len(base.RowIDs())+3 || base.HasRow("strip-600") {
			t.Error("the ids do not add up, or the base was changed")
		}
	})
	t.Run("a changed row keeps what it does not say", func(t *testing.T) {
		r, _ := c.Row("battery-lfp-100ah")
		mass, _ := c.UnitMass("battery-lfp-100ah")
		if r.Size == nil || *r.AmpHours != 100 || mass.Low != 12.4 || mass.High != 12.4 {
			t.Errorf("%+v weighs %v", r, mass)
		}
	})
	t.Run("an own material takes its heat from the built-in one of that beginning", func(t *testing.T) {
		m, ok := c.Material("linoleum-2-5")
		if !ok || m.PerArea != 3.1 || m.Conducts != 0.17 || !slices.Equal(m.Stock, []string{"linoleum-2-5", "linoleum-2-5-2000"}) {
			t.Errorf("%v %+v", ok, m)
		}
	})
	t.Run("a weighed sheet speaks for all sizes of it", func(t *testing.T) {
		m, _ := c.Material("ply-poplar-12")
		if !near(float64(m.PerArea), 14.9/2.9768) || len(m.Stock) != 3 || m.Thick != 12 {
			t.Errorf("%+v", m)
		}
	})
	t.Run("a row of another thickness does not join", func(t *testing.T) {
		if m, ok := c.Material("ply-poplar-12-odd"); !ok || m.PerArea != 4.9 || len(m.Stock) != 1 {
			t.Errorf("%v %+v", ok, m)
		}
	})
	t.Run("the base is untouched", func(t *testing.T) {
		if m, _ := base.Material("ply-poplar-12"); m.PerArea != 5.28 {
			t.Errorf("%+v", m)
		}
	})
	t.Run("an empty overlay is the base", func(t *testing.T) {
		if base.Overlay(nil) != base {
			t.Error("another catalogue was made")
		}
	})
}

func TestAnOwnPriceNeedsItsCurrency(t *testing.T) {
	price, _ := quantity.ParseMoney("61.50 EUR")
	c := catalogue.Builtin().Overlay(map[string]catalogue.Row{"xps-20-2400x600": {Kind: "board", Price: &price}})
	if got, ok := c.Price("xps-20-2400x600", "EUR"); !ok || got.Likely.String() != "61.50 EUR" {
		t.Errorf("in EUR: %v %v", ok, got)
	}
	if got, ok := c.Price("xps-20-2400x600", "GBP"); ok {
		t.Errorf("in GBP: %v, want none", got)
	}
	if got, ok := c.Price("xps-30-2400x600", "USD"); ok {
		t.Errorf("in USD: %v, want none", got)
	}
}

func TestNearMisses(t *testing.T) {
	for name, want := range map[string]string{"ply-popler-12": "ply-poplar-12", "wool-sheep50": "wool-sheep-50", "battery-lfp-100": "battery-lfp-100ah", "mppt-20": "mppt-20a"} {
		if got := catalogue.Builtin().Near(name); len(got) == 0 || got[0] != want || len(got) > 5 {
			t.Errorf("near %s: %v, want %s first", name, got, want)
		}
	}
}

func TestBeginnersWords(t *testing.T) {
	c := catalogue.Builtin()
	for words, want := range map[string]string{
		"fridge": "fridge-compressor-50", "toilet": "toilet-portable", "water": "container-20", "battery": "battery-lfp-100ah",
		"battery 200 Ah": "battery-lfp-200ah", "solar, about 220 W": "solar-rigid-220w", "10 l water can": "container-10", "heater": "heater-diesel-2kw",
		"Hob!": "hob-gas-2", "fan": "fan-roof-400", "window, 700 mm": "window-acrylic-700x400", "insulation": "xps-20-1250x600",
	} {
		if got := c.Search(words); len(got) == 0 || got[0] != want {
			t.Errorf("%q finds %v, want %s first", words, got, want)
		}
	}
	if got := c.Search("zeppelin"); len(got) != 0 {
		t.Errorf("a zeppelin is %v", got)
	}
	if got := c.Search("about the"); len(got) != 0 {
		t.Errorf("idle words find %v", got)
	}
}

func FuzzParseCoverage(f *testing.F) {
	for _, text := range []string{"2.98 m2", "12 m2/l", "200 pieces", "3.7m", "1e3 m", "", "/l", "m2", ".5 m", "5. m"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		c, err := catalogue.ParseCoverage(text)
		if err != nil {
			return
		}
		if again, err := catalogue.ParseCoverage(c.String()); err != nil || again != c {
			t.Errorf("%q is %v, which reads as %v, %v", text, c, again, err)
		}
	})
}

func FuzzSearch(f *testing.F) {
	f.Add("galley, about 1 m")
	f.Add("7 ft bed; 3 1/2 in")
	c := catalogue.Builtin()
	f.Fuzz(func(t *testing.T, text string) { c.Search(text) })
}

func TestCoverageIsReadStrictly(t *testing.T) {
	for _, text := range []string{"", "12", "m2", "1,2 m2", "-1 m2", "1e3 m", "5. m", ".5 m", "1.2.3 m", "2 acres", "2 m2/h", "2000000 m"} {
		if c, err := catalogue.ParseCoverage(text); err == nil {
			t.Errorf("%q reads as %v", text, c)
		}
	}
}

func ExampleCatalogue_Material() {
	m, _ := catalogue.Builtin().Material("ply-poplar-12")
	fmt.Println(m.Title, "-", m.PerArea, "give or take", quantity.Share(m.Spread))
	fmt.Println(m.Stock)
	// Output:
	// Poplar plywood (furniture grade) 12 mm - 5.28 kg/m2 give or take 15 %
	// [ply-poplar-12-1220x1220 ply-poplar-12-2440x1220 ply-poplar-12-2500x1250]
}

func ExampleCatalogue_Search() {
	for _, id := range catalogue.Builtin().Search("battery, 200 Ah")[:2] {
		fmt.Println(id)
	}
	// Output:
	// battery-lfp-200ah
	// battery-lfp-100ah
}

func BenchmarkMaterial(b *testing.B) {
	c := catalogue.Builtin()
	for b.Loop() {
		c.Material("ply-poplar-12")
	}
}
