package warmth

import (
	"maps"
	"math"
	"slices"
)

// Surface is one kind of surface and what it lets through.
type Surface struct {
	Group     string
	Area      float64 // m2
	U         float64 // W/m2K, ribs and all
	Plain     float64 // W/m2K without the ribs
	Combined  float64 // W/m2K by the method of ISO 6946, which is not made for steel
	Loss      float64 // W/K
	Deviation float64 // of Loss, W/K
	Bare      float64 // m2 of it that is bare steel
}

// Lost is the heat that goes through one field.
type Lost struct {
	Field           *Field
	U, Plain, Mixed float64 // W/m2K: all, without ribs, by the combined method
	Ribs            []*Detail
	Strip           float64 // m2 of the surface that lies on ribs
	Factor          float64 // fRsi there, or of the plain surface where there are none
}

// losses are those of all fields, and their details: each distinct section once.
func (in *Inputs) losses() ([]Lost, []*Detail) {
	album := album{in: in, known: map[string]*Detail{}}
	out := make([]Lost, len(in.Fields))
	for i := range in.Fields {
		out[i] = album.lost(i)
	}
	return out, album.all
}

// album holds each distinct section once.
type album struct {
	in    *Inputs
	known map[string]*Detail
	all   []*Detail
}

// lost is what goes through one field: the plain bay, and what its ribs add.
func (a *album) lost(field int) Lost {
	f := &a.in.Fields[field]
	l := Lost{Field: f, Plain: f.plain(), Mixed: f.combined(a.in.Skin), Factor: 1 - inner(f.Flow)*f.plain()}
	l.U = l.Plain
	weighed := 0.0
	for _, r := range f.Ribs {
		if f.Width <= 0 || r.Halves <= 0 || r.Depth < 1 {
			continue
		}
		d := a.take(field, f.draft(r, a.in.Skin))
		l.Ribs = append(l.Ribs, d)
		l.U += r.Halves * d.Excess / (f.Width / 1000)
		strip := math.Min(f.Area, f.Area*r.Halves*r.Flange/2/f.Width)
		l.Strip += strip
		weighed += strip * d.Factor
	}
	if l.Strip > 0 {
		l.Factor = weighed / l.Strip
	}
	if len(l.Ribs) == 0 && len(f.Courses) > 0 {
		a.take(field, f.draftPlain(a.in.Skin))
	}
	return l
}

// take adds a section of a field, or finds the same.
func (a *album) take(field int, d *drafted) *Detail {
	key := d.key()
	if a.known[key] == nil {
		d.Name = a.in.Fields[field].Bay
		a.known[key] = d.solve(&a.in.Fields[field], a.in)
		a.all = append(a.all, a.known[key])
	}
	a.known[key].Fields = append(a.known[key].Fields, field)
	return a.known[key]
}

// surfaces sum the fields by kind.
func surfaces(lost []Lost) []Surface {
	var out []Surface
	for _, g := range groups {
		s := Surface{Group: g}
		wrong := map[string]float64{} // W/K for one standard deviation of a material's conductivity
		for i := range lost {
			l := &lost[i]
			if l.Field.Group != g || l.Field.Area <= 0 {
				continue
			}
			a := l.Field.Area
			s.Area, s.Loss = s.Area+a, s.Loss+a*l.U
			s.Plain, s.Combined = s.Plain+a*l.Plain, s.Combined+a*l.Mixed
			if len(l.Field.Courses) == 0 {
				s.Bare += a
			}
			l.unsure(wrong)
		}
		if s.Area == 0 {
			continue
		}
		s.U, s.Plain, s.Combined = s.Loss/s.Area, s.Plain/s.Area, s.Combined/s.Area
		s.Deviation = together(wrong)
		out = append(out, s)
	}
	return out
}

// spreadOfLambda is the standard deviation of a catalogue's conductivity as a share of it: sheets of one kind differ by 10 % either way (common practice).
const spreadOfLambda = 0.10 / 2.6458 // an even guess of 10 %, √7

// unsure adds what each material's error moves the loss by: dH = A·U²·R·dλ/λ.
func (l *Lost) unsure(wrong map[string]float64) {
	for _, s := range l.Field.inBay() {
		if s.course != nil {
			wrong[s.course.Of.ID] += l.Field.Area * l.U * l.Plain * s.mixed.even() * spreadOfLambda
		}
	}
}

func together(wrong map[string]float64) float64 {
	sum := 0.0
	for _, id := range slices.Sorted(maps.Keys(wrong)) { // in one order, so that the sum is the same to the last digit
		sum += wrong[id] * wrong[id]
	}
	return math.Sqrt(sum)
}

// Transmittance of glass [W/m2K]: one pane by its surface resistances, two of acrylic as their makers give it (2.6 to 3.0; typical trade figure, from
// memory). A blind adds a layer of still air.
func (g Glass) transmittance() float64 {
	r := inner(0) + outer + pane/glassConducts
	if g.Double {
		r = 1 / doubleAcrylic
	}
	if g.Blind {
		r += blind
	}
	return 1 / r
}

const (
	pane          = 0.004 // m
	glassConducts = 1.0   // W/(m·K), EN ISO 10077-2
	doubleAcrylic = 2.8   // W/m2K
	blind         = 0.15  // m2K/W: 10 mm of still air; common practice, no source
	curtain       = 0.18  // m2K/W of a curtain with the air about it; common practice, no source
	cabLoss       = 40.0  // W/K of a cab's steel and glass to outside; common practice, no source
)

// cab is what the room loses to the cab [W/K]: through curtain or partition into a space that itself loses heat, or, open, all the cab loses.
func (in *Inputs) cab(lost []Lost) float64 {
	through := 0.0
	switch {
	case in.Cab.Partition:
		for i := range lost {
			if lost[i].Field.Group == Front {
				through += lost[i].Field.Area * lost[i].U
			}
		}
	case in.Cab.Curtain:
		through = in.Cab.Opening / (2*inner(0) + curtain)
	default:
		if in.Cab.Opening <= 0 {
			return 0
		}
		return cabLoss
	}
	if through <= 0 {
		return 0
	}
	return 1 / (1/through + 1/cabLoss)
}
