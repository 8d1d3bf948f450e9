package runs

import "math"

// How far apart a cable is held [mm]: ISO 10133:2012, 450 at most, sheathed and battery conductors 300; read in an excerpt.
const (
	heldEvery        = 450
	batteryHeldEvery = 300
)

// tightest is the least radius of a fixed bend as a multiple of the outer diameter: from memory.
const tightest = 4

// mostTurns is how much a conduit may turn in all so that cable can still be pulled [degree]: four right angles, NFPA 70, 358.26, from memory.
const mostTurns = 360

// Supports is how often a way so long is held when it is held at both ends and every so far.
func Supports(length, every float64) int {
	if length <= 0 {
		return 0
	}
	return int(math.Ceil(length/every-1e-9)) + 1
}
