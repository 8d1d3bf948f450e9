package climate_test

import (
	_ "embed"
	"encoding/csv"
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	places "tumblehome/catalogue/climate"
	"tumblehome/internal/proof"
	"tumblehome/quantity"
	"tumblehome/trade/climate"
)

var monthDays = [12]int{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31}

// epw is a year whose hour h has temperature 2·month + h - 20, humidity 51 + month (counted from 0) and the sun at 100 W/m2 from 6 to 18.
func epw() string {
	var b strings.Builder
	b.WriteString("LOCATION,Own \xe9 place,,XXX,own,000000,57.20,-4.70,0.0,320.0\nDESIGN CONDITIONS,0\nTYPICAL/EXTREME PERIODS,0\nGROUND TEMPERATURES,0\n" +
		"HOLIDAYS/DAYLIGHT SAVING,No,0,0,0\nCOMMENTS 1,none\nCOMMENTS 2,none\nDATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31\r\n")
	for m, days := range monthDays {
		for d := 1; d <= days; d++ {
			for h := 1; h <= 24; h++ {
				sun := "-0.00"
				if h > 6 && h <= 18 {
					sun = "100"
				}
				fmt.Fprintf(&b, "%d,%d,%d,%d,60,?9?9,%d.0,99.9,%d,999999,9999,9999,9999,%s,0,%s,999999,999999,999999,9999,999,999,99,99,9999,99999,9,999999999,999,.999,999,99,999,999,99\n",
					1990+m, m+1, d, h, 2*m+h-1-20, 51+m, sun, sun)
			}
		}
	}
	return b.String()
}

// typical is the same year as the European service writes it.
func typical() string {
	var b strings.Builder
	b.WriteString("Latitude (decimal degrees): 57.200\r\nLongitude (decimal degrees): -4.700\r\nElevation (m): 320.0\r\nIrradiance Time Offset (h): 0.1761\r\nmonth,year\r\n1,2012\r\n" +
		"time(UTC),T2m,RH,G(h),Gb(n),Gd(h),IR(h),WS10m,WD10m,SP\r\n")
	for m, days := range monthDays {
		for d := 1; d <= days; d++ {
			for h := range 24 {
				sun := 0
				if h >= 6 && h < 18 {
					sun = 100
				}
				fmt.Fprintf(&b, "%d%02d%02d:%02d00,%d.0,%d.0,%d.0,0.0,%d.0,300,2.1,180,97000\r\n", 2005+m, m+1, d, h, 2*m+h-20, 51+m, sun, sun)
			}
		}
	}
	return b.String() + "\r\nT2m: 2-m air temperature\r\n"
}

func TestBothFormsGiveTheSameMonths(t *testing.T) {
	fromEPW, err := climate.ReadEPW("own.epw", []byte(epw()))
	if err != nil {
		t.Fatal(err)
	}
	fromTable, err := climate.ReadTypicalYear("own.csv", []byte(typical()))
	if err != nil {
		t.Fatal(err)
	}
	a, b := fromEPW.Place("hut"), fromTable.Place("hut")
	if a.Name != "Own ? place" || b.Name != "hut" || a.Lat != 57.2 || a.Lon != -4.7 || a.Height != 320 || b.Lat != a.Lat || b.Height != 320 {
		t.Errorf("%+v and %+v are not where they are", a, b)
	}
	for m := range a.Months {
		low := quantity.Temperature(2*m - 20)
		want := places.Month{Mean: low + 11.5, Low: low, High: low + 23, Humidity: quantity.Share(51+m) / 100, Sun: 1.2}
		for _, got := range []places.Month{a.Months[m], b.Months[m]} {
			if math.Abs(float64(got.Mean-want.Mean)) > 1e-9 || got.Low != want.Low || got.High != want.High || math.Abs(float64(got.Humidity-want.Humidity)) > 1e-9 ||
				math.Abs(got.Sun-1.2) > 1e-9 || got.Spread > 1e-6 {
				t.Errorf("month %d is %+v, want %+v", m+1, got, want)
			}
		}
	}
}

//go:embed testdata/seattle-january.csv
var seattleJanuary string

func TestMonthsOfARealMonth(t *testing.T) {
	rows, err := csv.NewReader(strings.NewReader(seattleJanuary)).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var s climate.Series
	for _, row := range rows[1:] {
		var v [5]float64
		for i := range v {
			if v[i], err = strconv.ParseFloat(row[i], 64); err != nil {
				t.Fatal(err)
			}
		}
		s.Hours = append(s.Hours, climate.Hour{Month: 1, Day: int(v[0]), Hour: int(v[1]) - 1, Temperature: quantity.Temperature(v[2]), Humidity: quantity.Share(v[3] / 100), Global: v[4]})
	}
	got := s.Place("seattle").Months[0]
	const source = "January of the TMY3 year of station 727930, its months worked out by a program of its own in Python"
	for _, c := range []struct {
		name      string
		want, got float64
		within    float64
		unit      string
	}{
		{"mean temperature", 4.5, float64(got.Mean), 0.05, "°C"}, {"mean of the days' lowest", 2.0, float64(got.Low), 0.05, "°C"},
		{"mean of the days' highest", 7.3, float64(got.High), 0.05, "°C"}, {"relative humidity", 81, 100 * float64(got.Humidity), 0.5, "%"},
		{"irradiation in a day", 1.01, got.Sun, 0.005, "kWh/m2"}, {"standard deviation of daily means", 2.96, got.Spread, 0.005, "K"},
	} {
		proof.Check(t, proof.Case{Name: c.name + " of an hourly month", Source: source, Inputs: "testdata/seattle-january.csv, 744 hours", Expected: c.want, Got: c.got, Tolerance: c.within, Unit: c.unit})
	}
}

func TestABrokenWeatherFileIsRefusedAtItsPlace(t *testing.T) {
	good, table := epw(), typical()
	for _, c := range []struct {
		name, text, want string
		table            bool
	}{
		{"an empty file", "", "f:1:1: the file does not begin with LOCATION", false},
		{"another kind of file", "hello\n", "f:1:1: the file does not begin with LOCATION", false},
		{"a latitude that is none", strings.Replace(good, "57.20", "north", 1), "f:1:38: `north` is no number; expected the latitude", false},
		{"a heading that breaks off", "LOCATION,a,,b,c,d,1,2,0,3\nDESIGN CONDITIONS,0\n", "f:2:20: the heading ends before DATA PERIODS", false},
		{"half hours", strings.Replace(good, "DATA PERIODS,1,1,", "DATA PERIODS,1,2,", 1), "f:8:16: the number of records an hour is `2`, which is missing or impossible; expected 1 to 1", false},
		{"a temperature that is missing", strings.Replace(good, ",-17.0,99.9,51,", ",99.9,99.9,51,", 1), "f:12:20: the air temperature is `99.9`, which is missing or impossible; expected -90 to 60", false},
		{"a radiation that is missing", strings.Replace(good, "9999,9999,9999,-0.00", "9999,9999,9999,9999", 1), "f:9:56: the global irradiance is `9999`, which is missing or impossible; expected -20 to 1600", false},
		{"a month that is none", strings.Replace(good, "\n1990,1,1,2,", "\n1990,13,1,2,", 1), "f:10:6: the month is `13`, which is missing or impossible; expected 1 to 12", false},
		{"a line that breaks off", strings.Replace(good, ",99.9,51,999999,9999,9999,9999,-0.00,0,-0.00,999999,999999,999999,9999,999,999,99,99,9999,99999,9,999999999,999,.999,999,99,999,999,99\n", "\n", 1), "f:9:25: the line ends before the relative humidity", false},
		{"no number at all", strings.Replace(good, "-17.0", "NaN", 1), "f:12:20: the air temperature is `NaN`, which is missing or impossible; expected -90 to 60", false},
		{"a year that breaks off", good[:len(good)/2], "", false},
		{"a year twice", good + good[strings.Index(good, "\n1990,")+1:], "f:8793:1: there are more than 8784 hours", false},
		{"a file far too long", good + strings.Repeat("x", 5<<20), "f:1:1: the file has", false},
		{"a table without its heading", "Latitude (decimal degrees): 45\n", "f:1:1: no line begins with time(UTC)", true},
		{"a table from nowhere", "time(UTC),T2m,RH,G(h),Gb(n),Gd(h)\n", "f:1:1: latitude and longitude do not stand above the hours", true},
		{"a table without humidity", strings.Replace(table, ",RH,", ",HR,", 1), "f:7:1: there is no column RH", true},
		{"a table beyond the pole", strings.Replace(table, ": 57.200", ": 157.200", 1), "f:1:28: `157.200` is no latitude; expected -90 to 90", true},
		{"a time that is none", strings.Replace(table, "20050101:0100", "2005-01-01 1h", 1), "f:9:1: `2005-01-01 1h` is no time; expected year, month, day, a colon, hour and minute, as in 20230131:2300", true},
		{"a table that breaks off", table[:len(table)/2], "", true},
	} {
		read := climate.ReadEPW
		if c.table {
			read = climate.ReadTypicalYear
		}
		_, err := read("f", []byte(c.text))
		switch {
		case err == nil:
			t.Errorf("%s is taken", c.name)
		case !strings.HasPrefix(err.Error(), c.want):
			t.Errorf("%s: %v; want %s", c.name, err, c.want)
		}
		var at *climate.FileError
		if c.want != "" && !errors.As(err, &at) {
			t.Errorf("%s: %v has no place", c.name, err)
		}
	}
}

func TestAYearWithoutSeptemberIsRefused(t *testing.T) {
	text := strings.ReplaceAll(epw(), "\n1998,9,", "\n1998,8,")
	if _, err := climate.ReadEPW("f", []byte(text)); err == nil || err.Error() != "f has only 1 whole days of August; expected at least 28" {
		t.Errorf("got %v", err)
	}
}

func TestASunThatStandsOffItsClockIsSeen(t *testing.T) {
	for name, c := range map[string]struct {
		lon, zone string
		late      float64
	}{
		"a sun centred on the clock's noon, on its meridian":     {"15.00", "1.0", 0},
		"the same 4.7° west of the meridian: it comes early":     {"-4.70", "0.0", -4.7 / 15},
		"labels of the zone to the east are an hour early there": {"0.00", "1.0", -1},
	} {
		s, err := climate.ReadEPW("f", []byte(strings.Replace(epw(), "57.20,-4.70,0.0,", "57.20,"+c.lon+","+c.zone+",", 1)))
		if err != nil {
			t.Fatal(err)
		}
		if got := s.Late(); math.Abs(got-c.late) > 1e-9 {
			t.Errorf("%s: %.3f h, want %.3f", name, got, c.late)
		}
	}
	s, err := climate.ReadTypicalYear("f", []byte(typical()))
	if err != nil {
		t.Fatal(err)
	}
	if got, want := s.Late(), 0.1761-0.5-4.7/15; math.Abs(got-want) > 1e-9 {
		t.Errorf("a moment of 0.1761 h in the hour: %.3f h, want %.3f", got, want)
	}
}

func FuzzReadWeather(f *testing.F) {
	good, table := epw(), typical()
	for _, seed := range []string{"", good[:2000], table[:2000], "LOCATION,,,,,,1,1,1,1\n", "time(UTC),", strings.Repeat("LOCATION\n", 9), "Latitude: 1\nLongitude: 1\ntime(UTC),T2m,RH,G(h),Gb(n),Gd(h)\n20050101:0000,,,,,\n"} {
		f.Add([]byte(seed))
	}
	f.Fuzz(func(t *testing.T, text []byte) {
		for _, read := range []func(string, []byte) (*climate.Series, error){climate.ReadEPW, climate.ReadTypicalYear} {
			s, err := read("f", text)
			if err != nil {
				continue
			}
			for m, month := range s.Place("p").Months {
				if !(month.Low <= month.High) || !(month.Spread >= 0) {
					t.Errorf("month %d is %+v", m+1, month)
				}
			}
		}
	})
}
