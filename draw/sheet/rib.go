package sheet

import (
	"math"
	"slices"

	"tumblehome/catalogue"
	"tumblehome/draw"
	"tumblehome/draw/label"
	"tumblehome/reckon"
	"tumblehome/solve/conduction"
	"tumblehome/trade/warmth"
)

// RibDetail draws the way of the heat by a rib: half the rib and the bay beside it, to scale, as it was worked out for 0 °C outside and 20 °C inside, with the
// lines of one temperature, the ways of the heat, and the coldest place inside. Where there is no rib it is a piece of the bay. A detail that could not be worked out gives an empty scene.
func RibDetail(r *reckon.Reckoning, d *warmth.Detail, width float64) draw.Scene {
	if d == nil || len(d.Section.Regions) == 0 || len(d.Solved.Field.X) == 0 {
		return draw.Scene{}
	}
	b := ribbed{d: d, rows: catalogue.Builtin().Overlay(r.Document.Catalogue), letters: lettersOn(width), width: width, wide: width >= wideChart*0.8}
	b.measure()
	return b.scene()
}

// ribbed is the work on one detail.
type ribbed struct {
	d          *warmth.Detail
	rows       *catalogue.Catalogue
	width      float64
	letters    float64
	wide       bool    // there is room for names beside it; else there are numbers, and the names below
	long, deep float64 // of the section, m
	view       draw.View
}

// Sizes of a detail [mm of the paper].
const (
	ribLeft  = 15.0 // room for the temperatures
	ribTop   = 9.0
	ribNames = 92.0
	ribSigns = 14.0 // room for numbers in the place of names
	ribKey   = 2    // lines that say what the lines are
)

func (b *ribbed) measure() {
	for _, r := range b.d.Section.Regions {
		b.long, b.deep = math.Max(b.long, r.X1), math.Max(b.deep, r.Y1)
	}
	right := ribSigns
	if b.wide {
		right = ribNames
	}
	b.view = draw.View{Origin: draw.Pt(ribLeft, ribTop), Scale: b.long / (b.width - ribLeft - right)} // metres of the van on millimetres of the paper
}

func (b *ribbed) scene() draw.Scene {
	s := draw.Scene{Title: "The way of the heat by a rib", Description: b.words()}
	s = s.With(b.materials()...).With(b.ways()...).With(b.temperatures()...)
	foot := b.view.At(0, b.deep).Y
	s = s.With(b.sides(foot)...).With(b.coldest(foot)...)
	foot += 2*b.letters + 9
	names := b.layers()
	bottom := foot
	if need := ribTop + float64(len(names))*1.7*b.letters; b.wide && need > bottom {
		bottom = need
	}
	s = s.With(b.names(names, bottom)...)
	if !b.wide {
		s = s.With(b.list(names, bottom)...)
		bottom += float64(len(names)) * (b.letters + 2)
	}
	s = s.With(b.key(bottom)...)
	s.Size = draw.Size{Width: b.width, Height: math.Ceil(bottom + ribKey*(b.letters+2) + 2)}
	return s
}

// materials lay down the regions.
func (b *ribbed) materials() []draw.Mark {
	var out []draw.Mark
	for i, r := range b.d.Section.Regions {
		outline := draw.Rectangle(b.view.Box(r.X0, r.Y0, r.X1-r.X0, r.Y1-r.Y0))
		out = append(out, b.material(b.d.Materials[i], b.view.Length(math.Min(r.Y1-r.Y0, r.X1-r.X0)), outline)...)
	}
	return out
}

func (b *ribbed) material(id string, thick float64, outline draw.Path) []draw.Mark {
	m, _ := b.rows.Material(id)
	switch {
	case id == "steel":
		return []draw.Mark{draw.Area(draw.NoPen, draw.FillInk, outline)}
	case id == "air":
		return []draw.Mark{draw.Area(draw.PenHairline, draw.FillPaper, outline)}
	case m.Group == "insulation" && isWool(id):
		return []draw.Mark{draw.Area(draw.PenFine, draw.FillPaper, outline), draw.Hatch(outline, draw.HatchZigzag, math.Min(3, math.Max(thick/2, 1)))}
	case m.Group == "insulation":
		return []draw.Mark{draw.Area(draw.PenFine, draw.FillPaper, outline), draw.Hatch(outline, draw.HatchRising, 2)}
	case thick > 2:
		return []draw.Mark{draw.Area(draw.PenOutline, draw.FillDeep, outline), draw.Hatch(outline, draw.HatchGrain, 1.2)}
	}
	return []draw.Mark{draw.Area(draw.PenFine, draw.FillDeep, outline)}
}

const (
	everyKelvin = 2  // °C from one line of one temperature to the next
	namedKelvin = 4  // °C from one that is named to the next
	heatParts   = 12 // parts into which all the heat is parted
	heatWays    = "twelfth"
)

// ways are the ways of the heat.
func (b *ribbed) ways() []draw.Mark {
	var out []draw.Mark
	for _, line := range b.d.Solved.Field.HeatLines(heatParts) {
		out = append(out, draw.Stroke(draw.PenHeat, b.path(line)))
	}
	return []draw.Mark{draw.Group{Class: "heat-ways", Title: "ways of the heat", Marks: out}}
}

// temperatures are the lines of one temperature; those of every fourth degree are named at their left end.
func (b *ribbed) temperatures() []draw.Mark {
	var lines []draw.Mark
	var labels []label.Label
	var words []string
	for t := everyKelvin; t < 20; t += everyKelvin {
		end := conduction.Point{X: math.Inf(1)}
		for _, line := range b.d.Solved.Field.Isotherms(float64(t)) {
			lines = append(lines, draw.Stroke(draw.PenIsotherm, b.path(line)))
			for _, p := range []conduction.Point{line[0], line[len(line)-1]} {
				if p.X < end.X {
					end = p
				}
			}
		}
		if t%namedKelvin == 0 && end.X < b.long/1000 {
			words = append(words, degrees(float64(t)))
			labels = append(labels, label.Label{Place: b.view.At(end.X, end.Y), Width: ribLeft - 3, Height: 1.7 * b.letters})
		}
	}
	out := []draw.Mark{draw.Group{Class: "isotherms", Title: "lines of one temperature", Marks: lines}}
	for i, at := range label.Column(labels, (ribLeft-3)/2, ribTop-2, b.view.At(0, b.deep).Y+4, 0.2) {
		right := draw.Pt(ribLeft-2.4, at.Box.Centre().Y)
		out = append(out, draw.Stroke(draw.PenLeader, draw.Line(right, labels[i].Place)),
			draw.Lettering{Text: words[i], At: right.Add(draw.Pt(-0.4, 0)), Anchor: draw.End, Level: draw.Midline, Size: b.letters, Ink: draw.InkWater})
	}
	return out
}

// path is a line on the paper, without the points that do not matter there.
func (b *ribbed) path(line []conduction.Point) draw.Path {
	points := make([]draw.Point, len(line))
	for i, p := range line {
		points[i] = b.view.At(p.X, p.Y)
	}
	return draw.Polyline(simpler(points, 0.05)...)
}

// simpler leaves out points that lie within a distance of the line without them (Douglas and Peucker).
func simpler(points []draw.Point, within float64) []draw.Point {
	if len(points) < 3 {
		return points
	}
	a, z := points[0], points[len(points)-1]
	farthest, most := 0, within
	for i, p := range points[1 : len(points)-1] {
		if off := offLine(p, a, z); off > most {
			farthest, most = i+1, off
		}
	}
	if farthest == 0 {
		return []draw.Point{a, z}
	}
	return slices.Concat(simpler(points[:farthest+1], within), simpler(points[farthest:], within)[1:])
}

// offLine is how far a point lies from the line through two others, or from the first where they are one.
func offLine(p, a, z draw.Point) float64 {
	along := z.Sub(a)
	long := math.Hypot(along.X, along.Y)
	if long < 1e-9 {
		return p.Distance(a)
	}
	d := p.Sub(a)
	return math.Abs(along.X*d.Y-along.Y*d.X) / long
}
