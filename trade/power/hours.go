package power

func (d *aDay) while(watts float64, on func(h int) bool) (l line) {
	for h := range l {
		if on(h) {
			l[h] = watts
		}
	}
	return l
}

func (d *aDay) asleep(watts float64) line {
	return d.while(watts, func(h int) bool { return d.Day[h].Asleep > 0 })
}

// spread lays so many Wh evenly on the hours that weigh something.
func (d *aDay) spread(wh float64, weight func(h int) float64) (l line) {
	sum := 0.0
	for h := range l {
		sum += weight(h)
	}
	if sum <= 0 {
		return d.while(wh/24, func(int) bool { return true })
	}
	for h := range l {
		l[h] = wh * weight(h) / sum
	}
	return l
}

func (d *aDay) awake(wh float64) line {
	return d.spread(wh, func(h int) float64 { return float64(d.Day[h].Awake) })
}

// before lights the last hours before people sleep.
func (d *aDay) before(watts, hours float64) (l line) {
	bed := d.Up
	for h := range 24 { // the last hour awake, going back from getting up
		if at := (d.Up + 23 - h) % 24; d.Day[at].Asleep == 0 {
			bed = at
			break
		}
	}
	for h := range 24 {
		l[(bed-h+24)%24] = watts * max(0, min(1, hours-float64(h)))
	}
	return l
}

// meals pump most where the stove is lit.
func (d *aDay) meals(wh float64) line {
	return d.spread(wh, func(h int) float64 { return float64(d.Day[h].Awake) * (0.2 + d.Day[h].Cooking) })
}

func (d *aDay) water(habit int) float64 {
	each := litres[habit]
	if d.in.Litres > 0 {
		each = d.in.Litres
	}
	return each * float64(d.heads)
}

func (d *aDay) driven(watts float64) (l line) {
	for h := range l {
		l[h] = watts * d.Day[h].Driving
	}
	return l
}

// burning follows the heat given: half of the power whatever it gives, the other half with the heat; each start from cold wants the glow plug.
func (d *aDay) burning(watts float64) (l line) {
	for h := range l {
		heat := d.in.Heater[d.month][h]
		if heat <= 0 {
			continue
		}
		part := 1.0
		if d.in.HeaterPower > 0 {
			part = min(1, heat/d.in.HeaterPower)
		}
		l[h] = watts * (leastBurner + (1-leastBurner)*part)
		if d.in.Heater[d.month][(h+23)%24] <= 0 {
			l[h] += glow * glowFor
		}
	}
	return l
}
