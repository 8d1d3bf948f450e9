package warmth

import (
	"math"

	"tumblehome/solve/zone"
)

// The lumps about the air of the room, in the order in which they are told.
const (
	atLining = iota
	atRibs
	atBare
	atGlass
	atFurniture
	atClothes
	lumps
)

var lumpNames = [lumps]string{"linings", "linings over ribs", "bare steel", "glass", "furniture", "wet clothes"}

const (
	convective = 3.0    // W/m2K of air against a surface: carries vapour by the Lewis relation (2.5 level, 5 upward)
	lewis      = 1200.0 // J/(m3·K)
	clothArea  = 1.5    // m2 of wet cloth for each kg of water in it; common practice, no source
	clothAir   = 4.0    // W/m2K about hanging clothes
	boardHeat  = 1500.0 // J/(kg·K) of boards and what is stowed
	takesPart  = 0.5    // of the furniture's heat follows the air within hours; common practice, no source
	boardArea  = 0.25   // m2 of surface for each kg of furniture: 8 kg/m2, both faces
	still      = 5.0    // W/m2K, air and radiation together
	cabAir     = 2.5    // m3 of air in an open cab
	cabGlass   = 2.5    // m2 of its glass
	behind     = 0.3    // of the water that goes to a bare pane goes round a blind
)

// room builds the volume of air with the lumps about it, so that each surface lets through as much as it should.
func (in *Inputs) room(lost []Lost, flow *Flow) zone.Zone {
	bodies := make([]zone.Body, lumps)
	for i := range bodies {
		bodies[i].Name = lumpNames[i]
	}
	for i := range lost {
		l := &lost[i]
		switch {
		case l.Field.Area <= 0 || l.Field.Group == Front:
		case len(l.Field.Courses) == 0:
			add(&bodies[atBare], l.Field.Area, inner(l.Field.Flow), l.U, in.Skin/1000*7800*450, 1)
		default:
			in.line(bodies, l)
		}
	}
	for _, g := range in.Glass {
		passes := 1.0
		if g.Blind {
			passes = behind
		}
		add(&bodies[atGlass], g.Area, inner(0), g.transmittance(), pane*2500*750, passes)
	}
	z := zone.Zone{Volume: math.Max(in.Volume, 1), Loss: in.cab(lost)}
	if in.open() {
		z.Volume += cabAir
		g := Glass{Area: cabGlass}
		add(&bodies[atGlass], g.Area, inner(0), g.transmittance(), pane*2500*750, 1)
		z.Loss = math.Max(0, z.Loss-g.Area*g.transmittance())
	}
	furniture := math.Max(in.Furniture, 1)
	bodies[atFurniture] = zone.Body{Name: lumpNames[atFurniture], Capacity: furniture * boardHeat * takesPart, ToAir: furniture * boardArea * still}
	wet := math.Max(in.Wet, 0)
	bodies[atClothes] = zone.Body{Name: lumpNames[atClothes], Capacity: 1000 + wet*4190, ToAir: clothAir * clothArea * wet, Area: clothArea * wet, Transfer: clothAir / lewis}
	*flow = NewFlow(in.Vents, in.leak()*z.Volume)
	z.Bodies = bodies
	return z
}

// compact leaves out the lumps there are none of, and says where each of the others has come to; -1 is nowhere.
func compact(z *zone.Zone) (where [lumps]int) {
	var kept []zone.Body
	for i, b := range z.Bodies {
		where[i] = -1
		if b.ToAir > 0 {
			where[i] = len(kept)
			b.Capacity = math.Max(b.Capacity, 100)
			kept = append(kept, b)
		}
	}
	z.Bodies = kept
	return where
}

// open says whether the cab's air is the room's.
func (in *Inputs) open() bool { return !in.Cab.Partition && !in.Cab.Curtain && in.Cab.Opening > 0 }

// leak is how often an hour seals let the air change.
func (in *Inputs) leak() float64 {
	if in.open() {
		return cabLeaks
	}
	return leaking
}

// line adds a lined field: the strips over its ribs, which are colder, and the rest.
func (in *Inputs) line(bodies []zone.Body, l *Lost) {
	a, rsi := l.Field.Area, inner(l.Field.Flow)
	strip := math.Min(l.Strip, a)
	loss := 0.0
	if strip > 0 && l.Factor < 1 {
		u := (1 - l.Factor) / rsi // of a surface as cold as that strip
		loss = math.Min(strip*u, a*l.U)
		add(&bodies[atRibs], strip, rsi, loss/strip, l.Field.takesHeat(), 1)
	}
	if rest := a - strip; rest > 0 {
		add(&bodies[atLining], rest, rsi, math.Max(a*l.U-loss, 0)/rest, l.Field.takesHeat(), 1)
	}
}

// add adds an area of a transmittance to a lump; what is inside of its surface resistance goes on to outside.
func add(b *zone.Body, area, rsi, u, capacity, passes float64) {
	b.Area += area * passes
	b.Transfer = convective / lewis
	b.ToAir += area / rsi
	b.Capacity += area * capacity
	if rest := 1/u - rsi; u > 0 && rest > 0 {
		b.ToOutside += area / rest
	}
}

// takesHeat is what the layers inside of the middle of a build-up's resistance take up for each K [J/m2K], as the night's course reaches no deeper.
func (f *Field) takesHeat() float64 {
	slabs := f.inBay()
	whole := 0.0
	for _, s := range slabs {
		whole += s.mixed.even()
	}
	passed, heat := 0.0, 0.0
	for i := len(slabs) - 1; i >= 0 && passed < whole/2; i-- {
		s := slabs[i]
		if s.course != nil {
			heat += s.course.Of.Density * s.course.Of.Capacity * s.thick() * s.mixed[0].Share
		}
		passed += s.mixed.even()
	}
	return math.Max(heat, 1000)
}
