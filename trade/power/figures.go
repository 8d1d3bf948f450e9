package power

import (
	"fmt"
	"math"
	"strings"

	"tumblehome/trade/working"
)

var (
	monthNames = [...]string{"January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"}
	monthCodes = [...]string{"jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"}
)

// uses tells that something uses electricity: without, there is nothing to say but of what is joined to nothing.
func (r *Result) uses() bool { return len(r.Uses) > 1 || r.Battery != nil }

func (r *Result) state() working.State {
	if r.in.PlaceAssumed || r.in.TripsAssumed || r.in.Habit == "" || r.in.Battery != nil && r.in.Battery.Assumed {
		return working.Assumed
	}
	return working.Current
}

// Figures are the numbers of power.
func (r Result) Figures() []working.Figure {
	if !r.uses() {
		return nil
	}
	var out []working.Figure
	put := func(code, label, unit, words string, value float64) {
		out = append(out, working.Figure{Code: "power." + code, Label: label, Unit: unit, Value: value, State: r.state(), Words: words})
	}
	put("daily-use", "Electricity used in a day of a trip", "Wh", fmt.Sprintf("living %s; frugal %.0f, usual %.0f, cosy %.0f", Habits[r.Habit], tens(r.day(Frugal)), tens(r.day(Usual)), tens(r.day(Cosy))), r.day(r.Habit))
	if r.Battery != nil {
		put("battery.usable", "What the battery gives from full", "Wh", "warm, and slowly emptied", r.Battery.Gives)
	}
	if r.Years == 0 {
		return out
	}
	darkest := monthNames[r.Darkest-1]
	if r.Autonomy > 0 {
		put("autonomy", "Days that the battery lasts by itself", "d", "from full, without sun or drive, in "+darkest, r.Autonomy)
		ah, _, _, _ := r.needed()
		put("battery.needed", "Battery for two days by itself", "Ah", "of the same kind, in "+darkest+" and some years old", ah)
	}
	if r.Flat.In > 0 {
		put("flat-chance", "Nights that are flat", "%", fmt.Sprintf("of all nights of the trips, give or take %.1f", 100*r.Flat.Error), 100*r.Flat.Share)
		limit := 100 * r.in.Promise
		out[len(out)-1].Limit = &limit
	}
	for m, month := range r.Months {
		if month.Flat.In > 0 {
			put("flat-chance."+monthCodes[m], "Nights that are flat in "+monthNames[m], "%", fmt.Sprintf("give or take %.1f", 100*month.Flat.Error), 100*month.Flat.Share)
		}
		if r.sunny() && month.Nights > 0 {
			put("yield."+monthCodes[m], "What the sun brings in a day in "+monthNames[m], "Wh", "as long as the battery has room for it", month.Yield)
		}
	}
	return out
}

func (r *Result) sunny() bool {
	for _, s := range r.in.Sources {
		if s.Kind == Sun && s.Watts > 0 {
			return true
		}
	}
	return false
}

// day is what a day of a trip takes in a way of living, mean over the nights of the year.
func (r *Result) day(habit int) (wh float64) {
	for i := range r.Uses {
		wh += r.Uses[i].Mean[habit]
	}
	return wh
}

// Working shows how a figure came about; false if there is no figure of that code.
func (r Result) Working(code string) (working.Working, bool) {
	return working.Of(code, "power", r.Figures, r.workingOf)
}

func (r *Result) workingOf(short string) working.Working {
	family, month, _ := strings.Cut(short, ".")
	m := 0
	for i, c := range monthCodes {
		if c == month {
			m = i
		}
	}
	switch {
	case short == "daily-use":
		return r.workingOfUse()
	case short == "battery.usable":
		return r.workingOfBattery()
	case short == "battery.needed":
		return r.workingOfNeeded()
	case short == "autonomy":
		return r.workingOfAutonomy()
	case family == "yield":
		return r.workingOfYield(m)
	case month == "":
		return r.workingOfFlat(r.Flat, "the nights of the trips")
	}
	return r.workingOfFlat(r.Months[m].Flat, "nights in "+monthNames[m])
}

// tens rounds to what one can tell of a day.
func tens(v float64) float64 { return 10 * math.Round(v/10) }
