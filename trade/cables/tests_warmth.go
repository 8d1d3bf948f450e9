package cables

import (
	"fmt"
	"slices"
)

const warmFrom = 5.0 // A below which nothing gets warm

func warmth(c Cable) (Test, bool) {
	if c.Role == Bond || c.Current < warmFrom || runsDry(c.Loads) {
		return Test{}, false
	}
	return Test{Kind: TestWarmth, How: c.atWork() + ".", Expect: "hand-warm at most, no end warmer than its cable"}, true
}

// atWork is how a cable is loaded for half an hour.
func (c Cable) atWork() string {
	switch {
	case c.Role == Trunk:
		return "Everything on for half an hour"
	case c.Source == Sun:
		return "Half an hour of full sun on the panels"
	case c.Source == Shore:
		return "Half an hour on the mains"
	case c.charges():
		return "Let the engine charge for half an hour"
	}
	return fmt.Sprintf("Let all that hangs on %s run for half an hour", c.Title)
}

// runsDry says whether a pump is among the loads: it does not run for half an hour.
func runsDry(loads []Load) bool {
	return slices.ContainsFunc(loads, func(l Load) bool { return l.Kind == Pump })
}
