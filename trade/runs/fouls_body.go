package runs

import "math"

// throughRibs finds the ribs whose steel the leg would have to be led through: behind the lining, nearer to the skin than the rib is deep.
func (w *worker) throughRibs(a, b Point, add func(Foul, stretch)) {
	for _, r := range w.in.Ribs {
		s := stretch{0, 1}.slab(a[0], b[0], r.From, r.To)
		if s.empty() {
			continue
		}
		p := between(a, b, s.middle())
		if surface, before := w.surfaceAt(p); surface == r.On && before < 0 && w.steel(r.On, p) < r.Depth-1 {
			add(Foul{Kind: RibKind, ID: r.ID, Surface: r.On}, s)
		}
	}
}

// steel is how far a point is from the skin of a side or the roof.
func (w *worker) steel(on string, p Point) float64 {
	switch on {
	case left:
		return p[1] - w.in.Skin.Left(p[0], p[2])
	case right:
		return w.in.Skin.Right(p[0], p[2]) - p[1]
	}
	return w.in.Skin.Roof(p[0], p[1]) - p[2]
}

func (w *worker) throughArches(a, b Point, add func(Foul, stretch)) {
	for _, arch := range w.in.Arches {
		if s := inBox(a, b, arch.Box); (s.to-s.from)*distance(a, b) > grazed {
			add(Foul{Kind: ArchAt, ID: arch.ID}, s)
		}
	}
}

// throughOpenings finds doors, windows and holes across which a leg lies on a surface. A way that ends in a hole leads out through it; a door opens
// wherever a way begins or ends.
func (w *worker) throughOpenings(line []Point, a, b Point, add func(Foul, stretch)) {
	for _, o := range w.in.Openings {
		s := o.spans(a, b)
		if o.In != "" || s.empty() || !o.Door && (o.holds(line[0]) || o.holds(line[len(line)-1])) {
			continue
		}
		if surface, _ := w.surfaceAt(between(a, b, s.middle())); surface == o.Through {
			add(Foul{Kind: Hole, ID: o.ID}, s)
		}
	}
}

// spans is the stretch of a leg within the two spans of an opening that lie in its surface.
func (o *Opening) spans(a, b Point) stretch {
	s := stretch{0, 1}
	for axis, span := range [][2]float64{o.X, o.Y, o.Z} {
		if span[1] > span[0] && axis != acrossSurface(o.Through) {
			s = s.slab(a[axis], b[axis], span[0], span[1])
		}
	}
	return s
}

func (o *Opening) holds(p Point) bool { return !o.spans(p, p).empty() }

// acrossSurface is the axis square to a surface.
func acrossSurface(surface string) int {
	switch surface {
	case left, right:
		return 1
	case roof, floor:
		return 2
	}
	return 0
}

// lookEvery is how far apart a leg is held against the skin [mm].
const lookEvery = 50

// throughSkin finds where a leg leaves the body, unless it does so through an opening.
func (w *worker) throughSkin(line []Point, a, b Point, add func(Foul, stretch)) {
	n := int(math.Ceil(distance(a, b) / lookEvery))
	out, surface := stretch{1, 0}, ""
	for k := range n + 1 {
		share := float64(k) / float64(max(n, 1))
		p := between(a, b, share)
		if s, before := w.surfaceAt(p); w.inCab(p) || s == "" || before >= 0 {
			continue
		}
		if s, beyond := w.outside(p); beyond > 0 && !w.leadsOut(line, s) {
			out.from, out.to, surface = min(out.from, share), max(out.to, share), s
		}
	}
	if surface != "" {
		add(Foul{Kind: Skin, Surface: surface}, out)
	}
}

// leadsOut says whether a way begins or ends in an opening of this surface.
func (w *worker) leadsOut(line []Point, surface string) bool {
	for i := range w.in.Openings {
		if o := &w.in.Openings[i]; o.Through == surface && (o.holds(line[0]) || o.holds(line[len(line)-1])) {
			return true
		}
	}
	return false
}
