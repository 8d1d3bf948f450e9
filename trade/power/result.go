package power

import "tumblehome/trade/finding"

// The three ways of living, in the order of what they take.
const (
	Frugal = iota
	Usual
	Cosy
)

// Habits are their names.
var Habits = [3]string{"frugal", "usual", "cosy"}

// Result is whether the lights stay on.
type Result struct {
	Battery  *Bank       // nil if there is none
	Uses     []Use       // what each thing takes
	Months   [12]MonthOf // January first
	Flat     Chance      // over all nights of the trips
	Cuts     [24]int     // how often the battery was found empty first in each hour of the day
	Autonomy float64     // days from full without sun or driving in the darkest month of the trips
	Darkest  int         // that month, 1 to 12
	Limits   string      // what would help most: LimitBattery, LimitPanel, LimitEngine; "" if nights are seldom flat
	Helps    []Help      // what each would do
	Scale    float64     // by which the builder's readings move what is uncertain; 1 without readings
	Habit    int         // the one reckoned with
	Years    int         // of weather gone through
	Cold     float64     // hours in a year in which charge was offered below 0 °C
	Assumed  []string    // what was taken because nobody said it

	listedUse [12]float64 // Wh a day by month, before any reading

	asked Inputs // as they were handed in
	in    Inputs // with what nobody said filled in
	run   tally
	days  [][]taken
	found []finding.Finding
}

// Bank is what the battery can do.
type Bank struct {
	Chemistry Chemistry
	Holds     float64 // Ah, tested or printed
	Usable    float64 // share
	Gives     float64 // Wh that may be taken, warm
	Takes     float64 // A at most that it should be charged with
}

// Use is what one thing takes on a day of a trip.
type Use struct {
	ID, Name, About string
	Kind            Kind
	Watts           float64        // while it runs
	Wh              [12][3]float64 // a day by month and habit, mean of the trips of the month; 0 in months without
	Mean            [3]float64     // a day, mean over the nights of the year
	How             string         // the hours and share of a day it was reckoned with, in words
	Assumed         string         // what nobody said, and what was taken
	Always          bool           // it runs between trips too
}

// MonthOf is one month of the trips.
type MonthOf struct {
	Nights  float64    // a year
	Use     [3]float64 // Wh a day by habit, corrected by readings
	Yield   float64    // Wh a day that the panels can give, at the controller
	Sunny   [2]float64 // of that, on the dullest and the best day of ten
	Engine  float64    // Wh a day from the engine
	Flat    Chance
	Low     [24]float64 // state of charge (0 to 1) that one night in twenty falls below, by hour
	Middle  [24]float64 // that every second falls below
	Battery float64     // its mean temperature, °C
}

// Chance is how often something happened, with its own uncertainty.
type Chance struct {
	Of, In int     // times, of nights gone through
	Share  float64 // Of/In
	Error  float64 // binomial standard error
}

// What holds a van back.
const (
	LimitBattery = "battery"
	LimitPanel   = "panel"
	LimitEngine  = "engine"
)

// Help is what half as much again of one thing would do.
type Help struct {
	Of    string  // LimitBattery, LimitPanel or LimitEngine
	Share float64 // of nights flat then
}

// Findings are what the builder should know.
func (r Result) Findings() []finding.Finding { return append([]finding.Finding(nil), r.found...) }

// Inputs are what it was worked out from.
func (r *Result) Inputs() Inputs { return r.asked }
