package conduction

import "fmt"

// A Wall is a stack of plane layers, the outermost first.
type Wall struct {
	Layers       []Layer
	Outer, Inner float64 // surface resistances Rse and Rsi, m²·K/W; 0 holds the surface at the temperature outside it
}

// A Layer is one plane layer. Density and HeatCapacity matter only in time.
type Layer struct {
	Name         string  // for messages
	Thickness    float64 // m
	Conductivity float64 // W/(m·K)
	Density      float64 // kg/m³
	HeatCapacity float64 // J/(kg·K)
}

// Transmittance is U = 1/(Rse + Σ d/λ + Rsi), W/(m²·K), ISO 6946.
func (w Wall) Transmittance() float64 {
	r := w.Outer + w.Inner
	for _, l := range w.Layers {
		r += l.Thickness / l.Conductivity
	}
	return 1 / r
}

// Section is the wall as a section of a given width, m, with the outside at y = 0 and x from 0: boundary 0 is the outer
// one, boundary 1 the inner one, at the two temperatures, °C. Regions that bridge it are appended to it.
func (w Wall) Section(width, outside, inside float64) Section {
	var s Section
	y := 0.0
	for _, l := range w.Layers {
		s.Regions = append(s.Regions, Region{l.Name, 0, y, width, y + l.Thickness, l.Conductivity})
		y += l.Thickness
	}
	s.Boundaries = []Boundary{
		{"outer", 0, 0, width, 0, outside, w.Outer},
		{"inner", 0, y, width, y, inside, w.Inner},
	}
	return s
}

// check gives the first fault of a wall that is to be followed in time.
func (w Wall) check() error {
	if len(w.Layers) == 0 {
		return &Fault{"wall", "no layer"}
	}
	for k, l := range w.Layers {
		if says := l.fault(); says != "" {
			return &Fault{named("layers", k, l.Name), says}
		}
	}
	for _, r := range []float64{w.Outer, w.Inner} {
		if r != 0 && outside(r, leastResistance, greatestResistance) {
			return &Fault{"wall", fmt.Sprintf("surface resistance %g is neither 0 nor between %g and %g m²·K/W", r, leastResistance, greatestResistance)}
		}
	}
	return nil
}

func (l Layer) fault() string {
	switch {
	case outside(l.Thickness, leastLength, greatestLength):
		return fmt.Sprintf("thickness %g is not between %g and %g m", l.Thickness, leastLength, greatestLength)
	case outside(l.Conductivity, leastConductivity, greatestConductivity):
		return fmt.Sprintf("conductivity %g is not between %g and %g W/(m·K)", l.Conductivity, leastConductivity, greatestConductivity)
	case outside(l.Density*l.HeatCapacity, leastStore, greatestStore):
		return fmt.Sprintf("density %g times heat capacity %g is not between %g and %g J/(m³·K)", l.Density, l.HeatCapacity, leastStore, greatestStore)
	}
	return ""
}

const leastStore, greatestStore = 1.0, 1e8 // J/(m³·K)
