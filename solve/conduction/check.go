package conduction

import "fmt"

// A Fault is a section that cannot be solved, with the place of what is wrong with it.
type Fault struct {
	Place string // "regions[2]", "boundaries[0]", "section" or "wall"
	Says  string
}

func (f *Fault) Error() string { return f.Place + ": " + f.Says }

// Limits within which a section is taken to be meant. They also keep the arithmetic far from its own limits.
const (
	leastLength, greatestLength             = 1e-6, 1e4      // m
	leastConductivity, greatestConductivity = 1e-4, 1e5      // W/(m·K)
	leastResistance, greatestResistance     = 1e-6, 1e4      // m²·K/W
	greatestTemperature                     = 1e4            // °C, either way
	greatestPlace                           = 1e5            // m from the origin
	slenderest                              = 100 * sameLine // least side of a region as a share of the extent
)

func outside(v, low, high float64) bool { return !(v >= low && v <= high) }

// check gives the first fault that can be told before the section is cut up.
func (s Section) check() error {
	if len(s.Regions) == 0 {
		return &Fault{"section", "no region, so nothing conducts"}
	}
	if len(s.Boundaries) == 0 {
		return &Fault{"section", "no boundary, so no temperature is given"}
	}
	for k, r := range s.Regions {
		if says := r.fault(); says != "" {
			return &Fault{named("regions", k, r.Name), says}
		}
	}
	for k, b := range s.Boundaries {
		if says := b.fault(); says != "" {
			return &Fault{named("boundaries", k, b.Name), says}
		}
	}
	x, y := baseLines(s)
	extent := max(x[len(x)-1]-x[0], y[len(y)-1]-y[0])
	for k, r := range s.Regions {
		if min(r.X1-r.X0, r.Y1-r.Y0) < slenderest*extent {
			return &Fault{named("regions", k, r.Name), fmt.Sprintf("too thin beside the section's extent of %g m", extent)}
		}
	}
	for k, b := range s.Boundaries {
		if b.length() < slenderest*extent {
			return &Fault{named("boundaries", k, b.Name), fmt.Sprintf("too short beside the section's extent of %g m", extent)}
		}
	}
	return nil
}

func named(list string, k int, name string) string {
	if name == "" {
		return fmt.Sprintf("%s[%d]", list, k)
	}
	return fmt.Sprintf("%s[%d] (%s)", list, k, name)
}

func (r Region) fault() string {
	switch {
	case far(r.X0, r.Y0, r.X1, r.Y1):
		return fmt.Sprintf("its corners (%g, %g) and (%g, %g) are not all numbers within %g m", r.X0, r.Y0, r.X1, r.Y1, greatestPlace)
	case r.X1 <= r.X0:
		return fmt.Sprintf("no width: X1 %g is not above X0 %g", r.X1, r.X0)
	case r.Y1 <= r.Y0:
		return fmt.Sprintf("no height: Y1 %g is not above Y0 %g", r.Y1, r.Y0)
	case outside(r.X1-r.X0, leastLength, greatestLength) || outside(r.Y1-r.Y0, leastLength, greatestLength):
		return fmt.Sprintf("its sides %g and %g m are not between %g and %g m", r.X1-r.X0, r.Y1-r.Y0, leastLength, greatestLength)
	case outside(r.Conductivity, leastConductivity, greatestConductivity):
		return fmt.Sprintf("conductivity %g is not between %g and %g W/(m·K)", r.Conductivity, leastConductivity, greatestConductivity)
	}
	return ""
}

func (b Boundary) fault() string {
	switch {
	case far(b.X0, b.Y0, b.X1, b.Y1):
		return fmt.Sprintf("its ends (%g, %g) and (%g, %g) are not all numbers within %g m", b.X0, b.Y0, b.X1, b.Y1, greatestPlace)
	case b.X0 != b.X1 && b.Y0 != b.Y1:
		return "it runs neither along x nor along y"
	case outside(b.length(), leastLength, greatestLength):
		return fmt.Sprintf("its length %g is not between %g and %g m", b.length(), leastLength, greatestLength)
	case outside(b.Temperature, -greatestTemperature, greatestTemperature):
		return fmt.Sprintf("temperature %g is not between %g and %g °C", b.Temperature, -greatestTemperature, greatestTemperature)
	case b.Resistance != 0 && outside(b.Resistance, leastResistance, greatestResistance):
		return fmt.Sprintf("surface resistance %g is neither 0 nor between %g and %g m²·K/W", b.Resistance, leastResistance, greatestResistance)
	}
	return ""
}

func far(places ...float64) bool {
	for _, v := range places {
		if outside(v, -greatestPlace, greatestPlace) {
			return true
		}
	}
	return false
}
