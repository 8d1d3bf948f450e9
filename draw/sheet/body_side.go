package sheet

import (
	"regexp"
	"strconv"

	"tumblehome/draw"
	"tumblehome/trade/shell"
)

// bodySide is the van cut along the middle: roof, floor, bows, the wheel arch behind.
func (d *drawing) bodySide() draw.Group {
	s := sketch{view: d.views[Side]}
	body, room := d.r.Body, d.r.Lining.Room
	skin := append([]place{{body.Start(), body.Floor() - pan}}, follow(body.Start(), body.End(), 200, func(x float64) float64 { return body.Roof(x, 0) })...)
	skin = append(skin, place{body.End(), body.Floor() - pan})
	s.area(draw.NoPen, draw.FillDeep, skin)
	inside := append([]place{{room.Front(), room.Floor()}}, follow(room.Front(), room.Rear(), 200, func(x float64) float64 { return room.Roof(x, 0) })...)
	s.area(draw.PenFine, draw.FillPaper, append(inside, place{room.Rear(), room.Floor()}))
	for _, bow := range body.Ribs(shell.Roof) {
		x, z, face := bow.X.Float(), body.Roof(bow.X.Float(), 0), bow.Flange.Float()
		if face == 0 {
			face = usualFlange
		}
		s.box(draw.PenRib, draw.FillPaper, place{x - face/2, z - bow.Depth.Float()}, place{x + face/2, z})
	}
	for _, rib := range body.Ribs(shell.Right) {
		x := rib.X.Float()
		s.line(draw.PenHairline, []place{{x, room.Floor()}, {x, room.Roof(x, 0)}})
	}
	for _, a := range body.Arches() {
		if a.Side == shell.Right {
			run := []place{{a.From, room.Floor()}, {a.From, a.Up}, {a.To, a.Up}, {a.To, room.Floor()}}
			s.area(draw.PenFine, draw.FillDeep, run)
			s.hatch(draw.HatchRising, 1.6, run)
		}
	}
	s.line(draw.PenFine, []place{{body.Start(), body.Floor()}, {body.End(), body.Floor()}})
	s.line(draw.PenCut, append(skin, skin[0]))
	d.wheel(&s, "rear", d.axle("rear"))
	if front := d.axle("front"); front > d.space.MinX {
		d.wheel(&s, "front", front)
	}
	return s.group("side-body", "body", "the body, cut along the middle, seen towards the right side", nil)
}

// axle is the x of an axle.
func (d *drawing) axle(which string) float64 {
	v := d.r.Document.Vehicle
	if which == "front" {
		return -v.Datum.Float()
	}
	return v.Wheelbase.Float() - v.Datum.Float()
}

// wheelShown is how far below the floor the long section goes [mm]: to the middle of the wheels.
const wheelShown = 240

// axleDrop is how far an axle lies below the load floor [mm]: typical of vans, from memory.
const axleDrop = 200

// wheel is the upper half of a wheel, hidden, with the middle of its axle.
func (d *drawing) wheel(s *sketch, which string, x float64) {
	radius := d.radius(which)
	at := s.view.At(x, -axleDrop)
	s.put(draw.PenHidden, draw.NoFill, draw.ArcOf(at, s.view.Length(radius), 180, 360))
	s.take([]place{{x, radius}})
	s.line(draw.PenCentre, []place{{x - radius - 40, -axleDrop}, {x + radius + 40, -axleDrop}}, []place{{x, -axleDrop - 40}, {x, -axleDrop + 90}})
}

// usualRadius is that of a van's wheel where its tyre is not known [mm]: typical, from memory.
const usualRadius = 340

var tyreText = regexp.MustCompile(`^(\d{3})/(\d{2,3}) ?R ?(\d{2})`)

// radius of a wheel from its tyre's size: half the rim, in inches, and the height of the tyre's side.
func (d *drawing) radius(which string) float64 {
	m := tyreText.FindStringSubmatch(d.r.Document.Vehicle.Tyres[which].Size)
	if m == nil {
		return usualRadius
	}
	width, _ := strconv.ParseFloat(m[1], 64)
	share, _ := strconv.ParseFloat(m[2], 64)
	rim, _ := strconv.ParseFloat(m[3], 64)
	return rim*25.4/2 + width*share/100
}

// extentOf are the ends of a span, if it is given.
func extentOf(s *shell.Span) (from, to float64, ok bool) {
	if s == nil {
		return 0, 0, false
	}
	return s.From.Float(), s.To.Float(), true
}
