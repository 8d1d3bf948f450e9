package web

import (
	"cmp"
	"slices"
	"strings"

	"github.com/a-h/templ"

	"tumblehome/draw"
	"tumblehome/reckon"
	"tumblehome/solve/solid"
	"tumblehome/trade/arrangement"
	"tumblehome/trade/shell"
)

const (
	planScale  = 34.0
	planMargin = 8.0 // room for the door's name beside the body
)

// startPlan is a small plan of a starting arrangement: the body, what stands in it by day, and dashed where the bed lies at night.
func startPlan(r *reckon.Reckoning, id, name string) templ.Component {
	wide, half := r.Body.Length()/planScale+planMargin+3, r.Body.Half(r.Body.Length()/2, 400)/planScale+planMargin
	at := draw.View{Origin: draw.Pt(planMargin, half), Scale: planScale, Up: true}
	scene := draw.Scene{
		Size: draw.Size{Width: wide, Height: 2 * half}, Title: name + ", seen from above",
		Description: "The front is at the left. In it stand: " + inPlan(r) + ".",
		Marks: []draw.Mark{
			draw.Area(draw.PenCut, draw.FillPaper, mirrored(at, r.Body.Plan(400), 1)),
			draw.Lettering{Text: "front", At: draw.Pt(planMargin-1, half), Turn: -90, Anchor: draw.Middle, Ink: draw.InkQuiet},
		},
	}
	for _, a := range r.Body.Arches() {
		outer := r.Body.Half((a.From+a.To)/2, 0)
		corner := a.Face
		if a.Side == "left" {
			corner = -outer
		}
		scene = scene.With(draw.Area(draw.NoPen, draw.FillDeep, draw.Rectangle(at.Box(a.From, corner, a.To-a.From, outer-a.Face))))
	}
	scene = scene.With(planDoor(at, r)...)
	for _, s := range seenFromAbove(r, "day") {
		scene = scene.With(outlines(at, s, draw.PenOutline, draw.FillTone)...)
	}
	for _, s := range seenFromAbove(r, "night") {
		if s.Moved && !s.Off {
			scene = scene.With(outlines(at, s, draw.PenGhost, draw.NoFill)...)
		}
	}
	for _, s := range seenFromAbove(r, "day") {
		scene = scene.With(planName(at, r, s)...)
	}
	return svgOf(scene, "plan-of-"+id)
}

// planDoor marks the side door beside the body.
func planDoor(at draw.View, r *reckon.Reckoning) []draw.Mark {
	for _, d := range r.Body.Doors() {
		if d.Surface != shell.Left && d.Surface != shell.Right {
			continue
		}
		y, text := r.Body.Half(d.From, 400)+40, 80.0
		if d.Surface == shell.Left {
			y, text = -y, -190
		}
		return []draw.Mark{
			draw.Stroke(draw.PenRib, draw.Line(at.At(d.From, y), at.At(d.To, y))),
			draw.Lettering{Text: "side door", At: at.At((d.From+d.To)/2, y+text), Anchor: draw.Middle, Ink: draw.InkQuiet},
		}
	}
	return nil
}

// seenFromAbove are the things that stand inside the van, the lowest first.
func seenFromAbove(r *reckon.Reckoning, mode string) []arrangement.Standing {
	m := r.Places.Mode(mode)
	if m == nil {
		return nil
	}
	var all []arrangement.Standing
	for _, s := range m.All {
		overhead := s.Box.MinZ > 0.6*r.Body.Roof(r.Body.Length()/2, 0)
		large := (s.Box.MaxX-s.Box.MinX)*(s.Box.MaxY-s.Box.MinY) > 0.03e6
		carried := s.Carrier != "" && !s.Moved // what stands upon something else is left out, but for a bed that is pulled out
		if len(s.Solid) > 0 && s.Where == "" && s.For == "" && !s.In && large && !overhead && !carried {
			all = append(all, s)
		}
	}
	slices.SortStableFunc(all, func(a, b arrangement.Standing) int { return cmp.Compare(a.Box.MaxZ, b.Box.MaxZ) })
	return all
}

// outlines are those of the widest slices of a thing.
func outlines(at draw.View, s arrangement.Standing, pen draw.Pen, fill draw.Fill) []draw.Mark {
	widest := slices.MaxFunc(s.Solid, func(a, b solid.Prism) int { return cmp.Compare(a.Area(), b.Area()) })
	var marks []draw.Mark
	for _, p := range s.Solid {
		if p.Low != widest.Low && p.High != widest.High {
			continue
		}
		points := make([]draw.Point, len(p.Outline))
		for i, q := range p.Outline {
			points[i] = at.At(q.X, q.Y)
		}
		marks = append(marks, draw.Area(pen, fill, draw.Polygon(points...)))
	}
	return marks
}

// planName letters a thing with its name, or with its shorter id, where that has room.
func planName(at draw.View, r *reckon.Reckoning, s arrangement.Standing) []draw.Mark {
	box := at.Box(s.Box.MinX, s.Box.MinY, s.Box.MaxX-s.Box.MinX, s.Box.MaxY-s.Box.MinY)
	letters := draw.Lettering{At: draw.Pt((box.Min.X+box.Max.X)/2, (box.Min.Y+box.Max.Y)/2), Anchor: draw.Middle, Level: draw.Midline}
	for _, name := range []string{planCalled(r, s.ID), unhyphen(s.ID)} {
		letters.Text = name
		switch long := draw.Measure(name, draw.SizeSmall, false); {
		case long < box.Width()-1 && box.Height() > 4:
			return []draw.Mark{letters}
		case long < box.Height()-1 && box.Width() > 4:
			letters.Turn = -90
			return []draw.Mark{letters}
		}
	}
	return nil
}

func planCalled(r *reckon.Reckoning, id string) string {
	return cmp.Or(r.Document.Fittings[id].Called, unhyphen(id))
}

// inPlan lists what the plan shows.
func inPlan(r *reckon.Reckoning) string {
	var names []string
	for _, s := range seenFromAbove(r, "day") {
		names = append(names, planCalled(r, s.ID))
	}
	slices.Sort(names)
	return strings.Join(names, ", ")
}
