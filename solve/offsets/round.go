package offsets

import "math"

// round is the curve from the crown to the edge of the roof, in shares of
// camber and breadth: g(t) = a t^2 + (1-a) t^n, g(0) = 0, g(1) = 1.
type round struct {
	a, n    float64
	power   int
	inverse []float64 // t at w = sqrt(g) = k/(len-1)
}

const (
	steepest     = 24  // steepness m at the edge beyond which shoulders look alike
	inverseSteps = 512 // holds t to about 1e-5
)

// newRound fits the one round of the whole body: its steepness at the edge is
// that of the sides, as the ratio of sums over all stations so that one
// station read badly counts little.
func newRound(t Table, g *grid) round {
	last := len(g.z) - 1
	breadth, fall := 0.0, 0.0
	for i, s := range t.Stations {
		breadth += s.Half[last]
		fall += (s.Crown - g.z[last]) * math.Max(0, -g.yz[i][last])
	}
	m := float64(steepest)
	if breadth < steepest*fall {
		m = math.Max(2, breadth/fall)
	}
	r := round{n: 4}
	if m > 3 {
		r.n = math.Round(2*m - 2)
	}
	r.a = (r.n - m) / (r.n - 2)
	r.power = int(r.n)
	r.inverse = r.invert()
	return r
}

// at returns g(t).
func (r *round) at(t float64) float64 {
	g, _ := r.both(t)
	return g
}

// slope returns g'(t).
func (r *round) slope(t float64) float64 {
	_, slope := r.both(t)
	return slope
}

// both returns g(t) and g'(t).
func (r *round) both(t float64) (g, slope float64) {
	p := (1 - r.a) * power(t, r.power-1)
	return r.a*t*t + p*t, 2*r.a*t + r.n*p
}

// area returns the integral of 1 - g over 0..1, the share of the box under
// the crown that lies below the roof.
func (r *round) area() float64 { return 1 - r.a/3 - (1-r.a)/(r.n+1) }

// invert tabulates t over the square root of g, in which t is nearly straight.
// g is convex, so Newton's steps from the entry above come down on the root
// from one side.
func (r *round) invert() []float64 {
	table := make([]float64, inverseSteps+1)
	t := 1.0
	table[inverseSteps] = t
	for k := inverseSteps - 1; k > 0; k-- {
		w := float64(k) / inverseSteps
		for range 20 {
			step := (r.at(t) - w*w) / r.slope(t)
			t -= step
			if step < 1e-12 {
				break
			}
		}
		table[k] = t
	}
	return table
}

// breadth returns the t at which the roof has fallen by the share g of the camber.
func (r *round) breadth(g float64) float64 {
	if !(g > 0) {
		return 0
	}
	if g >= 1 {
		return 1
	}
	w := math.Sqrt(g) * inverseSteps
	k := int(w)
	f := w - float64(k)
	return r.inverse[k] + f*(r.inverse[k+1]-r.inverse[k])
}

// roofHalf returns the half-breadth above the top row.
func (s *Surface) roofHalf(x, z float64) float64 {
	crown := s.crown.At(x)
	camber := crown - s.TopRow()
	if z >= crown || camber <= 0 {
		return 0
	}
	return s.Half(x, s.TopRow()) * s.round.breadth((crown-z)/camber)
}

// power returns t^n for n not below zero.
func power(t float64, n int) float64 {
	p := 1.0
	for ; n > 0; n >>= 1 {
		if n&1 == 1 {
			p *= t
		}
		t *= t
	}
	return p
}
