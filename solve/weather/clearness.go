package weather

import (
	"math"
	"math/rand/v2"
)

// state is the one of the ten that a day's clearness falls in.
func (c *class) state(clearness float64) int {
	s := int((clearness - c.low) / (c.top - c.low) * states)
	return min(max(s, 0), states-1)
}

// after draws the clearness of the day after one of the clearness given.
func (c *class) after(clearness float64, r *rand.Rand) float64 {
	row := &c.next[c.state(clearness)]
	u, s := r.Float64(), 0
	for ; s < states-1; s++ {
		if u -= row[s]; u < 0 {
			break
		}
	}
	for row[s] == 0 { // a row that adds to 0.998 may be overrun into a state never seen
		s--
	}
	return c.low + (float64(s)+r.Float64())*(c.top-c.low)/states
}

// tries is how often a steady month is drawn before the nearest is taken; near is how close to its mean is close enough.
const (
	tries = 50
	near  = 0.01
)

// once fills into with the clearness of the month's days and gives their light; yesterday is that of the day before.
func (m *month) once(into []float64, yesterday float64, r *rand.Rand) (light float64) {
	k := yesterday / m.factor
	for i := range into {
		k = m.class.after(k, r)
		into[i] = m.fair(k)
		light += into[i] * m.days[i].light
	}
	return light
}

// steady fills into with days that have the light of the month; spare is as long.
func (m *month) steady(into, spare []float64, yesterday float64, r *rand.Rand) {
	wanted, best := m.clearness*m.light, math.Inf(1)
	for range tries {
		if off := math.Abs(m.once(spare, yesterday, r) - wanted); off < best {
			best = off
			copy(into, spare)
		}
		if best <= near*wanted {
			break
		}
	}
	scale(into, m.days, wanted)
}

// dullestDay is the least clearness of a day, unless its month has less.
const dullestDay = 0.02

// fair is a day's clearness by the class brought to the month, whose clearness seldom is the mean of the class.
func (m *month) fair(k float64) float64 {
	return min(max(k*m.factor, min(dullestDay, m.clearness)), clearestDay)
}

// scale brings the sum of the light to what is wanted with no day clearer or duller than can be. Where days stop at an
// end the others take their part, so it is done over: eight times suffice.
func scale(clearness []float64, days []day, wanted float64) {
	for range 8 {
		var sum, whole float64
		for i, k := range clearness {
			sum += k * days[i].light
			whole += days[i].light
		}
		if math.Abs(sum-wanted) <= 1e-12*wanted || sum == 0 {
			return
		}
		factor, least := wanted/sum, math.Min(dullestDay, wanted/whole)
		for i, k := range clearness {
			clearness[i] = math.Min(math.Max(k*factor, least), clearestDay)
		}
	}
}

// clearness draws every day of a year. Before January its own days are run through, so that the start is forgotten;
// over months without sun the last day before them is remembered.
func (k *Maker) clearness(r *rand.Rand, into, spare []float64) {
	yesterday := k.months[0].clearness
	for range 10 {
		yesterday = k.months[0].class.after(yesterday, r)
	}
	first := 0
	for i, n := range monthDays {
		m := &k.months[i]
		days := into[first : first+n]
		first += n
		switch {
		case m.light == 0 || m.clearness == 0:
			clear(days)
			continue
		case k.steady:
			m.steady(days, spare[:n], yesterday, r)
		default:
			m.once(days, yesterday, r)
		}
		yesterday = days[n-1]
	}
}
