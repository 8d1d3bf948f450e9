package sheet

import (
	"math"

	"tumblehome/draw"
	"tumblehome/reckon"
	"tumblehome/solve/solid"
	"tumblehome/trade/shell"
)

// upright is A4 standing, as it comes out of a printer.
var upright = draw.Size{Width: draw.A4.Height, Height: draw.A4.Width}

// Measuring is the sheet to take into the van with a tape: only the readings that matter for this arrangement, each with a picture
// of where the tape goes and a box to write in.
func Measuring(r *reckon.Reckoning) draw.Scene {
	m := measuring{drawing: newDrawing(r, View{Mode: "drive"})}
	m.all = m.readings()
	m.lay()
	s := draw.Scene{Size: upright, Title: "Measuring sheet for " + r.Document.Build.Title, Description: m.words()}
	s = s.With(m.heading()...)
	s = s.With(m.fromAbove(), m.fromLeft(), m.fromBehind())
	s = s.With(m.table()...)
	return s.With(draw.CheckLine{From: draw.Pt(measureLeft, upright.Height-12), Along: draw.Horizontal}.Marks()...)
}

// Places on the measuring sheet [mm of the paper].
const (
	measureLeft  = 14.0
	measureTop   = 44.0
	measureTable = 150.0 // y of the first row
	rowHigh      = 9.0
)

type measuring struct {
	*drawing
	all []reading
}

func (m *measuring) lay() {
	body := m.r.Body
	half, high := m.space.MaxY, body.Roof((body.Start()+body.End())/2, 0)
	const wide, tall, crossTall = 112.0, 86.0, 80.0
	m.scale = math.Max(body.Length()/wide, (2*half+high+pan)/tall)
	left := measureLeft + 2 - body.Start()/m.scale
	top := measureTop + 3
	floor := top + (2*half+high)/m.scale + 8
	m.views[Plan] = draw.View{Origin: draw.Pt(left, top+half/m.scale), Scale: m.scale, Up: true}
	m.views[Side] = draw.View{Origin: draw.Pt(left, floor), Scale: m.scale, Up: true}
	free := upright.Width - 2*measureLeft - 2 - body.Length()/m.scale - 14
	across := math.Max(2*half/free, high/crossTall)
	m.views[Cross] = draw.View{Origin: draw.Pt(upright.Width-measureLeft-half/across-1, top+high/across+8), Scale: across, Up: true}
	m.cut = (body.Start() + body.End()) / 2
}

func (m *measuring) heading() []draw.Mark {
	out := []draw.Mark{draw.Lettering{Text: "What have we got?", At: draw.Pt(measureLeft, 18), Size: draw.SizeHead, Strong: true},
		draw.Lettering{Text: m.r.Document.Build.Title + ": the " + whole(float64(len(m.all))) + " readings that matter for this arrangement", At: draw.Pt(measureLeft, 25), Size: nameSize}}
	for i, text := range wrapped("Measure the bare van, in millimetres, twice. Full widths from side to side; the halves are worked out. Where the tape touches "+
		"ribs, tick ribs; where it goes between them to the steel, tick skin. Heights are from the crests of the floor. Write what the tape "+
		"says, even if it looks odd.", upright.Width-2*measureLeft) {
		out = append(out, draw.Lettering{Text: text, At: draw.Pt(measureLeft, 31.5+float64(i)*4.3), Ink: draw.InkQuiet})
	}
	return out
}

// fromAbove shows the readings along the floor and where the widths are taken.
func (m *measuring) fromAbove() draw.Group {
	s := sketch{view: m.views[Plan]}
	skin := m.skinPlan()
	s.area(draw.PenCut, draw.FillPaper, skin)
	for _, a := range m.r.Body.Arches() {
		m.archPlan(&s, a, true)
	}
	m.ghosts(&s, fromAbove)
	seen := map[float64]bool{}
	for _, r := range m.all {
		switch {
		case r.from[0] == r.to[0] && r.from[1] != r.to[1] && r.sides:
			if x := r.from[0]; !seen[x] {
				seen[x] = true
				m.tape(&s, place{x, r.from[1]}, place{x, r.to[1]}, lettersAt(m.all, func(o reading) bool { return o.sides && o.from[0] == x && o.from[1] != o.to[1] }), 0.22)
			}
		case r.from[2] == r.to[2] && math.Abs(r.from[1]) < 0.9*m.space.MaxY:
			m.tape(&s, place{r.from[0], r.from[1]}, place{r.to[0], r.to[1]}, r.letter, 0.5)
		}
	}
	return s.group("measure-plan", "view", "from above", nil)
}

// fromLeft shows heights, the arch and the door.
func (m *measuring) fromLeft() draw.Group {
	s := sketch{view: m.views[Side]}
	body := m.r.Body
	skin := append([]place{{body.Start(), 0}}, follow(body.Start(), body.End(), 200, func(x float64) float64 { return body.Roof(x, 0) })...)
	s.area(draw.PenCut, draw.FillPaper, append(skin, place{body.End(), 0}))
	for _, a := range body.Arches() {
		if a.Side == shell.Right {
			run := []place{{a.From, 0}, {a.From, a.Up}, {a.To, a.Up}, {a.To, 0}}
			s.area(draw.PenFine, draw.FillDeep, run)
			s.hatch(draw.HatchRising, 1.6, run)
		}
	}
	m.ghosts(&s, fromSide)
	for _, r := range m.all {
		door := math.Abs(r.from[1]) >= 0.9*body.Half(clamp(r.from[0], body.Start(), body.End()), r.from[2]) && !r.sides
		if r.from[2] != r.to[2] || door && r.from[0] != r.to[0] {
			if door && r.from[2] == r.to[2] { // the door itself
				s.box(draw.PenHidden, draw.NoFill, place{r.from[0], r.from[2] - 250}, place{r.to[0], m.doorTop()})
			}
			share := 0.5
			if door && r.from[2] != r.to[2] {
				share = 0.7
			}
			m.tape(&s, place{r.from[0], r.from[2]}, place{r.to[0], r.to[2]}, r.letter, share)
		}
	}
	return s.group("measure-side", "view", "from the left", nil)
}

// doorTop is the height of the side door's upper edge.
func (m *measuring) doorTop() float64 {
	top := 0.0
	for _, r := range m.all {
		if !r.sides && r.from[0] == r.to[0] && math.Abs(r.from[1]) > 0.5*m.space.MaxY && r.from[1] == r.to[1] {
			top = math.Max(top, r.to[2])
		}
	}
	return top
}

// fromBehind shows at which heights the widths are taken.
func (m *measuring) fromBehind() draw.Group {
	s := sketch{view: m.views[Cross]}
	s.area(draw.PenCut, draw.FillPaper, m.skinCross())
	seen := map[float64]bool{}
	for _, r := range m.all {
		if !r.sides || r.from[1] == r.to[1] || seen[r.from[2]] {
			continue
		}
		z := r.from[2]
		seen[z] = true
		y := m.r.Body.Half(m.cut, z)
		m.tape(&s, place{-y, z}, place{y, z}, lettersAt(m.all, func(o reading) bool { return o.sides && o.from[1] != o.to[1] && o.from[2] == z }), 0.5)
	}
	s.text(draw.Lettering{Text: "heights of the widths", At: s.view.At(0, m.r.Body.Roof(m.cut, 0)).Add(draw.Pt(0, -5)), Anchor: draw.Middle, Ink: draw.InkQuiet})
	return s.group("measure-cross", "view", "from behind", nil)
}

// ghosts are the outlines of what will stand against the sides, so that the readings explain themselves.
func (m *measuring) ghosts(s *sketch, see func(solid.Solid) []strip) {
	for i := range m.things {
		if t := &m.things[i]; m.touches(t) && t.root == i {
			if runs := silhouette(see(t.Solid)); len(runs) > 0 {
				s.area(draw.PenGhost, draw.NoFill, runs...)
			}
		}
	}
}

// tape is where the tape lies, with its letters on it.
func (m *measuring) tape(s *sketch, a, b place, letters string, share float64) {
	from, to := s.view.At(a[0], a[1]), s.view.At(b[0], b[1])
	s.put(draw.PenWater, draw.NoFill, draw.Line(from, to))
	along := to.Sub(from).Unit()
	for _, end := range []draw.Point{from, to} {
		tick := along.Left().Mul(1.2)
		s.put(draw.PenWater, draw.NoFill, draw.Line(end.Add(tick), end.Sub(tick)))
	}
	s.text(draw.Lettering{Text: letters, At: from.Toward(to, share), Size: nameSize, Anchor: draw.Middle, Level: draw.Midline, Strong: true, Ink: draw.InkWater, Ground: draw.FillPaper})
}

// table lists the readings with room to write.
func (m *measuring) table() []draw.Mark {
	const box, ticks = 134.0, 166.0
	right := upright.Width - measureLeft
	letter := func(text string, x, y float64) draw.Lettering {
		return draw.Lettering{Text: text, At: draw.Pt(x, y), Ink: draw.InkQuiet}
	}
	out := []draw.Mark{letter("where to hold the tape", measureLeft+7, measureTable-2.5), letter("mm", box, measureTable-2.5), letter("ribs    skin", ticks, measureTable-2.5)}
	for i, r := range m.all {
		y := measureTable + float64(i)*rowHigh
		out = append(out, draw.Stroke(draw.PenHairline, draw.Line(draw.Pt(measureLeft, y), draw.Pt(right, y))),
			draw.Lettering{Text: r.letter, At: draw.Pt(measureLeft+1, y+rowHigh/2), Level: draw.Midline, Size: draw.SizePlain, Strong: true, Ink: draw.InkWater},
			draw.Area(draw.PenOutline, draw.FillPaper, draw.Rectangle(draw.Box(box, y+1.2, 28, rowHigh-2.4))))
		lines := wrapped(r.words, box-measureLeft-10)
		for k, text := range lines {
			out = append(out, draw.Lettering{Text: text, At: draw.Pt(measureLeft+7, y+rowHigh/2+(float64(k)-float64(len(lines)-1)/2)*3.9), Level: draw.Midline})
		}
		if r.sides {
			for k := range 2 {
				out = append(out, draw.Area(draw.PenOutline, draw.FillPaper, draw.Rectangle(draw.Box(ticks+1+float64(k)*9.5, y+rowHigh/2-1.8, 3.6, 3.6))))
			}
		}
	}
	end := measureTable + float64(len(m.all))*rowHigh
	out = append(out, draw.Stroke(draw.PenHairline, draw.Line(draw.Pt(measureLeft, end), draw.Pt(right, end))))
	return append(out, letter("measured by, on", right-60, upright.Height-12), draw.Stroke(draw.PenHairline, draw.Line(draw.Pt(right-34, upright.Height-12), draw.Pt(right, upright.Height-12))))
}

func (m *measuring) words() string {
	text := "Readings to take: "
	for i, r := range m.all {
		if i > 0 {
			text += "; "
		}
		text += r.letter + " " + r.words
	}
	return text + "."
}
