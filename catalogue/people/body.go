package people

import (
	"math"

	"tumblehome/quantity"
)

// Correlation of a dimension with stature, from memory of body surveys: about
// 0.8 for heights and lengths, 0.4 for breadths, depths and girths.
const (
	lengthGoesWithStature  = 0.8
	breadthGoesWithStature = 0.4
)

// A Body is the size of one person of known stature.
type Body struct {
	Stature  quantity.Length
	surveyed *surveyed // nil: every size follows from the stature
}

// Of is a body of this stature [mm].
func Of(stature quantity.Length) Body { return Body{Stature: stature} }

// Size is the dimension scaled by stature [mm], and the half-width of the
// range that holds nine people in ten of this stature, as a share of the size.
//
//	size  = stature * (share of men + share of women)/2
//	share = mean of the dimension / mean stature, of the survey
//	half  = 1.645 * sqrt(c2 + s2 - 2 r c s) + half the difference of the shares
//
// with c and s the coefficients of variation of the dimension and of stature
// and r their correlation. For adults of 1450 to 2000 mm. A dimension the
// survey does not have, and mass, are 0.
func (b Body) Size(d Dimension) (quantity.Length, float64) {
	if d == Stature {
		return b.Stature, 0
	}
	if b.surveyed != nil {
		return b.surveyed.size(d), 0
	}
	s := shares[d]
	return quantity.Length(s.mean * float64(b.Stature)), s.half
}

type share struct{ mean, half float64 }

var shares = sharesOfStature()

func sharesOfStature() map[Dimension]share {
	all := make(map[Dimension]share)
	for k, m := range survey {
		if k.sex != Men || k.dimension == Stature || k.dimension == BodyMass {
			continue
		}
		f := survey[key{k.dimension, Women}]
		men, women := survey[key{Stature, Men}], survey[key{Stature, Women}]
		sm, sf := m.Mean/men.Mean, f.Mean/women.Mean
		scatter := (scatterOfShare(k.dimension, m, men) + scatterOfShare(k.dimension, f, women)) / 2
		mean := (sm + sf) / 2
		all[k.dimension] = share{mean, 1.645*scatter + math.Abs(sm-sf)/2/mean}
	}
	return all
}

// scatterOfShare is the coefficient of variation of dimension/stature.
func scatterOfShare(d Dimension, m, stature Measure) float64 {
	r := lengthGoesWithStature
	switch d {
	case Shoulders, Elbows, Hips, Chest, Belly, Thigh, ElbowRest:
		r = breadthGoesWithStature
	}
	c, s := m.Dev/m.Mean, stature.Dev/stature.Mean
	return math.Sqrt(c*c + s*s - 2*r*c*s)
}
