package zone

import "math"

// gamma makes the rule of two stages damp the fastest modes at once (Alexander 1977).
var gamma = 1 - math.Sqrt2/2

// warm works out the temperatures at the end of the step and their means over it, with water condensing at the rates
// known so far. Each stage is an implicit step of γ·Δt: a body's temperature follows from that of the air, so that one
// equation in the air's temperature remains.
func (r *Run) warm(d Drive) {
	h := gamma * r.step
	r.stage(d, h, r.start, r.mean)
	for i, y := range r.mean {
		r.end[i] = r.start[i] + (1-gamma)*r.step*(y-r.start[i])/h
	}
	r.stage(d, h, r.end, r.end)
	for i := range r.mean {
		r.mean[i] = (1-gamma)*r.mean[i] + gamma*r.end[i]
	}
}

// stage solves C·(to − from) = h·(heat gained at to). from and to may be one.
func (r *Run) stage(d Drive, h float64, from, to []float64) {
	escape := r.zone.Loss + AirHeat*d.Ventilation
	share := AirHeat * r.zone.Volume / h
	sink, source := share+escape, share*from[0]+escape*d.Outside+d.Heat
	for k, b := range r.zone.Bodies {
		whole := b.Capacity/h + b.ToAir + b.ToOutside
		sink += b.ToAir * (1 - b.ToAir/whole)
		source += b.ToAir / whole * r.gain(d, h, k, from[k+1])
	}
	air := source / sink
	for k, b := range r.zone.Bodies {
		whole := b.Capacity/h + b.ToAir + b.ToOutside
		to[k+1] = (r.gain(d, h, k, from[k+1]) + b.ToAir*air) / whole
	}
	to[0] = air
}

// gain is what a body has of heat but for the air's, W: from its own store, the outside, sources and water.
func (r *Run) gain(d Drive, h float64, k int, from float64) float64 {
	b := r.zone.Bodies[k]
	heat := b.Capacity/h*from + b.ToOutside*d.Outside + Latent*r.rate[k].mass
	if k < len(d.BodyHeat) {
		heat += d.BodyHeat[k]
	}
	return heat
}
