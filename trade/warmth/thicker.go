package warmth

import "math"

// strip is how much of an insulation goes over the faces of ribs where it bridges them, mm: as the lining lays it.
const strip = 10.0

// regrown is a copy of the inputs with more of one layer: so many mm in the bays, and so many over the ribs.
func (in Inputs) regrown(pointer string, inBay, onRib float64) Inputs {
	fields := make([]Field, len(in.Fields))
	for i := range in.Fields {
		fields[i] = in.Fields[i].regrown(pointer, inBay, onRib)
	}
	in.Fields = fields
	return in
}

// regrown lays the courses anew, in their order, with more of one: what lies over ribs and bays alike moves inwards as far as the thicker of the two does.
func (f Field) regrown(pointer string, inBay, onRib float64) Field {
	was, is := [2]float64{0, f.deepest()}, [2]float64{0, f.deepest()} // how far bay and rib reach
	courses := append([]Course(nil), f.Courses...)
	for i := range courses {
		c := &courses[i]
		over := c.InBay == c.OnRib
		if over {
			was[0] = math.Max(was[0], was[1])
			is[0] = math.Max(is[0], is[1])
			was[1], is[1] = was[0], is[0]
		}
		for k, at := range []*[2]float64{&c.InBay, &c.OnRib} {
			old, thick := *at, at[1]-at[0]
			if c.Pointer == pointer {
				thick += [2]float64{inBay, onRib}[k]
				if over {
					thick = old[1] - old[0] + inBay
				}
			}
			low := old[0] + is[k] - was[k]
			*at = [2]float64{low, low + math.Max(thick, 0)}
			was[k], is[k] = math.Max(was[k], old[1]), math.Max(is[k], at[1])
		}
	}
	f.Courses = courses
	return f
}

func (f *Field) deepest() float64 {
	depth := 0.0
	for _, r := range f.Ribs {
		depth = math.Max(depth, r.Depth)
	}
	return depth
}

// bridged is a copy of the inputs with a strip of a layer over the ribs as well.
func (in Inputs) bridged(pointer string) Inputs {
	for i := range in.Fields {
		for _, c := range in.Fields[i].Courses {
			if c.Pointer == pointer && c.InBay != c.OnRib && c.OnRib[1]-c.OnRib[0] < thinnest {
				return in.regrown(pointer, 0, math.Min(strip, c.InBay[1]-c.InBay[0]))
			}
		}
	}
	return in
}
