package runs

import (
	"encoding/json"
	"fmt"
	"math"
	"slices"

	"tumblehome/build"
	"tumblehome/quantity"
	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// detourClear is how far a proposed way keeps off what it goes round [mm].
const detourClear = 60

// detours are the shortest ways round a foul that clear it and foul nothing else: over, under or beside it, by corners put into the leg.
func (w *worker) detours(l *Led, f Foul) []finding.Proposal {
	box, ok := w.fouled(f)
	if !ok || len(l.Corners) != len(l.At) {
		return nil
	}
	type way struct {
		points []Point
		long   float64
		words  string
	}
	var best []way
	for axis, words := range [3][2]string{{"before it", "behind it"}, {"on its left", "on its right"}, {"under it", "over it"}} {
		for high, side := range words {
			corners := round(l.At[f.Leg], l.At[f.Leg+1], box, axis, high == 1)
			line := slices.Concat(l.At[:f.Leg+1], corners, l.At[f.Leg+1:])
			if w.clears(l, f, line, corners) {
				best = append(best, way{corners, length(line), side})
			}
		}
	}
	slices.SortStableFunc(best, func(a, b way) int { return int(math.Copysign(1, a.long-b.long)) })
	if len(best) == 0 {
		return nil
	}
	return []finding.Proposal{{Words: fmt.Sprintf("lead %s %s, %.1f m in all", l.ID, best[0].words, best[0].long/1000), Patch: patch("runs", l.ID, "points", l.with(f.Leg, best[0].points))}}
}

// fouled is the box of what is fouled.
func (w *worker) fouled(f Foul) (solid.Bounds, bool) {
	switch f.Kind {
	case Through, GasAt:
		for i := range w.in.Things {
			if w.in.Things[i].ID == f.ID {
				return w.in.Things[i].Solid.Bounds(), true
			}
		}
	case ArchAt:
		for _, a := range w.in.Arches {
			if a.ID == f.ID && a.Box.MinY*f.At[1] >= 0 {
				return a.Box, true
			}
		}
	case Bed:
		for _, s := range w.in.Sleepers {
			if s.On == f.ID && s.Mode == f.Mode {
				return s.Box, true
			}
		}
	case Hole:
		for _, o := range w.in.Openings {
			if o.ID == f.ID {
				return o.box(f.At), true
			}
		}
	}
	return solid.Bounds{}, false
}

// box is an opening as a flat box where a way crosses it.
func (o *Opening) box(at Point) solid.Bounds {
	b := solid.Bounds{MinX: o.X[0], MaxX: o.X[1], MinY: o.Y[0], MaxY: o.Y[1], MinZ: o.Z[0], MaxZ: o.Z[1]}
	switch acrossSurface(o.Through) {
	case 0:
		b.MinX, b.MaxX = at[0], at[0]
	case 1:
		b.MinY, b.MaxY = at[1], at[1]
	case 2:
		b.MinZ, b.MaxZ = at[2], at[2]
	}
	return b
}

// round are four corners that lead from a leg past one face of a box and back to it, to the nearest 5 mm.
func round(a, b Point, box solid.Bounds, axis int, high bool) []Point {
	s := inBox(a, b, grown(box, detourClear))
	if s.empty() {
		return nil
	}
	in, out := between(a, b, s.from), between(a, b, s.to)
	face := [3][2]float64{{box.MinX - detourClear, box.MaxX + detourClear}, {box.MinY - detourClear, box.MaxY + detourClear}, {box.MinZ - detourClear, box.MaxZ + detourClear}}[axis][0]
	if high {
		face = [3]float64{box.MaxX, box.MaxY, box.MaxZ}[axis] + detourClear
	}
	corners := []Point{in, in, out, out}
	corners[1][axis], corners[2][axis] = face, face
	for i := range corners {
		for k := range corners[i] {
			corners[i][k] = math.Round(corners[i][k]/5) * 5
		}
	}
	return corners
}

func grown(b solid.Bounds, by float64) solid.Bounds {
	return solid.Bounds{MinX: b.MinX - by, MinY: b.MinY - by, MinZ: b.MinZ - by, MaxX: b.MaxX + by, MaxY: b.MaxY + by, MaxZ: b.MaxZ + by}
}

// clears says whether a line no longer has a foul and has no other that was not there before, and its new corners lie in the room.
func (w *worker) clears(l *Led, f Foul, line, corners []Point) bool {
	if len(corners) == 0 {
		return false
	}
	for _, p := range corners {
		room := w.in.Room
		if w.inCab(p) || p[0] > room.Rear() || p[2] < room.Floor() || p[2] > room.Roof(p[0], p[1]) || p[1] < room.Left(p[0], p[2]) || p[1] > room.Right(p[0], p[2]) {
			return false
		}
	}
	same := func(g Foul) func(Foul) bool {
		return func(h Foul) bool { return g.Kind == h.Kind && g.ID == h.ID && g.Mode == h.Mode }
	}
	for i := 1; i < len(corners); i++ {
		if w.hangsAcross(corners[i-1], corners[i]) {
			return false
		}
	}
	after := w.fouls(line, w.own(l.ID))
	for _, g := range after {
		if same(f)(g) || !slices.ContainsFunc(l.Fouls, same(g)) {
			return false
		}
	}
	return true
}

// belowHole is how near before an opening nothing is to be hung [mm]: common practice, no source.
const belowHole = 300

// hangsAcross says whether a leg out in the room hangs before an opening: under a fan or a hatch, in a doorway.
func (w *worker) hangsAcross(a, b Point) bool {
	return slices.ContainsFunc(w.in.Openings, func(o Opening) bool {
		s := o.spans(a, b)
		return o.In == "" && !s.empty() && math.Abs(w.beforeSurface(o.Through, between(a, b, s.middle()))) < belowHole
	})
}

// with writes the corners of a way with further ones put in behind one of them.
func (l *Led) with(leg int, corners []Point) []any {
	var out []any
	for i, c := range l.Corners {
		out = append(out, written(c))
		if i == leg {
			for _, p := range corners {
				out = append(out, written(build.Point3{X: lowAt(p[0]), Y: lowAt(p[1]), Z: lowAt(p[2])}))
			}
		}
	}
	return out
}

func lowAt(v float64) build.AxisRule {
	return build.AxisRule{Form: build.LowAt, A: build.Point{Plus: quantity.Length(v)}}
}

// written is a corner as it stands in the document.
func written(p build.Point3) any {
	if p.At.Of != "" {
		return p.At.String()
	}
	return map[string]json.RawMessage{"x": rule(p.X), "y": rule(p.Y), "z": rule(p.Z)}
}

// rule is a rule as JSON: a number where it is one.
func rule(r build.AxisRule) json.RawMessage {
	text := r.String()
	if json.Valid([]byte(text)) {
		return json.RawMessage(text)
	}
	quoted, _ := json.Marshal(text)
	return quoted
}
