package sheet

import (
	"math"
	"strings"

	"tumblehome/draw"
	"tumblehome/trade/shell"
)

// openingsPlan marks the openings from above: doors and windows as strokes on the skin, holes in roof and floor as crossed boxes.
func (d *drawing) openingsPlan() []draw.Mark { return d.openings(Plan, d.openingPlan) }

// Openings on the skin: how thick a stroke is and how far outside it lies [mm of the paper].
const stroke = 1.1

func (d *drawing) openingPlan(s *sketch, surface string, o shell.Opening) {
	x0, x1, okX := extentOf(o.X)
	y0, y1, okY := extentOf(o.Y)
	thick := stroke * s.view.Scale
	switch {
	case surface == shell.Left && okX || surface == shell.Right && okX:
		hand := 1.0
		if surface == shell.Left {
			hand = -1
		}
		var out, in []place
		for _, p := range follow(x0, x1, 300, func(x float64) float64 { return hand * d.r.Body.Half(x, d.level) }) {
			out, in = append(out, place{p[0], p[1] + hand*thick*0.7}), append(in, place{p[0], p[1] - hand*thick*0.3})
		}
		for i := len(in) - 1; i >= 0; i-- {
			out = append(out, in[i])
		}
		s.area(draw.NoPen, d.strokeFill(o), out)
	case (surface == shell.Rear || surface == shell.Front) && okY:
		x, out := d.r.Body.End(), 1.0
		if surface == shell.Front {
			x, out = d.r.Body.Start(), -1
		}
		a, b := x-out*thick*0.3, x+out*thick*0.7
		s.area(draw.NoPen, d.strokeFill(o), []place{{a, y0}, {b, y0}, {b, y1}, {a, y1}})
	case surface == shell.Roof && okX && okY:
		s.area(draw.PenGhost, draw.NoFill, []place{{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}})
	case surface == shell.Floor && okX && okY:
		run := []place{{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}}
		s.area(draw.PenHidden, draw.NoFill, run)
		s.line(draw.PenHidden, []place{{x0, y0}, {x1, y1}}, []place{{x0, y1}, {x1, y0}})
	}
}

// strokeFill is water for what is glazed or a window, leaf for what one can leave by, plain for the rest.
func (d *drawing) strokeFill(o shell.Opening) draw.Fill {
	switch {
	case o.In != "" || o.Door == "" && o.Glazed > 0:
		return draw.FillWater
	case o.Door != "":
		return draw.FillGood
	}
	return draw.FillQuiet
}

// openingsSide marks the openings in the long section: those of the right side seen from inside, those of the left as ghosts, those
// of roof, floor, front and rear where they are cut.
func (d *drawing) openingsSide() []draw.Mark { return d.openings(Side, d.openingSide) }

// openings are a group each, in one view.
func (d *drawing) openings(in string, mark func(*sketch, string, shell.Opening)) []draw.Mark {
	var out []draw.Mark
	for _, surface := range []string{shell.Left, shell.Right, shell.Front, shell.Rear, shell.Roof, shell.Floor} {
		for _, o := range d.r.Body.Openings(surface) {
			s := sketch{view: d.views[in]}
			mark(&s, surface, o)
			if len(s.marks) > 0 {
				out = append(out, s.group(in+"-opening-"+o.ID, "opening", d.openingName(o.ID), map[string]string{"opening": o.ID}))
			}
		}
	}
	return out
}

func (d *drawing) openingSide(s *sketch, surface string, o shell.Opening) {
	x0, x1, okX := extentOf(o.X)
	z0, z1, okZ := extentOf(o.Z)
	thick := stroke * s.view.Scale
	switch {
	case surface == shell.Left && okX && okZ:
		s.area(draw.PenGhost, draw.NoFill, []place{{x0, z0}, {x1, z0}, {x1, z1}, {x0, z1}})
	case surface == shell.Right && okX && okZ:
		fill := draw.NoFill
		if o.Glazed > 0 || o.In != "" {
			fill = draw.FillWash
		}
		s.area(draw.PenFine, fill, []place{{x0, z0}, {x1, z0}, {x1, z1}, {x0, z1}})
	case surface == shell.Rear && okZ:
		x := d.r.Body.End()
		s.area(draw.NoPen, d.strokeFill(o), []place{{x - thick*0.3, z0}, {x + thick*0.7, z0}, {x + thick*0.7, z1}, {x - thick*0.3, z1}})
	case surface == shell.Front && okZ:
		x := d.r.Body.Start()
		s.area(draw.NoPen, d.strokeFill(o), []place{{x - thick*0.7, z0}, {x + thick*0.3, z0}, {x + thick*0.3, z1}, {x - thick*0.7, z1}})
	case surface == shell.Roof && okX:
		a, b := d.r.Body.Roof(x0, 0), d.r.Body.Roof(x1, 0)
		s.area(draw.NoPen, draw.FillWater, []place{{x0, a - thick*0.5}, {x1, b - thick*0.5}, {x1, b + thick*0.5}, {x0, a + thick*0.5}})
	}
}

// openingName is what an opening is called; doors that nobody wrote down yet are named for where they are.
func (d *drawing) openingName(id string) string {
	o, written := d.r.Document.Shell.Openings[id]
	switch {
	case o.Title != "":
		return o.Title
	case !written && d.r.Body.Assumed:
		for _, known := range d.r.Body.Openings(shell.Rear) {
			if known.ID == id {
				return "rear doors"
			}
		}
		return "side door"
	}
	return strings.ReplaceAll(id, "-", " ")
}

// doorNames letter the doors of the sides along the skin, inside, where there is room.
func (d *drawing) doorNames(taken *[]draw.Rect) []draw.Mark {
	v := d.views[Plan]
	var out []draw.Mark
	for _, surface := range []string{shell.Left, shell.Right, shell.Rear} {
		for _, o := range d.r.Body.Openings(surface) {
			if o.Door == "" {
				continue
			}
			l := draw.Lettering{Text: d.openingName(o.ID), Anchor: draw.Middle, Level: draw.Midline, Ink: draw.InkGood}
			if surface == shell.Rear {
				l.At, l.Turn = v.At(d.r.Body.End(), 0), -90
				l.At.X += besideDoors
				if d.Only != "" { // there stand the flags
					l.At.X, l.Ground = v.At(d.r.Lining.Room.Rear(), 0).X-besideDoors, draw.FillSheet
				}
			} else if from, to, ok := extentOf(o.X); ok {
				wall := d.r.Lining.Room.Left
				if surface == shell.Right {
					wall = d.r.Lining.Room.Right
				}
				l.At = v.At((from+to)/2, wall((from+to)/2, d.level))
				l.At.Y += math.Copysign(4, wall((from+to)/2, d.level)) // inwards: the right side is up the paper
			}
			*taken = append(*taken, l.Bounds())
			out = append(out, l)
		}
	}
	return out
}

// besideDoors is how far behind the body the name of the rear doors stands [mm of the paper].
const besideDoors = 4.0
