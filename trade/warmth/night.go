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
	step    = 60.0  // s
	hour    = 3.6e6 // J in a kWh
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
