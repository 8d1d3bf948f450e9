package power

import (
	"fmt"
	"math"
	"slices"
)

// Taken where nobody says: one night in twenty may be flat, as most first builders find good enough; common practice, no source.
const (
	usualPromise = 0.05
	usualYears   = 200
	helpYears    = 50 // in which it is tried what would help
)

// Work finds out whether the lights stay on.
func Work(in Inputs) Result {
	r := Result{asked: in, in: in.complete()}
	r.begin()
	r.live()
	if b := r.in.Battery; b != nil && b.holds() > 0 {
		r.Battery = bankOf(b)
		r.goThrough()
	}
	r.found = r.judge()
	return r
}

// live works out what each day takes, as corrected by the builder's readings.
func (r *Result) live() {
	r.days = r.spend()
	r.readings()
	if r.Scale == 1 {
		return
	}
	for j := range r.days {
		for i := range r.days[j] {
			r.days[j][i].scale(r.Scale, r.in.always())
		}
	}
}

// complete fills in what nobody said.
func (in Inputs) complete() Inputs {
	if in.Years <= 0 {
		in.Years = usualYears
	}
	if in.Promise <= 0 {
		in.Promise = usualPromise
	}
	if in.AtHome == "" {
		in.AtHome = AtHomeSun
	}
	if in.Sky == nil {
		in.Sky = NewSky
	}
	return in
}

// begin counts the nights and finds the month with the least sun among those of the trips.
func (r *Result) begin() {
	r.Habit = max(0, slices.Index(Habits[:], r.in.Habit))
	if r.in.Habit == "" {
		r.Habit = Usual
	}
	r.Scale, r.Darkest = 1, 12
	for _, j := range r.in.Journeys {
		for _, m := range j.Months {
			r.Months[m.Number-1].Nights += m.Trips * float64(j.Nights)
		}
	}
	least := math.Inf(1)
	for m := range r.Months {
		if sun := r.in.Climate.Sun[m]; r.Months[m].Nights > 0 && sun < least {
			least, r.Darkest = sun, m+1
		}
	}
}

func bankOf(b *Battery) *Bank {
	n := natures[b.Chemistry]
	return &Bank{Chemistry: b.Chemistry, Holds: b.holds(), Usable: b.usable(), Gives: b.holds() * b.usable() * n.gives * b.series(), Takes: n.most * b.Rated}
}

// goThrough goes through the years of weather, if such can be made of the climate.
func (r *Result) goThrough() {
	sky, err := r.in.Sky(r.in.Climate, r.in.Years, r.in.Seed)
	if err != nil {
		r.Assumed = append(r.Assumed, "no weather could be made of the months given: "+err.Error())
		return
	}
	r.Years = sky.Years
	w := r.walk(sky)
	w.k = r.in.kitOf(r.in.Battery)
	w.tally.states = new([12][24][states + 1]uint32)
	r.run = w.through()
	r.read(sky)
	r.autonomy(&w.k)
	if r.Flat.Share > r.in.Promise {
		r.tryHelps(sky)
	}
}

func (r *Result) walk(sky *Sky) walk {
	return walk{in: &r.in, sky: sky, plan: r.in.planOf(sky.Years), days: r.days, rooms: r.in.rooms(), home: r.in.AtHome, up: r.up()}
}

// up is the hour in which people get up, the same on all trips.
func (r *Result) up() int {
	for _, j := range r.in.Journeys {
		for _, m := range j.Months {
			return m.Up
		}
	}
	return 7
}

// share of a month, as pages write it.
func (c Chance) String() string { return fmt.Sprintf("%.1f ± %.1f %%", 100*c.Share, 100*c.Error) }
