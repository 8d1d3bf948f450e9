package sheet

import (
	"tumblehome/draw"
	"tumblehome/trade/shell"
)

// bodyPlan is the van cut level: skin, lining, ribs, arches, openings.
func (d *drawing) bodyPlan() draw.Group {
	s := sketch{view: d.views[Plan]}
	skin := d.skinPlan()
	room := d.roomPlan()
	s.area(draw.NoPen, draw.FillDeep, skin)
	s.area(draw.PenFine, draw.FillPaper, room)
	for _, side := range []string{shell.Left, shell.Right} {
		for _, rib := range d.r.Body.Ribs(side) {
			d.ribPlan(&s, side, rib)
		}
	}
	for _, a := range d.r.Body.Arches() {
		d.archPlan(&s, a, true)
	}
	s.line(draw.PenCut, append(skin, skin[0]))
	s.line(draw.PenCentre, []place{{d.r.Body.Start() - 60, 0}, {d.r.Body.End() + 60, 0}})
	return s.group("plan-body", "body", "the body, cut level "+whole(d.aboveFloor())+" above the floor", nil)
}

// skinPlan is the skin cut level, closed: along the left side rearwards and back along the right.
func (d *drawing) skinPlan() []place {
	half := d.r.Body.Plan(d.level)
	out := make([]place, 0, 2*len(half))
	for _, p := range half {
		out = append(out, place{p[0], -p[1]})
	}
	for i := len(half) - 1; i >= 0; i-- {
		out = append(out, place{half[i][0], half[i][1]})
	}
	return thinned(out)
}

// roomPlan is the finished surface at the same height.
func (d *drawing) roomPlan() []place {
	room := d.r.Lining.Room
	out := follow(room.Front(), room.Rear(), 150, func(x float64) float64 { return room.Left(x, d.level) })
	return append(out, follow(room.Rear(), room.Front(), 150, func(x float64) float64 { return room.Right(x, d.level) })...)
}

// ribPlan is a rib cut through: a small box on the skin.
func (d *drawing) ribPlan(s *sketch, side string, rib shell.Rib) {
	hand := -1.0
	if side == shell.Right {
		hand = 1
	}
	x, face := rib.X.Float(), rib.Flange.Float()
	if face == 0 {
		face = usualFlange
	}
	y := d.r.Body.Half(x, d.level)
	s.box(draw.PenRib, draw.FillPaper, place{x - face/2, hand * (y - rib.Depth.Float())}, place{x + face/2, hand * y})
}

// usualFlange is the width of a rib's face where it is not known [mm]: common practice, no source.
const usualFlange = 50

// archPlan is a wheel arch from above: hatched, or only its hidden outline over what stands on it.
func (d *drawing) archPlan(s *sketch, a shell.Box, cut bool) {
	hand := -1.0
	if a.Side == shell.Right {
		hand = 1
	}
	run := []place{{a.From, hand * d.r.Body.Half(a.From, d.level)}, {a.From, hand * a.Face}, {a.To, hand * a.Face}, {a.To, hand * d.r.Body.Half(a.To, d.level)}}
	if cut {
		s.area(draw.PenFine, draw.FillDeep, run)
		s.hatch(draw.HatchRising, 1.6, run)
		return
	}
	s.line(draw.PenHidden, run)
}
