package runs

import "slices"

// worker holds the inputs while they are worked on.
type worker struct {
	in Inputs
}

// Work says where everything runs.
func Work(in Inputs) Result {
	w := &worker{in: in}
	r := Result{}
	for _, way := range in.Ways {
		r.Ways = append(r.Ways, w.led(way))
	}
	for i := range in.Circuits {
		r.Routes = append(r.Routes, w.route(&in.Circuits[i]))
	}
	r.found = w.judge(&r)
	r.in = in
	r.in.Laid = nil // it would keep all of a reckoning
	return r
}

func (w *worker) led(way Way) Led {
	l := Led{Way: way, Every: heldEvery}
	for i := range w.in.Circuits {
		if c := &w.in.Circuits[i]; slices.Contains(c.Along, way.ID) {
			l.Carries = append(l.Carries, Carried{c.ID, c.Source, c.Section, Diameter(c.Section)})
			if c.Battery {
				l.Every = batteryHeldEvery
			}
		}
	}
	if outer := l.conductors(); len(outer) > 0 {
		l.Least, _ = sold(BoreFor(outer, mostFull))
		if way.Bore > 0 {
			l.Fill = Fill(outer, way.Bore)
		}
	}
	if len(way.At) < 2 {
		return l
	}
	l.Length, l.Bends = length(way.At), bends(way.At)
	l.Supports = Supports(l.Length, l.Every)
	l.Covers, l.Fouls = w.covers(way.At), w.fouls(way.At, w.own(way.ID))
	return l
}

// own are the fittings between which the cables lead that take a way.
func (w *worker) own(way string) []string {
	var out []string
	for i := range w.in.Circuits {
		if c := &w.in.Circuits[i]; slices.Contains(c.Along, way) {
			out = append(out, c.fittings()...)
		}
	}
	return out
}

// conductors are the outer diameters of all that a way carries, two for each circuit; none if one of them is not known.
func (l *Led) conductors() []float64 {
	var out []float64
	for _, c := range l.Carries {
		if c.Diameter == 0 {
			return nil
		}
		out = append(out, c.Diameter, c.Diameter)
	}
	return out
}

// thickest is the outer diameter of the thickest cable in a way.
func (l *Led) thickest() float64 {
	d := 0.0
	for _, c := range l.Carries {
		d = max(d, c.Diameter)
	}
	return d
}
