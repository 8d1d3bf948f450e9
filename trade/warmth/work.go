package warmth

import (
	"math"

	"tumblehome/trade/finding"
)

// Result is how warm and how dry the van is.
type Result struct {
	Surfaces []Surface
	Lost     []Lost    // field by field
	Details  []*Detail // each distinct rib with what lies about it, for drawings
	Glass    float64   // W/K
	Cab      float64   // W/K
	Flow     Flow
	Loss     float64 // W/K in all, air of a usual night too
	Unsure   float64 // its standard deviation, from the conductivities of the rows
	Nights   []Night // a usual one of each month, and one in ten colder of the months of the trips
	Usual    int     // which of them is the usual one of the coldest month of the trips
	Coldest  int     // and which the cold one
	Winters  []Winter
	Fixed    Fixed
	Year     Year

	in       Inputs
	found    []finding.Finding
	remedies map[string][]Remedy // by the finding they are for
}

// Year is what other trades take up from here, by month (January first) and hour from midnight.
type Year struct {
	Cabin  [12][24]float64 // °C; by day as warm as outside and a few K more
	Heater [12][24]float64 // W, mean; 0 by day
	Hours  [12]float64     // of a night that the heater runs, counted at full power
	Nights [12]float64     // in the van
}

// Work finds out how warm and dry the van is.
func Work(in Inputs) Result {
	if in.Skin <= 0 {
		in.Skin = usualSkin
	}
	if in.Habit == (Habit{}) {
		in.Habit = usually
	}
	in.Habit.ToBed, in.Habit.Up = min(max(in.Habit.ToBed, evening+1), 23), min(max(in.Habit.Up, 1), morning)
	r := Result{in: in, Fixed: in.fixed()}
	r.Lost, r.Details = in.losses()
	r.Surfaces = surfaces(r.Lost)
	for _, g := range in.Glass {
		r.Glass += g.Area * g.transmittance()
	}
	r.Cab = in.cab(r.Lost)
	r.spend()
	r.sum()
	r.Winters = in.behind(r.Nights)
	r.Year = r.year()
	r.found, r.remedies = r.judge(), map[string][]Remedy{}
	for _, f := range r.found {
		r.remedies[f.Key()] = r.tried(f)
	}
	return r
}

const usualSkin = 0.8 // mm of a van's sheet; common practice, no source

// spend follows the nights.
func (r *Result) spend() {
	s := r.in.sleeping(r.Lost)
	r.Flow = s.flow
	r.Usual, r.Coldest = -1, -1
	for month := 1; month <= 12; month++ {
		m := &r.in.Months[month-1]
		n := s.spend(m.Usual)
		n.Month = month
		r.Nights = append(r.Nights, n)
		if m.Nights <= 0 {
			continue
		}
		if r.Usual < 0 || lowest24(m.Usual) < lowest24(r.in.Months[r.Nights[r.Usual].Month-1].Usual) {
			r.Usual = len(r.Nights) - 1
		}
		cold := s.spend(m.Cold)
		cold.Month, cold.Cold = month, true
		r.Nights = append(r.Nights, cold)
		if r.Coldest < 0 || lowest24(m.Cold) < lowest24(r.in.Months[r.Nights[r.Coldest].Month-1].Cold) {
			r.Coldest = len(r.Nights) - 1
		}
	}
	if r.Usual < 0 { // no nights are planned in any month: the coldest of the year stands in
		for i := range r.Nights {
			if r.Usual < 0 || lowest24(r.in.Months[i].Usual) < lowest24(r.in.Months[r.Usual].Usual) {
				r.Usual = i
			}
		}
		r.Coldest = r.Usual
	}
}

func lowest24(d Day) float64 {
	low := math.Inf(1)
	for _, t := range d.Outside {
		low = math.Min(low, t)
	}
	return low
}

// sum adds up what the van loses for each degree.
func (r *Result) sum() {
	deviations := 0.0
	for _, s := range r.Surfaces {
		if s.Group == Front {
			continue // it is in what goes to the cab
		}
		r.Loss += s.Loss
		deviations += s.Deviation
	}
	r.Loss += r.Glass + r.Cab + r.airLoss()
	r.Unsure = deviations
}

// airLoss is the heat that the air of a usual night takes with it, W/K.
func (r *Result) airLoss() float64 { return airHeat * r.usual().Ventilate }

const airHeat = 0.34 // Wh/(m3·K) (from memory)

func (r *Result) usual() *Night   { return &r.Nights[r.Usual] }
func (r *Result) coldest() *Night { return &r.Nights[r.Coldest] }

// dayBy is how much warmer than outside a closed van stands by day.
const dayBy = 4.0 // K; common practice, no source

func (r *Result) year() Year {
	var y Year
	for i := range r.Nights {
		n := &r.Nights[i]
		if n.Cold {
			continue
		}
		m := n.Month - 1
		y.Nights[m] = r.in.Months[m].Nights
		for h := range 24 {
			y.Cabin[m][h] = r.in.Months[m].Usual.Outside[h] + dayBy
		}
		for _, h := range n.Hours {
			y.Cabin[m][h.Hour], y.Heater[m][h.Hour] = h.Inside, h.Heater
		}
		y.Hours[m] = n.Share * minutes / 60
	}
	return y
}
