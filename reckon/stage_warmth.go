package reckon

import (
	"math"
	"strings"

	"tumblehome/build"
	"tumblehome/trade/climate"
	"tumblehome/trade/trips"
	"tumblehome/trade/warmth"
)

// workWarmth finds out how warm and dry the van is. Nothing in its inputs tells where a fitting stands, so that moving one finds the last result.
// With a reckoning from before it works out nothing new: what is not remembered stays as it was there, and is older.
func (m *Machine) workWarmth(w *stages, journeys trips.Result, weather climate.Result, before *Reckoning) (result warmth.Result, older bool) {
	in := w.warmthInputs(m, journeys, weather)
	if before != nil {
		if result, ok := known[warmth.Result](m, "warmth", digestOf("warmth", warmthVersion, in)); ok {
			return result, false
		}
		return before.Warmth, true
	}
	result, _ = work(m, "warmth", warmthVersion, warmth.Work, in)
	return result, false
}

const warmthVersion = 2

func (w *stages) warmthInputs(m *Machine, journeys trips.Result, weather climate.Result) warmth.Inputs {
	in := warmth.Inputs{Skin: valueOf(w.doc.Shell.Skin).Float(), Furniture: w.builtIn(), Fridge: w.fridges(), Solve: details.solve}
	walls := m.walls(w)
	in.Fields, in.Volume, in.Plan, in.Top = walls.Fields, walls.Volume, walls.Plan, walls.Top
	in.Glass, in.Cab = w.glass(), w.cab()
	in.Vents, in.AirAbout = w.vents(), w.airAbout()
	in.AirSaid = w.doc.Air != nil || len(in.Vents) > 0
	in.Sleepers = w.sleepers()
	in.Habit = habitOf(journeys.Habit)
	in.Heater, in.Burners = w.flames()
	w.wanted(&in)
	nights(&in, journeys)
	weatherOf(&in, weather)
	return in
}

func habitOf(h trips.Habit) warmth.Habit {
	return warmth.Habit{ToBed: h.ToBed, Up: h.Up, Keep: h.Keep.Float(), Sitting: h.Sitting.Float()}
}

// builtIn is the mass of what stands in the van, rounded: a kilogram more changes no night.
func (w *stages) builtIn() float64 {
	sum := 0.0
	for _, l := range w.fittings {
		sum += l.Mass
	}
	return math.Round(sum/5) * 5
}

// fridges is the power of all that cools by electricity.
func (w *stages) fridges() float64 {
	sum := 0.0
	for _, id := range w.ids() {
		if t := w.things[id]; t.row != nil && !t.later() && (strings.Contains(t.Buy, "fridge") || strings.Contains(t.Buy, "coolbox")) {
			sum += valueOf(t.row.Watts).Float()
		}
	}
	return sum
}

// wanted is what the trips ask of a night: how warm, and how wet one comes home.
func (w *stages) wanted(in *warmth.Inputs) {
	for _, id := range build.SortedKeys(w.doc.Use.Trips) {
		t := w.doc.Use.Trips[id]
		about := "/use/trips/" + id
		if t.Keep != nil && (in.Keep == nil || t.Keep.Float() > *in.Keep) {
			keep := t.Keep.Float()
			in.Keep, in.KeepAbout = &keep, about+"/keep"
		}
		if t.Wet != nil && t.Wet.Float() > in.Wet {
			in.Wet, in.WetAbout = t.Wet.Float(), about+"/wet"
		}
	}
}

// nights are those of the trips, or else four in each month from April to October, as most first builders have them: common practice, no source.
func nights(in *warmth.Inputs, journeys trips.Result) {
	in.TripsAssumed = true
	for i, n := range journeys.Nights {
		in.Months[i].Nights = math.Min(n, 30)
		in.TripsAssumed = in.TripsAssumed && n <= 0
	}
	for month := 4; in.TripsAssumed && month <= 10; month++ {
		in.Months[month-1].Nights = 4
	}
}

// weatherOf is the usual and the cold day of each month.
func weatherOf(in *warmth.Inputs, weather climate.Result) {
	in.Place, in.PlaceAssumed = weather.Place.Name, weather.StandIn
	if !weather.StandIn {
		in.PlaceAbout = "/use/climate"
	}
	for i := range in.Months {
		in.Months[i].Usual, in.Months[i].Cold = dayOf(weather.Usual(i+1)), dayOf(weather.Cold(i+1))
		in.Months[i].Mean = weather.Months[i].Mean.Float()
	}
}

func dayOf(d climate.Day) warmth.Day {
	out := warmth.Day{Vapour: d.Vapour}
	for h, t := range d.Course() {
		out.Outside[h] = t.Float()
	}
	return out
}
