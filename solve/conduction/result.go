package conduction

import "math"

// A Result is the steady state of a section.
type Result struct {
	Field    Field
	Surfaces []Surface // one for each boundary, in the same order

	// Coupling is the thermal coupling coefficient L2D of ISO 10211, W/(m·K): heat flow per metre of depth and
	// kelvin between the two surroundings. It is 0 when the boundaries have not just two temperatures.
	Coupling float64
	// CouplingError bounds the relative error of Coupling: the true value lies between those of the two networks
	// and Coupling is their mean. With more than two temperatures it bounds the error of the sum of heat flow
	// times temperature over the boundaries.
	CouplingError float64
	// TemperatureError is how far, in K, the last halving of the mesh moved the temperatures that were asked for.
	TemperatureError float64

	Cold, Warm float64 // lowest and highest temperature of the surroundings
}

// A Surface is what happens on one boundary.
type Surface struct {
	Name            string
	Length          float64 // m
	Heat            float64 // W/m, positive into the section
	Lowest, Highest Spot
}

// A Spot is a point of a surface and its temperature.
type Spot struct {
	Point
	Temperature float64
}

// Factor is the temperature factor fRsi of ISO 10211 where the surface is coldest: 0 at the cold surroundings'
// temperature, 1 at the warm ones'. It is 1 when all are equally warm.
func (r Result) Factor(s Surface) float64 {
	if r.Warm == r.Cold {
		return 1
	}
	return (s.Lowest.Temperature - r.Cold) / (r.Warm - r.Cold)
}

// Excess is the linear thermal transmittance Ψ, W/(m·K): what Coupling is above a plain element of transmittance u,
// W/(m²·K), and a given length, m, along its surface.
func (r Result) Excess(u, length float64) float64 { return r.Coupling - u*length }

// solved is a result together with what refining needs.
type solved struct {
	result  Result
	above   []float64
	streams streams
}

// at solves both networks of a mesh.
func (s Section) at(m mesh) solved {
	upper, lower := m.above(s), m.below(s)
	t, cells := upper.solve(), lower.solve()
	q := m.streams(s, lower, cells)
	high, low := m.entersAbove(s, upper, t), m.entersBelow(s, cells)
	r := Result{Field: Field{m.x, m.y, t, m.streamFunction(q), m.mask()}}
	r.Cold, r.Warm = s.extremes()
	r.Surfaces = m.surfaces(s, t)
	for k := range r.Surfaces {
		r.Surfaces[k].Heat = (high[k] + low[k]) / 2
	}
	r.couple(s, high, low)
	return solved{r, t, q}
}

// couple gives Coupling and its error from the heat that enters through each boundary in the two networks. What is
// bounded is the sum of heat times temperature, which with two temperatures is Coupling times their difference squared.
func (r *Result) couple(s Section, high, low []float64) {
	var upper, lower float64
	for k, b := range s.Boundaries {
		upper += high[k] * (b.Temperature - r.Cold)
		lower += low[k] * (b.Temperature - r.Cold)
	}
	if upper > 0 && lower > 0 {
		r.CouplingError = math.Abs(upper-lower) / (upper + lower)
	}
	if s.pair() {
		r.Coupling = (upper + lower) / 2 / (r.Warm - r.Cold) / (r.Warm - r.Cold)
	}
}

// surfaces finds the coldest and warmest point of each boundary.
func (m mesh) surfaces(s Section, t []float64) []Surface {
	out := make([]Surface, len(s.Boundaries))
	for k, b := range s.Boundaries {
		out[k] = Surface{Name: b.Name}
		out[k].Lowest.Temperature, out[k].Highest.Temperature = math.Inf(1), math.Inf(-1)
	}
	for _, f := range m.faces {
		o := &out[f.boundary]
		o.Length += f.length
		a, b := m.ends(f)
		for _, p := range []int{a, b} {
			spot := Spot{Point{m.x[p%len(m.x)], m.y[p/len(m.x)]}, t[p]}
			if t[p] < o.Lowest.Temperature {
				o.Lowest = spot
			}
			if t[p] > o.Highest.Temperature {
				o.Highest = spot
			}
		}
	}
	return out
}

// moved is the greatest change of the temperatures that matter, K.
func (r Result) moved(before Result, points []Point) float64 {
	var most float64
	for k, s := range r.Surfaces {
		b := before.Surfaces[k]
		most = max(most, math.Abs(s.Lowest.Temperature-b.Lowest.Temperature), math.Abs(s.Highest.Temperature-b.Highest.Temperature))
	}
	for _, p := range points {
		now, ok := r.Field.At(p)
		then, _ := before.Field.At(p)
		if ok {
			most = max(most, math.Abs(now-then))
		}
	}
	return most
}
