package quantity_test

import (
	"encoding"
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"tumblehome/internal/proof"
	"tumblehome/quantity"
)

// text is what every quantity can do.
type text interface {
	fmt.Stringer
	encoding.TextMarshaler
	Grammar() quantity.Grammar
}

func parse[Q text](f func(string) (Q, error)) func(string) (text, error) {
	return func(s string) (text, error) { q, err := f(s); return q, err }
}

var parsers = map[string]func(string) (text, error){
	"length": parse(quantity.ParseLength), "area": parse(quantity.ParseArea), "section": parse(quantity.ParseSection),
	"angle": parse(quantity.ParseAngle), "mass": parse(quantity.ParseMass), "volume": parse(quantity.ParseVolume),
	"density": parse(quantity.ParseDensity), "temperature": parse(quantity.ParseTemperature),
	"mass-per-area": parse(quantity.ParsePerArea), "mass-per-length": parse(quantity.ParsePerLength),
	"power": parse(quantity.ParsePower), "voltage": parse(quantity.ParseVoltage), "current": parse(quantity.ParseCurrent),
	"charge": parse(quantity.ParseCharge), "energy": parse(quantity.ParseEnergy), "duration": parse(quantity.ParseDuration),
	"share": parse(quantity.ParseShare), "date": parse(quantity.ParseDate), "clock": parse(quantity.ParseClock),
	"yes-no": parse(quantity.ParseYesNo), "rate": parse(quantity.ParseRate), "lay": parse(quantity.ParseLay),
	"money": parse(quantity.ParseMoney),
}

func TestEveryTextIsReadAndWrittenInItsBaseUnit(t *testing.T) {
	tests := []struct{ kind, text, want string }{
		{"length", "3350", "3350"}, {"length", "3.35 m", "3350"}, {"length", "12cm", "120"}, {"length", "-760", "-760"},
		{"length", "7 ft 2 in", "2184.4"}, {"length", "3 1/2 in", "88.9"}, {"length", "1/2 in", "12.7"},
		{"length", "7ft2in", "2184.4"}, {"length", "7 ft 3 1/2 in", "2222.5"}, {"length", "-7 ft 2 in", "-2184.4"},
		{"length", "007", "7"}, {"length", "-0", "0"}, {"length", "0.5", "0.5"}, {"length", "0.1 m", "100"},
		{"area", "0.02 m2", "0.02 m2"}, {"area", "40 cm2", "0.004 m2"}, {"area", "100 in2", "0.064516 m2"}, {"area", "500 mm2", "0.0005 m2"},
		{"section", "1.5 mm2", "1.5 mm2"}, {"section", "16mm2", "16 mm2"}, {"section", "6 mm²", "6 mm2"}, {"section", "6mm²", "6 mm2"}, {"section", "6", "6 mm2"}, {"section", "1.5", "1.5 mm2"},
		{"angle", "95°", "95°"}, {"angle", "-30 °", "-30°"},
		{"mass", "13", "13"}, {"mass", "850 g", "0.85"}, {"mass", "10 lb", "4.5359237"},
		{"volume", "20", "20"}, {"volume", "500 ml", "0.5"}, {"volume", "0.02 m3", "20"}, {"volume", "5 gal-uk", "22.73045"}, {"volume", "5 gal-us", "18.92705892"},
		{"density", "450", "450"}, {"density", "450 kg/m3", "450"},
		{"temperature", "14 °C", "14"}, {"temperature", "-5", "-5"}, {"temperature", "50 °F", "10"}, {"temperature", "-40 °F", "-40"},
		{"mass-per-area", "2.9 kg/m2", "2.9 kg/m2"}, {"mass-per-area", "900 g/m2", "0.9 kg/m2"}, {"mass-per-length", "120 g/m", "0.12 kg/m"},
		{"power", "2 kW", "2000"}, {"voltage", "12 V", "12"}, {"current", "20A", "20"}, {"charge", "100 Ah", "100"}, {"energy", "1.2 kWh", "1200"},
		{"duration", "6 h", "6"}, {"duration", "5 h 30 min", "5.5"}, {"duration", "45 min", "0.75"}, {"duration", "2 d", "48"}, {"duration", "2 weeks", "336"},
		{"share", "35 %", "35 %"}, {"share", "12.5%", "12.5 %"}, {"share", "7 %", "7 %"}, {"share", "0.1 %", "0.1 %"}, {"share", "100 %", "100 %"}, {"share", "-1 %", "-1 %"},
		{"date", "2026-03-07", "2026-03-07"}, {"clock", "19:00", "19:00"}, {"clock", "7:30", "07:30"},
		{"yes-no", "true", "yes"}, {"yes-no", "no", "no"},
		{"rate", "2 /month", "2 /month"}, {"rate", "1 h/day", "1 h/day"}, {"rate", "500 ml/day", "0.5 l/day"}, {"rate", "5h/trip", "5 h/trip"}, {"rate", "0.5/night", "0.5 /night"},
		{"lay", "0.2", "0.2"}, {"lay", "2.9 kg/m2", "2.9 kg/m2"}, {"lay", "400 g/m", "0.4 kg/m"}, {"lay", "200 g", "0.2"},
		{"money", "126.00", "126"}, {"money", "61.5 EUR", "61.50 EUR"}, {"money", "-60", "-60"}, {"money", "0.05", "0.05"},
	}
	for _, tt := range tests {
		q, err := parsers[tt.kind](tt.text)
		if err != nil {
			t.Errorf("%s %q: %v", tt.kind, tt.text, err)
			continue
		}
		if q.String() != tt.want {
			t.Errorf("%s %q: got %q, want %q", tt.kind, tt.text, q.String(), tt.want)
		}
	}
}

func TestEveryRefusalSaysWhatToWriteInstead(t *testing.T) {
	const length = "; expected a length such as `3350`, `3.35 m` or `7 ft 2 in`"
	tests := []struct{ kind, text, want string }{
		{"length", "", "nothing is written here" + length},
		{"length", "wide", "`wide` is not a length" + length},
		{"length", "3,35 m", "`3,35 m` has a comma; the decimal mark is a point" + length + "; did you mean `3.35 m`?"},
		{"length", "12 mmm", "`12 mmm` has the unknown unit `mmm`" + length + "; did you mean `mm`?"},
		{"length", "12 m2", "`12 m2` has the unknown unit `m2`" + length},
		{"length", "1e3", "`1e3` is written with an exponent; write it out" + length},
		{"length", "NaN", "`NaN` is not a length" + length},
		{"length", ".inf", "`.inf` is not a length" + length},
		{"length", "0x1F", "`0x1F` has the unknown unit `x1F`" + length},
		{"length", "+20", "`+20` begins with a plus, which is left out" + length + "; did you mean `20`?"},
		{"length", ".5", "`.5` begins with the point" + length + "; did you mean `0.5`?"},
		{"length", "3 350", "`3 350` has blanks inside the number" + length + "; did you mean `3350`?"},
		{"length", "3 1/2", "`3 1/2` is a fraction, which only `in` and `ft` may have" + length},
		{"length", "1/0 in", "`1/0 in` is not a length" + length},
		{"length", "3 1/2 mm", "`3 1/2 mm` is not a length" + length},
		{"length", "7 ft 2", "`7 ft 2` ends without a unit" + length + "; did you mean `7 ft 2 in`?"},
		{"length", "7 ft 2 m", "`7 ft 2 m` is not a length" + length},
		{"length", "12 ", "`12 ` has a blank before or after it" + length + "; did you mean `12`?"},
		{"length", "99999999999999", "`99999999999999` is far too large" + length},
		{"length", "0.0000000000001", "`0.0000000000001` is far too small" + length},
		{"area", "4", "`4` has no unit; expected an area with its unit such as `0.02 m2` or `40 cm2`; did you mean `4 m2`?"},
		{"share", "35", "`35` has no unit; expected a share with its sign such as `35 %` or `12.5 %`; did you mean `35 %`?"},
		{"share", "0.35", "`0.35` has no unit; expected a share with its sign such as `35 %` or `12.5 %`; did you mean `0.35 %`?"},
		{"angle", "95", "`95` has no unit; expected an angle such as `95°` or `30°`; did you mean `95°`?"},
		{"section", "1.5 mm", "`1.5 mm` has the unknown unit `mm`; expected a cable section such as `1.5 mm2` or `16 mm2`; did you mean `mm2`?"},
		{"date", "2026-3-7", "`2026-3-7` is not a date; expected a date such as `2026-03-07` or `2025-11-30`; did you mean `2026-03-07`?"},
		{"date", "2026-02-30", "`2026-02-30` is not in the calendar; expected a date such as `2026-03-07` or `2025-11-30`"},
		{"clock", "24:00", "`24:00` is not a time of day; expected a time of day such as `19:00` or `07:30`"},
		{"yes-no", "on", "`on` is neither yes nor no; expected yes or no"},
		{"yes-no", "yess", "`yess` is neither yes nor no; expected yes or no; did you mean `yes`?"},
		{"rate", "2", "`2` does not say per what; expected a rate such as `2 /month`, `1 h/day` or `2 l/day`"},
		{"rate", "2 /mont", "`2 /mont` has the unknown period `mont`; expected a rate such as `2 /month`, `1 h/day` or `2 l/day`; did you mean `month`?"},
		{"rate", "2 x/day", "`2 x` has the unknown unit `x`; expected a rate such as `2 /month`, `1 h/day` or `2 l/day`"},
		{"lay", "2.9 kg/m3", "`2.9 kg/m3` has the unknown unit `kg/m3`; expected a mass such as `0.2`, `0.4 kg/m` or `2.9 kg/m2`; did you mean `kg/m`?"},
		{"money", "1.005", "`1.005` has more than two digits after the point; expected an amount such as `140`, `61.50` or `61.50 EUR`"},
		{"length", "1,250", "`1,250` has a comma; thousands are written without one, and the decimal mark is a point" + length + "; did you mean `1250`?"},
		{"length", "5,200 mm", "`5,200 mm` has a comma; thousands are written without one, and the decimal mark is a point" + length + "; did you mean `5200 mm`?"},
		{"length", "0,125", "`0,125` has a comma; the decimal mark is a point" + length + "; did you mean `0.125`?"},
		{"length", "4,035 m", "`4,035 m` has a comma; the decimal mark is a point" + length + "; did you mean `4.035 m`?"},
		{"money", "5,200.50", "`5,200.50` has a comma; thousands are written without one, and the decimal mark is a point; expected an amount such as `140`, `61.50` or `61.50 EUR`; did you mean `5200.50`?"},
		{"money", "61,50", "`61,50` has a comma; the decimal mark is a point; expected an amount such as `140`, `61.50` or `61.50 EUR`; did you mean `61.50`?"},
		{"money", "61.50 eur", "`61.50 eur` is not an amount of money; expected an amount such as `140`, `61.50` or `61.50 EUR`; did you mean `61.50 EUR`?"},
	}
	for _, tt := range tests {
		if _, err := parsers[tt.kind](tt.text); err == nil || err.Error() != tt.want {
			t.Errorf("%s %q:\n got %v\nwant %s", tt.kind, tt.text, err, tt.want)
		}
	}
}

func TestUnitsAgreeWithTheLawThatFixedThem(t *testing.T) {
	const yard = "international yard and pound agreement 1959; Weights and Measures Act 1985 schedule 1"
	tests := []struct {
		name, source, text, unit string
		got                      func(string) (float64, error)
		want                     float64
	}{
		{"an inch in mm", yard, "1 in", "mm", number(quantity.ParseLength), 25.4},
		{"a foot in mm", yard, "1 ft", "mm", number(quantity.ParseLength), 304.8},
		{"a square inch in m2", yard, "1 in2", "m2", number(quantity.ParseArea), 0.0254 * 0.0254},
		{"a pound in kg", yard, "1 lb", "kg", number(quantity.ParseMass), 0.45359237},
		{"a UK gallon in litres", yard, "1 gal-uk", "l", number(quantity.ParseVolume), 4.54609},
		{"a US gallon in litres", "231 cubic inches, NIST Handbook 44 appendix C", "1 gal-us", "l", number(quantity.ParseVolume), 231 * 0.254 * 0.254 * 0.254},
		{"boiling water in Fahrenheit", "definition of the degree Fahrenheit", "212 °F", "°C", number(quantity.ParseTemperature), 100},
	}
	for _, tt := range tests {
		got, err := tt.got(tt.text)
		if err != nil {
			t.Fatal(err)
		}
		proof.Check(t, proof.Case{Name: tt.name, Source: tt.source, Inputs: tt.text, Expected: tt.want, Got: got, Tolerance: 1e-11, Unit: tt.unit})
	}
}

func number[Q interface{ Float() float64 }](f func(string) (Q, error)) func(string) (float64, error) {
	return func(s string) (float64, error) { q, err := f(s); return q.Float(), err }
}

func TestWhatIsWrittenReadsBackAsTheSameValue(t *testing.T) {
	for kind, parse := range parsers {
		if kind == "date" || kind == "clock" || kind == "yes-no" {
			continue // these have no decimals
		}
		t.Run(kind, rapid.MakeCheck(func(t *rapid.T) {
			mantissa := rapid.IntRange(-9_999_999, 9_999_999).Draw(t, "digits")
			places := rapid.IntRange(0, 6).Draw(t, "places")
			examples := sample(kind).Examples
			unit := strings.TrimLeft(rapid.SampledFrom(examples).Draw(t, "example"), "-.0123456789")
			q, err := parse(decimalText(mantissa, places) + unit)
			if err != nil {
				t.Skip("not a text of this kind")
			}
			again, err := parse(q.String())
			if err != nil || again != q || again.String() != q.String() {
				t.Fatalf("%v was written %q and read back as %v, %v", q, q.String(), again, err)
			}
		}))
	}
}

func sample(kind string) quantity.Grammar {
	q, _ := parsers[kind]("")
	return q.Grammar()
}

func decimalText(digits, places int) string {
	s := fmt.Sprintf("%0*d", places+2, digits)
	if places == 0 {
		return s
	}
	return s[:len(s)-places] + "." + s[len(s)-places:]
}

func TestDatesCountDaysAcrossLeapYears(t *testing.T) {
	day := func(s string) quantity.Date { d, _ := quantity.ParseDate(s); return d }
	tests := []struct {
		from, to string
		want     int
	}{
		{"2026-03-07", "2026-03-08", 1}, {"2024-02-28", "2024-03-01", 2}, {"2026-02-28", "2026-03-01", 1},
		{"2000-01-01", "2001-01-01", 366}, {"2026-03-08", "2026-03-07", -1}, {"2026-03-28", "2026-03-30", 2},
	}
	for _, tt := range tests {
		if got := day(tt.to).DaysSince(day(tt.from)); got != tt.want {
			t.Errorf("from %s to %s: got %d days, want %d", tt.from, tt.to, got, tt.want)
		}
		if got := day(tt.from).AddDays(tt.want); got != day(tt.to) {
			t.Errorf("%s and %d days: got %s, want %s", tt.from, tt.want, got, tt.to)
		}
	}
	if !day("2026-03-07").Before(day("2026-11-01")) || day("2026-03-07").Compare(day("2026-03-07")) != 0 {
		t.Error("dates are out of order")
	}
}

func TestNearFindsSlipsButNotOtherWords(t *testing.T) {
	tests := []struct {
		name, word string
		candidates []string
		want       string
	}{
		{"one letter too many", "mmm", []string{"mm", "cm", "m"}, "mm"},
		{"two neighbours swapped", "fitings", []string{"fittings", "lining"}, "fittings"},
		{"a plural for a singular", "wheelbases", []string{"wheelbase", "weighed"}, "wheelbase"},
		{"the beginning of a name", "ply-poplar", []string{"xps-20", "ply-poplar-12"}, "ply-poplar-12"},
		{"half of the letters are another word", "uk", []string{"gb", "eu", "us"}, ""},
		{"two slips are too many in a short word", "small", []string{"tall"}, ""},
		{"nothing like it", "banana", []string{"settle", "galley"}, ""},
		{"a short word is not replaced by any short word", "xy", []string{"ab"}, ""},
	}
	for _, tt := range tests {
		if got := quantity.Near(tt.word, tt.candidates); got != tt.want {
			t.Errorf("%s: %q gave %q, want %q", tt.name, tt.word, got, tt.want)
		}
	}
}
