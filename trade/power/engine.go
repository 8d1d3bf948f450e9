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

// series is how many times 12 V.
func (b *Battery) series() float64 {
	if b.Volts >= 20 {
		return math.Round(b.Volts / 12.5)
	}
	return 1
}

// MeanVolts is its voltage while it is emptied.
func (b *Battery) MeanVolts() float64 {
	if b == nil {
		return natures[Flooded].gives
	}
	return natures[b.Chemistry].gives * b.series()
}
