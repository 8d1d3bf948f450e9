package sky

import (
	"math"
	"time"
)

// horizon is the elevation at which the sun's upper edge shows: 34' of refraction and 16' of half disc, 0.8333°.
const horizon = -50. / 60 * math.Pi / 180

// A Day is one turn of the sun as seen from a place, from midnight to midnight by the sun.
type Day struct {
	Rise, Noon, Set time.Time // Rise and Set are the zero time where there are none
	Up              bool      // at noon
	AllDay, AllDark bool      // the sun does not set, or does not rise
}

// Length is how long the sun is up.
func (d Day) Length() time.Duration {
	switch {
	case d.AllDark:
		return 0
	case d.AllDay:
		return 24 * time.Hour
	}
	return d.Set.Sub(d.Rise)
}

// DayOf is the day whose noon by the sun is nearest to the instant given: hand it the clock's noon. Rise belongs to the
// half day before that noon and Set to the half day after, whatever their dates in UTC. Where the sun only dips or only
// shows on one side of noon, as in the last night before an arctic summer, the missing end is that midnight.
// Times are in UTC, found to 0.1 s; the true air moves them by up to a few minutes.
func DayOf(noon time.Time, latitude, longitude float64) Day {
	d := days(noon)
	n := whenAt(d, longitude, 0)
	before, after := whenAt(n-0.5, longitude, math.Pi), whenAt(n+0.5, longitude, math.Pi)
	over := func(d float64) float64 { return at(d).From(latitude, longitude).Elevation - horizon }
	day := Day{Noon: instant(n, noon), Up: over(n) > 0}
	dips, sinks := over(before) < 0, over(after) < 0
	if day.AllDark, day.AllDay = !day.Up, day.Up && !dips && !sinks; day.AllDark || day.AllDay {
		return day
	}
	day.Rise, day.Set = instant(before, noon), instant(after, noon)
	if dips {
		day.Rise = instant(crossing(over, before, n), noon)
	}
	if sinks {
		day.Set = instant(crossing(over, after, n), noon)
	}
	return day
}

// whenAt is when, nearest to d, the sun's hour angle is the one wanted.
func whenAt(d, longitude, wanted float64) float64 {
	for range 3 { // each halves more than the digits: the sun's own motion is 1/365 of the sky's
		off := math.Remainder(at(d).HourAngle(longitude)-wanted, 2*math.Pi)
		d -= off / (2 * math.Pi)
	}
	return d
}

// crossing is where a value goes through nought between dark, where it is below, and light, where it is above.
func crossing(over func(float64) float64, dark, light float64) float64 {
	for range 20 { // half a day halved twenty times is 0.04 s
		middle := (dark + light) / 2
		if over(middle) < 0 {
			dark = middle
		} else {
			light = middle
		}
	}
	return (dark + light) / 2
}

// instant is the time at d, reckoned from a time nearby so that no far date overflows.
func instant(d float64, near time.Time) time.Time {
	return near.UTC().Add(time.Duration((d - days(near)) * 86400e9)).Round(10 * time.Millisecond)
}
