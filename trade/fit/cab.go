package fit

import (
	"fmt"

	"tumblehome/quantity"
	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// cabUnsure is how well a cab that nobody measured is known: its sides and roof are those of the front of the living space, carried forwards [mm].
// Common practice, no source.
const cabUnsure = 100

// beyondCab is how far what is said to be in the cab stands out of it through a side, from how far it stands out of the room carried forwards. The
// cab begins before the room, and its floor is not known; nor is how its sides go over into the roof.
func (w *worker) beyondCab(b solid.Bounds, side solid.Side, by float64) float64 {
	switch side {
	case solid.Front:
		return by - cabLong
	case solid.Floor:
		return 0
	case solid.Left, solid.Right:
		return min(by, w.boxExcess(w.belowShoulder(b), side))
	}
	return by
}

// outOfRoom is how far what of a thing reaches from the cab into the room stands out of a side of the room itself.
func (w *worker) outOfRoom(s *Standing, side solid.Side) float64 {
	b := s.Box
	if side == solid.Left || side == solid.Right {
		b = w.belowShoulder(b)
	}
	b.MinX = max(b.MinX, w.in.Room.Front())
	if b.MinX >= b.MaxX || side == solid.Front {
		return 0
	}
	return w.boxExcess(b, side)
}

// reportOutOfCab reports a side of the cab that something stands out of by more than the cab is unsure.
func (w *worker) reportOutOfCab(i int, side solid.Side, by float64, modeName string) {
	if by <= cabUnsure {
		return
	}
	out := finding.Finding{
		Code: "fit.sticks-out", Severity: finding.Fault, About: []string{pointer("fittings", w.in.Fittings[i].ID)}, Mode: modeName,
		Title:    fmt.Sprintf("%s stands %s out of the cab at the %s", w.name(i), about(by), sideWords[side]),
		Words:    fmt.Sprintf("The cab is taken to be as wide and high as the front of the living space, and %s mm long. It does not fit in there: measure, and move it or make it smaller.", quantity.Parted(cabLong)),
		Measured: mm(by), Limit: mm(0),
		Source: finding.Source{Text: "the front of the living space in this build; the cab itself was not measured", Sure: finding.Practice},
	}
	d := solid.Directions[side^1]
	out.Proposals = w.nudge(i, d[0]*by, d[1]*by, d[2]*by, modeName)
	w.find(out)
}
