package lining

import (
	"math"
	"strings"

	"tumblehome/trade/takeoff"
)

// A Line is a net quantity of one layer in one bay.
type Line struct {
	takeoff.Line
	Surface string // floor, left, right, roof, doors, front
	Bay     string // left-2; the id of a door or a wheel arch
}

// lines are all lines: by surface, bay and layer from the steel inwards, the
// wheel arches last.
func (l *laid) lines() []Line {
	var all []Line
	for _, surface := range surfaces {
		for i, f := range l.fields[surface] {
			for _, layer := range f.layers {
				m2, at, ok := l.spread(surface, i, f, layer)
				if ok {
					all = append(all, l.quantities(surface, f, layer, m2, at)...)
				}
			}
		}
	}
	for i := range l.in.Arches {
		a := &l.in.Arches[i]
		for _, layer := range l.overArch(*a) {
			area := layer.line(a.Area*layer.share()*layer.times(), a.Centre)
			all = append(all, Line{Line: area, Surface: a.Side, Bay: a.ID})
		}
	}
	l.weigh(all)
	return all
}

// spread is the area in m2 that a layer could cover in a field and its centre.
func (l *laid) spread(surface string, i int, f *field, layer *Layer) (m2 float64, at [3]float64, ok bool) {
	lo, hi := limit(layer.From, -far), limit(layer.To, far)
	if surface == Doors {
		d := l.in.Doors[i]
		lo, hi = math.Max(lo, d.Low), math.Min(hi, d.Up)
		if hi <= lo || d.Up <= d.Low {
			return 0, at, false
		}
		at = d.Centre
		if layer.From != nil || layer.To != nil {
			at[2] = (lo + hi) / 2
		}
		m2 = d.Net * (hi - lo) / (d.Up - d.Low)
	} else {
		if surface == Floor || surface == Roof {
			lo, hi = -far, far
		}
		m2, at = l.in.Body.Net(surface, f.bay.From, f.bay.To, lo, hi)
	}
	c, there := f.course(layer, math.Min(math.Max(at[2], lo), hi))
	if !there || m2 <= 0 {
		return 0, at, false
	}
	return m2, inwards(f.bay.Surface, at, (c.InBay[0]+c.InBay[1])/2), true
}

// inwards moves a place on the skin into the van by a depth.
func inwards(surface string, at [3]float64, depth float64) [3]float64 {
	switch surface {
	case Left:
		at[1] += depth
	case Right:
		at[1] -= depth
	case Roof:
		at[2] -= depth
	case Floor:
		at[2] += depth
	case Front:
		at[0] += depth
	case "rear":
		at[0] -= depth
	}
	return at
}

// quantities are the line of a layer and that of its battens in one field.
func (l *laid) quantities(surface string, f *field, layer *Layer, m2 float64, at [3]float64) []Line {
	var lines []Line
	put := func(t takeoff.Line) { lines = append(lines, Line{Line: t, Surface: surface, Bay: f.bay.ID}) }
	if b := layer.Between; b != nil {
		every := float64(b.Every)
		if every <= 0 {
			every = usualEvery
		}
		metres := m2 * layer.share() / every * 1000
		wood := layer.stick(b.Of, metres, at)
		wood.Pointer += "/between"
		put(layer.line(math.Max(0, m2*layer.share()-metres*float64(b.Of.Wide)/1000)*layer.times(), at))
		put(wood)
		return lines
	}
	if layer.Of.Kind == Batten {
		put(layer.stick(layer.Of, layer.metres(m2)*layer.times(), at))
		return lines
	}
	c, _ := f.course(layer, at[2])
	put(layer.line(m2*layer.share()*layer.times()*meeting(f.bay, layer, c.over), at))
	return lines
}

// metres of batten on an area: the covered share by their width, else at the
// usual spacing.
func (l *Layer) metres(m2 float64) float64 {
	if l.Cover > 0 && l.Of.Wide > 0 {
		return m2 * l.share() / float64(l.Of.Wide) * 1000
	}
	return m2 / usualEvery * 1000
}

// meeting is the share of a bay that a layer fills, counted in areas of full
// thickness: less the faces of the ribs, plus the strips over them.
func meeting(b Bay, l *Layer, over bool) float64 {
	if over || l.Of.Kind != Fill || b.To <= b.From {
		return 1
	}
	steel := math.Min(1, b.Steel/(b.To-b.From))
	switch l.Ribs {
	case Filled:
		return 1
	case Bridged:
		if t := l.thick(); t > strip {
			return 1 - steel + steel*strip/t
		}
		return 1
	}
	return 1 - steel
}

// line is an area of the layer at a place.
func (l *Layer) line(m2 float64, at [3]float64) takeoff.Line {
	return l.of(l.Of, m2, "m2", m2*float64(l.Of.PerArea), at)
}

// stick is a length of batten at a place.
func (l *Layer) stick(of Material, metres float64, at [3]float64) takeoff.Line {
	mass := metres * float64(of.PerLength)
	if of.PerLength == 0 {
		mass = metres * float64(of.Wide) / 1000 * float64(of.PerArea)
	}
	return l.of(of, metres, "m", mass, at)
}

func (l *Layer) of(m Material, net float64, unit string, mass float64, at [3]float64) takeoff.Line {
	return takeoff.Line{Pointer: l.Pointer, Of: m.ID, Net: net, Unit: unit, Mass: mass, Dev: mass * float64(m.Spread),
		Error: m.ID, At: at, Group: "lining", Fitted: l.Fitted}
}

// weigh scales the lines of layers that were weighed to what they weigh.
func (l *laid) weigh(all []Line) {
	done := map[string]bool{}
	for _, surface := range surfaces {
		for i := range l.in.Layers[surface] {
			layer := &l.in.Layers[surface][i]
			if layer.Weighed == nil || done[layer.Pointer] {
				continue
			}
			done[layer.Pointer] = true
			sum := 0.0
			for k := range all {
				if belongs(all[k].Pointer, layer.Pointer) {
					sum += all[k].Mass
				}
			}
			for k := range all {
				if sum > 0 && belongs(all[k].Pointer, layer.Pointer) {
					all[k].Mass *= float64(*layer.Weighed) / sum
					all[k].Dev = 0
				}
			}
		}
	}
}

// belongs says whether a line is of a layer or of what the layer holds.
func belongs(line, layer string) bool {
	return line == layer || strings.HasPrefix(line, layer+"/")
}
