package sheet

import (
	"strconv"

	"tumblehome/draw"
)

// astray says whether a thing stands so far out of the van that the sheet does not reach it. It is left out of the views, since it would lie
// on other drawings or off the paper, and named at the rim of the plan.
func (d *drawing) astray(t *thing) bool {
	b, s := t.box, d.space
	return b.MinX > s.MaxX || b.MaxX < s.MinX || b.MinY > s.MaxY || b.MaxY < s.MinY || b.MinZ > s.MaxZ || b.MaxZ < s.MinZ
}

// strays name at the rim of the plan what is astray, on the side where it is, with how far off the van that is.
func (d *drawing) strays(taken []draw.Rect) []draw.Mark {
	v, s := d.views[Plan], d.space
	rim := v.Box(s.MinX, s.MinY, s.MaxX-s.MinX, s.MaxY-s.MinY)
	var out []draw.Mark
	for i := range d.things {
		t := &d.things[i]
		if t.root != i || !d.astray(t) {
			continue
		}
		l := draw.Lettering{Text: t.name + ", " + metres(d.off(t)) + " m off", Size: plainSize, Ink: draw.InkLead, Ground: draw.FillSheet, Level: draw.Midline}
		if t.box.MinX > s.MaxX {
			l.Anchor = draw.End
		}
		middle := v.At((t.box.MinX+t.box.MaxX)/2, (t.box.MinY+t.box.MaxY)/2)
		l.At = draw.Pt(clamp(middle.X, rim.Min.X, rim.Max.X-l.Width()), clamp(middle.Y, rim.Min.Y+leading, rim.Max.Y-leading))
		if l.Anchor == draw.End {
			l.At.X = rim.Max.X
		}
		l.At = below(l, taken, rim)
		taken = append(taken, l.Bounds())
		k := sketch{view: v}
		k.text(l)
		out = append(out, k.group("plan-"+t.ID+"-astray", "caption astray", t.name+" stands off the sheet", map[string]string{"fitting": t.ID, "view": Plan}))
	}
	return out
}

// off is how far a thing stands off the body on its farthest axis [mm].
func (d *drawing) off(t *thing) float64 {
	body := d.r.Body
	half := body.Half((body.Start()+body.End())/2, d.level)
	roof := body.Roof((body.Start()+body.End())/2, 0)
	return max(body.Start()-t.box.MaxX, t.box.MinX-body.End(), -half-t.box.MaxY, t.box.MinY-half, t.box.MinZ-roof, body.Floor()-t.box.MaxZ)
}

// below is the first place from where lettering should stand downwards, and round again from the top, that covers no other.
func below(l draw.Lettering, taken []draw.Rect, rim draw.Rect) draw.Point {
	at, high := l.At, rim.Height()-2*leading
	for step := 0.0; step < high; step++ {
		free := true
		for i := range taken {
			free = free && !l.Bounds().Overlaps(taken[i])
		}
		if free {
			return l.At
		}
		if l.At.Y++; l.At.Y > rim.Max.Y-leading {
			l.At.Y = rim.Min.Y + leading
		}
	}
	return at
}

func metres(mm float64) string { return strconv.FormatFloat(mm/1000, 'f', 1, 64) }
