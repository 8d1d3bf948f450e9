package warmth

import "math"

// burning is the heater that may burn while people sleep: none without a flue ever does here.
func (in *Inputs) burning() *Heater {
	if in.Heater == nil || !in.Heater.Flued || in.Heater.Power <= 0 {
		return nil
	}
	return in.Heater
}

// keep is the temperature kept at an hour of the night.
func (s *sleeping) keep(up bool) float64 {
	kept := s.in.Habit.Keep
	if s.in.Keep != nil {
		kept = *s.in.Keep
	}
	if up {
		return math.Max(kept, s.in.Habit.Sitting)
	}
	return kept
}

const gently = 0.4 // of what would bring the air where it is wanted, the thermostat does in a minute

// regulator is a thermostat: each minute it moves the heater's power towards what would bring the air where it is wanted, within what the heater can.
type regulator struct {
	takes float64 // W that warm the air by one K within a minute
	heat  float64 // W
	short int     // minutes at full power and a degree too cold
}

func (r *regulator) next(h *Heater, cold float64) float64 {
	if h == nil {
		return 0
	}
	r.heat = math.Min(math.Max(r.heat+gently*r.takes*cold, 0), h.Power)
	if r.heat == h.Power && cold > 1 {
		r.short++
	}
	return r.heat
}
