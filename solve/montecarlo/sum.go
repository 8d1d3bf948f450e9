package montecarlo

import (
	"math"
	"math/rand/v2"
	"slices"
)

// A Term is one part of a sum.
type Term struct {
	Of    Distribution
	Times float64 // factor; the term adds Times · Of
	Key   string  // terms of one key share one error; "" shares with nobody
}

// common is one error shared by all terms of a key.
type common struct {
	shape Distribution // of which term
	most  float64      // deviation of that term, size without sign
	dev   float64      // sum of the terms' deviations, with sign
}

// reduce brings terms down to a fixed mean and independent errors, in the order in which keys first appear.
func reduce(terms []Term) (mean float64, errors []common) {
	place := make(map[string]int)
	for _, t := range terms {
		mean += t.Times * t.Of.mean
		dev := t.Times * t.Of.dev
		if dev == 0 {
			continue
		}
		i, known := place[t.Key]
		if t.Key == "" || !known {
			i = len(errors)
			errors = append(errors, common{})
			place[t.Key] = i
		}
		e := &errors[i]
		e.dev += dev
		if math.Abs(dev) > e.most {
			e.shape, e.most = t.Of, math.Abs(dev)
		}
	}
	return mean, errors
}

// A Sampled is a sum drawn many times.
type Sampled struct{ values []float64 } // rising

// Sample draws the sum n times, n at least 1. The same terms, n and seed give the same draws.
func Sample(terms []Term, n int, seed uint64) Sampled {
	mean, errors := reduce(terms)
	src := rand.New(rand.NewPCG(seed, 0x7065727473756d73))
	values := make([]float64, max(n, 1))
	for i := range values {
		v := mean
		for _, e := range errors {
			v += e.dev * (e.shape.draw(src) - e.shape.mean) / e.shape.dev
		}
		values[i] = v
	}
	slices.Sort(values)
	return Sampled{values}
}

// Mean is the mean of the draws and its standard error.
func (s Sampled) Mean() (value, standardError float64) {
	n := float64(len(s.values))
	var sum, squares float64
	for _, v := range s.values {
		sum += v
	}
	mean := sum / n
	for _, v := range s.values {
		squares += (v - mean) * (v - mean)
	}
	return mean, math.Sqrt(squares/max(n-1, 1)) / math.Sqrt(n)
}

// Quantile is the value that a share p of the draws does not pass, 0 < p < 1, with its standard error: half the distance
// between the order statistics one binomial deviation √(n·p·(1−p)) to either side.
func (s Sampled) Quantile(p float64) (value, standardError float64) {
	n := float64(len(s.values))
	side := math.Sqrt(n * p * (1 - p))
	return s.rank(n * p), (s.rank(n*p+side) - s.rank(n*p-side)) / 2
}

// rank reads between the draws: rank k + ½ is the k-th of them, counted from nought.
func (s Sampled) rank(r float64) float64 {
	last := len(s.values) - 1
	r = min(max(r-0.5, 0), float64(last))
	k := int(r)
	if k == last {
		return s.values[last]
	}
	part := r - float64(k)
	return s.values[k]*(1-part) + s.values[k+1]*part
}

// Approximate is the normal distribution with the mean and variance of the sum.
func Approximate(terms []Term) Distribution {
	mean, errors := reduce(terms)
	var variance float64
	for _, e := range errors {
		variance += e.dev * e.dev
	}
	return Normal(mean, math.Sqrt(variance))
}
