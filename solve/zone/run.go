package zone

import "math"

// A Run follows a zone through time in steps of one length.
type Run struct {
	zone  Zone
	step  float64 // s
	state State
	flow  Flow

	start []float64 // temperatures at the beginning of a step, of the air and then of each body
	end   []float64 // at its end
	mean  []float64 // over it
	lie   []float64 // water lying on each body at the beginning, kg
	rate  []rate
}

// A Flow is what went where in the last step, means over it.
type Flow struct {
	Loss, Ventilation float64 // heat from the air to outside, W
	Bodies            float64 // heat from bodies to outside, W
	VapourOut         float64 // by ventilation, net, kg/s
	Condensing        float64 // on all bodies, net of drying, kg/s
}

// rate is what condenses on one body during a step.
type rate struct {
	strength float64 // β·A, m³/s; 0 when it is dry and stays so, or dries up
	vapour   float64 // saturation at its temperature, kg/m³
	mass     float64 // mean rate, kg/s
}

// Begin begins at a state, with steps of some seconds. The error is a *Fault.
func (z Zone) Begin(s State, step float64) (*Run, error) {
	if err := z.check(s, step); err != nil {
		return nil, err
	}
	n := len(z.Bodies)
	s.Bodies = append([]BodyState(nil), s.Bodies...)
	r := &Run{zone: z, step: step, state: s}
	r.start, r.end, r.mean = make([]float64, n+1), make([]float64, n+1), make([]float64, n+1)
	r.lie, r.rate = make([]float64, n), make([]rate, n)
	return r, nil
}

// State is the zone now.
func (r *Run) State() State {
	s := r.state
	s.Bodies = append([]BodyState(nil), s.Bodies...)
	return s
}

// Flow is what went where in the last step.
func (r *Run) Flow() Flow { return r.flow }

// corrections is how often vapour and heat answer each other in a step.
const corrections = 2

// Step goes on by one step. Condensation begins from what it was in the step before.
func (r *Run) Step(d Drive) {
	r.start[0] = r.state.Temperature
	for k, b := range r.state.Bodies {
		r.start[k+1], r.lie[k] = b.Temperature, b.Water
	}
	r.warm(d)
	var vapour, mean float64
	for range corrections {
		vapour, mean = r.wet(d)
		r.warm(d)
	}
	r.close(d, vapour, mean)
}

// close writes down the state at the end of a step and what flowed.
func (r *Run) close(d Drive, vapour, mean float64) {
	r.flow = Flow{
		Loss:        r.zone.Loss * (r.mean[0] - d.Outside),
		Ventilation: AirHeat * d.Ventilation * (r.mean[0] - d.Outside),
		VapourOut:   d.Ventilation * (mean - d.OutsideVapour),
	}
	r.state.Temperature, r.state.Vapour = r.end[0], vapour
	r.state.CO2, _ = relax(r.state.CO2, r.zone.Volume, d.Ventilation, d.Ventilation*d.OutsideCO2+d.CO2, r.step)
	for k := range r.state.Bodies {
		b := &r.state.Bodies[k]
		b.Temperature, b.Water = r.end[k+1], max(r.lie[k]+r.step*r.rate[k].mass, 0)
		r.flow.Bodies += r.zone.Bodies[k].ToOutside * (r.mean[k+1] - d.Outside)
		r.flow.Condensing += r.rate[k].mass
	}
}

// relax solves volume·dy/dt = source − sink·y exactly: y at the end of a step and its mean over it.
func relax(y, volume, sink, source, step float64) (end, mean float64) {
	x := sink * step / volume
	if x < 1e-9 {
		return y + source*step/volume, y + source*step/volume/2
	}
	final, fade := source/sink, -math.Expm1(-x)
	return y + (final-y)*fade, final + (y-final)*fade/x
}
