package conduction

import "math"

// A Section is a plane figure of solid parts and the surroundings it touches. What no region covers is empty, and a
// surface on which no boundary lies lets no heat through: that is how planes of symmetry are given.
//
// It is a plain value: equal sections have equal JSON, so a result may be kept under a digest of that.
type Section struct {
	Regions    []Region // a later one lies over an earlier one
	Boundaries []Boundary
}

// A Region is a rectangle of one material; a part of another shape is several of them.
type Region struct {
	Name           string  // for messages
	X0, Y0, X1, Y1 float64 // m, X0 < X1 and Y0 < Y1
	Conductivity   float64 // W/(m·K); for a gap of air see AirLayer
}

// A Boundary is a straight part of the surface, along x or along y, that faces surroundings of one temperature. All
// of it must be surface: material on one side, nothing on the other.
type Boundary struct {
	Name           string  // for messages
	X0, Y0, X1, Y1 float64 // m, the two ends
	Temperature    float64 // of the surroundings, °C (or any scale with the kelvin's degree)
	Resistance     float64 // surface resistance Rs, m²·K/W; 0 holds the surface itself at Temperature
}

// upright says whether the boundary runs along y.
func (b Boundary) upright() bool { return b.X0 == b.X1 }

// length is that of a boundary along an axis, m.
func (b Boundary) length() float64 { return math.Abs(b.X1-b.X0) + math.Abs(b.Y1-b.Y0) }

// extremes gives the lowest and the highest temperature of the surroundings.
func (s Section) extremes() (cold, warm float64) {
	cold, warm = s.Boundaries[0].Temperature, s.Boundaries[0].Temperature
	for _, b := range s.Boundaries {
		cold, warm = min(cold, b.Temperature), max(warm, b.Temperature)
	}
	return cold, warm
}

// pair says whether there are just two temperatures around the section.
func (s Section) pair() bool {
	cold, warm := s.extremes()
	for _, b := range s.Boundaries {
		if b.Temperature != cold && b.Temperature != warm {
			return false
		}
	}
	return cold < warm
}
