package offsets

import "math"

// A Curve is the shape-preserving piecewise cubic through points of ascending
// x: between two points it stays between their values. Outside it is constant.
type Curve struct {
	x, y, d []float64
}

// NewCurve returns the curve through the points (x[i], y[i]). It keeps both
// slices. x must ascend strictly and hold at least two values; with a
// single value the curve is a constant.
func NewCurve(x, y []float64) Curve {
	return Curve{x: x, y: y, d: slopes(x, y)}
}

// At returns the height of the curve at x.
func (c Curve) At(x float64) float64 {
	y, _ := c.both(x)
	return y
}

// Slope returns dy/dx at x; outside the points it is that of the end.
func (c Curve) Slope(x float64) float64 {
	_, slope := c.both(x)
	return slope
}

func (c *Curve) both(x float64) (y, slope float64) {
	i, h, u := c.place(x)
	if h == 0 {
		return c.y[i], c.d[i]
	}
	a0, a1, a2, a3 := hermite(c.y[i], c.y[i+1], c.d[i]*h, c.d[i+1]*h)
	return a0 + u*(a1+u*(a2+u*a3)), (a1 + u*(2*a2+u*3*a3)) / h
}

// place returns the interval that holds x, its length (0 when the curve is a
// single point) and the fraction of it that lies before x, held to 0..1.
func (c *Curve) place(x float64) (i int, h, u float64) {
	if len(c.x) < 2 {
		return 0, 0, 0
	}
	i, u = locate(c.x, x)
	return i, c.x[i+1] - c.x[i], u
}

// locate finds the interval of the ascending xs that holds x and the fraction
// of the way along it; x outside (or no number) is held to the ends.
func locate(xs []float64, x float64) (int, float64) {
	last := len(xs) - 2
	if !(x > xs[0]) {
		return 0, 0
	}
	if x >= xs[last+1] {
		return last, 1
	}
	i := 0
	for i < last && x >= xs[i+1] {
		i++
	}
	return i, (x - xs[i]) / (xs[i+1] - xs[i])
}

// hermite turns the values f and slopes m at both ends of the unit interval
// into the coefficients of the cubic.
func hermite(f0, f1, m0, m1 float64) (a0, a1, a2, a3 float64) {
	return f0, m0, 3*(f1-f0) - 2*m0 - m1, 2*(f0-f1) + m0 + m1
}

// slopes returns the slopes of Fritsch and Butland: at an inner point the
// weighted harmonic mean of the secants on both sides, zero where they differ in
// sign; at the ends a three-point formula held to the shape of the data.
func slopes(x, y []float64) []float64 {
	n := len(x)
	d := make([]float64, n)
	if n < 2 {
		return d
	}
	secant := func(i int) (h, s float64) { h = x[i+1] - x[i]; return h, (y[i+1] - y[i]) / h }
	if n == 2 {
		_, s := secant(0)
		d[0], d[1] = s, s
		return d
	}
	for i := 1; i < n-1; i++ {
		h0, s0 := secant(i - 1)
		h1, s1 := secant(i)
		if s0*s1 > 0 {
			w0, w1 := 2*h1+h0, h1+2*h0
			d[i] = (w0 + w1) / (w0/s0 + w1/s1)
		}
	}
	h0, s0 := secant(0)
	h1, s1 := secant(1)
	d[0] = endSlope(h0, h1, s0, s1)
	h0, s0 = secant(n - 2)
	h1, s1 = secant(n - 3)
	d[n-1] = endSlope(h0, h1, s0, s1)
	return d
}

// endSlope is the slope of the parabola through three points at the first of
// them, not past zero and at most three times the secant where the data turn.
func endSlope(h0, h1, s0, s1 float64) float64 {
	d := ((2*h0+h1)*s0 - h0*s1) / (h0 + h1)
	switch {
	case d*s0 <= 0:
		return 0
	case s0*s1 <= 0 && math.Abs(d) > 3*math.Abs(s0):
		return 3 * s0
	}
	return d
}
