package runs

import (
	"math"

	"tumblehome/solve/solid"
)

// Kind of foul.
type Kind string

// What a way may foul.
const (
	Skin    Kind = "skin"
	RibKind Kind = "rib"
	ArchAt  Kind = "arch"
	Hole    Kind = "opening"
	Through Kind = "through"
	Bed     Kind = "sleeper"
	GasAt   Kind = "gas"
)

// Foul is a part of a way that lies where it should not.
type Foul struct {
	Kind     Kind
	ID       string  // of what is fouled: rib, arch, opening, fitting, bed
	Surface  string  // of the skin
	Mode     string  // in which somebody lies there
	Leg      int     // between the corners Leg and Leg+1
	From, To float64 // along the way [mm]
	At       Point   // its middle
}

// fouls are those of a way, leg by leg.
func (w *worker) fouls(line []Point) []Foul {
	var out []Foul
	along := lengths(line)
	for i := 0; i+1 < len(line); i++ {
		a, b := line[i], line[i+1]
		add := func(f Foul, s stretch) {
			long := along[i+1] - along[i]
			f.Leg, f.From, f.To, f.At = i, along[i]+s.from*long, along[i]+s.to*long, between(a, b, s.middle())
			out = append(out, f)
		}
		w.throughThings(line, a, b, add)
		w.throughSleepers(a, b, add)
		w.throughRibs(a, b, add)
		w.throughArches(a, b, add)
		w.throughOpenings(line, a, b, add)
		w.throughSkin(line, a, b, add)
	}
	return once(out)
}

// once keeps one foul of each kind with each thing, the longest, so that a corner within a thing does not count twice.
func once(all []Foul) []Foul {
	var out []Foul
	for _, f := range all {
		same := -1
		for i := range out {
			if out[i].Kind == f.Kind && out[i].ID == f.ID && out[i].Surface == f.Surface && out[i].Mode == f.Mode {
				same = i
			}
		}
		switch {
		case same < 0:
			out = append(out, f)
		case f.To-f.From > out[same].To-out[same].From:
			out[same] = f
		}
	}
	return out
}

// atEnd is how near its end a way may pass through what it leads to [mm].
const atEnd = 60

// leadsTo says whether a way begins or ends at or in a box.
func leadsTo(line []Point, box solid.Bounds) bool {
	for _, p := range []Point{line[0], line[len(line)-1]} {
		if p[0] > box.MinX-atEnd && p[0] < box.MaxX+atEnd && p[1] > box.MinY-atEnd && p[1] < box.MaxY+atEnd && p[2] > box.MinZ-atEnd && p[2] < box.MaxZ+atEnd {
			return true
		}
	}
	return false
}

// grazed is a way through the corner of a thing that is none yet [mm].
const grazed = 5

// throughThings finds solid fittings that a leg passes through out in the room; on a surface it passes behind them.
func (w *worker) throughThings(line []Point, a, b Point, add func(Foul, stretch)) {
	for i := range w.in.Things {
		t := &w.in.Things[i]
		if t.Hollow && !t.Gas || inBox(a, b, t.Box).empty() || !t.Gas && leadsTo(line, t.Box) {
			continue
		}
		for _, s := range inSolid(a, b, t.Solid) {
			if (s.to-s.from)*distance(a, b) < grazed {
				continue
			}
			surface, before := w.surfaceAt(between(a, b, s.middle()))
			switch {
			case t.Gas && (surface == "" || before > -sheet):
				add(Foul{Kind: GasAt, ID: t.ID}, s)
			case !t.Gas && surface == "":
				add(Foul{Kind: Through, ID: t.ID}, s)
			}
		}
	}
}

// throughSleepers finds beds on which somebody would lie on the way.
func (w *worker) throughSleepers(a, b Point, add func(Foul, stretch)) {
	for _, p := range w.in.Sleepers {
		s := inBox(a, b, p.Box)
		if s.empty() {
			continue
		}
		if surface, _ := w.surfaceAt(between(a, b, s.middle())); surface == "" {
			add(Foul{Kind: Bed, ID: p.On, Mode: p.Mode}, s)
		}
	}
}

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

// throughOpenings finds doors, windows and holes across which a leg lies on a surface. A way that ends in a hole leads out through it.
func (w *worker) throughOpenings(line []Point, a, b Point, add func(Foul, stretch)) {
	for _, o := range w.in.Openings {
		s := o.spans(a, b)
		if o.In != "" || s.empty() || o.holds(line[0]) || o.holds(line[len(line)-1]) {
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
