package power_test

import (
	"fmt"

	"tumblehome/trade/power"
)

// How often is the walkers' battery flat if they do not drive, and what would help?
func Example() {
	in := standing()
	in.Years = 50
	r := power.Work(in)
	fmt.Printf("a day takes %.0f Wh; by itself the battery lasts %.1f days\n", r.Months[11].Use[power.Frugal], r.Autonomy)
	fmt.Printf("December: the sun brings %.0f Wh a day, %s of nights are flat\n", r.Months[11].Yield, r.Months[11].Flat)
	fmt.Println("what helps most:", r.Limits)
	// Output:
	// a day takes 477 Wh; by itself the battery lasts 2.2 days
	// December: the sun brings 45 Wh a day, 61.0 ± 3.4 % of nights are flat
	// what helps most: panel
}
