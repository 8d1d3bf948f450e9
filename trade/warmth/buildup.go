package warmth

import (
	"math"

	"tumblehome/solve/conduction"
)

// Surface resistances [m2K/W] of ISO 6946, table of surface resistances: upward 0.10, level 0.13, downward 0.17; outside 0.04.
const outer = 0.04

func inner(flow conduction.Direction) float64 {
	return [...]float64{conduction.Level: 0.13, conduction.Upward: 0.10, conduction.Downward: 0.17}[flow]
}

// Mixed is one layer of a build-up: parts beside one another, each with its share of the surface and its resistance [m2K/W].
type Mixed []Part

// Part is a share of a layer.
type Part struct{ Share, Resistance float64 }

// Combined is the total resistance [m2K/W] of layers between two surface resistances, by the combined method of ISO 6946: the mean of an upper
// limit (each way straight through, side by side) and a lower one (each layer evened out). It must not be used for insulation bridged by metal, nor
// where upper is more than 1.5 times lower (from memory).
func Combined(layers []Mixed, rsi, rse float64) (total, upper, lower float64) {
	upper = 1 / straight(layers, rsi+rse, 1)
	lower = rsi + rse
	for _, l := range layers {
		lower += l.even()
	}
	return (upper + lower) / 2, upper, lower
}

// straight is the conductance of all ways through the layers that are left, for a share of the surface.
func straight(layers []Mixed, before, share float64) float64 {
	if len(layers) == 0 {
		return share / before
	}
	sum := 0.0
	for _, p := range layers[0] {
		sum += straight(layers[1:], before+p.Resistance, share*p.Share)
	}
	return sum
}

// even is the resistance of a layer whose parts lie side by side between two even temperatures.
func (m Mixed) even() float64 {
	if len(m) == 1 {
		return m[0].Resistance
	}
	conductance := 0.0
	for _, p := range m {
		if p.Resistance <= 0 {
			return 0
		}
		conductance += p.Share / p.Resistance
	}
	return 1 / conductance
}

// slab is a stretch of a column through a build-up, from one depth to another [mm].
type slab struct {
	from, to float64
	course   *Course // nil for air
	mixed    Mixed
}

func (s slab) thick() float64 { return (s.to - s.from) / 1000 }

// conducts is the conductivity of the slab evened out.
func (s slab) conducts() float64 { return s.thick() / s.mixed.even() }

// column is what one meets going inwards from a depth: the courses where they lie, and air where none does.
func (f *Field) column(from, to float64, where func(Course) [2]float64) []slab {
	var out []slab
	at := from
	for i := range f.Courses {
		c := &f.Courses[i]
		d := where(*c)
		if d[1]-d[0] < thinnest || d[1] <= at {
			continue
		}
		if d[0]-at >= thinnest {
			out = append(out, f.air(at, d[0]))
		}
		out = append(out, f.slab(c, math.Max(at, d[0]), d[1]))
		at = d[1]
	}
	if to-at >= thinnest {
		out = append(out, f.air(at, to))
	}
	return out
}

const thinnest = 0.05 // mm; what is thinner is no layer

func (f *Field) inBay() []slab {
	return f.column(0, f.bayTop(), func(c Course) [2]float64 { return c.InBay })
}

// bayTop and ribTop are how deep the finished surface lies between the ribs and on a rib of a depth.
func (f *Field) bayTop() float64 {
	top := 0.0
	for _, c := range f.Courses {
		top = math.Max(top, c.InBay[1])
	}
	return top
}

func (f *Field) ribTop(depth float64) float64 {
	for _, c := range f.Courses {
		depth = math.Max(depth, c.OnRib[1])
	}
	return depth
}

// air is a still layer of it: ISO 6946, air layers.
func (f *Field) air(from, to float64) slab {
	return slab{from: from, to: to, mixed: Mixed{{1, airGap(to-from, 0, f.Flow)}}}
}

// airGap is the resistance of a gap of air [m2K/W] of a thickness and, where it is small, a width [mm].
func airGap(thick, width float64, flow conduction.Direction) float64 {
	thick = math.Min(math.Max(thick, 0.1), 300)
	return conduction.AirLayer{Thickness: thick / 1000, Width: width / 1000, EmissivityA: 0.9, EmissivityB: 0.9, Mean: 10, Flow: flow}.Resistance()
}

// slab is a course as a layer, with the air or battens beside it.
func (f *Field) slab(c *Course, from, to float64) slab {
	s := slab{from: from, to: to, course: c}
	main := Part{1, s.thick() / c.Of.Conducts}
	if c.Share > 0 && c.Share < 1 {
		main.Share = c.Share
		s.mixed = Mixed{main, {1 - c.Share, airGap(to-from, 0, f.Flow)}}
		return s
	}
	if c.Between != nil && c.BetweenShare > 0 {
		main.Share = 1 - c.BetweenShare
		s.mixed = Mixed{main, {c.BetweenShare, s.thick() / c.Between.Conducts}}
		return s
	}
	s.mixed = Mixed{main}
	return s
}

func layersOf(slabs []slab) []Mixed {
	out := make([]Mixed, len(slabs))
	for i := range slabs {
		out[i] = slabs[i].mixed
	}
	return out
}

// plain is the transmittance [W/m2K] of a field without its ribs. Half of a floor with pressings lies on the air in their valleys.
func (f *Field) plain() float64 {
	layers := layersOf(f.inBay())
	total, _, _ := Combined(layers, inner(f.Flow), f.outer())
	if f.Valleys < thinnest || len(layers) == 0 {
		return 1 / total
	}
	return (1/total + 1/(total+airGap(f.Valleys, 0, f.Flow))) / 2
}

// combined is the transmittance by the method that is not made for steel: with the webs of the ribs as a share of the bay.
func (f *Field) combined(skin float64) float64 {
	webs := 0.0
	depth := 0.0
	for _, r := range f.Ribs {
		webs += r.Halves * skin
		depth = math.Max(depth, r.Depth)
	}
	if webs == 0 || f.Width <= 0 {
		return f.plain()
	}
	share := math.Min(webs/f.Width, 0.5)
	var layers []Mixed
	for _, s := range f.inBay() {
		if s.to > depth+thinnest {
			layers = append(layers, s.mixed)
			continue
		}
		bridged := Mixed{{share, s.thick() / steel}}
		for _, p := range s.mixed {
			bridged = append(bridged, Part{p.Share * (1 - share), p.Resistance})
		}
		layers = append(layers, bridged)
	}
	total, _, _ := Combined(layers, inner(f.Flow), f.outer())
	return 1 / total
}

// outer is the resistance beyond the steel: outside, or the still air of the cab.
func (f *Field) outer() float64 {
	if f.Group == Front {
		return inner(f.Flow)
	}
	return outer
}

const steel = 50.0 // W/(m·K), EN 12524
