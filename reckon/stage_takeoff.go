package reckon

import (
	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/catalogue/settings"
	"tumblehome/quantity"
	"tumblehome/solve/solid"
	"tumblehome/trade/arrangement"
	"tumblehome/trade/takeoff"
)

// fittingLines are the lines of every fitting where it is while driving; what is out of the van then weighs nothing, nor does what is not there but
// has its place kept.
func fittingLines(things map[string]thing, where *arrangement.Result, rows *catalogue.Catalogue, today quantity.Date) []takeoff.Line {
	drive := where.Mode("drive")
	var lines []takeoff.Line
	for i := range drive.All {
		s := &drive.All[i]
		t := things[s.ID]
		if s.Off || t.later() {
			continue
		}
		size := t.size // of what has no place yet
		if rest := where.Find(s.ID); rest.Placed() {
			size = t.ownSize(rest.Box)
		}
		g := massOf(s.ID, &t, size, rows)
		lines = append(lines, g.line("/fittings/"+s.ID, t.Buy, "fitting", s.Middle, isFitted(t.Fitted, today)))
	}
	return lines
}

// ownSize is the size of a thing along its own axes: its place tells it, but the box about a thing that is turned is larger than it.
func (t *thing) ownSize(b solid.Bounds) [3]float64 {
	size := sides(b)
	if t.Turn == nil || *t.Turn == 0 {
		return size
	}
	for axis, own := range t.size {
		if own > 0 {
			size[axis] = own
		}
	}
	return size
}

func sides(b solid.Bounds) [3]float64 {
	return [3]float64{b.MaxX - b.MinX, b.MaxY - b.MinY, b.MaxZ - b.MinZ}
}

// massesAt are the lines of things of which only mass and middle are known. What is left out of a place is in the middle of the van.
func massesAt(pointer, group string, all map[string]build.MassAt, room digestedRoom, fitted bool) []takeoff.Line {
	var lines []takeoff.Line
	for _, id := range build.SortedKeys(all) {
		lines = append(lines, massAt(pointer+"/"+id, group, all[id], room, fitted))
	}
	return lines
}

func massAt(pointer, group string, m build.MassAt, room digestedRoom, fitted bool) takeoff.Line {
	g := spreadOf(m.Mass.WithDefault(gearSpread))
	g.key = pointer
	at := [3]float64{(room.Front() + room.Rear()) / 2, 0, room.Floor() + looseHeight}
	for axis, given := range []*quantity.Length{m.X, m.Y, m.Z} {
		if given != nil {
			at[axis] = given.Float()
		}
	}
	return g.line(pointer, "", group, at, fitted)
}

const (
	gearSpread  = 0.2 // of a bare guess of loose things: common practice, no source
	looseHeight = 300 // mm above the floor, where loose things lie: common practice, no source
)

// pastLayers are the lines of the linings as they were when the van was weighed with its linings in.
func pastLayers(lines []takeoff.Line) []takeoff.Line {
	var out []takeoff.Line
	for _, l := range lines {
		if l.Fitted {
			out = append(out, l)
		}
	}
	return out
}

// holds is how much a fitting holds [l], 0 for one that is no tank.
func (t *thing) holds() quantity.Volume {
	if t.Holds != nil {
		return *t.Holds
	}
	if t.row != nil && t.row.Group == "water" {
		return valueOf(t.row.Holds)
	}
	return 0
}

// softness is the share of its least dimension by which a thing may be pressed.
func (t thing) softness() float64 {
	switch t.Make {
	case "curtains", "blackout":
		return 1
	case "cushions":
		return 0.5
	}
	return 0
}

// later reports whether only the place of a thing is kept.
func (t thing) later() bool { return bool(valueOf(t.Later)) }

// rests reports whether people sit or lie on a thing.
func (t thing) rests() bool { return t.does(settings.Sits) || t.does(settings.Lies) }

// nameOf is what a fitting is called.
func nameOf(id string, f build.Fitting) string {
	if f.Called != "" {
		return f.Called
	}
	return spaced(id)
}

// spaced turns an id into words: gear-drawer is a gear drawer.
func spaced(id string) string {
	text := []byte(id)
	for i, c := range text {
		if c == '-' {
			text[i] = ' '
		}
	}
	return string(text)
}
