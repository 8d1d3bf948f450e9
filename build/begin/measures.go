package begin

import (
	"math"
	"strings"

	"tumblehome/build/tree"
	"tumblehome/catalogue/people"
	"tumblehome/quantity"
)

// Allowances of the starting arrangements [mm]: common practice, no source.
const (
	sideLoss  = 45.0 // what one side's lining takes from the width at the knee
	usualBunk = 1500 // length of a bunk for nobody in particular
	narrows   = 0.94 // share of that width that is left at the rear doors
)

// measures are the words that an arrangement may use for lengths that follow from the sleepers.
type measures struct{ long, wide, solo, pull, bunk quantity.Length }

// measure works the words out. A bed for several is as wide as the first two need side by side.
func (a Answers) measure() measures {
	all := a.sleepers()
	bodies := make([]people.Body, 0, 2)
	var m measures
	for i, s := range all {
		b := people.Of(s.Stature)
		if i >= 2 {
			m.bunk = max(m.bunk, upToFive(b.LyingLength()))
			continue
		}
		bodies = append(bodies, b)
		m.long = max(m.long, upToFive(b.LyingLength()))
		m.solo = max(m.solo, upToFive(b.BedWidth()))
	}
	m.wide = upToFive(people.SideBySide(bodies...))
	m.pull = max(m.wide-m.solo, 0)
	if m.bunk == 0 {
		m.bunk = usualBunk
	}
	return m
}

// across is the finished width between the sides at the rear, above the arches: a cautious estimate.
func (a Answers) across() quantity.Length {
	return narrows*orElse(a.Readings.Knee, a.body().Knee) - 2*sideLoss
}

func upToFive(l quantity.Length) quantity.Length { return quantity.Length(5 * math.Ceil(float64(l)/5)) }

// put writes the measures where an arrangement has their words.
func (m measures) put(n *tree.Node) *tree.Node {
	words := strings.NewReplacer("$long", m.long.String(), "$wide", m.wide.String(), "$solo", m.solo.String(),
		"$pull", m.pull.String(), "$bunk", m.bunk.String())
	return eachScalar(n, words.Replace)
}

// eachScalar is n with every scalar's text passed through f.
func eachScalar(n *tree.Node, f func(string) string) *tree.Node {
	if n == nil {
		return nil
	}
	out := *n
	if n.Kind == tree.Scalar {
		out.Text = f(n.Text)
	}
	out.Entries = make([]tree.Entry, len(n.Entries))
	for i, e := range n.Entries {
		e.Value = eachScalar(e.Value, f)
		out.Entries[i] = e
	}
	out.Items = make([]*tree.Node, len(n.Items))
	for i, item := range n.Items {
		out.Items[i] = eachScalar(item, f)
	}
	return &out
}
