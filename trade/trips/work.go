package trips

import (
	"cmp"
	"slices"

	"tumblehome/quantity"
)

// Result is the year's trips.
type Result struct {
	Trips  []Planned
	Habit  Habit
	Nights [12]float64 // in each month, January first

	in Inputs
}

// Planned is one kind of journey, with what it comes to.
type Planned struct {
	ID             string
	Aboard         []string
	Nights         int     // of one trip
	Days           int     // of one trip: as many as nights, and at least one
	PerYear        float64 // trips
	NightsPerYear  float64
	DrivingPerDay  float64 // h
	DrivingPerYear float64 // h
	HookUp         quantity.Share
	Months         []Month
	Assumed        []string // what the document does not say, in words, and what is taken for it
}

// Month is what one kind of journey comes to in one month.
type Month struct {
	Number int // 1 to 12
	Trips  float64
	Nights float64
	Day    [24]Hour
}

// Taken where a trip does not say it: common practice, no source.
const (
	usualNights = 2
	usualOften  = 1 // a month
)

// Work counts the year and sets out its days.
func Work(in Inputs) Result {
	r := Result{in: in, Habit: habitOf(in.Habits)}
	for _, t := range in.Trips {
		p := r.plan(t)
		for _, m := range p.Months {
			r.Nights[m.Number-1] += m.Nights
		}
		r.Trips = append(r.Trips, p)
	}
	return r
}

func (r *Result) plan(t Trip) Planned {
	p := Planned{ID: t.ID, Aboard: t.Aboard, Nights: usualNights, HookUp: t.HookUp}
	months := t.Months
	if len(months) == 0 {
		months = []int{1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12}
		p.assume("in which months: all are taken")
	}
	if len(t.Aboard) == 0 {
		p.Aboard = r.in.People
		p.assume("who comes along: everybody is taken")
	}
	if t.Nights == nil {
		p.assume("how many nights it lasts: two are taken")
	} else {
		p.Nights = *t.Nights
	}
	p.Days = max(1, p.Nights)
	perMonth := p.often(t.Often, len(months))
	p.PerYear = perMonth * float64(len(months))
	p.NightsPerYear = p.PerYear * float64(p.Nights)
	p.DrivingPerDay = p.driving(t.Driving)
	p.DrivingPerYear = p.PerYear * float64(p.Days) * p.DrivingPerDay
	keep := r.Habit.Keep
	if t.Keep != nil {
		keep = *t.Keep
	}
	for _, m := range slices.SortedFunc(slices.Values(months), cmp.Compare) {
		p.Months = append(p.Months, Month{Number: m, Trips: perMonth, Nights: perMonth * float64(p.Nights),
			Day: dayOf(r.Habit, m, len(p.Aboard), p.DrivingPerDay, keep)})
	}
	return p
}

func (p *Planned) assume(words string) { p.Assumed = append(p.Assumed, words) }

// often is how many trips fall in each month. What is counted by the year is spread evenly.
func (p *Planned) often(rate *quantity.Rate, months int) float64 {
	switch {
	case rate == nil:
		p.assume("how often: once a month is taken")
		return usualOften
	case rate.Per == quantity.Yearly:
		return rate.Amount / float64(months)
	}
	return rate.Amount
}

// driving is hours at the wheel in a day.
func (p *Planned) driving(rate *quantity.Rate) float64 {
	switch {
	case rate == nil:
		p.assume("how long you drive: the van is taken to stand")
		return 0
	case rate.Per == quantity.ATrip:
		return rate.Amount / float64(p.Days)
	}
	return rate.Amount
}
