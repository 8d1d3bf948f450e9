package runs

import "tumblehome/solve/solid"

// What the tests hold against other programs.
var (
	Bends    = bends
	Length   = length
	MostFull = mostFull
)

// Within is how much of a leg lies in a solid [mm].
func Within(a, b Point, s solid.Solid) float64 {
	sum := 0.0
	for _, in := range inSolid(a, b, s) {
		sum += (in.to - in.from) * distance(a, b)
	}
	return sum
}
