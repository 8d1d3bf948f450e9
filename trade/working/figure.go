package working

// State says how much a figure may be trusted at this moment.
type State string

const (
	Current State = "current" // worked out from this revision
	Older   State = "older"   // worked out from an earlier revision; the new one is on its way
	Assumed State = "assumed" // rests on something undecided or not yet measured
)

// Figure is one worked-out number. Value is unrounded; whoever shows it rounds to what a van is.
type Figure struct {
	Code  string   // stable and dotted: weight.rear-axle
	Value float64  // in Unit
	Unit  string   // mm, m2, m3, kg, %, GBP …; "1" for a count
	Label string   // plain words: "On the rear axle"
	P50   *float64 // likely value where the figure has a spread
	P80   *float64 // one in five it passes this
	Limit *float64 // what it must not pass, if there is such a limit
	Least bool     // true when Limit is the least allowed, not the most
	State State
	Words string // an optional half sentence of context: "two aboard, water full"
}
