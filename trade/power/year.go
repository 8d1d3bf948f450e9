package power

// tally is what was counted on the way through the years.
type tally struct{}
