package lining

// under is the highest z below top at which the side still stands at y or
// further out, where at top it does not: first by 50 mm steps down, then by
// halves.
func (r *Room) under(w *wall, x, y, top float64) float64 {
	b := bracket{lo: top - 50, hi: top}
	for b.lo > r.floor {
		if b.atLo = r.side(w, x, b.lo); b.atLo >= y {
			break
		}
		b.hi, b.lo = b.lo, b.lo-50
	}
	if b.lo <= r.floor {
		return r.floor
	}
	lo, hi := b.lo, b.hi
	if w.thick(x, lo) == w.thick(x, hi) {
		r.narrowDown(&b, w, x, y)
	}
	for hi-lo > 0.05 {
		mid := (lo + hi) / 2
		if mid <= b.lo || mid < b.hi && r.side(w, x, mid) >= y {
			lo = mid
		} else {
			hi = mid
		}
	}
	return lo
}

// bracket is two heights between which a side comes in past a place: at the
// lower it stands so far out or further, at the upper it does not.
type bracket struct{ lo, hi, atLo, atHi float64 }

// narrowDown brings a bracket closer together as if the side leaned evenly, so
// that the halving need not ask where the answer is known. It wants a side
// without a step between.
func (r *Room) narrowDown(b *bracket, w *wall, x, y float64) {
	const beside = 0.02 // so far to each side of where an even lean would cross
	b.atHi = r.side(w, x, b.hi)
	for _, beside := range [...]float64{0, -beside, beside} {
		z := b.lo + (b.hi-b.lo)*(b.atLo-y)/(b.atLo-b.atHi) + beside
		if z <= b.lo || z >= b.hi {
			continue
		}
		if at := r.side(w, x, z); at >= y {
			b.lo, b.atLo = z, at
		} else {
			b.hi, b.atHi = z, at
		}
	}
}
