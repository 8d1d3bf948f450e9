package sheet

import (
	"math"
	"strconv"
	"strings"

	"tumblehome/draw"
	"tumblehome/draw/label"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/trade/weight"
)

// Sizes of the picture of weight [mm of the paper].
const (
	weightWide   = 300.0
	weightScale  = 25.0
	barLong      = 48.0 // of what a plate allows
	barWide      = 6.4
	barGap       = 1.6
	weightMargin = 8.0
	beyondPlate  = 1.1 // of the plate: longer bars end there
)

// Weight draws what is heavy and where on a van from the side, and under each axle, hanging like weights, how full every load case
// makes it: all bars end on one line where the load is what the plate allows.
func Weight(r *reckon.Reckoning) draw.Scene {
	w := weighing{r: r}
	w.lay()
	s := draw.Scene{Size: w.size, Title: "What the van weighs, axle by axle", Description: w.words()}
	s = s.With(w.van()).With(w.heavy()...)
	for _, g := range w.groups() {
		s = s.With(w.bars(g))
	}
	return s.With(w.cases()...)
}

// weighing is the work on the picture.
type weighing struct {
	r        *reckon.Reckoning
	view     draw.View
	size     draw.Size
	from, to float64 // x of the bumpers
	top      float64 // z of the roof
	ground   float64 // z of the road
	hang     float64 // y on the paper where the bars hang from
}

// usualOverhang is what a van stands out before and behind its axles where nobody measured it [mm]: typical, from memory.
const usualOverhang = 950

func (w *weighing) lay() {
	v, body := w.r.Document.Vehicle, w.r.Body
	front, rear := float64(usualOverhang), float64(usualOverhang)
	if v.Overhang != nil {
		front, rear = v.Overhang.Front.Float(), v.Overhang.Rear.Float()
	}
	w.from, w.to = -v.Datum.Float()-front, math.Max(v.Wheelbase.Float()-v.Datum.Float()+rear, body.End())
	w.ground = -axleDrop - usualRadius
	w.top = body.Roof((body.Start()+body.End())/2, 0)
	scale := weightScale
	for (w.to-w.from)/scale > weightWide-2*weightMargin-64 {
		scale += 5
	}
	const labels = 12
	w.view = draw.View{Origin: draw.Pt(weightMargin-w.from/scale, labels+w.top/scale), Scale: scale, Up: true}
	w.hang = w.view.At(0, w.ground).Y + 7
	w.size = draw.Size{Width: weightWide, Height: math.Ceil(w.hang + barLong*beyondPlate + 20 + 5*float64(len(w.r.Weight.Cases)))}
}

// van is the outline from the side: the load space as measured, the cab only as a hint.
func (w *weighing) van() draw.Group {
	s := sketch{view: w.view}
	body, v := w.r.Body, w.r.Document.Vehicle
	roof := follow(body.Start(), body.End(), 200, func(x float64) float64 { return body.Roof(x, 0) })
	load := append([]place{{body.Start(), -pan}}, roof...)
	load = append(load, place{body.End(), -pan})
	nose := body.Start() - w.from
	cab := []place{{body.Start(), -pan - 150}, {w.from + 40, -pan - 200}, {w.from, -60}, {w.from + 30, 330}, {w.from + 0.36*nose, 520}, {w.from + 0.66*nose, w.top - 150}, {w.from + 0.8*nose, w.top - 50}, roof[0]}
	s.area(draw.PenFine, draw.NoFill, cab)
	s.area(draw.PenCut, draw.FillPaper, load)
	s.line(draw.PenFine, []place{{body.End(), -pan}, {w.to, -pan - 120}, {w.to - 60, -pan - 200}, {body.Start(), -pan - 200}})
	for _, x := range []float64{-v.Datum.Float(), v.Wheelbase.Float() - v.Datum.Float()} {
		at := w.view.At(x, -axleDrop)
		s.put(draw.PenOutline, draw.FillDeep, draw.Circle(at, w.view.Length(usualRadius)))
		s.put(draw.PenFine, draw.FillPaper, draw.Circle(at, w.view.Length(usualRadius*0.62)))
		s.put(draw.NoPen, draw.FillInk, draw.Circle(at, 0.7))
	}
	s.line(draw.PenOutline, []place{{w.from - 100, w.ground}, {w.to + 100, w.ground}})
	return s.group("weight-van", "body", "the van from its left side", nil)
}

// load is something heavy on the picture.
type load struct {
	id, name string
	kg       float64
	x, z     float64
}

// loads are the fittings from 3 kg, heaviest first.
func (w *weighing) loads() []load {
	var out []load
	for _, l := range w.r.Lines {
		id, isFitting := strings.CutPrefix(l.Pointer, "/fittings/")
		if isFitting && l.Mass >= 3 {
			out = append(out, load{id, nameOf(id, w.r.Document.Fittings[id]), l.Mass, l.At[0], l.At[2]})
		}
	}
	inOrder(out, func(l load) float64 { return -l.kg })
	return out
}

// heavy draws the loads as discs whose area is their mass, the heaviest named.
func (w *weighing) heavy() []draw.Mark {
	const named, perRoot = 12, 0.85
	all := w.loads()
	bounds := draw.Rect{Min: draw.Pt(weightMargin, 2), Max: draw.Pt(weightWide-60, w.view.At(0, w.ground).Y-1)}
	p := label.Problem{Bounds: bounds, Gap: 0.6}
	for _, x := range []float64{w.r.Body.Start(), w.r.Body.End()} {
		p.Lines = append(p.Lines, [2]draw.Point{w.view.At(x, -pan), w.view.At(x, w.top)})
	}
	var out []draw.Mark
	for i, l := range all {
		at, radius := w.view.At(l.x, l.z), perRoot*math.Sqrt(l.kg)
		disc := draw.Area(draw.PenOutline, draw.FillTone, draw.Circle(at, radius))
		out = append(out, draw.Group{ID: "load-" + l.id, Class: "load", Title: l.name + ", " + whole(l.kg) + " kg", Data: map[string]string{"fitting": l.id}, Marks: []draw.Mark{disc}})
		if i < named {
			text := draw.Lettering{Text: l.name + " " + whole(l.kg)}
			b := text.Bounds()
			p.Labels = append(p.Labels, label.Label{Place: at, Width: b.Width(), Height: b.Height(), Reach: radius + 0.5})
		}
		p.Obstacles = append(p.Obstacles, draw.Rect{Min: at, Max: at}.Inset(-radius*0.9))
	}
	for i, at := range label.Place(p) {
		if !at.Fits {
			continue
		}
		if len(at.Leader) == 2 {
			from, to := at.Leader[0], at.Leader[1]
			share := perRoot * math.Sqrt(all[i].kg) / math.Max(from.Distance(to), 0.1)
			out = append(out, draw.Stroke(draw.PenLeader, draw.Line(from, to.Toward(from, math.Min(share, 1)))))
		}
		out = append(out, draw.Lettering{Text: all[i].name + " " + whole(all[i].kg), At: at.Box.Centre(), Anchor: draw.Middle, Level: draw.Midline})
	}
	if x, ok := w.r.Figure("weight.centre.x"); ok {
		at := w.view.At(x.Value, w.ground)
		out = append(out, draw.Shape{Path: draw.Polygon(at, draw.Pt(at.X-1.8, at.Y+3), draw.Pt(at.X+1.8, at.Y+3)), Fill: draw.FillInk},
			draw.Lettering{Text: "balances here", At: draw.Pt(at.X+3, at.Y+3.6), Ink: draw.InkQuiet})
	}
	return out
}

// axleGroup is one hanging row of bars: an axle or the van in all.
type axleGroup struct {
	id, title string
	x         float64 // of its middle on the paper
	limit     *quantity.Mass
	of        func(weight.CaseLoad) weight.Load
}

func (w *weighing) groups() []axleGroup {
	v := w.r.Document.Vehicle
	return []axleGroup{
		{"front", "front axle", w.view.At(-v.Datum.Float(), 0).X, v.Plate.Front, func(c weight.CaseLoad) weight.Load { return c.Front }},
		{"rear", "rear axle", w.view.At(v.Wheelbase.Float()-v.Datum.Float(), 0).X, v.Plate.Rear, func(c weight.CaseLoad) weight.Load { return c.Rear }},
		{"total", "in all", weightWide - weightMargin - 3 - float64(len(w.r.Weight.Cases))*(barWide+barGap)/2, v.Plate.Gross, func(c weight.CaseLoad) weight.Load { return c.Total }},
	}
}

// bars hang one bar for each case from an axle.
func (w *weighing) bars(g axleGroup) draw.Group {
	all := w.r.Weight.Cases
	most := 0.0
	for _, c := range all {
		most = math.Max(most, g.of(c).Mean)
	}
	if g.limit != nil && *g.limit > 0 {
		most = g.limit.Float()
	}
	out := draw.Group{ID: "weight-" + g.id, Class: "axle", Title: g.title}
	if most <= 0 {
		return out
	}
	left := g.x - (float64(len(all))*(barWide+barGap)-barGap)/2
	right := left + float64(len(all))*(barWide+barGap) - barGap
	for i, c := range all {
		out = out.With(w.bar(c, g, left+float64(i)*(barWide+barGap), most, i+1)...)
	}
	out = out.With(draw.Stroke(draw.PenOutline, draw.Line(draw.Pt(left-2, w.hang), draw.Pt(right+2, w.hang))))
	y := w.hang + barLong
	title := g.title
	if g.limit != nil {
		out = out.With(draw.Stroke(draw.PenBorder, draw.Line(draw.Pt(left-3, y), draw.Pt(right+3, y))))
		title += ", plate " + whole(most)
	}
	return out.With(draw.Lettering{Text: title, At: draw.Pt((left+right)/2, w.hang+barLong*beyondPlate+9), Anchor: draw.Middle, Strong: true, Size: nameSize})
}

// bar is one case: its likely load, and dashed what it passes one time in five.
func (w *weighing) bar(c weight.CaseLoad, g axleGroup, x, most float64, number int) []draw.Mark {
	load := g.of(c)
	long := math.Min(load.Mean/most, beyondPlate) * barLong
	late := math.Min(load.P80()/most, beyondPlate) * barLong
	fill, ink, word := draw.FillTone, draw.InkPlain, ""
	switch {
	case g.limit != nil && load.Mean > most:
		fill, ink, word = draw.FillLead, draw.InkFlag, ", over"
	case g.limit != nil && load.Mean > 0.95*most:
		fill, ink, word = draw.FillClose, draw.InkFlag, ", close"
	}
	out := []draw.Mark{draw.Area(draw.PenOutline, fill, draw.Rectangle(draw.Box(x, w.hang, barWide, long)))}
	if late > long+0.3 {
		out = append(out, draw.Stroke(draw.PenGhost, draw.Polyline(draw.Pt(x, w.hang+long), draw.Pt(x, w.hang+late), draw.Pt(x+barWide, w.hang+late), draw.Pt(x+barWide, w.hang+long))))
	}
	if long > 14 {
		out = append(out, draw.Lettering{Text: five(load.Mean) + word, At: draw.Pt(x+barWide/2, w.hang+long/2), Anchor: draw.Middle, Level: draw.Midline, Turn: -90, Ink: ink})
	}
	below := w.hang + barLong*beyondPlate + 3
	return append(out, draw.Lettering{Text: strconv.Itoa(number), At: draw.Pt(x+barWide/2, below), Anchor: draw.Middle, Level: draw.Midline, Strong: true})
}

// cases say what the numbers under the bars are.
func (w *weighing) cases() []draw.Mark {
	var out []draw.Mark
	y := w.hang + barLong*beyondPlate + 19
	for i, c := range w.r.Weight.Cases {
		title := c.Title
		if title == "" {
			title = strings.ReplaceAll(c.ID, "-", " ")
		}
		out = append(out, draw.Lettering{Text: strconv.Itoa(i + 1), At: draw.Pt(weightMargin, y), Strong: true},
			draw.Lettering{Text: title, At: draw.Pt(weightMargin+5, y)})
		y += 5
	}
	note := draw.Lettering{Text: "kg; dashed: one time in five it is more", At: draw.Pt(weightWide-weightMargin, y-5), Anchor: draw.End, Ink: draw.InkQuiet}
	return append(out, note)
}

// words are the picture's text equivalent.
func (w *weighing) words() string {
	var b strings.Builder
	for _, c := range w.r.Weight.Cases {
		b.WriteString(c.Title)
		for _, g := range w.groups() {
			b.WriteString(", " + g.title + " " + five(g.of(c).Mean))
			if g.limit != nil {
				b.WriteString(" of " + whole(g.limit.Float()))
			}
		}
		b.WriteString(" kg. ")
	}
	return strings.TrimSpace(b.String())
}
