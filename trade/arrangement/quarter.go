package arrangement

import (
	"math"

	"tumblehome/build"
	"tumblehome/quantity"
)

// Quarter is the space in which something carried stands, before what carries it is turned by a quarter clockwise, seen from above.
type Quarter struct {
	Wide  float64           // how wide that space is across the van [mm]
	Front float64           // x of its forward face [mm]
	Mid   float64           // y of its middle [mm]
	Turns func(string) bool // whether a fitting is turned along
}

// turnedTo is where a face looks after the quarter.
var turnedTo = map[string]string{"front": "right", "right": "rear", "rear": "left", "left": "front"}

// FaceTurned is where a face looks after so many quarters clockwise; a face that looks up or down stays.
func FaceTurned(face string, quarters int) string {
	for range quarters {
		if to, ok := turnedTo[face]; ok {
			face = to
		}
	}
	return face
}

// Carried is a thing in that space after the quarter, as it was to what carries it and in the builder's own words. What is made or found changes
// its length for its width; what is bought is turned. box is where it stands before.
func (q Quarter) Carried(t Thing, box Box) build.Fitting {
	f := OwnMovesTurned(t.Fitting, 1)
	place := build.Place{}
	if t.At != nil {
		place = *t.At
	}
	x, y := q.free(place.X, box.MinX-q.Front, box.MaxX-q.Front), q.free(place.Y, box.MinY-q.Mid, box.MaxY-q.Mid)
	place.X, place.Y = q.across(y), along(x)
	f.At = &place
	if t.Buy == "" {
		f.Size = swapped(t)
	} else {
		turn := quantity.Angle(math.Mod(turnOf(f)+90, 360))
		f.Turn = &turn
		if turn == 0 {
			f.Turn = nil
		}
	}
	f.Scribe = nil
	for _, face := range t.Scribe {
		f.Scribe = append(f.Scribe, FaceTurned(face, 1))
	}
	return f
}

func turnOf(f build.Fitting) float64 {
	if f.Turn == nil {
		return 0
	}
	return f.Turn.Float()
}

// free is a rule that names no fitting which stays behind: lengths from the frame stand for such a one.
func (q Quarter) free(r build.AxisRule, low, high float64) build.AxisRule {
	stays := false
	for _, p := range r.Points() {
		stays = stays || p.Of != "" && !q.Turns(p.Of)
	}
	at := func(v float64) build.Point { return build.Point{Plus: quantity.Length(math.Round(v))} }
	switch {
	case stays && r.Form == build.Between:
		return build.AxisRule{Form: build.Between, A: at(low), B: at(high)}
	case stays:
		return build.AxisRule{Form: build.LowAt, A: at(low)}
	}
	return r
}

// across is a rule across the van as one along it: left comes to the front. Lengths, which counted from the middle, count from there.
func (q Quarter) across(r build.AxisRule) build.AxisRule {
	turned := func(p build.Point) build.Point {
		if p.Face == "" {
			p.Plus = dragged(p.Plus, q.Wide/2)
		}
		p.Face = FaceTurned(p.Face, 1)
		return p
	}
	if r.Form != build.LeftOut {
		r.A = turned(r.A)
	}
	if r.Form == build.Between {
		r.B = turned(r.B)
	}
	return r
}

// along is a rule along the van as one across it: the front comes to the right, and lengths count from there, to the left.
func along(r build.AxisRule) build.AxisRule {
	turned := func(p build.Point) build.Point {
		if p.Face == "" {
			p.Face = "front"
		}
		return build.Point{Of: p.Of, Face: FaceTurned(p.Face, 1), Plus: 0 - p.Plus}
	}
	switch r.Form {
	case build.LeftOut:
		return r
	case build.LowAt:
		r.Form = build.Against
	case build.From:
		r.Form = build.To
	case build.To:
		r.Form = build.From
	case build.Between:
		return build.AxisRule{Form: build.Between, A: turned(r.B), B: turned(r.A)}
	}
	r.A = turned(r.A)
	return r
}

// swapped is the size of a thing with its length for its width; an axis on which both faces are given has none.
func swapped(t Thing) *build.Size {
	out := build.Size{}
	if t.Fitting.Size != nil {
		out.Z = t.Fitting.Size.Z
	}
	r, _ := rulesOf(t.At)
	own := func(axis int) *quantity.Length {
		if r[axis].Form == build.Between || t.Size[axis] == 0 {
			return nil
		}
		v := quantity.Length(t.Size[axis])
		return &v
	}
	out.X, out.Y = own(1), own(0)
	return &out
}

// OwnMovesTurned is a fitting whose own moves go on from the same faces of it after so many quarters clockwise.
func OwnMovesTurned(f build.Fitting, quarters int) build.Fitting {
	if len(f.Moves) == 0 {
		return f
	}
	moves := make(map[string]build.Move, len(f.Moves))
	for id, m := range f.Moves {
		m.Hinge = build.Edge{A: FaceTurned(m.Hinge.A, quarters), B: FaceTurned(m.Hinge.B, quarters)}
		for range quarters {
			switch m.Slide.Axis {
			case "x": // rearwards becomes to the left
				m.Slide = build.Direction{Axis: "y", Back: !m.Slide.Back}
			case "y":
				m.Slide.Axis = "x"
			}
			if m.Swivel != nil {
				m.Swivel = &build.Pivot{X: m.Swivel.Y, Y: 0 - m.Swivel.X}
			}
		}
		moves[id] = m
	}
	f.Moves = moves
	return f
}
