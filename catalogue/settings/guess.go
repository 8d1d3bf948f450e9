package settings

import (
	"math"

	"tumblehome/quantity"
)

// GuessSpread is how far off the guessed mass may be either way, as a share.
// From memory: joinery of one envelope differs by this much between builders.
const GuessSpread = 0.30

// GuessMass guesses the mass of a made thing from its envelope (along, deep,
// high) and the mass of its board:
//
//	mass = board*(flat*x*y + along*x*z + across*y*z) + iron   ± 30 %
//
// with areas in m2, rounded to 0.1 kg. For pieces of usual size; a solid or hollow thing far from
// it is guessed badly. Source: counts fitted to masses of practice, from memory.
func (s Setting) GuessMass(x, y, z quantity.Length, board quantity.PerArea) quantity.Spread[quantity.Mass] {
	metre := func(l quantity.Length) float64 { return max(0, float64(l)) / 1000 }
	area := s.Panels.Flat*metre(x)*metre(y) + s.Panels.Along*metre(x)*metre(z) + s.Panels.Across*metre(y)*metre(z)
	mass := max(0, float64(board))*area + float64(s.Iron)
	return quantity.Around(tenth(mass), tenth(GuessSpread*mass))
}

func tenth(kg float64) quantity.Mass { return quantity.Mass(math.Round(kg*10) / 10) }
