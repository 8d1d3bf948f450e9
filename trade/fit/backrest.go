package fit

import (
	"fmt"

	"tumblehome/trade/working"
)

// A seat with belts is bought with its backrest. How high one sits on it no row says: it is taken as usual [mm]. Common practice, no source.
const (
	usualSeat = 420
	noBack    = 600 // what is lower has no backrest in its height
)

// hasBack says whether a thing is a seat with belts as high as its backrest.
func (w *worker) hasBack(mode *Mode, seat int) bool {
	b := mode.Standings[seat].Box
	return w.in.Fittings[seat].Belted && b.MaxZ-b.MinZ > noBack
}

// ownTop is how high one sits on a thing without what lies upon it. A cushion that lies on a seat with a backrest tells how high that is.
func (w *worker) ownTop(mode *Mode, seat int) float64 {
	b := mode.Standings[seat].Box
	if !w.hasBack(mode, seat) {
		return b.MaxZ
	}
	if i := w.cushionOf(mode, seat); i >= 0 {
		return mode.Standings[i].Box.MinZ
	}
	return b.MinZ + usualSeat
}

// cushionOf is what lies on a seat to be sat on, the highest that is lower than its backrest; -1 for none.
func (w *worker) cushionOf(mode *Mode, seat int) int {
	best := -1
	for i := range mode.Standings {
		s := &mode.Standings[i]
		if !w.in.Fittings[i].Rests || len(s.Solid) == 0 || s.Box.MaxZ >= mode.Standings[seat].Box.MaxZ || !w.carries(seat, i) {
			continue
		}
		if best < 0 || s.Box.MaxZ > mode.Standings[best].Box.MaxZ {
			best = i
		}
	}
	return best
}

// topFrom is where the height of a seat comes from.
func (w *worker) topFrom(mode *Mode, seat int) working.Origin {
	if w.hasBack(mode, seat) && w.cushionOf(mode, seat) < 0 {
		return working.Origin{Assumption: fmt.Sprintf("a seat with belts is sat on at %d over its foot: common practice, no source; measure yours", usualSeat)}
	}
	return working.Origin{Pointer: pointer("fittings", w.in.Fittings[seat].ID)}
}
