package runs

import (
	"slices"

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
	Gangway Kind = "gangway"
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

// fouls are those of a way, leg by leg. What the way feeds is its own: there it may end before or behind it.
func (w *worker) fouls(line []Point, own []string) []Foul {
	var out []Foul
	along := lengths(line)
	for i := 0; i+1 < len(line); i++ {
		a, b := line[i], line[i+1]
		add := func(f Foul, s stretch) {
			long := along[i+1] - along[i]
			f.Leg, f.From, f.To, f.At = i, along[i]+s.from*long, along[i]+s.to*long, between(a, b, s.middle())
			out = append(out, f)
		}
		w.throughThings(line, own, a, b, add)
		w.throughSleepers(a, b, add)
		w.throughRibs(a, b, add)
		w.throughArches(a, b, add)
		w.throughOpenings(line, a, b, add)
		w.throughSkin(line, a, b, add)
		w.acrossGangway(a, b, add)
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

// leadsTo says whether a way begins or ends at or in a box, or so near to it.
func leadsTo(line []Point, box solid.Bounds, atEnd float64) bool {
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
func (w *worker) throughThings(line []Point, own []string, a, b Point, add func(Foul, stretch)) {
	for i := range w.in.Things {
		t, off := &w.in.Things[i], float64(atEnd)
		if slices.Contains(own, t.ID) {
			off = atSide
		}
		if t.Hollow && !t.Gas || inBox(a, b, t.Box).empty() || !t.Gas && leadsTo(line, t.Box, off) {
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
