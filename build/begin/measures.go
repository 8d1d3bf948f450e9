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
	sideLoss        = 45.0        // what one side's lining takes from the width at the knee
	leastLong       = 1800        // of a bed that is never made shorter: wheel arches are where it ends
	usualBunk       = 1300        // length of a bunk for nobody in particular
	leastBroad      = 900         // width of a bed that is always made, for one
	archGap         = 15          // to each wheel arch of a bed between them
	leastArchGap    = 10          // where that much more lets both sleepers turn over
	leanLow         = 5           // by which a side comes in from the seat up to the shoulders of who lies on it
	leanHigh        = 15          // the same above a high bed
	tight           = 1000        // what is left of the length beside a bed lengthwise, below which a galley holds no fridge and two cans
	scant           = 1900        // below which a wardrobe and a long galley do not stand one behind the other
	tighter         = 850         // below which it holds no coolbox with a compressor and a can
	linedHeight     = 50          // what floor and roof of a low van's lining take
	padding         = 95          // slats of 50 and a cushion of 60, pressed
	cushioned       = 50          // what a seat without slats may be higher
	slumped         = 35          // sitting slumped is lower by this
	lowest, highest = 60.0, 130.0 // of a low seat beneath its slats
	overlap         = 40          // of the slats of a bed that is pulled out
	opposite        = 545         // of a galley before which a bed is pulled out
	narrows         = 0.94        // share of that width that is left at the rear doors
	archLined       = 30          // what the lining of a side is thicker than that of its arch, at the least
	roomy           = 1745        // width at the knee below which what stands against a side is made less deep by what is missing
	mostLess        = 60          // up to this
	archCut         = 250         // how deep a thing may be cut round an arch, if that is not over half of it
)

// measures are the words that an arrangement may use for lengths that follow from the sleepers.
type measures struct{ long, wide, broad, solo, grown, deep, pull, drawn, bunk, half, low, seat, arch, less quantity.Length }

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
	m.arch = (orElse(a.Readings.Knee, a.body().Knee)-orElse(a.Readings.Arches, a.body().Arches))/2 - archLined
	m.less = min(max(0, upToFive(roomy-orElse(a.Readings.Knee, a.body().Knee))), mostLess)
	m.half = downToFive(orElse(a.Readings.Arches, a.body().Arches)/2 - archGap)
	wants := people.SideBySide(bodies...)
	m.wide = upToFive(wants)
	if a.isLow() { // there the bed lies between the arches
		m.half = max(m.half, min(upToFive(wants/2), m.half+archGap-leastArchGap))
		m.wide = min(m.wide, 2*m.half)
	}
	m.broad = upToFive(wants + leanHigh)
	if a.isLow() { // and above them it is not much wider
		m.broad = min(m.broad, 2*(m.half+leanHigh))
	}
	m.broad = max(m.broad, leastBroad)
	m.deep = max(m.solo, upToFive((m.wide+overlap)/2))
	m.pull = max(m.wide-m.deep, 0)
	if !a.isLow() {
		m.pull = max(m.wide+leanLow-m.deep, 0)
	}
	m.drawn = m.pull
	if !a.isLow() {
		m.drawn = max(0, min(m.pull, downToFive(orElse(a.Readings.Knee, a.body().Knee)-2*sideLoss-opposite-m.deep)))
	}
	m.grown = max(m.long, leastLong)
	m.low = a.lowSeat()
	m.seat = m.low + cushioned
	if m.bunk == 0 {
		m.bunk = usualBunk
	}
	return m
}

// across is the finished width between the sides at the rear, above the arches: a cautious estimate.
func (a Answers) across() quantity.Length {
	return narrows*orElse(a.Readings.Knee, a.body().Knee) - 2*sideLoss
}

// lowSeat is how high a seat in a low van may be beneath its slats and cushion, so that the tallest can sit on it at least slumped.
func (a Answers) lowSeat() quantity.Length {
	under := orElse(a.Readings.Height, a.body().Height) - linedHeight - padding + slumped
	seat := quantity.Length(highest)
	for _, s := range a.sleepers() {
		seat = min(seat, downToFive(under-people.Of(s.Stature).SittingHeadroom()))
	}
	return max(seat, lowest)
}

func (a Answers) isLow() bool {
	_, height := class(a.body().ID)
	return height == "low"
}

func downToFive(l quantity.Length) quantity.Length {
	return quantity.Length(5 * math.Floor(float64(l)/5))
}

func upToFive(l quantity.Length) quantity.Length { return quantity.Length(5 * math.Ceil(float64(l)/5)) }

// put writes the measures where an arrangement has their words.
func (m measures) put(n *tree.Node) *tree.Node {
	words := strings.NewReplacer("$long", m.long.String(), "$wide", m.wide.String(), "$broad", m.broad.String(), "$solo", m.solo.String(), "$deep", m.deep.String(),
		"$grown", m.grown.String(), "$pull", m.pull.String(), "$drawn", m.drawn.String(), "$bunk", m.bunk.String(), "$half", m.half.String(), "$low", m.low.String(), "$seat", m.seat.String())
	return eachScalar(n, func(text string) string {
		if depth, ok := strings.CutPrefix(text, "$side-"); ok {
			return m.side(words.Replace(depth), 0)
		}
		if depth, ok := strings.CutPrefix(text, "$slim-"); ok {
			return m.side(depth, m.less)
		}
		return words.Replace(text)
	})
}

// side is the depth of what stands against a side, over a wheel arch: where the arch would take more than half of it, so much deeper that it does not;
// otherwise less by what a narrow van wants.
func (m measures) side(usual string, less quantity.Length) string {
	depth, err := quantity.ParseLength(usual)
	switch {
	case err != nil:
		return usual
	case m.arch > max(archCut, depth/2):
		return upToFive(2 * m.arch).String()
	}
	return (depth - less).String()
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
