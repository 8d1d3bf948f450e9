package weather

// longRun is the share of days in each state after many of them. A hundred steps forget any start.
func (c *class) longRun() (share [states]float64) {
	for i := range share {
		share[i] = 1. / states
	}
	for range 100 {
		var next [states]float64
		var sum float64
		for i, row := range c.next {
			for j, p := range row {
				next[j] += share[i] * p
				sum += share[i] * p
			}
		}
		for j := range next {
			share[j] = next[j] / sum
		}
	}
	return share
}

// parts is into how many a state is divided where its mean is taken.
const parts = 20

// mean of the month's clearness in the long run, with its factor.
func (m *month) mean() (sum float64) {
	for s, share := range m.class.longRun() {
		for i := range parts {
			k := m.class.low + (float64(s)+(float64(i)+0.5)/parts)*(m.class.top-m.class.low)/states
			sum += share * m.fair(k) / parts
		}
	}
	return sum
}

// findFactor makes the long run's mean the month's. Each round leaves only what days at their ends fail to follow.
func (m *month) findFactor() {
	m.factor = 1
	for range 20 {
		if mean := m.mean(); mean > 0 {
			m.factor *= m.clearness / mean
		}
	}
}
