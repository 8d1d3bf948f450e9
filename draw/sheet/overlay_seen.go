package sheet

import "tumblehome/reckon"

// Seen says what of an overlay there is in a drawing, so that the words beside it explain that and no more.
type Seen struct {
	Tall, Short, Nobody bool    // floor where the tallest, only the shortest or nobody aboard stands upright
	Most                float64 // the most headroom over the floor [mm]
	Ring                bool    // a place where the way is narrowest
	Blocked             bool    // by day one does not get everywhere on foot, so that none is
}

// See looks at the floor of a mode.
func See(r *reckon.Reckoning, mode string) Seen {
	d := newDrawing(r, View{Mode: mode})
	f := d.floorOf()
	if f == nil {
		return Seen{}
	}
	var s Seen
	_, wide, ring := d.narrow(f)
	s.Ring, s.Blocked = ring, !ring && wide == 0
	_, s.Most = f.Most()
	tall, short := d.statures()
	for c, free := range f.Free {
		if !free || !d.inside(f, c) {
			continue
		}
		switch high := f.Headroom[c/f.NY][c%f.NY]; {
		case high >= tall:
			s.Tall = true
		case high >= short:
			s.Short = true
		default:
			s.Nobody = true
		}
	}
	return s
}
