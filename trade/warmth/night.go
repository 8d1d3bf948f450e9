package warmth

import (
	"fmt"
	"math"

	"tumblehome/solve/zone"
)

const (
	evening = 18 // when the night begins, h
	morning = 8  // and ends
	minutes = 60 * (24 - evening + morning)
	step    = 60.0 // s

	dayWarmth  = 5.0    // K that engine and day leave in the van above outside; common practice, no source
	outdoorCO2 = 420e-6 // share of volume
	grown      = 75.0   // kg of the adult that the figures of heat, water and breath are for
	fridgeRuns = 0.3    // of the time a fridge runs, nominal; all it takes warms the room (common practice, no source)
	gently     = 0.4    // of it the thermostat does in a minute
	pot        = 0.120  // kg of water from pot and pan a head and evening: 200 to 400 g a meal for two (from memory)
	flame      = 0.5    // of its power that a burner gives while one cooks
	gasWater   = 0.127  // kg/kWh, propane (stoichiometry)
	spiritH2O  = 0.158  // kg/kWh, ethanol (stoichiometry)
	gasCO2     = 0.127  // m3/kWh
	spiritCO2  = 0.140  // m3/kWh
	hour       = 3.6e6  // J in a kWh
)

// Asleep, and sitting awake, an adult gives so much sensible heat [W], water [kg/s] and CO2 [m3/s]. Heat: 40 and 60 W/m2 over 1.8 m2 less the heat of the
// water; water 40 and 55 g/h (BS 5250, from memory); CO2 11 L/h measured asleep (Indoor Air 31, 2021), 15.5 awake (ASHRAE, 1.0 met).
type body struct{ heat, water, co2 float64 }

var (
	asleep  = body{45, 0.040 / 3600, 0.0110 / 3600}
	sitting = body{75, 0.055 / 3600, 0.0155 / 3600}
)

// Hour is the state of the room at the end of an hour of the night, and what the heater did in it.
type Hour struct {
	Hour     int // of the day, 0 to 23, at whose end it is
	Outside  float64
	Inside   float64 // °C
	Humidity float64 // relative, as a share
	CO2      float64 // ppm
	Heater   float64 // W, mean
	Glass    float64 // °C
	Ribs     float64 // °C of the linings over ribs
	OnGlass  float64 // g of water
	OnSteel  float64 // g on bare steel and linings
	Clothes  float64 // g of water left in wet clothes
	Air      float64 // m3/h exchanged with outside
}

// Night is one night from six to eight.
type Night struct {
	Month     int // 1 to 12
	Cold      bool
	Hours     []Hour
	Low       float64        // lowest temperature of the room from bedtime on, °C
	Heat      float64        // of the heater, kWh
	Share     float64        // of its full power, mean
	Short     bool           // the heater ran full and could not keep what was wanted
	Water     [lumps]float64 // on each lump when most lay on all of them, kg; of clothes what was left in the morning
	WettestAt int            // the full hour nearest to then
	CO2       float64        // most while people sleep, ppm
	Dried     float64        // kg; less than nought where water settled on wet clothes
	Ventilate float64        // m3/h, mean while asleep
	Vapour    float64        // mean vapour pressure inside, Pa
	Mean      float64        // mean temperature inside, °C
	Gives     float64        // kg of water that people and pots gave
	LowAt     int            // hour of the lowest
}

// Condensed is the most water that lies on glass, steel and linings at one time of the night, kg.
func (n *Night) Condensed() float64 { return settled(n.Water) }

// dried is what left wet clothes, kg: nothing where water settled on them instead.
func (n *Night) dried() float64 { return math.Max(n.Dried, 0) }

// WettestHour is when that is, as it is said.
func (n *Night) WettestHour() string { return fmt.Sprintf("about %d h", n.WettestAt) }

func settled(water [lumps]float64) float64 {
	return water[atLining] + water[atRibs] + water[atBare] + water[atGlass]
}

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

// note writes down a minute.
func (n *Night) note(s *sleeping, minute int, heat float64, d zone.Drive, state *zone.State) {
	n.Heat += heat * step / hour
	n.Mean += state.Temperature
	n.Vapour += zone.Pressure(state.Temperature, state.Vapour)
	if !s.in.Habit.up(minute) {
		n.CO2 = math.Max(n.CO2, state.CO2*1e6)
	}
	clock := (evening + minute/60) % 24
	var water [lumps]float64
	for i := range water {
		water[i] = s.on(state, i).Water
	}
	if settled(water) > n.Condensed() {
		n.Water, n.WettestAt = water, (evening+(minute+30)/60)%24
	}
	if minute >= 60*(s.in.Habit.ToBed-evening) && state.Temperature < n.Low {
		n.Low, n.LowAt = state.Temperature, clock
	}
	if minute%60 == 0 {
		n.Hours = append(n.Hours, Hour{Hour: clock})
	}
	h := &n.Hours[len(n.Hours)-1]
	h.Heater += heat / 60
	if minute%60 == 59 {
		h.Outside, h.Inside, h.CO2 = d.Outside, state.Temperature, state.CO2*1e6
		h.Humidity = zone.Humidity(state.Temperature, state.Vapour)
		h.Glass, h.Ribs = s.on(state, atGlass).Temperature, s.on(state, atRibs).Temperature
		h.OnGlass = 1000 * s.on(state, atGlass).Water
		h.OnSteel = 1000 * (s.on(state, atBare).Water + s.on(state, atRibs).Water + s.on(state, atLining).Water)
		h.Clothes, h.Air = 1000*s.on(state, atClothes).Water, 3600*d.Ventilation
	}
}
