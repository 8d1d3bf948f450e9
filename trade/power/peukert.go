package power

import "math"

// RunTime is how long [h] a battery gives a current [A]: t = H·(C/(I·H))^k, with what it holds [Ah] at the H-hour rate. Below that rate's current what it
// holds is constant. (Texts that write C/I^k mean another C, that at 1 A.)
func RunTime(holds, hours, current, exponent float64) float64 {
	rated := holds / hours
	if current <= rated {
		return holds / current
	}
	return hours * math.Pow(rated/current, exponent)
}

// rateHours is the rate at which what a battery holds is printed.
const rateHours = 20

// drained is what an hour at a current [A] takes of a battery, as Ah of its rated current.
func drained(current, rated, exponent float64) float64 {
	if current <= rated {
		return current
	}
	return current * math.Pow(current/rated, exponent-1)
}
