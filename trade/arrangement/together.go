package arrangement

import "tumblehome/build"

// Together is by how much each of several fittings is to be dragged on its own [mm], so that all of them end up moved as wanted. What
// stands in, upon or against another of them goes along with that one already. For each axis there are two numbers: for the one
// point of a rule, and for the second of `..`.
func Together(all map[string]build.Fitting, wanted map[string][3]float64) map[string][3][2]float64 {
	c := company{all, wanted}
	own := make(map[string][3][2]float64, len(wanted))
	for id, by := range wanted {
		f := all[id]
		r, _ := rulesOf(f.At)
		var shift [3][2]float64
		for axis, rule := range r {
			shift[axis] = [2]float64{by[axis] - c.along(f, axis, rule.A, 0), by[axis] - c.along(f, axis, rule.B, 0)}
		}
		own[id] = shift
	}
	return own
}

// company is fittings that are moved at once.
type company struct {
	all    map[string]build.Fitting
	wanted map[string][3]float64
}

// deepest is how many fittings may stand on one another; the document refuses rings.
const deepest = 64

// along is how far a point of a rule goes by itself.
func (c company) along(f build.Fitting, axis int, p build.Point, deep int) float64 {
	switch host := f.In + f.Upon; {
	case deep > deepest:
		return 0
	case p.Of != "":
		return c.shift(p.Of, axis, deep+1)
	case host != "":
		return c.shift(host, axis, deep+1)
	}
	return 0
}

// shift is how far a fitting goes: as wanted, or along with what it stands on.
func (c company) shift(id string, axis, deep int) float64 {
	if by, moved := c.wanted[id]; moved {
		return by[axis]
	}
	f := c.all[id]
	r, _ := rulesOf(f.At)
	return c.along(f, axis, r[axis].A, deep)
}

// StandsOn says whether a fitting stands, by however many others, in, upon or against another, or is that other one.
func StandsOn(all map[string]build.Fitting, id, on string) bool {
	return standsOn(all, id, on, map[string]bool{"": true})
}

func standsOn(all map[string]build.Fitting, id, on string, seen map[string]bool) bool {
	if seen[id] {
		return false
	}
	seen[id] = true
	f := all[id]
	found := id == on || standsOn(all, f.In+f.Upon, on, seen)
	r, _ := rulesOf(f.At)
	r.others(func(other string) { found = found || standsOn(all, other, on, seen) })
	return found
}
