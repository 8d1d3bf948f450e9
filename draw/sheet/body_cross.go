package sheet

import (
	"math"
	"slices"

	"tumblehome/draw"
	"tumblehome/trade/shell"
)

// bodyCross is the van cut across: skin, what lies between skin and lining, the finished surfaces, arches that are cut.
func (d *drawing) bodyCross() draw.Group {
	s := sketch{view: d.views[Cross]}
	skin, room := d.skinCross(), d.roomCross()
	s.area(draw.NoPen, draw.FillDeep, skin)
	for _, hand := range []float64{-1, 1} {
		outer, inner := d.halves(hand)
		s.marks = append(s.marks, draw.Quilt(s.view.Points(outer...), s.view.Points(inner...), 2.4))
	}
	s.area(draw.PenFine, draw.FillPaper, room)
	for _, a := range d.r.Body.Arches() {
		if d.cut >= a.From && d.cut <= a.To {
			hand := 1.0
			if a.Side == shell.Left {
				hand = -1
			}
			run := []place{{hand * a.Face, d.r.Body.Floor()}, {hand * a.Face, a.Up}, {hand * d.r.Body.Half(d.cut, a.Up), a.Up}, {hand * d.r.Body.Half(d.cut, d.r.Body.Floor()), d.r.Body.Floor()}}
			s.area(draw.PenOutline, draw.FillDeep, run)
			s.hatch(draw.HatchRising, 1.6, run)
		}
	}
	s.line(draw.PenFine, []place{{-d.r.Body.Half(d.cut, d.r.Body.Floor()), d.r.Body.Floor()}, {d.r.Body.Half(d.cut, d.r.Body.Floor()), d.r.Body.Floor()}})
	s.line(draw.PenCut, append(skin, skin[0]))
	top := d.r.Body.Roof(d.cut, 0)
	s.line(draw.PenCentre, []place{{0, d.r.Body.Floor() - 60}, {0, top + 70}})
	return s.group("cross-body", "body", "the body, cut across at x "+whole(d.cut)+", seen forwards", nil)
}

// skinCross is the skin cut across, closed over the floor.
func (d *drawing) skinCross() []place {
	half := thinned(slices.Clone(d.r.Body.Section(d.cut)))
	floor := d.r.Body.Floor() - pan
	out := []place{{-half[0][0], floor}}
	for _, p := range half {
		out = append(out, place{-p[0], p[1]})
	}
	for i := len(half) - 1; i >= 0; i-- {
		out = append(out, half[i])
	}
	return append(out, place{half[0][0], floor})
}

// halves are one side of the skin and of the lining, from the floor to the crown.
func (d *drawing) halves(hand float64) (outer, inner []place) {
	for _, p := range d.r.Body.Section(d.cut) {
		outer = append(outer, place{hand * p[0], p[1]})
	}
	return outer, d.roomHalf(hand)
}

// roomHalf is the finished surface on one side, up from the floor and in to the middle of the roof.
func (d *drawing) roomHalf(hand float64) []place {
	room := d.r.Lining.Room
	wall := func(z float64) float64 {
		if hand < 0 {
			return room.Left(d.cut, z)
		}
		return room.Right(d.cut, z)
	}
	const shoulder = 0.6 // of the height: below it the sides do not curve into the roof
	z := room.Floor() + shoulder*room.Headroom(d.cut, 0)
	var out []place
	for _, p := range follow(room.Floor(), z, 200, wall) {
		out = append(out, place{p[1], p[0]})
	}
	edge := wall(z) - hand*0.5
	return append(out, follow(edge, 0, 200, func(y float64) float64 { return math.Min(room.Roof(d.cut, y), d.r.Body.Roof(d.cut, y)) })...)
}

// roomCross is the finished room cut across.
func (d *drawing) roomCross() []place {
	out := d.roomHalf(-1)
	right := d.roomHalf(1)
	for i := len(right) - 1; i >= 0; i-- {
		out = append(out, right[i])
	}
	return thinned(out)
}
