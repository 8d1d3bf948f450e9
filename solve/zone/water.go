package zone

// wet works out what condenses on each body during the step at its mean temperature, and the vapour at the end of the
// step and its mean over it, kg/m³.
//
// All bodies that bear water or could condense some take part at first. One that would dry more than lies on it gives
// that off evenly and takes no further part; the rest is worked out again, at most once for each body.
func (r *Run) wet(d Drive) (vapour, mean float64) {
	for k, b := range r.zone.Bodies {
		r.rate[k] = rate{}
		if b.Area*b.Transfer > 0 {
			r.rate[k] = rate{b.Area * b.Transfer, Vapour(r.mean[k+1], 1), 0}
		}
	}
	for range len(r.rate) + 1 {
		vapour, mean = r.mix(d)
		if !r.exhaust(mean) {
			break
		}
	}
	for k := range r.rate {
		if a := &r.rate[k]; a.strength > 0 {
			a.mass = a.strength * (mean - a.vapour)
		}
	}
	return vapour, mean
}

// mix solves the balance of vapour with the bodies that take part.
func (r *Run) mix(d Drive) (end, mean float64) {
	sink, source := d.Ventilation, d.Ventilation*d.OutsideVapour+d.Vapour
	for _, a := range r.rate {
		if a.strength > 0 {
			sink, source = sink+a.strength, source+a.strength*a.vapour
		} else {
			source -= a.mass
		}
	}
	return relax(r.state.Vapour, r.zone.Volume, sink, source, r.step)
}

// exhaust takes out bodies that would give off more than they have, and says whether there were any.
func (r *Run) exhaust(mean float64) (some bool) {
	for k := range r.rate {
		a := &r.rate[k]
		if a.strength > 0 && a.strength*(mean-a.vapour)*r.step < -r.lie[k] {
			*a = rate{0, a.vapour, -r.lie[k] / r.step}
			some = true
		}
	}
	return some
}
