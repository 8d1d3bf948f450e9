package climate_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"tumblehome/catalogue/climate"
	"tumblehome/internal/proof"
	"tumblehome/quantity"
)

func TestEveryPlaceIsWholeAndPossible(t *testing.T) {
	all := climate.All()
	if len(all) != 56 {
		t.Fatalf("%d places, want 56", len(all))
	}
	if !slices.IsSortedFunc(all, func(a, b climate.Place) int { return strings.Compare(a.ID, b.ID) }) {
		t.Error("the places are not sorted by id")
	}
	for _, p := range all {
		if p.Name == "" || len(p.Land) != 2 || p.Source == "" || p.Lat == 0 || p.Lon == 0 || p.Offset < -12 || p.Offset > 14 {
			t.Errorf("%s lacks something: %+v", p.ID, p)
		}
		for i, m := range p.Months {
			if m.Low >= m.Mean || m.Mean >= m.High || m.Humidity < 0.1 || m.Humidity > 1 || m.Sun < 0 || m.Sun > 9 || m.Spread < 0.5 || m.Spread > 12 {
				t.Errorf("%s, month %d: %+v", p.ID, i+1, m)
			}
		}
	}
}

func TestPublishedMonths(t *testing.T) {
	const sap = "SAP 2012 (UK government), Appendix U, as transcribed in public programs"
	for _, c := range []struct {
		place, source, what string
		month               int
		want, got           float64
		unit                string
	}{
		{"gb-highland", sap + ", table U1", "mean temperature", 1, 3.1, mean("gb-highland", 1), "°C"},
		{"gb-highland", sap + ", table U1", "mean temperature", 7, 13.2, mean("gb-highland", 7), "°C"},
		{"gb-thames", sap + ", table U1", "mean temperature", 12, 5.1, mean("gb-thames", 12), "°C"},
		{"gb-borders", sap + ", table U3, 111 W/m2", "irradiation", 9, 111 * 0.024, month("gb-borders", 9).Sun, "kWh/m2 in a day"},
		{"gb-shetland", sap + ": the least year of the regions, as summed by the transcriber", "year's irradiation", 0, 818, year("gb-shetland"), "kWh/m2"},
		{"gb-southern", sap + ": the greatest year of the regions, as summed by the transcriber", "year's irradiation", 0, 1107, year("gb-southern"), "kWh/m2"},
	} {
		tolerance := map[string]float64{"°C": 0, "kWh/m2 in a day": 0.005, "kWh/m2": 2}[c.unit]
		proof.Check(t, proof.Case{Name: c.what + ", " + c.place, Source: c.source, Inputs: fmt.Sprintf("month %d", c.month),
			Expected: c.want, Got: c.got, Tolerance: tolerance, Unit: c.unit})
	}
}

func month(id string, m int) climate.Month {
	p, _ := climate.Get(id)
	return p.Months[m-1]
}

func mean(id string, m int) float64 { return float64(month(id, m).Mean) }

func year(id string) (sum float64) {
	p, _ := climate.Get(id)
	for i, days := range []float64{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31} {
		sum += days * p.Months[i].Sun
	}
	return sum
}

func TestGreatCirclesAreThoseOfTheHandbooks(t *testing.T) {
	for _, c := range []struct {
		name, source string
		a, b         [2]quantity.Angle
		km, within   float64
	}{
		{"Nashville to Los Angeles airports", "the usual worked example of the haversine formula: 2886.44 km on a sphere of 6371 km (from memory)",
			[2]quantity.Angle{36.12, -86.67}, [2]quantity.Angle{33.94, -118.40}, 2886.44, 0.05},
		{"a quarter of the equator", "a quarter of 2·π·6371 km", [2]quantity.Angle{0, 0}, [2]quantity.Angle{0, 90}, 10007.54, 0.01},
		{"from pole to pole", "half of 2·π·6371 km", [2]quantity.Angle{90, 10}, [2]quantity.Angle{-90, 70}, 20015.09, 0.01},
	} {
		proof.Check(t, proof.Case{Name: c.name, Source: c.source, Inputs: fmt.Sprint(c.a, c.b), Expected: c.km,
			Got: climate.Distance(c.a[0], c.a[1], c.b[0], c.b[1]), Tolerance: c.within, Unit: "km"})
	}
}

func TestTheNearestPlace(t *testing.T) {
	for name, c := range map[string]struct {
		lat, lon quantity.Angle
		want     string
		most     float64
	}{
		"the middle of the Highlands is in the Highlands": {57.2, -4.7, "gb-highland", 40},
		"a country's average is nowhere":                  {53.5, -2.0, "gb-west-pennines", 60},
		"the Tatra from its southern foot":                {49.1, 20.2, "zakopane", 40},
		"across the line of dates":                        {-38, -179, "auckland", 800},
	} {
		if got, km := climate.Nearest(c.lat, c.lon); got.ID != c.want || km > c.most {
			t.Errorf("%s: %s at %.0f km, want %s", name, got.ID, km, c.want)
		}
	}
}

func TestAWordThatIsNoPlaceFindsWhatWasMeant(t *testing.T) {
	for word, want := range map[string]string{"gb-higland": "gb-highland", "lyons": "lyon", "highland": "gb-highland", "cracow": "", "seattle": "seattle-tacoma"} {
		near := climate.Near(word)
		if want == "" && len(near) == 0 {
			continue
		}
		if len(near) == 0 || near[0] != want {
			t.Errorf("%s finds %v, want %s first", word, near, want)
		}
	}
}

func ExampleGet() {
	p, _ := climate.Get("gb-highland")
	january := p.Months[0]
	fmt.Printf("%s in January: nights %.1f °C, days %.1f °C\n", p.Name, january.Low, january.High)
	// Output: Highland in January: nights 0.4 °C, days 5.8 °C
}

func ExampleNearest() {
	p, km := climate.Nearest(45.9, 6.1)
	fmt.Printf("%s, %.0f km away\n", p.Name, km)
	// Output: Lyon, 92 km away
}
