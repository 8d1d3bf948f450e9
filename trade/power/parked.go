package power

import "tumblehome/solve/weather"

// stand is the van between trips, from one day of the year to another.
func (w *walk) stand(y, from, to int) {
	if from == to {
		return
	}
	switch w.home {
	case AtHomeMains:
		w.missing = 0
		return
	case AtHomeNothing:
		for day := from; day < to; day++ {
			w.idle(y, day)
		}
		return
	}
	for day := from; day < to; day++ {
		if day+1 < to && w.staysFull(y, day) {
			continue
		}
		w.parked(y, day)
	}
}

// idle is a day without charge.
func (w *walk) idle(y, day int) (warmth, bottom float64) {
	k := &w.k
	warmth = k.at(w.sky.mean(y, day))
	bottom = k.bottom(warmth)
	was := w.missing
	w.missing += k.leak(w.missing, warmth)
	if k.sunny && w.home != AtHomeNothing {
		return warmth, bottom // what is always on goes hour by hour
	}
	w.missing += 24 * drained(k.always/k.gives, k.rated, k.nature.peukert)
	w.missing = min(w.missing, max(was, bottom))
	return warmth, bottom
}

// staysFull tells that a battery all but full will be so again before the next morning, whatever the night takes: then the day need not be gone through.
func (w *walk) staysFull(y, day int) bool {
	k := &w.k
	if !k.sunny || w.missing > 0.01*k.holds {
		return false
	}
	const four, half = 4, 0.5 // times what is lost, of what the panel would give if it stayed cool
	lost := 24*k.always/k.gives + k.leak(0, w.sky.mean(y, day))
	return half*float64(w.sky.wh[y*weather.Days+day])*k.roof.scale/k.takes > four*lost && w.sky.mean(y, day) > 1
}

// parked is a day in the sun.
func (w *walk) parked(y, day int) {
	k := &w.k
	warmth, bottom := w.idle(y, day)
	if !k.sunny {
		return
	}
	allowed := k.allowed(warmth)
	freezing := !k.lead && !k.cutOff && warmth < 0
	at := 24*day + w.up
	for i := range 24 {
		net := w.sky.sun(y, at+i, &k.roof) - k.always
		if net >= 0 {
			w.missing = k.fill.after(w.missing, min(net/k.takes, allowed), 1)
			if freezing && net > 0 {
				w.tally.cold++
			}
			continue
		}
		was := w.missing
		w.missing += drained(-net/k.gives, k.rated, k.nature.peukert)
		w.missing = min(w.missing, max(was, bottom))
	}
}
