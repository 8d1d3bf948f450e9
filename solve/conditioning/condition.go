package conditioning

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/mat"
)

// A Reading is one observed sum of parts.
type Reading struct {
	Of    []float64 // factor of each part; shorter than the parts means noughts, longer is a mistake
	Value float64   // what was read
	Noise float64   // variance of the reading's own error
}

// Singular says that the readings contradict or repeat one another without noise. Its value is the condition number of S.
type Singular float64

func (s Singular) Error() string {
	return fmt.Sprintf("the readings depend on one another: condition number %.3g", float64(s))
}

// Parts is what is known of the parts together.
type Parts struct {
	Mean  []float64
	prior []float64   // variance of each before reading
	w     [][]float64 // rows of W, one for each reading
}

// Condition works out the parts after the readings. dev holds the standard deviations before.
func Condition(mean, dev []float64, readings []Reading) (Parts, error) {
	p := Parts{Mean: append([]float64(nil), mean...), prior: make([]float64, len(mean))}
	for i, d := range dev {
		p.prior[i] = d * d
	}
	if len(readings) == 0 {
		return p, nil
	}
	var chol mat.Cholesky
	if !chol.Factorize(p.covarianceOf(readings)) {
		return p, Singular(math.Inf(1))
	}
	if c := chol.Cond(); c > 1e12 {
		return p, Singular(c)
	}
	p.absorb(&chol, readings)
	return p, nil
}

// covarianceOf is S, from the independent prior.
func (p Parts) covarianceOf(readings []Reading) *mat.SymDense {
	s := mat.NewSymDense(len(readings), nil)
	for i, a := range readings {
		for j := i; j < len(readings); j++ {
			var sum float64
			for k := range min(len(a.Of), len(readings[j].Of)) {
				sum += a.Of[k] * p.prior[k] * readings[j].Of[k]
			}
			if i == j {
				sum += a.Noise
			}
			s.SetSym(i, j, sum)
		}
	}
	return s
}

// absorb solves for W row by row (forward substitution) and moves the mean: m' = m + Wᵀ L⁻¹ (z − H m).
func (p *Parts) absorb(chol *mat.Cholesky, readings []Reading) {
	var l mat.TriDense
	chol.LTo(&l)
	surprise := make([]float64, len(readings))
	p.w = make([][]float64, len(readings))
	for i, r := range readings {
		row := make([]float64, len(p.prior))
		surprise[i] = r.Value
		for k, h := range r.Of {
			row[k] = h * p.prior[k]
			surprise[i] -= h * p.Mean[k]
		}
		p.w[i] = row
	}
	for i, row := range p.w {
		for j := range i {
			f := l.At(i, j)
			surprise[i] -= f * surprise[j]
			for k := range row {
				row[k] -= f * p.w[j][k]
			}
		}
		surprise[i] /= l.At(i, i)
		for k := range row {
			row[k] /= l.At(i, i)
		}
	}
	for i, row := range p.w {
		for k, w := range row {
			p.Mean[k] += w * surprise[i]
		}
	}
}

// Covariance of two combinations of the parts; shorter combinations mean noughts.
func (p Parts) Covariance(a, b []float64) float64 {
	var sum float64
	for k := range min(len(a), len(b)) {
		sum += a[k] * p.prior[k] * b[k]
	}
	for _, row := range p.w {
		sum -= dot(row, a) * dot(row, b)
	}
	return sum
}

// Dev is the standard deviation of a combination of the parts.
func (p Parts) Dev(of []float64) float64 { return math.Sqrt(max(0, p.Covariance(of, of))) }

// Value is the mean of a combination of the parts.
func (p Parts) Value(of []float64) float64 { return dot(p.Mean, of) }

func dot(a, b []float64) float64 {
	var sum float64
	for k := range min(len(a), len(b)) {
		sum += a[k] * b[k]
	}
	return sum
}
