package sheet

import (
	"strconv"
	"strings"

	"tumblehome/draw"
	"tumblehome/draw/label"
	"tumblehome/trade/finding"
	"tumblehome/trade/shell"
)

// spot is the place of a note on the drawing.
type spot struct {
	view string
	at   draw.Point
}

// flags ties the open notes to what they are about, numbered as they stand in the list of notes: those that nobody has accepted, in
// their order, without those of another mode. A note about nothing that has a place has no flag.
func (d *drawing) flags() []draw.Mark {
	columns := map[string][]draw.Flag{}
	number, times := 0, map[string]int{}
	for _, f := range d.r.Findings {
		if f.Accepted != "" || f.Mode != "" && f.Mode != d.Mode {
			continue
		}
		number++
		s, ok := d.spotOf(f.About, times)
		if !ok {
			continue
		}
		side := "left"
		if s.at.X > d.middle(s.view) {
			side = "right"
		}
		id := strconv.Itoa(number)
		columns[s.view+" "+side] = append(columns[s.view+" "+side], draw.Flag{ID: "flag-" + id, Severity: severity(f.Severity), Number: number,
			Place: s.at, Title: id + ". " + f.Title, Href: "#note-" + id})
	}
	var out []draw.Mark
	for _, view := range []string{Plan, Side, Cross} {
		var here []draw.Mark
		for _, side := range []string{"left", "right"} {
			here = append(here, d.column(view, side, columns[view+" "+side])...)
		}
		if len(here) > 0 {
			out = append(out, draw.Group{ID: "flags-" + view, Marks: here, Data: map[string]string{"flags": view}})
		}
	}
	if len(out) == 0 {
		return nil
	}
	return []draw.Mark{draw.Group{ID: "flags", Class: "flags", Marks: out}}
}

// severity of a finding as drawings know it.
func severity(s finding.Severity) draw.Severity {
	return [...]draw.Severity{draw.Note, draw.Close, draw.Fault, draw.Danger}[s]
}

// middle is the x on the paper at which flags go to the other side of a view.
func (d *drawing) middle(view string) float64 {
	v := d.views[view]
	if view == Cross {
		return v.At(0, 0).X
	}
	return v.At((d.space.MinX+d.space.MaxX)/2, 0).X
}

// flagAir is what stays free between two flags [mm of the paper].
const flagAir = 0.8

// lead is the line of a flag.
type lead struct{ from, to draw.Point }

// at is the y of the line at an x; false where it does not come by.
func (l lead) at(x float64) (float64, bool) {
	if (l.from.X-x)*(l.to.X-x) > 0 || l.from.X == l.to.X {
		return 0, false
	}
	return l.from.Y + (l.to.Y-l.from.Y)*(x-l.from.X)/(l.to.X-l.from.X), true
}

// column sets flags one below another beside a view. Of those that have no room the last, which weigh least, are counted.
func (d *drawing) column(view, side string, flags []draw.Flag) []draw.Mark {
	if len(flags) == 0 {
		return nil
	}
	v, s := d.views[view], d.space
	x := v.At(s.MinX, 0).X - besideFlags/2
	if side == "right" {
		x = v.At(s.MaxX, 0).X + besideFlags/2
		switch view {
		case Side:
			x += besideSide
		case Plan: // clear of the name of the rear doors
			x = max(x, v.At(d.r.Body.End(), 0).X+besideDoors+plainSize+draw.FlagSize/2)
		}
	}
	if d.Only != "" { // there is no more room than the paper has
		x = clamp(x, d.field.Min.X+draw.FlagSize/2, d.field.Max.X-draw.FlagSize/2)
	}
	from, to := v.At(0, s.MaxY).Y-aboveViews, v.At(0, s.MinY).Y+2
	if view != Plan {
		from, to = v.At(0, s.MaxZ).Y-4, v.At(0, -wheelShown).Y+4
	}
	var out []draw.Mark
	if room := int((to - from) / (draw.FlagSize + flagAir)); len(flags) > room {
		to -= 3 * lineHigh
		room = max(0, int((to-from)/(draw.FlagSize+flagAir)))
		for i, text := range []string{"and " + strconv.Itoa(len(flags)-room), "more in", "margin"} {
			out = append(out, draw.Lettering{Text: text, At: draw.Pt(x, to+lineHigh*(float64(i)+0.8)), Anchor: draw.Middle, Ink: draw.InkQuiet, Size: plainSize})
		}
		flags = flags[:room]
	}
	labels := make([]label.Label, len(flags))
	for i, f := range flags {
		labels[i] = label.Label{Place: f.Place, Width: draw.FlagSize, Height: draw.FlagSize, FromCentre: true}
	}
	for i, at := range label.Column(labels, x, from, to, flagAir) {
		flags[i].At = at.Box.Centre()
		d.leads[view] = append(d.leads[view], lead{flags[i].Place, flags[i].At})
		out = append(out, flags[i].Group())
	}
	return out
}

// spotOf finds where to point for the first thing of a note that has a place.
func (d *drawing) spotOf(about []string, times map[string]int) (spot, bool) {
	for _, pointer := range about {
		part := strings.Split(strings.TrimPrefix(pointer, "/"), "/")
		if s, ok := d.placeOf(part, times); ok {
			if _, shown := d.views[s.view]; shown {
				return s, true
			}
		}
	}
	return spot{}, false
}

func (d *drawing) placeOf(part []string, times map[string]int) (spot, bool) {
	if len(part) < 2 {
		return spot{}, false
	}
	key := part[0] + "/" + part[1]
	switch part[0] {
	case "fittings":
		i, ok := d.index[part[1]]
		if !ok {
			return spot{}, false
		}
		times[key]++
		return d.fittingSpot(i, times[key]), true
	case "shell":
		if len(part) > 2 && part[1] == "openings" {
			return d.openingSpot(part[2])
		}
	case "lining":
		times[key]++
		return d.liningSpot(part[1], times[key])
	case "vehicle":
		if part[1] == "tyres" && len(part) > 2 {
			x := clamp(d.axle(part[2]), d.space.MinX, d.space.MaxX)
			return d.sideSpot(x, -axleDrop), d.views[Side].Scale > 0
		}
	case "people":
		for i := range d.people {
			if w := &d.people[i]; w.id == part[1] {
				head := w.head()
				return d.planSpot(head[0], head[1]), true
			}
		}
	}
	return spot{}, false
}

func (d *drawing) planSpot(x, y float64) spot { return spot{Plan, d.views[Plan].At(x, y)} }
func (d *drawing) sideSpot(x, z float64) spot { return spot{Side, d.views[Side].At(x, z)} }

// fittingSpot is a place on a fitting near the end that faces the column of its flag and below its name, another one for each further
// note about it.
func (d *drawing) fittingSpot(i, time int) spot {
	b := d.things[i].box
	share := [...]float64{0.12, 0.28, 0.44, 0.6, 0.76}[(time-1)%5]
	if b.MinX+b.MaxX > d.space.MinX+d.space.MaxX {
		share = 1 - share
	}
	x, y, z := b.MinX+(b.MaxX-b.MinX)*share, b.MinY+(b.MaxY-b.MinY)*0.8, b.MinZ+(b.MaxZ-b.MinZ)*0.2
	x, y, z = clamp(x, d.space.MinX, d.space.MaxX), clamp(y, d.space.MinY, d.space.MaxY), clamp(z, d.space.MinZ, d.space.MaxZ)
	if t := &d.things[i]; d.overhead(t) && b.MinY+b.MaxY > 0 {
		return d.sideSpot(x, z)
	}
	return d.planSpot(x, y)
}

func (d *drawing) openingSpot(id string) (spot, bool) {
	o, ok := d.r.Document.Shell.Openings[id]
	if !ok {
		return spot{}, false
	}
	mid := func(from, to float64) float64 { return (from + to) / 2 }
	x, y, z := 0.0, 0.0, 0.0
	if o.X != nil {
		x = mid(o.X.From.Float(), o.X.To.Float())
	}
	if o.Y != nil {
		y = mid(o.Y.From.Float(), o.Y.To.Float())
	}
	if o.Z != nil {
		z = mid(o.Z.From.Float(), o.Z.To.Float())
	}
	switch o.Through {
	case shell.Left:
		return d.planSpot(x, -d.r.Body.Half(x, d.level)), true
	case shell.Right:
		return d.planSpot(x, d.r.Body.Half(x, d.level)), true
	case shell.Roof:
		return d.sideSpot(x, d.r.Body.Roof(x, 0)), true
	case shell.Floor:
		return d.planSpot(x, y), true
	case shell.Front:
		return d.sideSpot(d.r.Body.Start(), z), true
	}
	return d.sideSpot(d.r.Body.End(), z), true
}

// liningSpot is a place on a lined surface.
func (d *drawing) liningSpot(surface string, time int) (spot, bool) {
	room := d.r.Lining.Room
	share := [...]float64{0.4, 0.6, 0.25, 0.75, 0.5}[(time-1)%5]
	x := room.Front() + (room.Rear()-room.Front())*share
	switch surface {
	case "floor":
		return d.sideSpot(x, room.Floor()/2), true
	case "sides", "left":
		return d.planSpot(x, (room.Left(x, d.level)-d.r.Body.Half(x, d.level))/2), true
	case "right":
		return d.planSpot(x, (room.Right(x, d.level)+d.r.Body.Half(x, d.level))/2), true
	case "roof":
		return d.sideSpot(x, (room.Roof(x, 0)+d.r.Body.Roof(x, 0))/2), true
	case "doors":
		return d.sideSpot((room.Rear()+d.r.Body.End())/2, room.Floor()+700), true
	case "front":
		return d.sideSpot((room.Front()+d.r.Body.Start())/2, room.Floor()+700), true
	}
	return spot{}, false
}
