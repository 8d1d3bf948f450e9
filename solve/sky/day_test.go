package sky_test

import (
	"math"
	"testing"
	"time"

	"tumblehome/internal/proof"
	"tumblehome/solve/sky"
)

func TestRiseNoonAndSetBesideEphem(t *testing.T) {
	var worst [3]float64
	a := ephem(t)
	for _, d := range a.Days {
		day := sky.DayOf(time.Unix(int64(d[0]), 0), rad(d[1]), rad(d[2]))
		for i, at := range []time.Time{day.Rise, day.Noon, day.Set} {
			worst[i] = max(worst[i], math.Abs(float64(at.UnixMilli())/1000-d[3+i]))
		}
	}
	for i, name := range []string{"sunrise", "noon", "sunset"} {
		proof.Check(t, proof.Case{Name: "greatest difference in " + name, Source: "PyEphem 4.1.4, testdata/positions.py",
			Inputs: "60 random days 2000 to 2050 within 62° of the equator", Got: worst[i], Tolerance: 30, Unit: "s"})
	}
}

func TestDaysAtNamedPlaces(t *testing.T) {
	const ephem, spa = "PyEphem 4.1.4", "NREL SPA, figures as in a public test suite"
	for _, c := range []struct {
		name, noon      string
		lat, lon        float64
		rise, set       string
		allowed, source any
	}{
		{"London, longest day", "2025-06-21 12:00:00", 51.5, -0.12, "2025-06-21 03:43:09", "2025-06-21 20:21:31", 30., ephem},
		{"London, shortest day", "2025-12-21 12:00:00", 51.5, -0.12, "2025-12-21 08:03:49", "2025-12-21 15:53:31", 30., ephem},
		{"Madrid, equinox", "2025-03-20 12:00:00", 40.41, -3.68, "2025-03-20 06:17:56", "2025-03-20 18:26:54", 30., ephem},
		{"Denver, whose evening is tomorrow in UTC", "2025-10-15 19:00:00", 39.83, -104.65, "2025-10-15 13:09:20", "2025-10-16 00:18:36", 30., ephem},
		{"Christchurch, midwinter", "2025-06-21 00:30:00", -43.49, 172.54, "2025-06-20 20:03:14", "2025-06-21 04:59:57", 30., ephem},
		{"Sodankyla, where only refraction lifts the sun", "2025-12-21 10:00:00", 67.37, 26.63, "2025-12-21 10:00:45", "2025-12-21 10:22:30", 120., ephem},
		{"Golden, 2015-01-02", "2015-01-02 19:00:00", 39.743, -105.178, "2015-01-02 14:21:55", "2015-01-02 23:47:43", 30., spa},
	} {
		day := sky.DayOf(utc(c.noon), rad(c.lat), rad(c.lon))
		for _, at := range []struct {
			name, want string
			got        time.Time
		}{{"sunrise", c.rise, day.Rise}, {"sunset", c.set, day.Set}} {
			proof.Check(t, proof.Case{Name: at.name + " against the reference, " + c.name, Source: c.source.(string), Inputs: at.want,
				Got: at.got.Sub(utc(at.want)).Seconds(), Tolerance: c.allowed.(float64), Unit: "s"})
		}
	}
}

func TestThePolarDayAndNightHaveNoRiseAndSet(t *testing.T) {
	for _, c := range []struct {
		name, noon string
		lat        float64
		want       time.Duration
	}{
		{"midsummer in the north", "2025-06-21 12:00:00", 70, 24 * time.Hour},
		{"midwinter in the north", "2025-12-21 12:00:00", 70, 0},
		{"midsummer in the south", "2025-12-21 12:00:00", -70, 24 * time.Hour},
		{"the pole itself in June", "2025-06-21 12:00:00", 90, 24 * time.Hour},
		{"the pole itself in December", "2025-12-21 12:00:00", 90, 0},
	} {
		day := sky.DayOf(utc(c.noon), rad(c.lat), 0)
		if day.Length() != c.want || day.AllDay == day.AllDark || !day.Rise.IsZero() || !day.Set.IsZero() {
			t.Errorf("%s: got %+v, want a day of %v without rise and set", c.name, day, c.want)
		}
	}
}

func FuzzAnyPlaceAndTime(f *testing.F) {
	f.Add(int64(1e9), 0.9, 0.1)
	f.Add(int64(-62135596800), math.Pi/2, math.Pi)
	f.Add(int64(253402300799), -math.Pi/2, -17.)
	f.Add(int64(1766311200), 1.1758, 0.4648)
	f.Fuzz(func(t *testing.T, second int64, lat, lon float64) {
		second %= 300e9
		if !(math.Abs(lat) <= math.Pi/2 && math.Abs(lon) < 1e3) {
			t.Skip()
		}
		when := time.Unix(second, 0)
		sun := sky.At(when)
		at := sun.From(lat, lon)
		if !(math.Abs(at.Elevation) <= math.Pi/2+1e-4 && at.Azimuth >= 0 && at.Azimuth <= 2*math.Pi) {
			t.Fatalf("%v %g %g: stands at %+v", when, lat, lon, at)
		}
		if out := sun.Outside(lat, lon, 3600); !(out >= 0 && out <= sun.Normal()) {
			t.Fatalf("%v %g %g: outside %g, normal %g", when, lat, lon, out, sun.Normal())
		}
		day := sky.DayOf(when, lat, lon)
		if l := day.Length(); l < 0 || l > 24*time.Hour+5*time.Minute {
			t.Fatalf("%v %g %g: a day of %v, %+v", when, lat, lon, l, day)
		}
		if !day.Rise.IsZero() && (day.Rise.After(day.Noon) || day.Set.Before(day.Noon)) {
			t.Fatalf("%v %g %g: out of order %+v", when, lat, lon, day)
		}
	})
}
