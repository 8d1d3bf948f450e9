package fit

import (
	"fmt"
	"math"

	"tumblehome/quantity"
	"tumblehome/trade/finding"
)

// nudge proposes to move a fitting so far, rounded up to whole millimetres. What only happens in one mode is not cured by it
// for certain, so that nothing is proposed.
func (w *worker) nudge(i int, dx, dy, dz float64, modeName string) []finding.Proposal {
	if w.in.Nudge == nil || modeName != "" || w.in.Fittings[i].For != "" { // what sits in an opening stays there
		return nil
	}
	if dx, dy, dz = away(dx), away(dy), away(dz); dx == 0 && dy == 0 && dz == 0 || w.coversDriver(i, dx, dy, dz) {
		return nil
	}
	patch, ok := w.in.Nudge(w.in.Fittings[i].ID, dx, dy, dz)
	if !ok {
		return nil
	}
	return []finding.Proposal{{Words: fmt.Sprintf("move %s %s", finding.SetOff(w.name(i)), wayWords(dx, dy, dz)), Patch: patch}}
}

// away rounds to the next whole millimetre away from nought.
func away(v float64) float64 {
	if v < 0 {
		return math.Floor(v + 1e-6)
	}
	return math.Ceil(v - 1e-6)
}

func wayWords(dx, dy, dz float64) string {
	switch {
	case dx > 0:
		return quantity.Parted(dx) + " mm rearwards"
	case dx < 0:
		return quantity.Parted(-dx) + " mm forwards"
	case dy > 0:
		return quantity.Parted(dy) + " mm to the right"
	case dy < 0:
		return quantity.Parted(-dy) + " mm to the left"
	case dz > 0:
		return quantity.Parted(dz) + " mm up"
	}
	return quantity.Parted(-dz) + " mm down"
}

// about is a length as a builder says it: to 5 mm, below 20 to 1 mm.
func about(v float64) string {
	if v < 20 {
		return quantity.Parted(math.Max(1, v)) + " mm"
	}
	return quantity.Parted(math.Round(v/5)*5) + " mm"
}
