package warmth

import (
	"math"

	"tumblehome/solve/zone"
)

const (
	dayWarmth  = 5.0    // K that engine and day leave in the van above outside; common practice, no source
	outdoorCO2 = 420e-6 // share of volume
	grown      = 75.0   // kg of the adult that the figures of heat, water and breath are for
	fridgeRuns = 0.3    // of the time a fridge runs, nominal; all it takes warms the room (common practice, no source)
	pot        = 0.120  // kg of water from pot and pan a head and evening: 200 to 400 g a meal for two (from memory)
	flame      = 0.5    // of its power that a burner gives while one cooks
	gasWater   = 0.127  // kg/kWh, propane (stoichiometry)
	spiritH2O  = 0.158  // kg/kWh, ethanol (stoichiometry)
	gasCO2     = 0.127  // m3/kWh
	spiritCO2  = 0.140  // m3/kWh
)

// Asleep, and sitting awake, an adult gives so much sensible heat [W], water [kg/s] and CO2 [m3/s]. Heat: 40 and 60 W/m2 over 1.8 m2 less the heat of the
// water; water 40 and 55 g/h (BS 5250, from memory); CO2 11 L/h measured asleep (Indoor Air 31, 2021), 15.5 awake (ASHRAE, 1.0 met).
type body struct{ heat, water, co2 float64 }

var (
	asleep  = body{45, 0.040 / 3600, 0.0110 / 3600}
	sitting = body{75, 0.055 / 3600, 0.0155 / 3600}
)

// sleeping is a house of people, flames and a heater.
type sleeping struct {
	in     *Inputs
	flow   Flow
	zone   zone.Zone
	where  [lumps]int // each lump among the zone's bodies; -1 is nowhere
	people float64    // in adults
	burner *Burner
	takes  float64 // W that warm the air by one K within a minute
}

func (in *Inputs) sleeping(lost []Lost) *sleeping {
	s := &sleeping{in: in}
	s.zone = in.room(lost, &s.flow)
	s.where = compact(&s.zone)
	s.takes = s.zone.Volume * zone.AirHeat / step
	for _, b := range s.zone.Bodies {
		s.takes += b.ToAir
	}
	for _, p := range in.Sleepers {
		s.people += math.Pow(math.Max(p.Mass, 1)/grown, 2.0/3)
	}
	for i := range in.Burners {
		if b := &in.Burners[i]; b.Inside && (s.burner == nil || b.Power > s.burner.Power) {
			s.burner = b
		}
	}
	return s
}

// on is the state of a lump; of what there is none of, that of the air and dry.
func (s *sleeping) on(state *zone.State, lump int) zone.BodyState {
	if k := s.where[lump]; k >= 0 {
		return state.Bodies[k]
	}
	return zone.BodyState{Temperature: state.Temperature}
}

// up says whether people are awake so many minutes into the night, and cooks whether they cook.
func (h Habit) up(minute int) bool {
	return minute < 60*(h.ToBed-evening) || minute >= 60*(24-evening+h.Up)
}
func cooks(minute int) bool { return minute >= 30 && minute < 60 }

// spend follows one night.
func (s *sleeping) spend(day Day) Night {
	start := math.Min(day.Outside[evening]+dayWarmth, 25)
	if s.in.burning() != nil {
		start = math.Max(start, math.Min(s.in.Habit.Sitting, start+10))
	}
	vapour := zone.Vapour(start, 1) * math.Min(1, day.Vapour/zone.Saturation(start))
	state := s.zone.Even(start, vapour, outdoorCO2)
	if k := s.where[atClothes]; k >= 0 {
		state.Bodies[k].Water = s.in.Wet
	}
	run, err := s.zone.Begin(state, step)
	if err != nil {
		return Night{Low: start, Mean: start, Vapour: day.Vapour}
	}
	n := Night{Low: math.Inf(1)}
	warm := regulator{takes: s.takes}
	air, asleepFor := 0.0, 0
	for minute := range minutes {
		d := s.drive(day, minute, &state)
		heat := warm.next(s.in.burning(), s.keep(s.in.Habit.up(minute))-state.Temperature)
		d.Heat += heat
		n.Gives += d.Vapour * step
		run.Step(d)
		state = run.State()
		n.note(s, minute, heat, d, &state)
		if !s.in.Habit.up(minute) {
			air, asleepFor = air+d.Ventilation, asleepFor+1
		}
	}
	n.Ventilate = air / float64(asleepFor) * 3600
	n.Mean, n.Vapour = n.Mean/minutes, n.Vapour/minutes
	n.Water[atClothes] = s.on(&state, atClothes).Water
	n.Dried = s.in.Wet - n.Water[atClothes]
	n.Short = warm.short > 30
	if s.in.burning() != nil {
		n.Share = n.Heat * hour / (s.in.Heater.Power * minutes * step)
	}
	return n
}

// drive is what acts on the room in a minute.
func (s *sleeping) drive(day Day, minute int, state *zone.State) zone.Drive {
	outside := day.at(float64(evening) + float64(minute)/60)
	d := zone.Drive{Outside: outside, OutsideVapour: zone.Vapour(outside, math.Min(1, day.Vapour/zone.Saturation(outside))), OutsideCO2: outdoorCO2,
		Ventilation: s.flow.At(state.Temperature, outside)}
	who := asleep
	if s.in.Habit.up(minute) {
		who = sitting
		d.Ventilation += ajar / 3600
	}
	d.Heat, d.Vapour, d.CO2 = s.people*who.heat+s.in.Fridge*fridgeRuns, s.people*who.water, s.people*who.co2
	if cooks(minute) && s.burner != nil {
		power := s.burner.Power * flame
		water, co2 := gasWater, gasCO2
		if s.burner.Spirit {
			water, co2 = spiritH2O, spiritCO2
		}
		d.Heat += power
		d.Vapour += power*water/hour + float64(len(s.in.Sleepers))*pot/1800
		d.CO2 += power * co2 / hour
		d.Ventilation += cooking / 3600
	}
	return d
}

// at is the outside temperature at an hour, between those of the hours about it.
func (d Day) at(clock float64) float64 {
	h := math.Floor(clock - 0.5)
	part := clock - 0.5 - h
	i := (int(h) + 24) % 24
	return d.Outside[i]*(1-part) + d.Outside[(i+1)%24]*part
}
