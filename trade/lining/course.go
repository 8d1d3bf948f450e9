package lining

import "math"

// A Course is one layer in the build-up of one place: where it lies between
// two ribs and on a rib, as depths from the steel. Where it is missing, both
// depths are equal.
type Course struct {
	Pointer      string
	Material     string
	Kind         Kind
	InBay, OnRib [2]float64
	layer        *Layer
	over         bool
}

const (
	strip      = 10  // mm of insulation that goes over a bridged rib
	overArches = 13  // mm of insulation that still bends over a wheel arch
	usualEvery = 400 // mm between battens where nothing is said
)

// thick is what a layer measures in mm, all times it is laid and with its battens.
func (l *Layer) thick() float64 {
	t := float64(l.Thick)
	if t == 0 {
		t = float64(l.Of.Thick)
	}
	t *= l.times()
	if l.Between != nil {
		t = math.Max(t, float64(l.Between.Of.Thick))
	}
	return t
}

func (l *Layer) times() float64 { return float64(max(l.Times, 1)) }

// share is the part of the surface the layer covers.
func (l *Layer) share() float64 {
	if l.Cover == 0 {
		return 1
	}
	return math.Min(1, float64(l.Cover))
}

// reaches says whether the layer lies at height z.
func (l *Layer) reaches(z float64) bool {
	return (l.From == nil || z >= float64(*l.From)) && (l.To == nil || z <= float64(*l.To))
}

// buildUp stacks the layers from the steel inwards on ribs of the given depth.
// hollow is how deep a partial patch may lie without adding thickness. It returns
// the courses and the depth of the finished surface.
func buildUp(layers []*Layer, depth, hollow float64) ([]Course, float64) {
	courses := make([]Course, 0, len(layers))
	bay, rib := 0.0, depth
	front, over := 0.0, false
	for i, l := range layers {
		t := l.thick()
		c := Course{Pointer: l.Pointer, Material: l.Of.ID, Kind: l.Of.Kind, layer: l}
		if !over && (l.Between != nil || l.Of.Kind != Patch && l.Of.Kind != Fill) {
			over, front = true, math.Max(bay, rib)
		}
		switch {
		case over:
			c.InBay, c.OnRib = [2]float64{front, front + t}, [2]float64{front, front + t}
			front += t
		case l.Of.Kind == Patch && l.share() < 1 && (t <= hollow || filledOver(layers[i+1:])):
			c.InBay, c.OnRib = [2]float64{bay, bay}, [2]float64{rib, rib}
		default:
			up := 0.0
			if l.Ribs == Bridged {
				up = math.Min(t, strip)
			}
			c.InBay, c.OnRib = [2]float64{bay, bay + t}, [2]float64{rib, rib + up}
			bay, rib = bay+t, rib+up
		}
		c.over = over
		courses = append(courses, c)
	}
	if !over {
		front = math.Max(bay, rib)
	}
	return courses, front
}

// filledOver says whether insulation comes next, into which a patch is pressed.
func filledOver(rest []*Layer) bool {
	for _, l := range rest {
		if l.Of.Kind != Patch {
			return l.Of.Kind == Fill && l.Between == nil
		}
	}
	return false
}

// proud is how far what lies in the bay stands out beyond the ribs and their strips.
func proud(courses []Course, depth float64) float64 {
	bay, rib := 0.0, depth
	for _, c := range courses {
		if !c.over {
			bay, rib = c.InBay[1], c.OnRib[1]
		}
	}
	return bay - rib
}
