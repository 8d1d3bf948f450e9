package offsets

import "math"

// doubt holds how far the surface may be off, apart from where one looks.
type doubt struct {
	reading, form float64     // standard deviations
	alongX        [][]float64 // what interpolation may miss in the middle of each interval: [interval][height]
	alongZ        [][]float64 // [station][interval]
}

func newDoubt(t Table, g *grid) doubt {
	d := doubt{reading: t.Reading / math.Sqrt(3), form: t.Form / math.Sqrt(3)}
	for i := range g.y {
		d.alongZ = append(d.alongZ, missed(g.z, g.y[i], g.yz[i]))
	}
	d.alongX = make([][]float64, len(g.x)-1)
	column, slope := make([]float64, len(g.x)), make([]float64, len(g.x))
	for j := range g.z {
		for i := range g.x {
			column[i], slope[i] = g.y[i][j], g.yx[i][j]
		}
		for i, e := range missed(g.x, column, slope) {
			d.alongX[i] = append(d.alongX[i], e)
		}
	}
	return d
}

// missed guesses what the cubic may be off in the middle of each interval:
// what it would move if its slopes d were those of the parabola through three points, and
// what the change of curvature from one end to the other lets slip past both.
func missed(x, y, d []float64) []float64 {
	n := len(x)
	e := make([]float64, n-1)
	if n < 3 {
		return e
	}
	bend, slope := make([]float64, n), make([]float64, n)
	for i := 1; i < n-1; i++ {
		h0, h1 := x[i]-x[i-1], x[i+1]-x[i]
		s0, s1 := (y[i]-y[i-1])/h0, (y[i+1]-y[i])/h1
		bend[i] = 2 * (s1 - s0) / (h0 + h1)
		slope[i] = s0 + bend[i]*h0/2
	}
	bend[0], bend[n-1] = bend[1], bend[n-2]
	h0, h1 := x[1]-x[0], x[n-1]-x[n-2]
	slope[0] = (y[1]-y[0])/h0 - bend[1]*h0/2
	slope[n-1] = (y[n-1]-y[n-2])/h1 + bend[n-2]*h1/2
	for i := range e {
		h := x[i+1] - x[i]
		turned := math.Abs(slope[i]-d[i]-(slope[i+1]-d[i+1])) * h / 8
		e[i] = turned + math.Abs(bend[i+1]-bend[i])*h*h/64
	}
	return e
}

// Spread returns how far Half(x, z) may be off: the truth lies within this of
// it about 95 times in 100 (twice the standard deviation). Above the top row
// it is the spread of the top row.
func (s *Surface) Spread(x, z float64) float64 {
	i, u := locate(s.x, x)
	j, v := locate(s.z, z)
	d := &s.doubt
	carried := d.reading * d.reading * carry(u) * carry(v)
	ex := (d.alongX[i][j]*(1-v) + d.alongX[i][j+1]*v) * 4 * u * (1 - u)
	ez := (d.alongZ[i][j]*(1-u) + d.alongZ[i+1][j]*u) * 4 * v * (1 - v)
	return 2 * math.Sqrt(carried+d.form*d.form+ex*ex+ez*ez)
}

// carry returns the sum of squared weights with which four equally spaced
// readings enter a cubic whose slopes are mean secants: what is left of the
// variance of one reading at the fraction u between the middle two.
func carry(u float64) float64 {
	w := 1 - u
	a, b := -u*w*w/2, -u*u*w/2
	c, d := w*w*(1+2*u)+u*u*w/2, u*u*(3-2*u)+u*w*w/2
	return a*a + b*b + c*c + d*d
}
