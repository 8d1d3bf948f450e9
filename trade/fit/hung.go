package fit

import "tumblehome/solve/solid"

// hung is a part hung in one of its ways, with what was worked out of it so far: that is the same in every mode.
type hung struct {
	*Part
	way   int
	tries []try
}

// try is a part opened by a share of its travel.
type try struct {
	share float64
	path  solid.Boxed // what it passes through on its way; worked out once it is asked for, as is
	out   *leaving    // how it then stands out of the room
}

// hangsOf are all ways of hanging a part.
func hangsOf(p *Part) []hung {
	all := make([]hung, p.Ways)
	for way := range all {
		all[way] = hung{Part: p, way: way}
	}
	return all
}

// at is what is known of a share.
func (h *hung) at(share float64) *try {
	for i := range h.tries {
		if h.tries[i].share == share {
			return &h.tries[i]
		}
	}
	h.tries = append(h.tries, try{share: share})
	return &h.tries[len(h.tries)-1]
}

// through is what it passes through when opened by a share.
func (h *hung) through(share float64) solid.Boxed {
	t := h.at(share)
	if t.path.Solid == nil {
		t.path = h.Swept(h.way, share).Boxed()
	}
	return t.path
}

// leaving is how it stands out of the room when opened by a share.
func (h *hung) leaving(w *worker, share float64) leaving {
	t := h.at(share)
	if t.out == nil {
		out := w.leaving(h.Opened(h.way, share), func() solid.Solid { return h.Opened(h.way, 0) })
		t.out = &out
	}
	return *t.out
}
