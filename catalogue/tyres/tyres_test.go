package tyres_test

import (
	"fmt"
	"math"
	"testing"

	"tumblehome/catalogue/tyres"
	"tumblehome/internal/proof"
)

func TestTheTableRisesWithoutGaps(t *testing.T) {
	all := tyres.Table()
	if len(all) != tyres.Last-tyres.First+1 {
		t.Fatalf("%d rows, want %d", len(all), tyres.Last-tyres.First+1)
	}
	for i, e := range all {
		if e.Index != tyres.First+i || e.Source == "" {
			t.Errorf("row %d: index %d, source %q", i, e.Index, e.Source)
		}
		if i > 0 && e.Mass <= all[i-1].Mass {
			t.Errorf("index %d: %g kg is not more than the row before", e.Index, float64(e.Mass))
		}
		smooth := 45 * math.Pow(10, float64(e.Index)/80)
		if off := math.Abs(float64(e.Mass)/smooth - 1); off > 0.018 {
			t.Errorf("index %d: %g kg is %.1f %% off 45*10^(LI/80)", e.Index, float64(e.Mass), 100*off)
		}
	}
}

// Masses that several public tables print alike; the last index is the one
// whose pounds figure (3 197 lb) was read instead.
func TestPublishedLoads(t *testing.T) {
	const source = "load index tables as printed by tyre trade pages, agreed by three or more"
	for index, kg := range map[int]float64{62: 265, 83: 487, 90: 600, 95: 690, 100: 800, 104: 900, 107: 975,
		109: 1030, 110: 1060, 112: 1120, 113: 1150, 115: 1215, 116: 1250, 118: 1320, 119: 1360} {
		got, _ := tyres.Load(index)
		proof.Check(t, proof.Case{Name: fmt.Sprintf("load of one tyre, index %d", index), Source: source,
			Inputs: fmt.Sprintf("LI %d", index), Expected: kg, Got: float64(got), Tolerance: 0, Unit: "kg"})
	}
	got, _ := tyres.Load(121)
	proof.Check(t, proof.Case{Name: "load of one tyre, index 121", Source: "a public table in pounds: 3 197 lb (0.45359237 kg/lb)",
		Inputs: "LI 121", Expected: 3197 * 0.45359237, Got: float64(got), Tolerance: 1, Unit: "kg"})
}

func TestMarkings(t *testing.T) {
	tests := []struct {
		name, text, want string
		axle             float64
	}{
		{"a light commercial tyre with both indices", "215/70 R15C 109/107", "215/70 R15C 109/107", 2060},
		{"a car tyre without blanks", "195/65R1595", "195/65 R15 95", 1380},
		{"small letters and a speed letter", "225/70 r15c 112/110 s", "225/70 R15C 112/110 S", 2240},
		{"the camper kind is read as its commercial like", "225/70 R15CP 112", "225/70 R15C 112", 2240},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			m, err := tyres.Parse(tt.text)
			if err != nil || m.String() != tt.want || float64(m.Axle()) != tt.axle {
				t.Errorf("Parse(%q) = %v (%g kg an axle), %v; want %s, %g", tt.text, m, float64(m.Axle()), err, tt.want, tt.axle)
			}
		})
	}
	for name, text := range map[string]string{
		"nothing at all": "", "a width in inches": "7.50 R16", "no load index": "215/70 R15C",
		"an index beyond the table": "215/70 R15C 140", "two letters at the end": "215/70 R15 95 ST",
		"a mark that is no letter": "215/70 R15 95 !",
	} {
		if m, err := tyres.Parse(text); err == nil {
			t.Errorf("%s: Parse(%q) = %v, want an error", name, text, m)
		}
	}
}

func TestLoadsOutsideTheTableAreRefused(t *testing.T) {
	for _, index := range []int{-1, tyres.First - 1, tyres.Last + 1} {
		if mass, ok := tyres.Load(index); ok {
			t.Errorf("Load(%d) = %v, want none", index, mass)
		}
	}
	if i, ok := tyres.Needed(2000); ok {
		t.Errorf("Needed(2000) = %d, want none", i)
	}
	if i, ok := tyres.Needed(925); !ok || i != 105 {
		t.Errorf("Needed(925) = %d, %v; want 105", i, ok)
	}
}

func FuzzParse(f *testing.F) {
	f.Add("215/70 R15C 109/107 S")
	f.Add("195/65R1595")
	f.Fuzz(func(t *testing.T, text string) {
		m, err := tyres.Parse(text)
		if err != nil {
			return
		}
		if again, err := tyres.Parse(m.String()); err != nil || again != m {
			t.Errorf("%q reads as %v, which reads as %v, %v", text, m, again, err)
		}
	})
}

func ExampleParse() {
	m, err := tyres.Parse("215/70 R15C 109/107")
	fmt.Println(float64(m.One()), float64(m.Axle()), float64(m.Diameter()), err)
	// Output: 1030 2060 682 <nil>
}
