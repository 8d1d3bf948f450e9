package runs

import (
	"fmt"
	"math"

	"tumblehome/trade/finding"
)

// farthest is how far outside the body a way may lead: to a panel on the roof, a tank under the floor, a battery before the seats [mm].
const farthest = 500.0

// farOutside finds a corner that is nowhere near the vehicle: a slip of the pen, whose metres would be bought.
func (w *worker) farOutside(l *Led) (finding.Finding, bool) {
	for i, at := range l.At {
		past := w.past(at)
		if past <= farthest {
			continue
		}
		return finding.Finding{Code: "runs.outside", Severity: finding.Fault, About: []string{l.pointer()},
			Title:    fmt.Sprintf("Corner %d of the way %s is outside the van", i+1, l.ID),
			Words:    fmt.Sprintf("It lies %.1f m beyond the body. What is led there would be bought and reckoned with all the same: look at its numbers.", past/1000),
			Measured: mm(past), Limit: mm(farthest), Source: finding.Source{Text: "the shape of the van; half a metre is left for panels and tanks outside it", Sure: finding.Computed}}, true
	}
	return finding.Finding{}, false
}

// past is how far a point is beyond the body, along the axis that is worst.
func (w *worker) past(at Point) float64 {
	s := w.in.Skin
	x := math.Min(math.Max(at[0], s.Front()), s.Rear())
	z := math.Min(math.Max(at[2], s.Floor()), s.Roof(x, 0))
	return max(w.in.Nose-at[0], at[0]-s.Rear(), s.Left(x, z)-at[1], at[1]-s.Right(x, z), s.Floor()-at[2], at[2]-s.Roof(x, 0))
}
