package fit

import (
	"fmt"
	"slices"
	"strings"

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
	for i := range w.in.Fittings {
		w.insideOf(i)
	}
	w.tellCab()
}

func (w *worker) insideOf(i int) {
	if f := &w.in.Fittings[i]; f.isOutside() || f.For != "" || f.Gives >= 1 {
		return
	}
	restSeen := false
	for m := range w.in.Modes {
		mode := &w.in.Modes[m]
		s := &mode.Standings[i]
		if len(s.Solid) == 0 && !s.cutAway() || !s.Moved && restSeen {
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

// standsOut reports each surface that a fitting stands out of.
func (w *worker) standsOut(i int, s *Standing, modeName string, mode *Mode) {
	cab, out := w.in.Fittings[i].Where == "cab", w.excesses(s)
	both := modeName == "" && !cab && w.outBoth(i, s, out, mode)
	if both {
		w.tooWide(i, s, out[solid.Left], out[solid.Right], mode)
	}
	for to, by := range out {
		side := solid.Side(to)
		if both && (side == solid.Left || side == solid.Right) {
			continue
		}
		if cab {
			by = w.beyondCab(s.Box, side, by)
		}
		if by <= touching || by <= w.give(i, s) || side == solid.Front && !cab && w.intoCab(i, s, by) || s.Moved && w.open(mode, side, s.Box) || w.goesOutWith(i, side, by, mode) {
			continue
		}
		if cab {
			if in := w.outOfRoom(s, side); in > max(touching, w.give(i, s)) {
				by = in
			} else {
				w.reportOutOfCab(i, side, by, modeName)
				continue
			}
		}
		if w.outAsBefore(i, side, by, mode, s) {
			continue
		}
		w.reportOut(i, side, by, modeName, w.takesOut(i, side, mode), mode)
		if s.Moved && mode.Name == "drive" {
			w.openWhileDriving(i, mode)
		}
	}
}

// outBoth says whether a thing stands out of the left side and the right one, of itself and not for a wheel arch.
func (w *worker) outBoth(i int, s *Standing, out [6]float64, mode *Mode) bool {
	for _, side := range [2]solid.Side{solid.Left, solid.Right} {
		by := out[side]
		if _, arch := w.archMet(s.Box, side, by); arch || by <= max(touching, w.give(i, s)) || w.goesOutWith(i, side, by, mode) {
			return false
		}
	}
	return true
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
	if s.Box.MinZ < w.in.Room.Floor()+seatHigh && by > max(cabTold, w.cabBy) && !w.toldOf("fit.cab.seat", i) {
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

func (w *worker) reportOut(i int, side solid.Side, by float64, modeName string, with []string, mode *Mode) {
	f := w.in.Fittings[i]
	severity, how := finding.Fault, ""
	if by <= w.in.Error {
		severity, how = finding.Close, fmt.Sprintf(" The body was read to ± %g mm, so this may be nothing: measure there again.", w.in.Error)
	}
	out := finding.Finding{
		Code: "fit.sticks-out", Severity: severity, About: []string{pointer("fittings", f.ID)}, Mode: modeName,
		Title:    w.outTitle(i, side, by),
		Words:    fmt.Sprintf("It does not fit inside the finished %s: at the worst place it is %s too far out.%s", sideWords[side], about(by), how),
		Measured: mm(by), Limit: mm(0),
		Source: finding.Source{Text: "the finished surfaces of this build", Sure: finding.Computed},
	}
	if len(with) > 0 {
		out.Words += fmt.Sprintf(" What it carries is out with it: %s.", strings.Join(with, ", "))
	}
	if d := solid.Directions[side^1]; w.fitsAt(i, d[0]*by, d[1]*by, d[2]*by) {
		out.Proposals = w.nudge(i, d[0]*by, d[1]*by, d[2]*by, modeName)
	}
	if modeName == "" {
		if len(out.Proposals) == 0 {
			out.Proposals = w.shorter(i, side, by)
		}
		out.Proposals = append(out.Proposals, w.cutTo(i, side)...)
	}
	w.atArch(&out, i, side, by, mode)
	w.find(out)
}

// fitsAt says whether a thing that is moved so far from where it rests stands out of no side.
func (w *worker) fitsAt(i int, dx, dy, dz float64) bool {
	s := w.resting(i)
	if s == nil {
		return false
	}
	there := *s
	there.Box, there.Solid = s.Box.Moved(away(dx), away(dy), away(dz)), s.Solid.Moved(away(dx), away(dy), away(dz))
	for side := solid.Front; side <= solid.Roof; side++ {
		by := w.excess(&there, side)
		if len(s.Scribed) > 0 && !slices.Contains(s.Scribed, side) {
			by = w.boxExcess(there.Box, side) // elsewhere it is not cut as it is here
		}
		cab := side == solid.Front && !w.in.Partition && by <= cabLong
		if by > max(touching, w.give(i, &there)) && !cab {
			return false
		}
	}
	return true
}

// openWhileDriving says of the finding told last that the thing stands out only because it is pulled out or opened while driving.
func (w *worker) openWhileDriving(i int, mode *Mode) {
	back := w.leftThere(mode, i)
	if len(back) == 0 {
		return
	}
	out := &w.result.Findings[len(w.result.Findings)-1]
	out.Words = "It is pulled out or opened while driving. Leave it where it rests then. " + out.Words
	out.Proposals = back
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
