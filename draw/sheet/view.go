package sheet

import (
	"strconv"

	"tumblehome/build"
	"tumblehome/draw"
	"tumblehome/reckon"
	"tumblehome/solve/solid"
	"tumblehome/trade/arrangement"
)

// Today is the mode that shows the van as it stands: only what is fitted, where it is while driving.
const Today = "today"

// Names of the views.
const (
	Plan  = "plan"  // seen from above, the front to the left
	Side  = "side"  // cut along the middle, looking to the right
	Cross = "cross" // cut across, looking forward
)

// View says what is to be seen and on which sheet.
type View struct {
	Mode     string    // drive, day, night, the builder's own, or today; empty is drive
	Size     draw.Size // of a sheet with heading and title block; zero is the drawing inside a page
	Only     string    // plan, side or cross alone, for a phone; empty is all three
	Cut      float64   // x at which the cross-section is cut [mm]; 0 chooses where most is to be seen
	Revision string    // for the title block, such as "214, 25 November"
	Show     Overlay   // laid over the things; empty is nothing
}

// Page is the size of the drawing inside a page, Phone the width of a single view on a phone [mm].
var (
	Page  = draw.Size{Width: 310, Height: 248}
	Phone = 120.0
)

// drawing is the work on one sheet.
type drawing struct {
	View
	r      *reckon.Reckoning
	things []thing
	index  map[string]int
	people []person
	space  solid.Bounds // all that must find room, in whatever mode
	cut    float64      // x of the cross-section
	level  float64      // z at which the plan is cut
	scale  float64
	views  map[string]draw.View
	field  draw.Rect
	size   draw.Size
	key    []entry
	leads  map[string][]lead // the lines of flags, by view
}

func newDrawing(r *reckon.Reckoning, v View) *drawing {
	d := &drawing{View: v, r: r, views: map[string]draw.View{}, leads: map[string][]lead{}}
	d.level = r.Lining.Room.Floor() + d.aboveFloor()
	d.gather()
	d.pose()
	d.space = d.extent()
	d.cut = v.Cut
	if d.cut == 0 {
		d.cut = d.busiest()
	}
	return d
}

// elbow is the height above the floor at which the plan is cut and the width between the sides is told: about the elbow of
// somebody standing (63 % of stature, from memory). In a van too low to stand in it is kneeling, for the same reason.
const (
	elbow    = 1000
	kneeling = 500
	standing = 1400 // least headroom for the first
)

// aboveFloor is the height at which the plan is cut.
func (d *drawing) aboveFloor() float64 {
	room := d.r.Lining.Room
	if room.Headroom((room.Front()+room.Rear())/2, 0) < standing {
		return kneeling
	}
	return elbow
}

// wide says at which height the width is told.
func (d *drawing) wide() string {
	if d.aboveFloor() == elbow {
		return " wide at elbow height"
	}
	return " wide, " + whole(d.aboveFloor()) + " above the floor"
}

// standings are where everything is in the mode.
func (d *drawing) standings() *arrangement.Mode {
	if m := d.r.Places.Mode(d.Mode); m != nil && d.Mode != Today {
		return m
	}
	return d.r.Places.Mode("drive")
}

// extent is the box about the body and all that is placed, in this mode and the usual ones, so that going from day to night does not
// change the scale.
func (d *drawing) extent() solid.Bounds {
	body := d.r.Body
	b := solid.Bounds{MinX: body.Start(), MaxX: body.End(), MinZ: body.Floor() - pan, MaxZ: body.Roof((body.Start()+body.End())/2, 0)}
	for _, x := range []float64{body.Start(), (body.Start() + body.End()) / 2, body.End()} {
		b.MaxY = max(b.MaxY, body.Half(x, d.level), body.Half(x, body.Floor()+kneeling))
		b.MaxZ = max(b.MaxZ, body.Roof(x, 0))
	}
	b.MinY = -b.MaxY
	whole := b
	for _, name := range []string{"drive", "day", "night", d.mode()} {
		mode := d.r.Places.Mode(name)
		if mode == nil {
			continue
		}
		all := mode.All
		for j := range all {
			if all[j].Placed() {
				whole = whole.Join(all[j].Box)
			}
		}
	}
	const out = 1200 // further out than this it leaves the sheet
	return solid.Bounds{
		MinX: max(whole.MinX, b.MinX-out), MaxX: min(whole.MaxX, b.MaxX+out), MinY: max(whole.MinY, b.MinY-out), MaxY: min(whole.MaxY, b.MaxY+out),
		MinZ: max(whole.MinZ, b.MinZ-out), MaxZ: min(whole.MaxZ, b.MaxZ+out),
	}
}

// pan is how far the underside of the load floor lies below its crests [mm]: typical, from memory.
const pan = 30

// fitted says whether a fitting is in the van today.
func (d *drawing) fitted(f build.Fitting) bool {
	return f.Fitted != nil && (d.r.Today.IsZero() || !d.r.Today.Before(*f.Fitted))
}

// title is what the mode is called.
func (d *drawing) title() string {
	if d.Mode == Today {
		return "as it stands today"
	}
	name := d.mode()
	if t := d.r.Document.Modes[name].Title; t != "" {
		return t
	}
	return name
}

func (d *drawing) mode() string {
	if m := d.standings(); m != nil && d.Mode != Today {
		return m.Name
	}
	return d.Mode
}

// group opens the group of a view, with the figures that a page needs to go from the van to the sheet.
func (d *drawing) group(name, title string, marks ...draw.Mark) draw.Group {
	v := d.views[name]
	return draw.Group{ID: "view-" + name, Class: "view", Title: title, Marks: marks, Data: map[string]string{
		"view": name, "scale": short(1 / v.Scale), "origin-x": short(v.Origin.X), "origin-y": short(v.Origin.Y), "along": "up",
	}}
}

func short(v float64) string { return strconv.FormatFloat(v, 'g', 8, 64) }
