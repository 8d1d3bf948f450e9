package power

import (
	"cmp"
	"math"
	"math/rand/v2"
	"slices"

	"tumblehome/solve/weather"
)

// stay is one trip of one year.
type stay struct {
	first   int // day of the year, 0 to 364, on whose morning it begins
	nights  int
	journey int
	month   int      // index among the journey's months
	onMains []uint64 // a bit for every night
}

// plan is the trips of every year, in order.
type plan [][]stay

// one is a kind of trip in one month.
type one struct {
	journey, month, number, nights int
	trips                          float64
}

// planOf lays the trips of each month on days of it, at random; long trips first, for they find room hardest. The same seed gives the same years.
func (in *Inputs) planOf(years int) plan {
	var all []one
	for j, journey := range in.Journeys {
		for i, m := range journey.Months {
			if m.Trips > 0 && journey.Nights > 0 {
				all = append(all, one{j, i, m.Number - 1, min(journey.Nights, weather.Days), m.Trips})
			}
		}
	}
	slices.SortStableFunc(all, func(a, b one) int { return cmp.Compare(b.nights, a.nights) })
	out := make(plan, years)
	for y := range out {
		const golden = 0x9e3779b97f4a7c15 // spreads small numbers over all bits
		r := rand.New(rand.NewPCG(in.Seed^0x7472697073, uint64(y+1)*golden))
		out[y] = in.yearOf(all, r)
	}
	return out
}

func (in *Inputs) yearOf(all []one, r *rand.Rand) []stay {
	var taken [weather.Days]bool
	var year []stay
	for _, o := range all {
		count := int(math.Floor(o.trips))
		if r.Float64() < o.trips-math.Floor(o.trips) {
			count++
		}
		for range count {
			if first, ok := o.room(&taken, r); ok {
				s := stay{first: first, nights: o.nights, journey: o.journey, month: o.month, onMains: make([]uint64, o.nights/64+1)}
				for n := range o.nights {
					taken[first+n] = true
					if r.Float64() < in.Journeys[o.journey].HookUp {
						s.onMains[n/64] |= 1 << (n % 64)
					}
				}
				year = append(year, s)
			}
		}
	}
	slices.SortFunc(year, func(a, b stay) int { return cmp.Compare(a.first, b.first) })
	return year
}

// room finds days that are free: at random, or else the first in the month. A trip that finds none is left out: trades that count nights say so.
func (o *one) room(taken *[weather.Days]bool, r *rand.Rand) (int, bool) {
	start, days := firstDay(o.number), monthDays[o.number]
	free := func(first int) bool {
		for n := range o.nights {
			if first+n >= weather.Days || taken[first+n] {
				return false
			}
		}
		return true
	}
	last := weather.Days - o.nights
	for range 20 {
		if first := min(start+r.IntN(days), last); free(first) {
			return first, true
		}
	}
	for first := min(start, last); first < start+days; first++ {
		if free(first) {
			return first, true
		}
	}
	return 0, false
}

func (s *stay) mains(night int) bool { return s.onMains[night/64]&(1<<(night%64)) != 0 }
