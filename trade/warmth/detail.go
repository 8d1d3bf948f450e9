package warmth

import (
	"fmt"
	"math"
	"strings"

	"tumblehome/solve/conduction"
)

// Detail is the section through half a rib, or bow, and the bay beside it, as it is solved and drawn: outside at y = 0, the middle of the rib at x = 0. In m.
// Where there is no rib it is a piece of the plain bay. Lines of one temperature and lines of heat flow are Solved.Field's Isotherms (0 is outside, 20 inside)
// and HeatLines.
type Detail struct {
	Fields    []int // which fields have it
	Name      string
	Section   conduction.Section
	Materials []string // of each region: a catalogue material, "steel" or "air"
	Solved    conduction.Result
	Plain     float64 // transmittance of the bay without the rib, W/m2K
	Excess    float64 // what half a rib adds, W/K for each m of its length
	Factor    float64 // fRsi of its coldest inside spot: 0 is as cold as outside, 1 as warm as the room
	Coldest   conduction.Spot
	Trouble   string // why it could not be solved as well as wanted; else empty

	cold float64 // fRsi of a bay without rib
}

const (
	beside  = 250.0 // mm of bay beside a rib: further out heat runs straight through; what is left out is below the accuracy asked
	outside = 0.0   // °C in a section
	inside  = 20.0
)

// good is how well a detail is solved: half a per cent of heat, a hundredth of the temperature difference.
var good = conduction.Accuracy{Coupling: 0.005, Temperature: 0.01}

// drafted is a section being drawn.
type drafted struct {
	Detail
	skin float64
}

func (d *drafted) put(material string, x0, y0, x1, y1, conducts float64) {
	if x1-x0 < 1e-6 || y1-y0 < 1e-6 {
		return
	}
	mm := func(v float64) float64 { return v / 1000 }
	d.Section.Regions = append(d.Section.Regions, conduction.Region{Name: material, X0: mm(x0), Y0: mm(y0), X1: mm(x1), Y1: mm(y1), Conductivity: conducts})
	d.Materials = append(d.Materials, material)
}

func (d *drafted) stack(slabs []slab, x0, x1 float64) {
	for _, s := range slabs {
		name := "air"
		if s.course != nil {
			name = s.course.Of.ID
		}
		d.put(name, x0, d.skin+s.from, x1, d.skin+s.to, s.conducts())
	}
}

func (d *drafted) face(name string, x0, y0, x1, y1, temperature, resistance float64) {
	if math.Hypot(x1-x0, y1-y0) < thinnest {
		return
	}
	d.Section.Boundaries = append(d.Section.Boundaries, conduction.Boundary{Name: name, X0: x0 / 1000, Y0: y0 / 1000, X1: x1 / 1000, Y1: y1 / 1000,
		Temperature: temperature, Resistance: resistance})
}

// draft draws the section of a rib in a field: a hat of sheet, empty or filled, what lies beside and over it.
func (f *Field) draft(r Rib, skin float64) *drafted {
	d := &drafted{skin: skin}
	half := math.Max(r.Flange/2, 3*skin)
	wide, depth := half+beside, math.Max(r.Depth, 2*skin)
	d.put("steel", 0, 0, wide, skin, steel)
	bay := f.inBay()
	d.stack(bay, half, wide)
	d.hollow(f, half, depth)
	d.put("steel", half-skin, skin, half, skin+depth, steel)
	d.put("steel", 0, skin+depth-skin, half, skin+depth, steel)
	d.stack(f.column(depth, f.ribTop(depth), func(c Course) [2]float64 { return c.OnRib }), 0, half)

	bayTop, ribTop := skin+f.bayTop(), skin+f.ribTop(depth)
	d.face("outside", 0, 0, wide, 0, outside, f.outer())
	rsi := inner(f.Flow)
	if math.Abs(bayTop-ribTop) < thinnest {
		d.face("inside", 0, ribTop, wide, ribTop, inside, rsi)
		return d
	}
	d.face("on the rib", 0, ribTop, half, ribTop, inside, rsi)
	d.face("beside it", half, math.Min(bayTop, ribTop), half, math.Max(bayTop, ribTop), inside, rsi)
	d.face("in the bay", half, bayTop, wide, bayTop, inside, rsi)
	return d
}

// draftPlain draws a piece of a bay without a rib.
func (f *Field) draftPlain(skin float64) *drafted {
	d := &drafted{skin: skin}
	d.put("steel", 0, 0, beside, skin, steel)
	d.stack(f.inBay(), 0, beside)
	top := skin + f.bayTop()
	d.face("outside", 0, 0, beside, 0, outside, f.outer())
	d.face("inside", 0, top, beside, top, inside, inner(f.Flow))
	return d
}

// hollow is what the rib holds: air, or insulation that was pushed into it.
func (d *drafted) hollow(f *Field, half, depth float64) {
	name, conducts := "air", depth/1000/airGap(depth, 2*half, f.Flow)
	for _, c := range f.Courses {
		if c.Filled {
			name, conducts = c.Of.ID, c.Of.Conducts
		}
	}
	d.put(name, 0, d.skin, half-d.skin, depth, conducts)
}

// key names a section by its content.
func (d *drafted) key() string {
	var b strings.Builder
	for _, r := range d.Section.Regions {
		fmt.Fprintf(&b, "%s %.6f %.6f %.6f %.6f %.9g;", r.Name, r.X0, r.Y0, r.X1, r.Y1, r.Conductivity)
	}
	for _, s := range d.Section.Boundaries {
		fmt.Fprintf(&b, "%.6f %.6f %.6f %.6f %g;", s.X0, s.Y0, s.X1, s.Y1, s.Resistance)
	}
	return b.String()
}

// solve finds how much more heat half a rib passes than the plain bay, and where it is coldest.
func (d *drafted) solve(f *Field, in *Inputs) *Detail {
	solve := in.Solve
	if solve == nil {
		solve = conduction.Solve
	}
	result, err := solve(d.Section, good)
	if err != nil {
		d.Trouble = err.Error()
	}
	d.Solved = result
	resistance := inner(f.Flow) + f.outer() + in.Skin/1000/steel
	for _, s := range f.inBay() {
		resistance += s.mixed.even()
	}
	d.Plain, d.cold = 1/resistance, 1-inner(f.Flow)/resistance
	if len(result.Surfaces) == 0 {
		d.Factor = d.cold
		return &d.Detail
	}
	d.Excess = math.Max(0, result.Excess(d.Plain, d.Section.Boundaries[0].X1))
	d.Factor = 1
	for i, s := range result.Surfaces {
		if i > 0 && result.Factor(s) <= d.Factor {
			d.Factor, d.Coldest = result.Factor(s), s.Lowest
		}
	}
	return &d.Detail
}
