package warmth

import "math"

const (
	discharge = 0.6  // of a sharp-edged opening (from memory)
	gravity   = 9.81 // m/s2
	kelvin    = 273.15
	calmWind  = 1.5   // m/s at the vents of a van parked for the night; common practice, no source
	pressures = 0.5   // difference of wind pressure coefficients between low and high vents (from memory)
	leaking   = 0.5   // of the room's air an hour through seals, between calm and breezy: plausible for a panel van, from memory
	cabLeaks  = 1.0   // of the air of room and cab, where the cab's own vents and seals let air in as well: likewise
	cooking   = 60.0  // m3/h while a hatch or door stands open; common practice, no source
	ajar      = 20.0  // m3/h more while people are up, go in and out and open a hatch; common practice, no source
	single    = 0.025 // of area and wind, for openings in one place: BS 5925 (from memory)
	gapHeight = 0.1   // m, of the openings where all lie at one height
	closeBy   = 0.3   // m: openings nearer in height than this count as one place
)

// Flow is what the vents let through, worked out once for a night.
type Flow struct {
	Low, High float64 // m2 free below and above the level where inside and outside press alike
	Neutral   float64 // that level above the bare floor, m
	Apart     float64 // m between the highest and the lowest vent
	Stack     float64 // m3/s for a whole difference of temperature: Q = Stack·√(ΔT/Ti)
	Wind      float64 // m3/s
	Leak      float64 // m3/s
}

// NewFlow works out what vents pass: stack by Q = Cd·A·√(2·g·H·ΔT/Ti) about the neutral level (BS 5925, ASHRAE), wind by Q = Cd·A*·v·√ΔCp, both added
// by pressure, never less than the largest opening exchanges by itself, and besides what leaks through seals [m3/h].
func NewFlow(vents []Vent, leak float64) Flow {
	f := Flow{Leak: leak / 3600}
	all, largest, low, high := 0.0, 0.0, math.Inf(1), math.Inf(-1)
	for _, v := range vents {
		if v.Free > 0 {
			all, largest = all+v.Free, math.Max(largest, v.Free)
			low, high = math.Min(low, v.Z/1000), math.Max(high, v.Z/1000)
		}
	}
	if all == 0 {
		return f
	}
	f.Apart = high - low
	if f.Apart < closeBy { // air comes and goes through the same opening
		f.Low, f.Neutral = all, low
		f.Stack, f.Wind = alone(all)
		return f
	}
	f.Neutral = neutral(vents, low, high)
	in := 0.0
	for _, v := range vents {
		h := f.Neutral - v.Z/1000
		if h > 0 {
			f.Low += v.Free
			in += v.Free * math.Sqrt(2*gravity*h)
		} else {
			f.High += v.Free
		}
	}
	f.Stack = discharge * in
	f.Wind = discharge * f.Low * f.High / math.Hypot(f.Low, f.High) * calmWind * math.Sqrt(pressures)
	stack, wind := alone(largest) // a small opening does not throttle what a large one exchanges by itself
	f.Stack, f.Wind = math.Max(f.Stack, stack), math.Max(f.Wind, wind)
	return f
}

// alone is what an area exchanges in one place, in and out through the same opening.
func alone(area float64) (stack, wind float64) {
	return discharge * area / 3 * math.Sqrt(gravity*gapHeight), single * area * calmWind
}

// neutral is the height where as much goes out above as comes in below.
func neutral(vents []Vent, low, high float64) float64 {
	for range 60 {
		mid, net := (low+high)/2, 0.0
		for _, v := range vents {
			h := mid - v.Z/1000
			net += math.Copysign(v.Free*math.Sqrt(math.Abs(h)), h)
		}
		if net > 0 {
			high = mid
		} else {
			low = mid
		}
	}
	return (low + high) / 2
}

// At is the air exchanged [m3/s] between a temperature inside and one outside [°C].
func (f Flow) At(inside, outside float64) float64 {
	stack := f.Stack * math.Sqrt(math.Abs(inside-outside)/(inside+kelvin))
	return math.Hypot(stack, f.Wind) + f.Leak
}
