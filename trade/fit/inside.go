package fit

import (
	"fmt"
	"math"
	"slices"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// step is the widest spacing at which curved surfaces are looked at [mm], besides where the room is known to step or bend.
const step = 150

// touching is how far two things may be in one another and still only touch [mm].
const touching = 1

var sideWords = [6]string{"front", "rear", "left side", "right side", "floor", "roof"}

// inside finds what stands out of the finished surfaces, at rest once and then wherever a mode moves it.
func (w *worker) inside() {
	for i, f := range w.in.Fittings {
		if f.Where != "" || f.For != "" || f.Gives >= 1 {
			continue
		}
		restSeen := false
		for m := range w.in.Modes {
			mode := &w.in.Modes[m]
			s := &mode.Standings[i]
			if len(s.Solid) == 0 || !s.Moved && restSeen {
				continue
			}
			name := mode.Name
			if !s.Moved {
				name, restSeen = "", true
			}
			w.standsOut(i, s, name, mode)
		}
		w.outOfHost(i)
	}
	w.tellCab()
}

// standsOut reports each surface that a fitting stands out of.
func (w *worker) standsOut(i int, s *Standing, modeName string, mode *Mode) {
	for to, by := range w.excesses(s) {
		side := solid.Side(to)
		if by <= touching || by <= w.give(i, s) || side == solid.Front && w.intoCab(i, s, by) || s.Moved && w.open(mode, side, s.Box) {
			continue
		}
		w.reportOut(i, side, by, modeName)
	}
}

// How far a thing may reach into a cab that is open to the room, and what is told of it: low things stand where the seats are, higher ones go over
// seats folded forwards [mm]. Common practice, no source.
const (
	cabLong  = 1000
	cabTold  = 100
	seatHigh = 250
)

// intoCab says whether what reaches out at the front does so into an open cab; the farthest that stands low is kept to be told.
func (w *worker) intoCab(i int, s *Standing, by float64) bool {
	if w.in.Partition || by > cabLong {
		return false
	}
	if s.Box.MinZ < w.in.Room.Floor()+seatHigh && by > max(cabTold, w.cabBy) {
		w.cabBy, w.cabThing = by, i
	}
	return true
}

// tellCab tells of the thing that stands farthest into the cab, once.
func (w *worker) tellCab() {
	if w.cabBy == 0 {
		return
	}
	w.find(finding.Finding{
		Code: "fit.into-cab", Severity: finding.Note, About: []string{pointer("fittings", w.in.Fittings[w.cabThing].ID)},
		Title:    fmt.Sprintf("%s stands %s into the cab", w.name(w.cabThing), about(w.cabBy)),
		Words:    "Try it with a box as large: is there room behind the seats, or is a seat folded or taken out for it? Nobody may then sit there while driving.",
		Measured: mm(w.cabBy), Limit: mm(cabTold), Proposals: w.nudge(w.cabThing, w.cabBy-cabTold, 0, 0, ""), Source: finding.Source{Text: "the front of the living space in this build; the cab itself was not measured", Sure: finding.Practice},
	})
}

// excess of the box first; only when it stands out does the cut solid matter.
func (w *worker) excess(s *Standing, side solid.Side) float64 {
	if !s.Moved && slices.Contains(s.Scribed, side) {
		return 0
	}
	by := w.boxExcess(s.Box, side)
	if by <= touching || len(s.Solid) == 1 && len(s.Solid[0].Outline) == 4 && s.Solid[0].Bounds() == s.Box && isBox(s.Solid[0]) {
		return by
	}
	by = math.Inf(-1)
	for _, p := range s.Solid {
		if side == solid.Roof {
			by = max(by, w.roofExcess(p.Bounds()))
		} else {
			by = max(by, w.underRoof(p).ExcessAt(w.in.Room, side, step))
		}
	}
	return by
}

func (w *worker) boxExcess(b solid.Bounds, side solid.Side) float64 {
	if side == solid.Roof {
		return w.roofExcess(b)
	}
	return w.underRoof(solid.Box(b)).ExcessAt(w.in.Room, side, step)
}

// underCrown is how far below its crown the roof's sides are still looked at as sides [mm]: at the crown itself they come together.
const underCrown = 5

// underRoof is the part of a prism below the roof's crown: what stands out above it is the roof's matter, not that of the sides.
func (w *worker) underRoof(p solid.Prism) solid.Prism {
	if p.High <= w.lowRoof()-roofMargin {
		return p
	}
	b, r := p.Bounds(), w.in.Room
	for _, x := range [3]float64{b.MinX, (b.MinX + b.MaxX) / 2, b.MaxX} {
		p.High = min(p.High, r.Roof(x, 0)-underCrown)
	}
	p.Low = min(p.Low, p.High)
	return p
}

// roofMargin is how far [mm] below the lowest roof near the middle of the van a thing counts as clear of the roof unseen.
const roofMargin = 150

// roofExcess is how far a box stands out of the roof. What stands out of a side is that side's matter: the roof is looked at only
// between the sides at the height of the box's top.
func (w *worker) roofExcess(b solid.Bounds) float64 {
	if over := b.MaxZ - (w.lowRoof() - roofMargin); over <= 0 {
		return over
	}
	r := w.in.Room
	along, _ := solid.Steps(r)
	return solid.Greatest(solid.Places(nil, b.MinX, b.MaxX, step, along), solid.Places(nil, 0, 1, step/max(step, b.MaxY-b.MinY), nil), func(x, t float64) float64 {
		y := b.MinY + t*(b.MaxY-b.MinY)
		y = min(max(y, r.Left(x, b.MaxZ)), r.Right(x, b.MaxZ))
		return b.MaxZ - r.Roof(x, y)
	})
}

// lowRoof is the lowest the roof comes over the middle of the van, looked for once.
func (w *worker) lowRoof() float64 {
	if w.roofSeen {
		return w.roof
	}
	r := w.in.Room
	w.roof, w.roofSeen = math.Inf(1), true
	for _, x := range spread(r.Front(), r.Rear(), 250) {
		for _, y := range spread(0.6*r.Left(x, r.Floor()+600), 0.6*r.Right(x, r.Floor()+600), 300) {
			w.roof = min(w.roof, r.Roof(x, y))
		}
	}
	return w.roof
}

// isBox says whether a prism of four corners fills its bounds.
func isBox(p solid.Prism) bool {
	b := p.Bounds()
	return p.Area() >= 0.999999*(b.MaxX-b.MinX)*(b.MaxY-b.MinY)
}

// give is how far a soft fitting may be pressed.
func (w *worker) give(i int, s *Standing) float64 {
	g := w.in.Fittings[i].Gives
	if g == 0 {
		return 0
	}
	b := s.Box
	return g * min(b.MaxX-b.MinX, b.MaxY-b.MinY, b.MaxZ-b.MinZ)
}

// open says whether an opening through that side stands open where the box is, so that it may reach out.
func (w *worker) open(mode *Mode, side solid.Side, b solid.Bounds) bool {
	through := [6]string{"front", "rear", "left", "right", "floor", "roof"}[side]
	for _, id := range mode.Open {
		for _, o := range w.in.Openings {
			if o.ID == id && o.Through == through && o.meets(b) {
				return true
			}
		}
	}
	return false
}

// meets says whether the box lies behind the opening.
func (o Opening) meets(b solid.Bounds) bool {
	x := b.MinX < o.X[1] && o.X[0] < b.MaxX
	y := b.MinY < o.Y[1] && o.Y[0] < b.MaxY
	z := b.MinZ < o.Z[1] && o.Z[0] < b.MaxZ
	switch o.Through {
	case "left", "right":
		return x && z
	case "front", "rear":
		return y && z
	}
	return x && y
}

func (w *worker) reportOut(i int, side solid.Side, by float64, modeName string) {
	f := w.in.Fittings[i]
	severity, how := finding.Fault, ""
	if by <= w.in.Error {
		severity, how = finding.Close, fmt.Sprintf(" The body was read to ± %g mm, so this may be nothing: measure there again.", w.in.Error)
	}
	out := finding.Finding{
		Code: "fit.sticks-out", Severity: severity, About: []string{pointer("fittings", f.ID)}, Mode: modeName,
		Title:    fmt.Sprintf("%s stands %s into the %s", w.name(i), about(by), sideWords[side]),
		Words:    fmt.Sprintf("It does not fit inside the finished %s: at the worst place it is %s too far out.%s", sideWords[side], about(by), how),
		Measured: mm(by), Limit: mm(0),
		Source: finding.Source{Text: "the finished surfaces of this build", Sure: finding.Computed},
	}
	d := solid.Directions[side^1]
	out.Proposals = w.nudge(i, d[0]*by, d[1]*by, d[2]*by, modeName)
	w.find(out)
}

// outOfHost reports what stands in a host and reaches out of it, at rest.
func (w *worker) outOfHost(i int) {
	f := w.in.Fittings[i]
	j := w.carriers[i]
	if !f.In || j < 0 || len(w.in.Modes) == 0 {
		return
	}
	a, b := w.resting(i), w.resting(j)
	if a == nil || b == nil {
		return
	}
	over := [6]float64{
		b.Box.MinX - a.Box.MinX, a.Box.MaxX - b.Box.MaxX, b.Box.MinY - a.Box.MinY,
		a.Box.MaxY - b.Box.MaxY, b.Box.MinZ - a.Box.MinZ, a.Box.MaxZ - b.Box.MaxZ,
	}
	worst := solid.Front
	for side := range over {
		if over[side] > over[worst] {
			worst = solid.Side(side)
		}
	}
	by := over[worst]
	if by <= touching || by <= w.give(i, a) {
		return
	}
	sides := [6]string{"front", "rear", "left", "right", "bottom", "top"}
	d := solid.Directions[worst^1]
	w.find(finding.Finding{
		Code: "fit.out-of-host", Severity: finding.Fault, About: []string{pointer("fittings", f.ID), pointer("fittings", w.in.Fittings[j].ID)},
		Title:    fmt.Sprintf("%s reaches %s out of the %s of %s", w.name(i), about(by), sides[worst], w.name(j)),
		Words:    "It is said to stand inside, but it does not go in there. Move it, or make what holds it larger.",
		Measured: mm(by), Limit: mm(0),
		Source:    finding.Source{Text: "the places and sizes of this build", Sure: finding.Computed},
		Proposals: w.nudge(i, d[0]*by, d[1]*by, d[2]*by, ""),
	})
}

// resting is where a fitting is in the first mode that leaves it at rest.
func (w *worker) resting(i int) *Standing {
	for m := range w.in.Modes {
		if s := &w.in.Modes[m].Standings[i]; !s.Moved && len(s.Solid) > 0 {
			return s
		}
	}
	return nil
}

// nudge proposes to move a fitting so far, rounded up to whole millimetres. What only happens in one mode is not cured by it
// for certain, so that nothing is proposed.
func (w *worker) nudge(i int, dx, dy, dz float64, modeName string) []finding.Proposal {
	if w.in.Nudge == nil || modeName != "" {
		return nil
	}
	dx, dy, dz = away(dx), away(dy), away(dz)
	patch, ok := w.in.Nudge(w.in.Fittings[i].ID, dx, dy, dz)
	if !ok {
		return nil
	}
	return []finding.Proposal{{Words: fmt.Sprintf("move %s %s", w.name(i), wayWords(dx, dy, dz)), Patch: patch}}
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
		return fmt.Sprintf("%.0f mm rearwards", dx)
	case dx < 0:
		return fmt.Sprintf("%.0f mm forwards", -dx)
	case dy > 0:
		return fmt.Sprintf("%.0f mm to the right", dy)
	case dy < 0:
		return fmt.Sprintf("%.0f mm to the left", -dy)
	case dz > 0:
		return fmt.Sprintf("%.0f mm up", dz)
	}
	return fmt.Sprintf("%.0f mm down", -dz)
}

// about is a length as a builder says it: to 5 mm, below 20 to 1 mm.
func about(v float64) string {
	if v < 20 {
		return fmt.Sprintf("%.0f mm", math.Max(1, math.Round(v)))
	}
	return fmt.Sprintf("%.0f mm", math.Round(v/5)*5)
}
