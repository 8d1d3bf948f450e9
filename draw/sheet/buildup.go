package sheet

import (
	"math"

	"tumblehome/catalogue"
	"tumblehome/draw"
	"tumblehome/draw/label"
	"tumblehome/reckon"
	"tumblehome/trade/lining"
	"tumblehome/trade/shell"
)

// Section draws what lies on the steel at one place of a surface (left, right, roof, floor, doors or front): the skin, a rib of the
// bay, every layer from the steel inwards. z is the height of the place on a side or a door; 0 is knee height. Half full size. A bay
// that there is not gives an empty scene.
func Section(r *reckon.Reckoning, surface, bay string, z float64) draw.Scene {
	if z == 0 {
		z = r.Lining.Room.Floor() + kneeling
	}
	courses, thick, ok := r.Lining.Section(surface, bay, z)
	if !ok {
		return draw.Scene{}
	}
	b := buildup{r: r, rows: catalogue.Builtin().Overlay(r.Document.Catalogue), surface: surface, courses: courses, thick: thick}
	b.bay(bay)
	return b.scene(surfaceWords[surface] + placeWords(b.found, surface, z))
}

var surfaceWords = map[string]string{
	lining.Left: "left side", lining.Right: "right side", lining.Roof: "roof", lining.Floor: "floor", lining.Doors: "door", lining.Front: "partition",
}

func placeWords(bay shell.Bay, surface string, z float64) string {
	words := ""
	if bay.To > bay.From && surface != lining.Floor && surface != lining.Front {
		words = ", between x " + whole(bay.From) + " and " + whole(bay.To)
	}
	if surface == lining.Left || surface == lining.Right {
		words += ", " + whole(z) + " above the bare floor"
	}
	return words
}

// buildup is the work on one section.
type buildup struct {
	r       *reckon.Reckoning
	rows    *catalogue.Catalogue
	surface string
	courses []lining.Course
	thick   float64
	found   shell.Bay
	depth   float64 // of the rib; 0 where there is none
	half    float64 // of the width of its face
	steel   draw.Point
	up      bool // the steel lies below, as on the floor
	sketch
}

// Sizes of a section [mm of the van] and of its sheet [mm of the paper].
const (
	sectionScale = 2.0
	reach        = 150.0 // shown on either side of the rib
	slope        = 8.0   // of a rib's side, from its face to the skin
	sectionLeft  = 26.0
	sectionRight = 90.0
	sectionTop   = 15.0
)

// bay finds the rib that the section shows: the deepest at the ends of the bay.
func (b *buildup) bay(id string) {
	if b.surface != lining.Left && b.surface != lining.Right && b.surface != lining.Roof {
		return
	}
	for _, bay := range b.r.Body.Bays(b.surface) {
		if bay.ID == id {
			b.found = bay
		}
	}
	for _, rib := range b.r.Body.Ribs(b.surface) {
		if x := rib.X.Float(); x >= b.found.From && x <= b.found.To && rib.Depth.Float() > b.depth {
			b.depth, b.half = rib.Depth.Float(), rib.Flange.Float()/2
			if b.half == 0 {
				b.half = usualFlange / 2
			}
		}
	}
}

func (b *buildup) scene(title string) draw.Scene {
	deep := math.Max(b.thick, b.depth)
	rows := float64(len(b.courses)+2) * 4.8
	high := sectionTop + math.Max(deep/sectionScale+14, rows) + 9
	s := draw.Scene{Size: draw.Size{Width: sectionLeft + 2*reach/sectionScale + sectionRight, Height: math.Ceil(high)}, Title: "What lies on the steel: " + title}
	b.up = b.surface == lining.Floor
	b.steel = draw.Pt(sectionLeft+reach/sectionScale, sectionTop+4)
	if b.up {
		b.steel.Y += deep/sectionScale + 4
	}
	b.view = draw.View{Origin: b.steel, Scale: sectionScale, Up: b.up}
	b.box(draw.NoPen, draw.FillPaper, place{-reach, 0}, place{reach, b.thick})
	for _, c := range b.courses {
		b.course(c)
	}
	b.rib()
	b.skin()
	b.line(draw.PenOutline, []place{{-reach, b.thick}, {reach, b.thick}})
	s = s.With(draw.Group{ID: "section", Class: "section", Title: title, Digest: b.digest(), Marks: b.marks})
	s.Description = b.words(title)
	inside := draw.Lettering{Text: "inside", At: b.view.At(0, b.thick+5), Anchor: draw.Middle, Level: draw.Midline, Ink: draw.InkQuiet}
	return s.With(b.measures()...).With(b.names(s.Size)...).With(inside).With(draw.Lettering{Text: title, At: draw.Pt(sectionLeft, 6), Size: nameSize, Strong: true})
}

// side is how far from its middle a rib reaches at a depth.
func (b *buildup) side(t float64) float64 {
	if b.depth == 0 {
		return 0
	}
	return b.half + slope*math.Max(0, 1-t/b.depth)
}

// course lays one layer down: over the bay, and over the rib where it goes on.
func (b *buildup) course(c lining.Course) {
	b0, b1, r0, r1 := c.InBay[0], c.InBay[1], c.OnRib[0], c.OnRib[1]
	layer := b.layer(c.Pointer)
	switch {
	case b1 <= b0:
		b.pressed(c, layer)
		return
	case c.Kind == lining.Batten:
		b.batten(c.Material, 0, b0, b1)
		return
	}
	s0, s1 := b.side(b0), b.side(b1)
	whole := [][]place{{{-reach, b0}, {-s0, b0}, {-b.half, r0}, {b.half, r0}, {s0, b0}, {reach, b0}, {reach, b1}, {s1, b1}, {b.half, r1}, {-b.half, r1}, {-s1, b1}, {-reach, b1}}}
	if r1 <= r0 {
		whole = [][]place{{{-reach, b0}, {-s0, b0}, {-s1, b1}, {-reach, b1}}, {{s0, b0}, {reach, b0}, {reach, b1}, {s1, b1}}}
	}
	b.fill(c, whole)
	if layer != nil && layer.Between != nil {
		b.batten(layer.Between.Batten, 0.55*reach, b0, b1)
	}
}

// fill shows of what kind a layer is.
func (b *buildup) fill(c lining.Course, runs [][]place) {
	thick := (c.InBay[1] - c.InBay[0]) / sectionScale
	switch c.Kind {
	case lining.Fill:
		b.area(draw.PenFine, draw.FillPaper, runs...)
		if isWool(c.Material) {
			b.hatch(draw.HatchZigzag, math.Min(2.4, math.Max(thick/2, 0.8)), runs...)
		} else {
			b.hatch(draw.HatchRising, 1.5, runs...)
		}
	case lining.Board:
		b.area(draw.PenOutline, draw.FillDeep, runs...)
		if thick > 2 {
			b.hatch(draw.HatchGrain, 1, runs...)
		}
	case lining.Cover:
		b.area(draw.PenOutline, draw.FillWash, runs...)
	default:
		b.area(draw.PenFine, draw.FillQuiet, runs...)
	}
}

// batten is a strip cut across: end grain is drawn crossed.
func (b *buildup) batten(material string, x, from, to float64) {
	m, _ := b.rows.Material(material)
	half := m.Wide.Float() / 2
	if half == 0 {
		half = 20
	}
	b.box(draw.PenOutline, draw.FillDeep, place{x - half, from}, place{x + half, to})
	b.line(draw.PenHatch, []place{{x - half, from}, {x + half, to}}, []place{{x - half, to}, {x + half, from}})
}

// rib is the hollow profile on the skin.
func (b *buildup) rib() {
	if b.depth == 0 {
		return
	}
	foot := b.half + slope
	run := []place{{-foot - 14, 0.6}, {-foot, 0.6}, {-b.half, b.depth}, {b.half, b.depth}, {foot, 0.6}, {foot + 14, 0.6}}
	b.area(draw.NoPen, draw.FillPaper, run[1:5])
	b.line(draw.PenOutline, run)
}

// skin is the sheet, with its pressings on the floor.
func (b *buildup) skin() {
	run := []place{{-reach, 0}, {reach, 0}}
	if p := b.r.Document.Shell.Pressings; b.surface == lining.Floor && p != nil && p.Depth > 0 {
		run = nil
		depth, pitch := p.Depth.Float(), usualSpacing
		if p.Spacing != nil && *p.Spacing > 0 {
			pitch = p.Spacing.Float()
		}
		for x := -math.Ceil(reach/pitch) * pitch; x <= reach; x += pitch {
			run = append(run, place{x - pitch*0.28, 0}, place{x - pitch*0.2, -depth}, place{x + pitch*0.2, -depth}, place{x + pitch*0.28, 0})
		}
		run = within(run, reach)
	}
	b.line(draw.PenCut, run)
}

// usualSpacing is that of a load floor's pressings where it is not known [mm]: typical, from memory.
const usualSpacing = 120.0

// within keeps what of a run lies between -limit and limit.
func within(run []place, limit float64) []place {
	var out []place
	for i, p := range run {
		if i > 0 {
			a := run[i-1]
			for _, edge := range []float64{-limit, limit} {
				if (a[0] < edge) != (p[0] < edge) && a[0] != p[0] {
					out = append(out, place{edge, a[1] + (p[1]-a[1])*(edge-a[0])/(p[0]-a[0])})
				}
			}
		}
		if math.Abs(p[0]) <= limit {
			out = append(out, p)
		}
	}
	return out
}

// measures are the depths of the finished surface and of the rib, from the steel.
func (b *buildup) measures() []draw.Mark {
	var chains []draw.Chain
	if b.depth > 0 {
		chains = append(chains, draw.Dimension(b.view.At(-b.half, 0), b.view.At(-b.half, b.depth), draw.Vertical, 0, "rib "+whole(b.depth)))
	}
	chains = append(chains, draw.Dimension(b.view.At(-reach, 0), b.view.At(-reach, b.thick), draw.Vertical, 0, "in all "+whole(b.thick)))
	set, _ := draw.Stack(b.view.At(-reach, 0).X, false, chains...)
	return draw.Dimensions(set...)
}

// names letters every layer beside the section, in their order.
func (b *buildup) names(size draw.Size) []draw.Mark {
	var labels []label.Label
	var words [][]string
	put := func(x, depth float64, text string) {
		lines := wrapped(text, sectionRight-13)
		labels = append(labels, label.Label{Place: b.view.At(x, depth), Width: sectionRight - 10, Height: 4.4 * float64(len(lines))})
		words = append(words, lines)
	}
	outside := 0.0
	if p := b.r.Document.Shell.Pressings; b.up && p != nil {
		outside = -p.Depth.Float()
	}
	put(reach-4, outside, "steel, outside")
	end := 0.0
	for _, c := range b.courses {
		if c.Kind == lining.Batten { // air goes on beside it
			put(12, (c.InBay[0]+c.InBay[1])/2, b.name(c))
			continue
		}
		if c.InBay[0] > end+3 && c.InBay[1] > c.InBay[0] {
			put(reach-10, (end+c.InBay[0])/2, "air, "+whole(c.InBay[0]-end)+" mm")
		}
		end = math.Max(end, c.InBay[1])
		put(reach-10, (c.InBay[0]+c.InBay[1])/2, b.name(c))
	}
	var out []draw.Mark
	left := b.view.At(reach, 0).X + 9
	for i, at := range label.Column(labels, left+(sectionRight-10)/2, sectionTop-6, size.Height-4, 0.2) {
		from := draw.Pt(at.Box.Min.X-0.8, at.Box.Centre().Y)
		elbow := draw.Pt(b.view.At(reach, 0).X+2, from.Y)
		out = append(out, draw.Stroke(draw.PenLeader, draw.Polyline(from, elbow, labels[i].Place)),
			draw.Shape{Path: draw.Circle(labels[i].Place, 0.45), Fill: draw.FillInk})
		for k, text := range words[i] {
			out = append(out, draw.Lettering{Text: text, At: draw.Pt(at.Box.Min.X, at.Box.Min.Y+4.4*(float64(k)+0.5)), Level: draw.Midline})
		}
	}
	return out
}
