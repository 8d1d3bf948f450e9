package power

import (
	"fmt"
	"math"
	"slices"

	"tumblehome/solve/weather"
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

// read brings what was counted into the months.
func (r *Result) read(sky *Sky) {
	t := &r.run
	nights, flat := t.all()
	r.Flat, r.Cuts = chance(flat, nights), t.cuts
	r.Cold = float64(t.cold) / float64(r.Years)
	yields := r.yields(sky)
	for m := range r.Months {
		month := &r.Months[m]
		month.Flat = chance(t.flat[m], t.nights[m])
		month.Yield, month.Sunny = yields[m].mean, yields[m].tenths
		if t.nights[m] == 0 {
			continue
		}
		month.Engine = t.engine[m] / float64(t.nights[m])
		month.Battery = t.warmth[m] / float64(t.nights[m])
		for h := range 24 {
			month.Low[h], month.Middle[h] = t.below(m, h, 0.05), t.below(m, h, 0.5)
		}
	}
}

// yield is what panels give in a day of a month [Wh], and on the dullest and the best of ten days.
type yield struct {
	mean   float64
	tenths [2]float64
}

func (r *Result) yields(sky *Sky) (out [12]yield) {
	k := r.in.kitOf(r.in.Battery)
	if !k.sunny {
		return out
	}
	const bins = 200
	var days [12][bins]int
	var sums, counts [12]float64
	width := k.roof.scale * 12000 / bins // no day has 12 kWh/m2
	for y := range sky.Years {
		for day := range weather.Days {
			wh := 0.0
			for h := range 24 {
				wh += sky.sun(y, 24*day+h, &k.roof)
			}
			m := monthOfDay[day]
			sums[m] += wh
			counts[m]++
			days[m][min(bins-1, int(wh/width))]++
		}
	}
	for m := range out {
		out[m].mean = sums[m] / counts[m]
		out[m].tenths = [2]float64{tenth(days[m][:], 0.1) * width, tenth(days[m][:], 0.9) * width}
	}
	return out
}

// tenth is the bin, in its middle, that a share of all lies below.
func tenth(bins []int, share float64) float64 {
	all, sum := 0, 0
	for _, n := range bins {
		all += n
	}
	for i, n := range bins {
		if sum += n; float64(sum) >= share*float64(all) {
			return float64(i) + 0.5
		}
	}
	return float64(len(bins))
}

// autonomy is how many days the battery lasts from full in the darkest month, without sun, drive or mains.
func (r *Result) autonomy(k *kit) {
	m := &r.Months[r.Darkest-1]
	if use := m.Use[r.Habit]; use > 0 {
		i := use / 24 / k.gives
		r.Autonomy = k.bottom(m.Battery) / (24 * drained(i, k.rated, k.nature.peukert))
	}
}

// tryHelps finds what half as much again of each thing would do; a van without a panel is tried with one of 100 W.
func (r *Result) tryHelps(sky *Sky) {
	few := *sky
	few.Years = min(helpYears, sky.Years)
	try := func(of string, change func(k *kit)) {
		w := r.walk(&few)
		w.k = r.in.kitOf(r.in.Battery)
		change(&w.k)
		t := w.through()
		r.Helps = append(r.Helps, Help{Of: of, Share: t.share()})
	}
	try(LimitBattery, func(k *kit) { k.enlarge(1.5) })
	half := 0.0
	for _, s := range r.in.Sources {
		half += s.Watts / 2
	}
	try(LimitPanel, func(k *kit) {
		k.addPanel(panelOf(&Source{Kind: Sun, Watts: max(100, half), Panels: 1}, k.takes))
	})
	if r.run.engine != [12]float64{} {
		try(LimitEngine, func(k *kit) { k.engine *= 1.5 })
	}
	best := slices.MinFunc(r.Helps, func(a, b Help) int {
		switch {
		case a.Share < b.Share:
			return -1
		case a.Share > b.Share:
			return 1
		}
		return 0
	})
	r.Limits = best.Of
}

// enlarge makes a battery larger, of the same kind.
func (k *kit) enlarge(by float64) {
	k.holds, k.depth, k.rated = k.holds*by, k.depth*by, k.rated*by
	k.fill = fillingOf(k.holds, k.nature)
}

// share of a month, as pages write it.
func (c Chance) String() string { return fmt.Sprintf("%.1f ± %.1f %%", 100*c.Share, 100*c.Error) }
