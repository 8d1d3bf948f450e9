package cables

import (
	"math"

	"tumblehome/trade/finding"
)

// Inner resistance of a battery of 100 Ah [Ω], and the voltage that drives a short when it is full [V]: from memory, with a spread of a third.
var (
	inner = map[Chemistry]float64{Flooded: 0.005, AGM: 0.0035, Gel: 0.0055, Lithium: 0.003}
	full  = map[Chemistry]float64{Flooded: 12.8, AGM: 12.8, Gel: 12.8, Lithium: 13.6}
)

var innerSource = finding.Source{Text: "inner resistance by chemistry and size, from memory; the battery's own label or sheet wins", Sure: finding.Memory}

const (
	usualHours  = 100.0 // Ah of a battery of which nothing is known
	starterOhms = 0.005 // Ω inside a starter battery; common practice
)

// supply is a bank with what it gives into a short.
func (b Bank) supply() Supply {
	s := Supply{Bank: b, Volts: b.volts()}
	conductance, drive := 0.0, 0.0
	for _, one := range b.Batteries {
		conductance += 1 / one.ohms()
		drive = max(drive, full[one.chemistry()]*one.blocks())
	}
	if conductance == 0 {
		one := Battery{}
		conductance, drive = 1/one.ohms(), full[one.chemistry()]
	}
	s.Resistance, s.Drive = 1/conductance, drive
	if b.FaultSaid > 0 {
		s.Resistance = drive / b.FaultSaid
	}
	s.Fault = drive / s.Resistance
	return s
}

func (b Battery) chemistry() Chemistry {
	if b.Chemistry == Unknown {
		return Flooded
	}
	return b.Chemistry
}

// blocks is how many batteries of 12 V a battery stands for: two in one of 24 V, half of one in one of 6 V. Of what is less than one, twelfths are told
// apart: cells of lead have 2 V, of lithium 3.2 V.
func (b Battery) blocks() float64 {
	switch {
	case b.Volts <= 0:
		return 1
	case b.Volts < leastBlock:
		return max(1, math.Round(12*b.Volts/blockVolts)) / 12
	}
	return max(1, math.Round(b.Volts/blockVolts))
}

const (
	blockVolts = 12.5
	leastBlock = 10.0 // V: what has less is no battery of 12 V
)

// volts is what a bank holds at rest. One whose batteries are not alike has that of the first; what is joined side by side must be alike.
func (b Bank) volts() float64 {
	if len(b.Batteries) == 0 {
		return houseVolts
	}
	return houseVolts * b.Batteries[0].blocks()
}

// ohms is the inner resistance: it falls as the battery gets larger.
func (b Battery) ohms() float64 {
	hours := b.AmpHours
	if hours <= 0 {
		hours = usualHours
	}
	return inner[b.chemistry()] * b.blocks() * 100 / hours
}

// settle takes over what the solved voltages say.
func (s *Supply) settle(n net, all []Cable) {
	s.Collapsed = n.tipped
	if n.tipped == nil {
		s.Together = n.through("the trunk")
	}
	for i := range all {
		c := &all[i]
		c.losses(n)
		start, end := n.inside, n.toBoard()
		if c.Role != Trunk {
			start, end = n.toStart(c.ID), n.toEnd(c.ID)
		}
		c.Fault = [2]float64{s.Drive / start, s.Drive / end}
	}
	s.AtBoard = s.Drive / n.toBoard()
}

// losses takes a cable's losses from the solved voltages.
func (c *Cable) losses(n net) {
	if n.tipped != nil || c.Starved != nil {
		return
	}
	if c.Role == Trunk {
		i := n.through("the trunk")
		c.Drop.Own, c.Drop.Joints = i*n.trunk, i*(n.mainFuse+n.isolator)
		c.Drop.At, c.Drop.Alone = n.at(board), c.Drop.Own+c.Drop.Joints
		return
	}
	c.Drop.Own = n.through(c.ID) * n.find(c.ID).cable
	c.Drop.Shared = n.through("the trunk") * n.trunk
	c.Drop.At = n.at(c.ID)
	for from := c.fed; from != ""; from = n.find(from).from {
		c.Drop.Shared += n.through(from) * n.find(from).cable
	}
	c.Drop.Joints = n.at(posts) - c.Drop.At - c.Drop.Cables()
}

// tried finds what each circuit loses with only itself on.
func (r *Result) tried() {
	for i := range r.Cables {
		c := &r.Cables[i]
		if n := r.nets[c.Bank]; c.Role == Feed && r.known(c) {
			v, ok := n.alone(c.ID)
			if ok {
				c.Drop.Alone = n.volts - n.inside*r.aloneAmps(c, v) - v
			}
		}
	}
}

// aloneAmps is what its load draws at a voltage.
func (r *Result) aloneAmps(c *Cable, volts float64) float64 {
	if motors(c.Loads) {
		return volts * c.own / c.Volts
	}
	return c.Volts * c.own / volts
}
