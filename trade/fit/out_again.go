package fit

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// outAsBefore says whether it is told already of another mode that a thing that slides or folds stands out of a side by as much, and adds this mode.
// What helps in one mode only is then no longer proposed, but to move where it rests, from where it slides.
func (w *worker) outAsBefore(i int, side solid.Side, by float64, mode *Mode, s *Standing) bool {
	if !s.Moved {
		return false
	}
	self := pointer("fittings", w.in.Fittings[i].ID)
	for k := range w.result.Findings {
		f := &w.result.Findings[k]
		if f.Code != "fit.sticks-out" || f.Mode == "" || f.Mode == mode.Name || !slices.Contains(f.About, self) || math.Abs(f.Measured.Value-by) > touching || f.Title != w.outTitle(i, side, by) {
			continue
		}
		const same = " It is the same in the mode "
		if strings.Contains(f.Words, same) {
			f.Words = strings.TrimSuffix(f.Words, ".") + fmt.Sprintf(" and %q.", mode.Name)
		} else {
			f.Words += same + fmt.Sprintf("%q.", mode.Name)
		}
		f.Proposals = w.restElsewhere(mode, i, side, by)
		return true
	}
	return false
}

func (w *worker) outTitle(i int, side solid.Side, by float64) string {
	return fmt.Sprintf("%s stands %s into the %s", w.name(i), about(by), sideWords[side])
}

// restElsewhere proposes to move a thing where it rests by as much as it stands out in another mode, to which it slides from there.
func (w *worker) restElsewhere(mode *Mode, i int, side solid.Side, by float64) []finding.Proposal {
	if slices.ContainsFunc(mode.Movers, func(m Mover) bool { return m.Fitting == i && m.ByHand }) {
		return nil // where it is carried to does not hang on where it rests
	}
	d := solid.Directions[side^1]
	if !w.fitsAt(i, d[0]*by, d[1]*by, d[2]*by) {
		return nil
	}
	return w.nudge(i, d[0]*by, d[1]*by, d[2]*by, "")
}
