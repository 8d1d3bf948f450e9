package sheet

import (
	"cmp"
	"slices"

	"tumblehome/draw"
)

// Where a thing lies with respect to the plane of a view.
type depth int

const (
	beyond depth = iota // seen behind the plane
	cut                 // the plane goes through it
	before              // in front of the plane: only its ghost is drawn
)

// drawn is one thing in one view, ready to be laid down.
type drawn struct {
	thing int
	depth depth
	runs  [][]place
	box   [4]float64 // about the runs: from and to across, from and to along
	layer layer
}

// draw lays down a thing.
func (d *drawing) draw(view string, w drawn) draw.Group {
	t := &d.things[w.thing]
	s := sketch{view: d.views[view]}
	pen, fill := d.looks(t, w.depth, view)
	s.area(pen, fill, w.runs...)
	if !t.hidden && w.depth != before {
		d.inner(&s, t, view, w)
	}
	s.word(t.name)
	return s.group(view+"-"+t.ID, classOf(t, w.depth), t.describe(), map[string]string{"fitting": t.ID, "view": view})
}

func classOf(t *thing, at depth) string {
	switch {
	case t.hidden:
		return "fitting hidden"
	case at == before:
		return "fitting ghost"
	}
	return "fitting"
}

// looks are the pen and the fill of a thing.
func (d *drawing) looks(t *thing, at depth, view string) (draw.Pen, draw.Fill) {
	switch {
	case t.hidden:
		return draw.PenHidden, draw.NoFill
	case at == before:
		return draw.PenGhost, draw.NoFill
	case view == Plan && t.Where == "under":
		return draw.PenHidden, draw.NoFill
	case d.Show == Wiring: // the things stand back behind the ways
		return draw.PenFine, draw.FillPaper
	case soft(t.of):
		return draw.PenOutline, draw.FillWash
	case t.of.Make == "slat-bed" && view == Plan:
		return draw.PenOutline, draw.FillPaper
	case t.of.Make == "curtains" || t.of.Make == "blackout":
		return draw.PenFine, draw.FillWash
	case view == Cross && at == beyond:
		return draw.PenFine, draw.FillPaper
	case view == Plan && t.box.MinZ < d.level-200 && t.box.MaxZ > d.level:
		return draw.PenOutline, draw.FillDeep
	}
	return draw.PenOutline, draw.FillTone
}

// inner is what is drawn inside the outline: slats of a bed, a cross in what is cut through.
func (d *drawing) inner(s *sketch, t *thing, view string, w drawn) {
	b := t.box
	switch {
	case t.of.Make == "slat-bed" && view == Plan:
		const pitch, wide, edge = 85, 45, 25 // mm of slats at a usual spacing
		var slats [][]place
		if b.MaxX-b.MinX >= b.MaxY-b.MinY {
			for x := b.MinX + edge; x+wide < b.MaxX; x += pitch {
				slats = append(slats, []place{{x, b.MinY + edge}, {x + wide, b.MinY + edge}, {x + wide, b.MaxY - edge}, {x, b.MaxY - edge}})
			}
		} else {
			for y := b.MinY + edge; y+wide < b.MaxY; y += pitch {
				slats = append(slats, []place{{b.MinX + edge, y}, {b.MaxX - edge, y}, {b.MaxX - edge, y + wide}, {b.MinX + edge, y + wide}})
			}
		}
		s.area(draw.NoPen, draw.FillTone, slats...)
	}
}

// describe is what is said of a thing when the pointer rests on it.
func (t *thing) describe() string {
	b := t.Box
	return t.name + ", " + five(b.MaxX-b.MinX) + " × " + five(b.MaxY-b.MinY) + " × " + five(b.MaxZ-b.MinZ)
}

// around is the box about runs.
func around(runs [][]place) [4]float64 {
	b := [4]float64{runs[0][0][0], runs[0][0][0], runs[0][0][1], runs[0][0][1]}
	for _, run := range runs {
		for _, p := range run {
			b[0], b[1] = min(b[0], p[0]), max(b[1], p[0])
			b[2], b[3] = min(b[2], p[1]), max(b[3], p[1])
		}
	}
	return b
}

// inPlan are all things from above, lowest first, what is hidden in another right behind it, ghosts last.
func (d *drawing) inPlan() []drawn {
	return d.layers(Plan, func(t *thing) float64 { return t.box.MaxZ }, func(t *thing) (depth, []strip) {
		if d.overhead(t) {
			return before, fromAbove(t.Solid)
		}
		return beyond, fromAbove(t.Solid)
	})
}

// inSide are all things from the left, the farthest first; what stands left of the middle is in front of the plane.
func (d *drawing) inSide() []drawn {
	return d.layers(Side, func(t *thing) float64 { return -t.box.MinY }, func(t *thing) (depth, []strip) {
		if root := d.things[t.root].box; root.MaxY <= 0 || root.MinY+root.MaxY < 0 && root.MaxY < 100 {
			if t.hidden {
				return before, nil
			}
			return before, fromSide(t.Solid)
		}
		return beyond, fromSide(t.Solid)
	})
}

// inCross are the things that the cut goes through, and those ahead of it as far as they can be seen.
func (d *drawing) inCross() []drawn {
	return d.layers(Cross, func(t *thing) float64 { return t.box.MaxX }, func(t *thing) (depth, []strip) {
		switch {
		case t.box.MinX > d.cut || t.box.MaxX <= d.r.Body.Start():
			return beyond, nil
		case t.box.MaxX < d.cut && t.hidden:
			return beyond, nil
		case t.box.MaxX < d.cut:
			return beyond, fromBehind(t.Solid)
		}
		return cut, cutAcross(t.Solid, d.cut)
	})
}

// layers brings things into the order in which they lie on the paper.
func (d *drawing) layers(view string, order func(*thing) float64, see func(*thing) (depth, []strip)) []drawn {
	out := make([]drawn, 0, len(d.things))
	for i := range d.things {
		if d.astray(&d.things[i]) {
			continue
		}
		at, strips := see(&d.things[i])
		runs := silhouette(strips)
		if view == Cross {
			runs = swapped(runs)
		}
		if len(runs) > 0 {
			out = append(out, drawn{thing: i, depth: at, runs: runs, box: around(runs), layer: d.layer(i, at, order)})
		}
	}
	slices.SortStableFunc(out, func(a, b drawn) int { return a.layer.compare(b.layer) })
	return out
}

// layer is the place of a thing in the pile: ghosts above all; then by what can be seen of it or of what hides it; the host first.
type layer [3]float64

func (l layer) compare(m layer) int {
	for k := range l {
		if c := cmp.Compare(l[k], m[k]); c != 0 {
			return c
		}
	}
	return 0
}

func (d *drawing) layer(i int, at depth, order func(*thing) float64) layer {
	ghost := 0.0
	if at == before {
		ghost = 1
	}
	host, steps := i, 0.0
	for d.things[host].hidden && d.things[host].carrier >= 0 {
		host, steps = d.things[host].carrier, steps+1
	}
	return layer{ghost, order(&d.things[host]), steps}
}

// size of a box across and along.
func breadth(b [4]float64) float64 { return (b[1] - b[0]) * (b[3] - b[2]) }

func boundsOf(b [4]float64, v draw.View) draw.Rect { return v.Box(b[0], b[2], b[1]-b[0], b[3]-b[2]) }
