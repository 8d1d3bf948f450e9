package quantity

// A Measure is a quantity that a guess may be about: all number types here and
// Money. No type outside this package can be one.
type Measure[Q any] interface {
	comparable
	Float() float64
	String() string
	Grammar() Grammar
	of(float64) Q
	parse(string) (Q, error)
}

// A Form is how a guess was written.
type Form int

const (
	Bare  Form = iota // a number alone: the spread of its kind and standing applies
	Even              // 12 ± 3
	Three             // {likely: 12, low: 9, high: 20}
	Exact             // {exactly: 11.2}, weighed or paid: no spread
)

// A Spread is a guess: the most probable value and the least and the most it
// could be. It is read as a PERT distribution. For Bare and Exact, Low and
// High are equal to Likely.
type Spread[Q Measure[Q]] struct {
	Likely, Low, High Q
	Form              Form
}

// About is a bare guess, whose spread is that of its kind.
func About[Q Measure[Q]](likely Q) Spread[Q] { return Spread[Q]{likely, likely, likely, Bare} }

// Exactly is a value without spread.
func Exactly[Q Measure[Q]](q Q) Spread[Q] { return Spread[Q]{q, q, q, Exact} }

// Around is likely ± half.
func Around[Q Measure[Q]](likely, half Q) Spread[Q] {
	return Spread[Q]{likely, likely.of(likely.Float() - half.Float()), likely.of(likely.Float() + half.Float()), Even}
}

// Between is a guess of three values; the caller sees that low ≤ likely ≤ high.
func Between[Q Measure[Q]](low, likely, high Q) Spread[Q] { return Spread[Q]{likely, low, high, Three} }

// Mean is (low + 4 likely + high)/6 (Malcolm and others 1959, equation 1).
func (s Spread[Q]) Mean() Q {
	low, likely, high := s.floats()
	if low == high {
		return s.Likely
	}
	return s.Likely.of((low + 4*likely + high) / 6)
}

// Variance is (mean − low)(high − mean)/7 in the square of the base unit: that
// of a beta distribution between low and high with the PERT mean and shape 4.
func (s Spread[Q]) Variance() float64 {
	low, likely, high := s.floats()
	mean := (low + 4*likely + high) / 6
	return max(0, (mean-low)*(high-mean)/7)
}

// WithDefault gives a bare guess the spread likely ± share of likely; any other
// is returned as it is. Share is a part of one, not below nought.
func (s Spread[Q]) WithDefault(share float64) Spread[Q] {
	if s.Form != Bare {
		return s
	}
	half := share * s.Likely.Float()
	if half < 0 {
		half = -half
	}
	return Around(s.Likely, s.Likely.of(half))
}

func (s Spread[Q]) floats() (low, likely, high float64) {
	likely = s.Likely.Float()
	if s.Form == Bare || s.Form == Exact {
		return likely, likely, likely
	}
	return s.Low.Float(), likely, s.High.Float()
}
