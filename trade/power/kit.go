package power

import "math"

// kit is a battery with what charges it, as the hours see it. Charge is in Ah, current in A.
type kit struct {
	holds   float64
	depth   float64 // that may be taken, warm
	nature  nature
	lead    bool
	fill    filling
	rated   float64 // current of the 20 h rate
	gives   float64 // V
	takes   float64 // V
	engine  float64
	shore   float64
	roof    panel
	sunny   bool // there is a panel
	cutOff  bool
	heated  bool
	outside bool
	always  float64 // W that run between trips too
}

// warmed is how warm a battery that warms itself keeps [°C].
const warmed = 5

func (in *Inputs) kitOf(b *Battery) kit {
	n := natures[b.Chemistry]
	k := kit{holds: b.holds(), nature: n, lead: b.Chemistry.Lead(), gives: n.gives * b.series(), takes: n.takes * b.series(), cutOff: b.CutOff,
		heated: b.Heated, outside: b.Outside, always: in.always()}
	k.depth, k.fill, k.rated = k.holds*b.usable(), fillingOf(k.holds, n), k.holds/rateHours
	for i := range in.Sources {
		switch s := &in.Sources[i]; s.Kind {
		case Sun:
			k.addPanel(panelOf(s, k.takes))
		case Engine:
			k.engine += s.gives(b)
		case Shore:
			k.shore += s.Amps
		}
	}
	if !in.Mains.Inlet {
		k.shore = 0
	}
	return k
}

// addPanel joins panels on controllers of their own into one that is like the first.
func (k *kit) addPanel(p panel) {
	if p.scale <= 0 {
		return
	}
	if k.sunny {
		p.scale, p.clip = p.scale+k.roof.scale, p.clip+k.roof.clip
	}
	k.roof, k.sunny = p, true
}

// allowed is how fast the battery may be charged [A] at a temperature; below 0 °C lithium without a cut-off is charged all the same, to its harm.
func (k *kit) allowed(temperature float64) float64 {
	if k.lead {
		return math.Inf(1)
	}
	if temperature < 0 && !k.cutOff {
		return ColdCharge(0) * k.holds
	}
	return ColdCharge(temperature) * k.holds
}

// bottom is what may be missing [Ah] before the battery is empty, at a temperature.
func (k *kit) bottom(temperature float64) float64 {
	return k.depth * along(k.nature.capacity, temperature)
}

// leak is what a day without use takes of a battery that misses so much.
func (k *kit) leak(missing, temperature float64) float64 {
	const days = 30.4
	return (k.holds - missing) * k.nature.loses / days * math.Exp2((temperature-20)/10)
}

// at is the battery's own temperature [°C].
func (k *kit) at(temperature float64) float64 {
	if k.heated {
		return max(warmed, temperature)
	}
	return temperature
}
