package web

import (
	"fmt"

	"github.com/a-h/templ"

	"tumblehome/build"
	"tumblehome/build/begin"
	"tumblehome/draw"
	"tumblehome/trade/shell"
)

// pictured is a typical van of one outline, from the same loft as every body.
type pictured struct {
	body    *shell.Body
	vehicle build.Vehicle
	ground  float64 // z of the road [mm]
}

func picturedVan(b begin.Body) pictured {
	p := pictured{body: shell.Work(shell.Inputs{Quick: &shell.Quick{Body: b.ID}}).Body}
	if doc, _, err := begin.Document(begin.Answers{Body: b.ID}); err == nil { // a typical van is always sound; a test reads all nine
		p.vehicle = doc.Vehicle
		p.ground = p.top(p.body.Length()/2) - doc.Vehicle.Height.Float()
	}
	return p
}

func (p pictured) top(x float64) float64 {
	return p.body.Roof(min(max(x, p.body.Start()), p.body.End()), 0)
}

// silhouette is the van seen from its left side: bonnet, windscreen, roof, tail. The cab is only suggested.
func (p pictured) silhouette(at draw.View) draw.Path {
	front := -p.vehicle.Datum.Float() - p.vehicle.Overhang.Front.Float()
	rear := p.body.End() + 130
	sill := p.ground + 330
	points := [][2]float64{{front, sill}, {front, p.ground + 820}, {front + 90, p.ground + 1010}, {front + 780, p.ground + 1190}}
	for x := -520.0; x < p.body.End(); x += 130 {
		drop := 0.0
		if x < 0 {
			drop = x * x / 3400
		}
		points = append(points, [2]float64{x, p.top(x) + 25 - drop})
	}
	points = append(points, [2]float64{p.body.End(), p.top(p.body.End()) + 20}, [2]float64{rear, p.body.Floor() + 500}, [2]float64{rear, sill})
	return draw.Polygon(at.Points(points...)...)
}

func (p pictured) wheels(at draw.View) []draw.Mark {
	var marks []draw.Mark
	radius := 330.0
	for _, x := range []float64{-p.vehicle.Datum.Float(), (p.vehicle.Wheelbase - p.vehicle.Datum).Float()} {
		for _, r := range []float64{radius, radius * 0.55} {
			marks = append(marks, draw.Area(draw.PenOutline, draw.FillPaper, draw.Circle(at.At(x, p.ground+radius), at.Length(r))))
		}
	}
	return marks
}

// door is the sliding door of the side, dashed.
func (p pictured) door(at draw.View) (box draw.Rect, mark draw.Mark) {
	for _, d := range p.body.Doors() {
		if d.Surface == shell.Left || d.Surface == shell.Right {
			box = at.Box(d.From, d.Low, d.To-d.From, d.Up-d.Low)
		}
	}
	return box, draw.Stroke(draw.PenHidden, draw.Rectangle(box))
}

// someone is a person 1750 mm tall standing on the load floor, for scale.
func (p pictured) someone(at draw.View, x float64) []draw.Mark {
	floor := p.body.Floor()
	return []draw.Mark{
		draw.Stroke(draw.PenPerson, draw.Rounded(at.Box(x-190, floor, 380, 1480), at.Length(150))),
		draw.Stroke(draw.PenPerson, draw.Circle(at.At(x, floor+1630), at.Length(120))),
	}
}

// Size of the nine outlines on paper [mm]; all have one scale, so that they can be compared.
const (
	outlineWide, outlineTall = 116.0, 50.0
	outlineScale             = 60.0
)

// outlineDrawing is one of the nine, from the side.
func outlineDrawing(b begin.Body) templ.Component {
	p := picturedVan(b)
	long := p.vehicle.Datum.Float() + p.vehicle.Overhang.Front.Float()
	at := draw.View{Origin: draw.Pt(3+long/outlineScale, outlineTall-3+p.ground/outlineScale), Scale: outlineScale, Up: true}
	_, door := p.door(at)
	scene := draw.Scene{
		Size: draw.Size{Width: outlineWide, Height: outlineTall}, Title: capital(b.Name) + " van from the side",
		Description: fmt.Sprintf("Load floor about %v long, %v high inside, with a person of 1750 mm in it.", b.Length, b.Height),
		Marks:       []draw.Mark{draw.Area(draw.PenCut, draw.FillPaper, p.silhouette(at))},
	}
	scene = scene.With(p.wheels(at)...).With(door, draw.Stroke(draw.PenFine, draw.Line(at.At(0, p.body.Floor()), at.At(p.body.End(), p.body.Floor()))))
	scene = scene.With(p.someone(at, p.body.Length()*0.62)...)
	return svgOf(scene, "outline-"+b.ID)
}

// tapeDrawing shows where to hold the tape for one reading.
func tapeDrawing(b begin.Body, field string) templ.Component {
	switch field {
	case "knee", "arches", "height":
		return tapeAcross(b, field)
	}
	return tapeAlong(b, field)
}

const tapeScale = 40.0

// tapeAcross is the van cut across at its arches, seen from behind.
func tapeAcross(b begin.Body, field string) templ.Component {
	p := picturedVan(b)
	arch := p.body.Arches()[0]
	x := (arch.From + arch.To) / 2
	wide, tall := 2*p.body.Half(x, 400)/tapeScale+24, p.top(x)/tapeScale+12
	at := draw.View{Origin: draw.Pt(wide/2, tall-6), Scale: tapeScale, Up: true}
	var right [][2]float64
	for _, q := range p.body.Section(x) {
		right = append(right, [2]float64{q[0], q[1]})
	}
	scene := draw.Scene{
		Size: draw.Size{Width: wide, Height: tall}, Title: "Where to hold the tape", Description: tapeWords[field],
		Marks: []draw.Mark{draw.Area(draw.PenCut, draw.FillPaper, mirrored(at, right, 0))},
	}
	for _, side := range []float64{-1, 1} {
		outer := p.body.Half(x, 0)
		corner := min(side*arch.Face, side*outer)
		scene = scene.With(draw.Area(draw.PenFine, draw.FillDeep, draw.Rectangle(at.Box(corner, 0, outer-arch.Face, arch.Up))))
	}
	ends := map[string][2][2]float64{
		"knee":   {{-p.body.Half(x, 400), 400}, {p.body.Half(x, 400), 400}},
		"arches": {{-arch.Face, 120}, {arch.Face, 120}},
		"height": {{0, 0}, {0, p.top(x)}},
	}[field]
	return svgOf(scene.With(tape(at, ends)...), "tape-"+field)
}

// tapeAlong is the van seen from its side.
func tapeAlong(b begin.Body, field string) templ.Component {
	p := picturedVan(b)
	const scale = 60.0
	long := p.vehicle.Datum.Float() + p.vehicle.Overhang.Front.Float()
	wide, tall := (long+p.body.End()+130)/scale+6, p.vehicle.Height.Float()/scale+6
	at := draw.View{Origin: draw.Pt(3+long/scale, tall-3+p.ground/scale), Scale: scale, Up: true}
	box, door := p.door(at)
	scene := draw.Scene{
		Size: draw.Size{Width: wide, Height: tall}, Title: "Where to hold the tape", Description: tapeWords[field],
		Marks: []draw.Mark{draw.Area(draw.PenOutline, draw.FillPaper, p.silhouette(at))},
	}
	scene = scene.With(p.wheels(at)...).With(door, draw.Stroke(draw.PenFine, draw.Line(at.At(0, p.body.Floor()), at.At(p.body.End(), p.body.Floor()))))
	across, up := at.Back(box.Min)
	rear, low := at.Back(box.Max)
	ends := map[string][2][2]float64{
		"length":      {{0, 60}, {p.body.End(), 60}},
		"door-width":  {{across, (up + low) / 2}, {rear, (up + low) / 2}},
		"door-height": {{(across + rear) / 2, low}, {(across + rear) / 2, up}},
		"wheelbase":   {{-p.vehicle.Datum.Float(), p.ground + 330}, {(p.vehicle.Wheelbase - p.vehicle.Datum).Float(), p.ground + 330}},
	}[field]
	return svgOf(scene.With(tape(at, ends)...), "tape-"+field)
}

// tape is the line along which the tape is held, with its two ends.
func tape(at draw.View, ends [2][2]float64) []draw.Mark {
	a, b := at.At(ends[0][0], ends[0][1]), at.At(ends[1][0], ends[1][1])
	return []draw.Mark{
		draw.Stroke(draw.PenAttention, draw.Line(a, b)),
		draw.Shape{Path: draw.Circle(a, 1.1), Fill: draw.FillLead}, draw.Shape{Path: draw.Circle(b, 1.1), Fill: draw.FillLead},
	}
}

// plateDrawing is a maker's plate with the four numbers pointed out. The order of its lines: European statutory plates, from memory;
// American labels name each number.
func plateDrawing(rules string) templ.Component {
	type line struct{ text, points string }
	lines := []line{{"approval number", ""}, {"V N A 0 0 0 0 0 0 0 0 0 0 0 0 0 0", ""}, {"3300 kg", "the laden van"}, {"5300 kg", "van and trailer"},
		{"1 -  1650 kg", "front axle"}, {"2 -  1850 kg", "rear axle"}}
	if rules == "us" {
		lines = []line{{"MFD BY …   DATE …", ""}, {"GVWR  7275 LB (3300 KG)", "the laden van"}, {"GAWR FR  3640 LB (1650 KG)", "front axle"},
			{"GAWR RR  4080 LB (1850 KG)", "rear axle"}, {"V I N …", ""}}
	}
	const wide, step, left, right = 128.0, 8.0, 4.0, 76.0
	tall := step*float64(len(lines)) + 10
	scene := draw.Scene{
		Size: draw.Size{Width: wide, Height: tall}, Title: "The maker's plate",
		Description: "Lines of the plate from above: greatest mass of the laden van, of van and trailer, of the front axle, of the rear axle.",
		Marks:       []draw.Mark{draw.Area(draw.PenOutline, draw.FillPaper, draw.Rounded(draw.Box(left, 3, right, tall-6), 2))},
	}
	for i, l := range lines {
		y := 3 + step*(float64(i)+0.9)
		ink := draw.InkQuiet
		if l.points != "" {
			ink = draw.InkPlain
			scene = scene.With(draw.Stroke(draw.PenAttention, draw.Line(draw.Pt(left+right-6, y-1.2), draw.Pt(left+right+6, y-1.2))),
				draw.Lettering{Text: l.points, At: draw.Pt(left+right+8, y), Size: 3, Strong: true})
		}
		scene = scene.With(draw.Lettering{Text: l.text, At: draw.Pt(left+5, y), Size: 3, Ink: ink})
	}
	return svgOf(scene, "plate")
}
