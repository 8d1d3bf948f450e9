package warmth

import "math"

// strip is how much of an insulation goes over the faces of ribs where it bridges them, mm: as the lining lays it.
const strip = 10.0

// bridging lays a strip of a layer over the ribs as well, where that keeps them dry.
func (r *Result) bridging(pointer string) []Remedy {
	in := r.in
	in.Fields = make([]Field, len(r.in.Fields))
	for i := range r.in.Fields {
		in.Fields[i] = r.in.Fields[i].bridged(pointer)
	}
	next := *r
	next.in = in
	next.Lost, _ = in.losses()
	if next.withVents(in.Vents).still("warmth.surface.wet") {
		return nil
	}
	return []Remedy{{Kind: Bridge, About: pointer, Words: "lay a strip of the insulation over the ribs as well"}}
}

// bridged is the field with a strip of one layer over its ribs; what lies over all moves inwards as far as it must.
func (f Field) bridged(pointer string) Field {
	depth, bay, rib, more := 0.0, 0.0, 0.0, 0.0
	for _, r := range f.Ribs {
		depth = math.Max(depth, r.Depth)
	}
	rib = depth
	courses := append([]Course(nil), f.Courses...)
	for i := range courses {
		c := &courses[i]
		if c.InBay == c.OnRib {
			continue
		}
		c.OnRib[0] += more
		if c.Pointer == pointer && c.OnRib[1]+more == c.OnRib[0] {
			more += math.Min(strip, c.InBay[1]-c.InBay[0])
		}
		c.OnRib[1] = math.Max(c.OnRib[0], c.OnRib[1]+more)
		bay, rib = math.Max(bay, c.InBay[1]), math.Max(rib, c.OnRib[1])
	}
	inwards := math.Max(0, math.Max(bay, rib)-math.Max(bay, rib-more))
	for i := range courses {
		if c := &courses[i]; c.InBay == c.OnRib {
			for k := range 2 {
				c.InBay[k], c.OnRib[k] = c.InBay[k]+inwards, c.OnRib[k]+inwards
			}
		}
	}
	f.Courses = courses
	return f
}
