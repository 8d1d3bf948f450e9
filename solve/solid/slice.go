package solid

import "slices"

// span is a stretch of v. Its ends lie on traces, named by their place in a list.
type span struct {
	low, high    float64
	below, above int
}

// cut gives the slices of what the rectangle passes over, from the least u to the greatest.
func (t *tipping) cut(tolerance float64, give func(from, till, low, high float64)) {
	var traces [32]trace
	var roomA, roomB, roomC [32]span
	a := t.breaks[0]
	for _, end := range t.breaks {
		if end-a <= hair {
			continue
		}
		active := traces[:0]
		for _, one := range t.traces {
			if middle := (a + end) / 2; one.from < middle && middle < one.till {
				active = append(active, one)
			}
		}
		for end-a > hair {
			inset := 1e-6 * (end - a)
			here := t.spans(active, a+inset, a+inset, roomA[:0])
			b := t.farthest(active, here, a, end, tolerance)
			for b-a > tolerance*(1+hair) && !alike(here, t.spans(active, b-inset, b-inset, roomB[:0])) {
				b = max(a+tolerance, (a+b)/2)
			}
			for _, s := range t.spans(active, a, b, roomC[:0]) {
				if s.high > s.low {
					give(a, b, s.low, s.high)
				}
			}
			a = b
		}
	}
}

// farthest is the end of the widest slice from a whose corners are within the tolerance. One no wider than the tolerance always is: whatever
// its heights, what is passed over is as near as the slice is wide.
func (t *tipping) farthest(active []trace, here []span, a, end, tolerance float64) float64 {
	b := end
	for _, s := range here {
		b = min(b, active[s.below].until(a, false, tolerance), active[s.above].until(a, true, tolerance))
	}
	b = min(end, max(b, a+tolerance))
	if end-b < hair {
		return end
	}
	return b
}

// spans are the heights that are passed over somewhere between two places: those of the traces there, and the gaps between them that
// are passed over, which no trace crosses.
func (t *tipping) spans(active []trace, from, till float64, to []span) []span {
	for i, one := range active {
		low, high := one.ends(from, till)
		to = append(to, span{low, high, i, i})
		for k := i; k > 0 && to[k].before(to[k-1]); k-- {
			to[k], to[k-1] = to[k-1], to[k]
		}
	}
	n := 0
	for i, s := range to {
		if i == 0 {
			continue
		}
		if last := &to[n]; s.low-last.high < hair || t.passes((from+till)/2, (last.high+s.low)/2) {
			if s.high > last.high {
				last.high, last.above = s.high, s.above
			}
		} else {
			n++
			to[n] = s
		}
	}
	return to[:min(len(to), n+1)]
}

// before orders spans from below.
func (s span) before(r span) bool { return s.low < r.low || s.low == r.low && s.high < r.high }

// alike says whether the same traces bound two lists of spans.
func alike(s, r []span) bool {
	return slices.EqualFunc(s, r, func(a, b span) bool { return a.below == b.below && a.above == b.above })
}
