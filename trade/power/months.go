package power

import "tumblehome/solve/weather"

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
