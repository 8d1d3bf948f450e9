package sheet

import (
	"math"

	"tumblehome/draw"
)

// planMeasures are the ruler, the lengths along the van and the bed.
func (d *drawing) planMeasures(all []drawn) []draw.Mark {
	v, room := d.views[Plan], d.r.Lining.Room
	top := v.At(0, d.space.MaxY).Y - 2
	out := draw.Ruler{Zero: draw.Pt(v.At(0, 0).X, top), Along: draw.Horizontal, Metre: v.Length(1000),
		From: math.Ceil(d.r.Body.Start()/1000*2) / 2, To: math.Floor(d.r.Body.End()/500) / 2}.Marks()
	if d.onlyWiring() {
		return out
	}
	edge := v.At(0, d.space.MinY).Y
	foot := func(x float64) draw.Point {
		return v.At(x, -d.r.Body.Half(clamp(x, d.r.Body.Start(), d.r.Body.End()), d.level))
	}
	whole := draw.Dimension(foot(room.Front()), foot(room.Rear()), draw.Horizontal, 0, five(room.Rear()-room.Front())+" inside the lining")
	var set []draw.Chain
	if c, ok := d.alongside(all, foot); ok {
		set, edge = draw.Stack(edge, true, c)
		edge -= 1.5 // the ends of its extension lines
	}
	outer, _ := draw.Stack(edge, true, whole)
	set = append(set, outer...)
	return append(out, draw.Group{ID: "plan-measures", Class: "measures", Marks: draw.Dimensions(set...)})
}

// alongside measures what stands along the left side, or the bed where somebody lies lengthwise.
func (d *drawing) alongside(all []drawn, foot func(float64) draw.Point) (draw.Chain, bool) {
	if c, ok := d.bedLength(foot); ok {
		return c, true
	}
	var row []drawn
	for _, w := range all {
		t := &d.things[w.thing]
		if t.root == w.thing && t.Where == "" && t.For == "" && t.box.MaxY < 0 && t.box.MinZ < 300 && t.box.MaxX-t.box.MinX > 250 {
			row = append(row, w)
		}
	}
	inOrder(row, func(w drawn) float64 { return w.box[0] })
	c := draw.Chain{Along: draw.Horizontal, Ends: draw.Oblique}
	end := math.Inf(-1)
	for _, w := range row {
		const touching = 15 // mm that are no gap on the paper
		switch from, to := w.box[0], w.box[1]; {
		case to <= end+touching:
			continue
		case math.IsInf(end, -1):
			c.Stops = append(c.Stops, foot(from))
		case from > end+touching:
			c.Stops, c.Texts = append(c.Stops, foot(from)), append(c.Texts, five(from-end))
		case from < end-touching: // one reaches past the other: measured from there
			w.box[0] = end
		}
		c.Stops, c.Texts = append(c.Stops, foot(w.box[1])), append(c.Texts, five(w.box[1]-w.box[0]))
		end = w.box[1]
	}
	return c, len(c.Texts) > 0
}

// bedLength measures the bed of the first who lies lengthwise.
func (d *drawing) bedLength(foot func(float64) draw.Point) (draw.Chain, bool) {
	for i := range d.people {
		w := &d.people[i]
		if w.does == "lies" && w.faces[0] != 0 {
			b := d.things[d.index[w.fitting]].box
			return draw.Dimension(foot(b.MinX), foot(b.MaxX), draw.Horizontal, 0, "bed "+five(b.MaxX-b.MinX)), true
		}
	}
	return draw.Chain{}, false
}

// sideMeasures is the headroom beside the long section.
func (d *drawing) sideMeasures() []draw.Mark {
	if d.onlyWiring() {
		return nil
	}
	v, room := d.views[Side], d.r.Lining.Room
	x := (room.Front() + room.Rear()) / 2
	at := v.At(d.space.MaxX, 0).X + 5
	c := draw.Dimension(v.At(room.Rear(), room.Floor()), v.At(room.Rear(), room.Roof(x, 0)), draw.Vertical, at, "headroom "+five(room.Headroom(x, 0)))
	return []draw.Mark{draw.Group{ID: "side-measures", Class: "measures", Marks: d.clearOfLeads(c.Marks(), v.At(0, room.Roof(x, 0)).Y, v.At(0, room.Floor()).Y)}}
}

// clearOfLeads shifts the upright lettering of a dimension along its line, between the ends of that, to where no flag's line runs through
// it; as little as will do, and not at all where there is no such place.
func (d *drawing) clearOfLeads(marks []draw.Mark, from, to float64) []draw.Mark {
	for i, m := range marks {
		l, ok := m.(draw.Lettering)
		if !ok {
			continue
		}
		half := l.Width()*draw.Allowance/2 + 1
		for off := 0.0; off < to-from; off++ {
			for _, y := range []float64{l.At.Y - off, l.At.Y + off} {
				if y-half >= from && y+half <= to && !d.crossed(l.At.X, y-half, y+half) {
					l.At.Y = y
					marks[i] = l
					return marks
				}
			}
		}
	}
	return marks
}

// crossed says whether a flag's line of the long section passes an x of the paper between two heights.
func (d *drawing) crossed(x, from, to float64) bool {
	for _, l := range d.leads[Side] {
		if y, ok := l.at(x); ok && y > from && y < to {
			return true
		}
	}
	return false
}

// crossMeasures are the width at elbow height and, at the floor, what stands left and right with the way between.
func (d *drawing) crossMeasures(all []drawn) []draw.Mark {
	if d.onlyWiring() {
		return nil
	}
	v, room := d.views[Cross], d.r.Lining.Room
	left, right := room.Left(d.cut, d.level), room.Right(d.cut, d.level)
	edge := v.At(0, d.r.Body.Floor()-pan).Y
	var set []draw.Chain
	if c, ok := d.acrossFloor(all); ok {
		set, edge = draw.Stack(edge, true, c)
		edge -= 1.5
	}
	outer, _ := draw.Stack(edge, true, draw.Dimension(v.At(left, d.level), v.At(right, d.level), draw.Horizontal, 0, five(right-left)+d.wide()))
	set = append(set, outer...)
	return []draw.Mark{draw.Group{ID: "cross-measures", Class: "measures", Marks: grounded(draw.Dimensions(set...))}}
}

// grounded lays a ground under lettering, so that outlines of what hangs under the floor do not run through it; the dimension lines do not break at it.
func grounded(marks []draw.Mark) []draw.Mark {
	var grounds []draw.Mark
	for _, m := range marks {
		if l, ok := m.(draw.Lettering); ok {
			grounds = append(grounds, draw.Area(draw.NoPen, draw.FillSheet, draw.Polygon(l.Outline()...)))
		}
	}
	return append(grounds, marks...)
}

// acrossFloor measures what the cut goes through at the floor: the last thing on the left, the way, the first on the right.
func (d *drawing) acrossFloor(all []drawn) (draw.Chain, bool) {
	v, room := d.views[Cross], d.r.Lining.Room
	floor := room.Floor()
	left, right := room.Left(d.cut, floor+500), room.Right(d.cut, floor+500)
	a, b := left, right
	for _, w := range all {
		t := &d.things[w.thing]
		if w.depth != cut || t.hidden || t.root != w.thing || w.box[2] > floor+300 || t.Where != "" {
			continue
		}
		if w.box[0]+w.box[1] < 0 {
			a = max(a, w.box[1])
		} else {
			b = min(b, w.box[0])
		}
	}
	if b-a < 50 || a == left && b == right {
		return draw.Chain{}, false
	}
	c := draw.Chain{Along: draw.Horizontal, Ends: draw.Oblique}
	add := func(y float64, text string) {
		c.Stops = append(c.Stops, v.At(y, floor))
		if len(c.Stops) > 1 {
			c.Texts = append(c.Texts, text)
		}
	}
	add(left, "")
	if a > left+12 {
		add(a, five(a-left))
	}
	add(b, "way "+five(b-a))
	if b < right-12 {
		add(right, five(right-b))
	}
	return c, true
}

func clamp(v, low, high float64) float64 { return math.Min(math.Max(v, low), high) }
