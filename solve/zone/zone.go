package zone

import "fmt"

// AirHeat is the heat that a cubic metre of air takes per kelvin, J/(m³·K): 0.34 Wh, common practice near 15 °C.
const AirHeat = 1224.0

// Latent is the heat that condensing water gives off, J/kg, at 0 °C; at 20 °C it is 2 % less.
const Latent = 2.5e6

// A Zone is a room: its air and the bodies about it.
type Zone struct {
	Volume float64 // of air, m³
	Loss   float64 // conductance from air to outside that stores nothing, W/K
	Bodies []Body
}

// A Body is a lump of one temperature, such as a wall's inner layers or a window pane.
type Body struct {
	Name      string  // for messages
	Capacity  float64 // J/K
	ToAir     float64 // conductance to the air, W/K
	ToOutside float64 // conductance to the outside, W/K
	Area      float64 // on which water may condense, m²; 0 for none
	Transfer  float64 // mass transfer coefficient β there, m/s; by Lewis hc/1200, with hc in W/(m²·K)
}

// A State is the zone at one time.
type State struct {
	Temperature float64 // of the air, °C
	Vapour      float64 // kg/m³
	CO2         float64 // share by volume
	Bodies      []BodyState
}

// A BodyState is one body at one time.
type BodyState struct {
	Temperature float64 // °C
	Water       float64 // lying on it, kg
}

// A Drive is what acts on the zone during a step.
type Drive struct {
	Outside       float64   // air temperature, °C
	OutsideVapour float64   // kg/m³
	OutsideCO2    float64   // share by volume
	Ventilation   float64   // air exchanged with outside, m³/s
	Heat          float64   // to the air, W
	BodyHeat      []float64 // to each body, W; may be shorter than the bodies
	Vapour        float64   // source, kg/s
	CO2           float64   // source, m³/s
}

// A Fault is a zone that cannot be worked out, with the place of what is wrong.
type Fault struct{ Place, Says string }

func (f *Fault) Error() string { return f.Place + ": " + f.Says }

// Even is the state of a zone whose air and bodies have one temperature, °C, with dry surfaces.
func (z Zone) Even(temperature, vapour, co2 float64) State {
	s := State{Temperature: temperature, Vapour: vapour, CO2: co2, Bodies: make([]BodyState, len(z.Bodies))}
	for k := range s.Bodies {
		s.Bodies[k].Temperature = temperature
	}
	return s
}

func (z Zone) check(s State, step float64) error {
	switch {
	case !between(z.Volume, 1e-3, 1e6):
		return &Fault{"zone", fmt.Sprintf("volume %g is not between 0.001 and 1e6 m³", z.Volume)}
	case !between(z.Loss, 0, 1e6):
		return &Fault{"zone", fmt.Sprintf("loss %g is not between 0 and 1e6 W/K", z.Loss)}
	case !between(step, 1e-3, 1e6):
		return &Fault{"zone", fmt.Sprintf("a step of %g s is not between 0.001 and 1e6 s", step)}
	case len(s.Bodies) != len(z.Bodies):
		return &Fault{"state", fmt.Sprintf("%d bodies where the zone has %d", len(s.Bodies), len(z.Bodies))}
	case !between(s.Temperature, -freezing, 1e3) || !between(s.Vapour, 0, 10) || !between(s.CO2, 0, 1):
		return &Fault{"state", fmt.Sprintf("air of %g °C with %g kg/m³ of vapour and a share of %g of CO2", s.Temperature, s.Vapour, s.CO2)}
	}
	for k, b := range z.Bodies {
		if says := b.fault(s.Bodies[k]); says != "" {
			return &Fault{fmt.Sprintf("bodies[%d] (%s)", k, b.Name), says}
		}
	}
	return nil
}

func (b Body) fault(s BodyState) string {
	switch {
	case !between(b.Capacity, 1, 1e12):
		return fmt.Sprintf("capacity %g is not between 1 and 1e12 J/K", b.Capacity)
	case !between(b.ToAir, 0, 1e6) || !between(b.ToOutside, 0, 1e6):
		return fmt.Sprintf("conductances %g to air and %g to outside are not between 0 and 1e6 W/K", b.ToAir, b.ToOutside)
	case !between(b.Area, 0, 1e6) || !between(b.Transfer, 0, 10):
		return fmt.Sprintf("an area of %g m² or a transfer of %g m/s, which are 0 to 1e6 and 0 to 10", b.Area, b.Transfer)
	case !between(s.Temperature, -freezing, 1e3) || !between(s.Water, 0, 1e6):
		return fmt.Sprintf("it begins at %g °C with %g kg of water", s.Temperature, s.Water)
	}
	return ""
}

func between(v, low, high float64) bool { return v >= low && v <= high }
