package runs

import "math"

// outside diameters of thin-wall vehicle cable by section: mm2, mm. From memory.
var diameters = [][2]float64{{0.75, 1.9}, {1, 2.1}, {1.5, 2.4}, {2.5, 3.0}, {4, 3.7}, {6, 4.3}, {10, 6.0}, {16, 7.5}, {25, 9.5}, {35, 11}, {50, 13}}

// bores are the inner diameters of corrugated conduit as it is sold [mm]: common sizes, from memory.
var bores = []float64{7.5, 10, 13, 17, 22, 29, 37, 50}

// mostFull is the share of a conduit's bore that cables may take: the working value for conduit, read second-hand.
const mostFull = 0.40

// Diameter is the outer diameter of one conductor [mm] of a section [mm2]: that of the next size listed, beyond the largest in proportion
// to the root of the section. No section has no diameter.
func Diameter(section float64) float64 {
	if section <= 0 {
		return 0
	}
	for _, d := range diameters {
		if section <= d[0]+1e-9 {
			return d[1]
		}
	}
	last := diameters[len(diameters)-1]
	return last[1] * math.Sqrt(section/last[0])
}

// Area is the cross-section that round things of these outer diameters take [mm2].
func Area(outer []float64) float64 {
	sum := 0.0
	for _, d := range outer {
		sum += math.Pi * d * d / 4
	}
	return sum
}

// BoreFor is the least inner diameter of which cables of these outer diameters fill a share [mm].
func BoreFor(outer []float64, share float64) float64 {
	return math.Sqrt(Area(outer) / share * 4 / math.Pi)
}

// Fill is the share of a bore that they take.
func Fill(outer []float64, bore float64) float64 { return Area(outer) / (math.Pi * bore * bore / 4) }

// sold is the smallest conduit on sale with at least this bore; beyond the largest there is none.
func sold(bore float64) (float64, bool) {
	for _, b := range bores {
		if b >= bore-1e-9 {
			return b, true
		}
	}
	return 0, false
}
