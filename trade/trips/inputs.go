package trips

import "tumblehome/quantity"

// Inputs is all that trips needs to know.
type Inputs struct {
	Trips  []Trip
	People []string // ids of everybody in the build
	Habits string   // frugal, usual or cosy; "" if nobody said
	Beds   int      // who lies down in the van in the night; 0 if nobody said
}

// Trip is a kind of journey as the document has it. What is nil or empty was left out.
type Trip struct {
	ID      string
	Months  []int
	Often   *quantity.Rate // a count per month or per year
	Nights  *int           // of one trip
	Aboard  []string
	Driving *quantity.Rate        // hours per day or per trip
	Keep    *quantity.Temperature // at night
	HookUp  quantity.Share        // of the nights on mains
}
