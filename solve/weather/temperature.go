package weather

import "math"

// The noise is drawn hour by hour. Its fading, per day, is what gives daily means a correlation of 0.75 from one to the
// next; a month of it then has daily means with a standard deviation of 1/1.152 of the noise's, and a day has a mean
// range of 1.22 times the noise's deviation. The first two follow from sums of the autocorrelation, the third is drawn.
const (
	fading     = 0.4479
	fromSpread = 1.152
	dayRange   = 1.219
)

// afterNoon is when the day is warmest, hours after the sun's noon; longestMorning is the longest warming before noon.
const (
	afterNoon      = 2.5
	longestMorning = 10.5
)

// temperatures is the course without noise, °C, and the deviation of the noise, K, of every hour.
func temperatures(c Climate, days []day) (course, noise []float64) {
	var amplitude, deviation [12]float64
	for m := range monthDays {
		deviation[m] = fromSpread * c.Spread[m]
		amplitude[m] = math.Sqrt(max(0, c.Range[m]*c.Range[m]-math.Pow(dayRange*deviation[m], 2)))
	}
	course, noise = smooth(keepingMeans(c.Temperature)), smooth(deviation)
	waves := smooth(amplitude)
	for i, d := range days {
		wave := d.wave()
		for h, w := range wave {
			course[24*i+h] += w * waves[24*i+h]
		}
	}
	return course, noise
}

// wave is the course of the day's temperature, highest less lowest about 1, mean 0; none without sun.
func (d *day) wave() (w [24]float64) {
	if d.light == 0 {
		return w
	}
	rise, peak := d.noon-min(d.half, longestMorning), d.noon+afterNoon
	var mean float64
	for h := range w {
		t := math.Mod(float64(h)+0.5-rise+48, 24)
		if warming := peak - rise; t < warming {
			w[h] = -math.Cos(math.Pi*t/warming) / 2
		} else {
			w[h] = math.Cos(math.Pi*(t-warming)/(24-warming)) / 2
		}
		mean += w[h] / 24
	}
	for h := range w {
		w[h] -= mean
	}
	return w
}

// smooth goes in straight lines from the middle of one month to that of the next, round the year.
func smooth(values [12]float64) []float64 {
	out := make([]float64, 0, Hours)
	for m, days := range monthDays {
		hours := 24 * days
		for h := range hours {
			from, to, part := m, (m+1)%12, (float64(h)+0.5)/float64(hours)-0.5
			reach := float64(days+monthDays[to]) / 2
			if part < 0 {
				from, to = (m+11)%12, m
				reach = float64(days+monthDays[from]) / 2
				part = 1 + part*float64(days)/reach
			} else {
				part *= float64(days) / reach
			}
			out = append(out, values[from]*(1-part)+values[to]*part)
		}
	}
	return out
}

// keepingMeans moves the corners of the smooth course until its monthly means are those given. Each round leaves at
// most half of the error, for a month's mean is at least half of its own corner.
func keepingMeans(wanted [12]float64) [12]float64 {
	corners := wanted
	for range 40 {
		course, hour := smooth(corners), 0
		for m, days := range monthDays {
			var sum float64
			for range 24 * days {
				sum += course[hour]
				hour++
			}
			corners[m] += wanted[m] - sum/float64(24*days)
		}
	}
	return corners
}
