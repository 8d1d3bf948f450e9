package power

import "math"

// Of a switch that joins the two batteries while the engine runs.
const (
	alternator = 14.2 // V
	halfEmpty  = 12.4 // V of lead that wants charge
	usualLoop  = 0.03 // ohm, cable, fuses, contacts and battery; common practice, no source
	wanted     = 0.33 // share of its Ah in A that lead draws from an alternator when empty (measured reports, read)
)

// RelayCurrent is what flows through a switch [A]: (Ua − Ub)/R.
func RelayCurrent(alternator, battery, loop float64) float64 { return (alternator - battery) / loop }

// byCable is what the cable lets through to a battery that would take anything.
func (s *Source) byCable(b *Battery) float64 {
	loop := s.Loop
	if loop <= 0 {
		loop = usualLoop
	}
	return RelayCurrent(alternator*b.series(), halfEmpty*b.series(), loop)
}

// draws is what an engine's source takes from it at most [A], and gives is what reaches the battery.
func (s *Source) draws(b *Battery) float64 {
	if !s.Relay {
		return s.Amps
	}
	if b.Chemistry.Lead() {
		return min(s.byCable(b), wanted*b.holds())
	}
	return s.byCable(b)
}

func (s *Source) gives(b *Battery) float64 {
	i := s.draws(b)
	if s.Most > 0 && (i <= 0 || s.Most < i) {
		i = s.Most
	}
	return i
}

func (b *Battery) holds() float64 {
	if b.Tested > 0 {
		return b.Tested
	}
	return b.Rated
}

func (b *Battery) usable() float64 {
	if b.Usable > 0 {
		return b.Usable
	}
	return natures[b.Chemistry].usable
}

// series is how many times 12 V: half in one of 6 V. Of what is less than once, twelfths are told apart: cells of lead have 2 V, of lithium 3.2 V.
func (b *Battery) series() float64 {
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

// MeanVolts is its voltage while it is emptied.
func (b *Battery) MeanVolts() float64 {
	if b == nil {
		return natures[Flooded].gives
	}
	return natures[b.Chemistry].gives * b.series()
}
