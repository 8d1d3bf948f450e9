package warmth

// Told is what the nights were reckoned with, as a page says it beside them.
type Told struct {
	Sleepers     int
	Habit        Habit
	Keep         *float64 // temperature kept at night; nil is not said
	Kept         float64  // what was kept then, °C
	KeepAbout    string   // JSON Pointer of who says so
	Heater       bool     // there is one
	Warmed       bool     // and it may burn while people sleep
	Power        float64  // of it, W
	Burner       bool     // something burns in the van without a flue
	Wet          float64  // water in the clothes that come in wet of an evening, kg
	Vents        []Vent
	AirSaid      bool
	TripsAssumed bool
}

// Told says what the nights were reckoned with.
func (r *Result) Told() Told {
	in := &r.in
	t := Told{Sleepers: len(in.Sleepers), Habit: in.Habit, Keep: in.Keep, Kept: in.Habit.Keep, KeepAbout: in.KeepAbout, Heater: in.Heater != nil, Warmed: in.burning() != nil,
		Burner: r.Fixed.Burner, Wet: in.Wet, Vents: in.Vents, AirSaid: in.AirSaid, TripsAssumed: in.TripsAssumed}
	if in.Keep != nil {
		t.Kept = *in.Keep
	}
	if in.Heater != nil {
		t.Power = in.Heater.Power
	}
	return t
}

// The hours at which a night begins and ends: people come in, and leave.
const (
	ComeIn = evening
	Leave  = morning
)

// Marks beside which figures are laid: carbon dioxide [ppm] from which air counts as stale and sleep is disturbed, water [g] on the glass that a cloth no
// longer takes up, and water behind a lining [g/m2] that runs.
const (
	Stale     = staleCO2
	Disturbed = badCO2
	Cupful    = cupful
	Runs      = gathers
)
