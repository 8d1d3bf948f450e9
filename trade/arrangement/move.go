package arrangement

import (
	"math"
	"strings"

	"tumblehome/build"
	"tumblehome/catalogue/settings"
	"tumblehome/solve/solid"
)

// move is how a part of a fitting, or all of it, can move; exactly one of the kinds is set.
type move struct {
	kind  moveKind
	axis  int     // of a slide
	sign  float64 // of a slide
	by    float64 // mm or degrees when full
	faces [2]side // of a hinge
	pin   [2]float64
	stow  *rules
}

type moveKind uint8

const (
	slides moveKind = iota + 1
	hinges
	swivels
	stows
	off
)

// body says what of a fitting moves.
type body uint8

const (
	whole     body = iota // all of it
	hollowed              // a lid, door or drawer; the rest stays
	stretched             // it grows in the direction of the slide
)

// bodies of the settings-out that do not move as a whole.
var bodies = map[string]body{
	"slat-bed": stretched, "cushions": stretched, // the ones that lie against the back are laid beside the others
	"carcass": hollowed, "bench": hollowed, "platform": hollowed, "overlocker": hollowed, "locker": hollowed, "box": hollowed,
	"seat-box": hollowed, "wardrobe": hollowed, "cubicle": hollowed, "arch-box": hollowed,
}

// moves are the fitting's own and those its setting-out brings; its own win.
func (w *worker) moves(s *Standing, thing *Thing) map[string]move {
	all := map[string]move{}
	if setting, ok := settings.Get(thing.Make); ok {
		back := w.back(s, thing)
		for _, m := range setting.Moves {
			all[m.ID] = settingMove(m, back, s.own)
		}
	}
	for id, m := range thing.Moves {
		all[id] = moveOf(m)
	}
	for id, m := range all {
		if m.kind == hinges {
			m.faces = orderFaces(m.faces, bodies[thing.Make], w.back(s, thing))
			all[id] = m
		}
	}
	return all
}

// orderFaces puts the face second in which the panel lies that turns: of a hollow thing its front, else its top. A thing that
// turns as a whole lies along its top or bottom.
func orderFaces(f [2]side, body body, back side) [2]side {
	lies := func(s side) int {
		switch {
		case body == hollowed && s == back^1:
			return 2
		case body == hollowed && s == roof, body != hollowed && axisOf(s) == 2:
			return 1
		}
		return 0
	}
	if lies(f[0]) > lies(f[1]) {
		return [2]side{f[1], f[0]}
	}
	return f
}

// back is the face that a fitting has to the side it stands against. Where nothing says so it is the long side away from the middle of the van.
func (w *worker) back(s *Standing, thing *Thing) side {
	if against, said := backOf(thing); said {
		return against
	}
	b := s.Box
	switch middle := (w.in.Room.Front() + w.in.Room.Rear()) / 2; {
	case b.MaxX-b.MinX >= b.MaxY-b.MinY && b.MinY+b.MaxY < 0:
		return left
	case b.MaxX-b.MinX >= b.MaxY-b.MinY:
		return right
	case (b.MinX+b.MaxX)/2 < middle:
		return front
	}
	return rear
}

// backOf is the face that the words of its place put against a side, if they do.
func backOf(thing *Thing) (back side, said bool) {
	r, _ := rulesOf(thing.At)
	for _, axis := range [2]int{1, 0} {
		p := r[axis].A
		if r[axis].Form == build.To && p.Face != "" || r[axis].Form == build.Against || r[axis].Form == build.From {
			if s, ok := sideOf[p.Face]; ok && axisOf(s) == axis {
				if p.Of != "" { // it stands outside another fitting's face: its back is to that fitting
					return s ^ 1, true
				}
				return s, true
			}
		}
	}
	return right, false
}

// settingMove puts real faces for those of a thing with its back to a side.
func settingMove(m settings.Move, back side, b Box) move {
	size := [3]float64{b.MaxX - b.MinX, b.MaxY - b.MinY, b.MaxZ - b.MinZ}
	depth := axisOf(back)
	switch m.Slide {
	case "out":
		sign := 1.0
		if high(back) {
			sign = -1
		}
		return move{kind: slides, axis: depth, sign: sign, by: m.Travel * size[depth]}
	case "up":
		return move{kind: slides, axis: 2, sign: 1, by: m.Travel * size[2]}
	case "down":
		return move{kind: slides, axis: 2, sign: -1, by: m.Travel * size[2]}
	}
	if m.Hinge == "" {
		return move{kind: off, by: 1}
	}
	hinge := move{kind: hinges, by: m.Turn}
	at, along, _ := strings.Cut(m.Hinge, " ")
	hinge.faces = [2]side{realFace(at, back), realFace(along, back)}
	return hinge
}

// realFace of a thing with its back to a side: its front is opposite, its left and right are as seen from its front.
func realFace(word string, back side) side {
	switch word {
	case "back":
		return back
	case "front":
		return back ^ 1
	case "top":
		return roof
	case "bottom":
		return floor
	}
	// Seen from the front, looking towards the back: the left hand is a quarter turn counter-clockwise from the view.
	leftHand := map[side]side{right: front, left: rear, rear: right, front: left}[back]
	if word == "right" {
		return leftHand ^ 1
	}
	return leftHand
}

// change is what a position does to one fitting.
type change struct {
	steps   []motion    // of all of it, and of what it carries
	adds    solid.Solid // parts that reach out while the rest stays
	through solid.Solid // what those pass through on their way
	stow    *rules
	off     bool
}

// change of a move that has gone a share of its way.
func (m move) change(share float64, b Box, body body, board float64) change {
	switch m.kind {
	case slides:
		return m.slide(share, b, body)
	case hinges:
		return m.hinge(share, b, body, board)
	case swivels:
		pin := solid.Point{X: (b.MinX+b.MaxX)/2 + m.pin[0], Y: (b.MinY+b.MaxY)/2 + m.pin[1]}
		return change{steps: []motion{{kind: turns, pin: pin, angle: -share * m.by * math.Pi / 180}}}
	case stows:
		return change{stow: m.stow}
	case off:
		return change{off: true}
	}
	return change{}
}

func (m move) slide(share float64, b Box, body body) change {
	by := m.sign * m.by * share
	if body == whole {
		step := motion{kind: shifts}
		step.shift[m.axis] = by
		return change{steps: []motion{step}}
	}
	// What reaches out fills the way from the face it leaves.
	reach := b
	low, high := [3]*float64{&reach.MinX, &reach.MinY, &reach.MinZ}[m.axis], [3]*float64{&reach.MaxX, &reach.MaxY, &reach.MaxZ}[m.axis]
	if by < 0 {
		*low, *high = *low+by, *low
	} else {
		*low, *high = *high, *high+by
	}
	if reach.Empty() {
		return change{}
	}
	way := solid.Solid{solid.Box(reach)}
	return change{adds: way, through: way}
}
