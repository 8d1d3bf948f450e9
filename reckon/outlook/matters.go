package outlook

import (
	"cmp"
	"math"
	"slices"

	"tumblehome/build"
	"tumblehome/build/begin"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/quantity"
	"tumblehome/reckon"
)

// A Matter is something assumed, and which of the first answers it moves most.
type Matter struct {
	begin.Assumption
	Answer    string  // left, along, across, up, floor, money or weekends
	Low, High float64 // that answer with the thing at its least and at its most
	Unit      string
	Turns     bool    // somebody or something that fitted would fit no longer, or the other way about
	Weight    float64 // how much it is felt; the ranking goes by this
}

// Top are the first n matters that take n different looks to settle: the plate is read once for all its numbers.
func Top(all []Matter, n int) []Matter {
	var out []Matter
	for _, m := range all {
		seen := slices.ContainsFunc(out, func(o Matter) bool {
			return m.Asked == "plate" && o.Asked == "plate" || o.Asked == "people" && m.Asked == "people"
		})
		if !seen && len(out) < n && m.Weight > 0 {
			out = append(out, m)
		}
	}
	return out
}

// turned is how much more it is felt that somebody who fitted fits no longer than that a number moves: judgement, no source.
const turned = 5

// felt is what change of each answer is felt: judgement, no source.
var felt = []struct {
	answer, unit string
	by           float64
	of           func(First) float64
}{
	{"left", "kg", 50, func(f First) float64 { return f.Left.Likely }},
	{"along", "mm", 50, func(f First) float64 { return f.Room.Along }},
	{"across", "mm", 50, func(f First) float64 { return f.Room.Across }},
	{"up", "mm", 50, func(f First) float64 { return f.Room.Up }},
	{"floor", "m2", 0.3, func(f First) float64 { return f.Room.Floor }},
	{"money", "", 150, func(f First) float64 { return f.Money.Likely }},
	{"weekends", "1", 3, func(f First) float64 { return f.Weekends.Likely }},
}

// Matters ranks what is assumed by how much it moves the first answers, most first. A thing that cannot be reckoned at its least or
// most, because no van is so, is left out.
func Matters(a begin.Answers, reckoner Reckoner) ([]Matter, error) {
	offer := chosen(a)
	a.Arrangement = offer.ID
	doc, assumed, err := begin.Document(a)
	if err != nil {
		return nil, err
	}
	now := Of(offer, reckoner(doc))
	var all []Matter
	for _, one := range assumed {
		low, high, ok := extremes(a, one, now)
		if !ok {
			continue
		}
		m := compare(one, Of(offer, reckoner(low)), Of(offer, reckoner(high)))
		if m.Unit == "" {
			m.Unit = doc.Build.Currency
		}
		all = append(all, m)
	}
	slices.SortStableFunc(all, func(a, b Matter) int { return cmp.Compare(b.Weight, a.Weight) })
	return all, nil
}

// extremes are the build with a thing at its least and at its most.
func extremes(a begin.Answers, one begin.Assumption, now First) (low, high *build.Document, ok bool) {
	if one.Path == "/vehicle/weighed" {
		return weighed(now.Reckoning, -1), weighed(now.Reckoning, +1), true
	}
	if one.Low == "" || one.High == "" {
		return nil, nil, false
	}
	low, lowErr := begin.Suppose(a, one.Path, one.Low)
	high, highErr := begin.Suppose(a, one.Path, one.High)
	return low, high, lowErr == nil && highErr == nil
}

// guessOff is how far off the guessed mass of a van that nobody weighed is tried.
const guessOff = 0.125

// weighed is the build as if the bare van had been weighed, lighter or heavier than guessed.
func weighed(r *reckon.Reckoning, way float64) *build.Document {
	axle := func(code string) *tree.Node {
		return tree.Plain(quantity.Mass(math.Round(amount(r, code).Likely * (1 + way*guessOff))).String())
	}
	visit := tree.MapOf(
		tree.Entry{Key: "date", Value: tree.Plain("2000-01-01")},
		tree.Entry{Key: "front", Value: axle("weight.bare.front")},
		tree.Entry{Key: "rear", Value: axle("weight.bare.rear")},
		tree.Entry{Key: "aboard", Value: tree.MapOf(tree.Entry{Key: "fuel", Value: tree.Plain("0 %")})},
	)
	doc, err := build.Apply(r.Document, tree.Setting("/vehicle/weighed/supposed", visit), catalogue.Builtin())
	if err != nil { // beyond what any van weighs: then it cannot matter more than it does
		return r.Document
	}
	return doc
}

// compare finds the answer that moves most between the least and the most of a thing.
func compare(one begin.Assumption, low, high First) Matter {
	m := Matter{Assumption: one, Turns: verdicts(low) != verdicts(high)}
	for _, f := range felt {
		a, b := f.of(low), f.of(high)
		if weight := math.Abs(b-a) / f.by; weight > m.Weight {
			m.Answer, m.Unit, m.Low, m.High, m.Weight = f.answer, f.unit, a, b, weight
		}
	}
	if m.Turns {
		m.Weight *= turned
	}
	return m
}

// verdicts are the yes and no of the first answers, as bits.
func verdicts(f First) uint64 {
	var bits uint64
	put := func(yes bool) {
		bits <<= 1
		if yes {
			bits |= 1
		}
	}
	put(f.Left.Likely >= 0)
	for _, p := range f.People {
		put(p.Along >= 0)
		put(p.Across >= 0)
		put(p.Up >= 0)
	}
	return bits
}
