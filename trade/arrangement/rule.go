package arrangement

import (
	"math"

	"tumblehome/build"
)

// rules of the three axes.
type rules [3]build.AxisRule

// rulesOf a place; a place that is not given or not decided has none.
func rulesOf(p *build.Place) (r rules, undecided bool) {
	if p == nil {
		return r, false
	}
	return rules{p.X, p.Y, p.Z}, p.Undecided
}

// others are the fittings whose faces the rules name.
func (r rules) others(yield func(id string)) {
	for _, one := range r {
		for _, p := range one.Points() {
			if p.Of != "" {
				yield(p.Of)
			}
		}
	}
}

// sideOf is the surface that a face word means on its axis.
var sideOf = map[string]side{
	"front": front, "rear": rear, "left": left, "right": right, "floor": floor, "roof": roof, "bottom": floor, "top": roof,
}

var axisNumber = map[string]int{"x": 0, "y": 1, "z": 2}

// moveOf reads a move of the document.
func moveOf(m build.Move) move {
	by := build.Amount{}
	if m.By != nil {
		by = *m.By
	}
	switch {
	case m.Slide.Axis != "":
		sign := 1.0
		if m.Slide.Back {
			sign = -1
		}
		return move{kind: slides, axis: axisNumber[m.Slide.Axis], sign: sign, by: by.Length.Float()}
	case m.Hinge.A != "":
		return move{kind: hinges, faces: [2]side{sideOf[m.Hinge.A], sideOf[m.Hinge.B]}, by: by.Angle.Float()}
	case m.Swivel != nil:
		return move{kind: swivels, pin: [2]float64{m.Swivel.X.Float(), m.Swivel.Y.Float()}, by: by.Angle.Float()}
	case m.Stow != nil:
		r, _ := rulesOf(m.Stow)
		return move{kind: stows, stow: &r, by: 1}
	case m.Off != nil && bool(*m.Off):
		return move{kind: off, by: 1}
	}
	return move{}
}

// shareOf is how much of its way a move has gone: an amount may go further than full.
func shareOf(a build.Amount, full float64) float64 {
	amount := full
	switch a.Form {
	case build.Slid:
		amount = a.Length.Float()
	case build.Swung:
		amount = a.Angle.Float()
	}
	if full == 0 || math.IsNaN(amount/full) {
		return 0
	}
	return amount / full
}
