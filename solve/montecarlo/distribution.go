package montecarlo

import (
	"math"
	"math/rand/v2"

	"gonum.org/v1/gonum/stat/distuv"
)

// A Distribution is one of those below; the zero Distribution is exactly nought.
type Distribution struct {
	shape     shape
	low, high float64 // least and most; unused for the normal distribution
	mean, dev float64
	a, b      float64 // shape parameters of a beta distribution
}

type shape int

const (
	exact shape = iota
	normal
	beta
	even
)

// Exactly is a value without spread.
func Exactly(value float64) Distribution {
	return Distribution{shape: exact, low: value, high: value, mean: value}
}

// Normal has this mean and standard deviation; a deviation of nought or less is exactly the mean.
func Normal(mean, dev float64) Distribution {
	if !(dev > 0) {
		return Exactly(mean)
	}
	return Distribution{shape: normal, mean: mean, dev: dev}
}

// Pert lies between low and high and is most probably likely: a beta distribution with a = 1 + 4(likely − low)/(high − low),
// b = 1 + 4(high − likely)/(high − low), so mean = (low + 4 likely + high)/6 and variance = (mean − low)(high − mean)/7.
// It expects low ≤ likely ≤ high.
func Pert(low, likely, high float64) Distribution {
	if !(high > low) {
		return Exactly(likely)
	}
	width := high - low
	mean := (low + 4*likely + high) / 6
	return Distribution{
		shape: beta, low: low, high: high, mean: mean,
		dev: math.Sqrt(max(0, (mean-low)*(high-mean)/7)),
		a:   1 + 4*(likely-low)/width,
		b:   1 + 4*(high-likely)/width,
	}
}

// Even is equally probable anywhere between low and high, such as what a scale of that step leaves unread; its variance is
// (high − low)²/12.
func Even(low, high float64) Distribution {
	if !(high > low) {
		return Exactly(low)
	}
	return Distribution{shape: even, low: low, high: high, mean: (low + high) / 2, dev: (high - low) / math.Sqrt(12)}
}

// Mean is the expected value.
func (d Distribution) Mean() float64 { return d.mean }

// Dev is the standard deviation.
func (d Distribution) Dev() float64 { return d.dev }

// Quantile is the value that is not passed with probability p, 0 < p < 1.
func (d Distribution) Quantile(p float64) float64 {
	switch d.shape {
	case normal:
		return d.mean + d.dev*distuv.UnitNormal.Quantile(p)
	case beta:
		return d.low + (d.high-d.low)*distuv.Beta{Alpha: d.a, Beta: d.b}.Quantile(p)
	case even:
		return d.low + (d.high-d.low)*p
	}
	return d.mean
}

// draw takes one value.
func (d Distribution) draw(src *rand.Rand) float64 {
	switch d.shape {
	case normal:
		return d.mean + d.dev*src.NormFloat64()
	case beta:
		return d.low + (d.high-d.low)*distuv.Beta{Alpha: d.a, Beta: d.b, Src: src}.Rand()
	case even:
		return d.low + (d.high-d.low)*src.Float64()
	}
	return d.mean
}
