package draw

import "strconv"

// Severity is how bad a margin note is. Each has its own shape, so that colour is never the
// only sign.
type Severity string

// The severities.
const (
	Danger Severity = "danger" // octagon
	Fault  Severity = "fault"  // triangle
	Close  Severity = "close"  // diamond
	Note   Severity = "note"   // circle
)

// FlagSize is the width and height that a flag needs, in millimetres.
const FlagSize = 8.4

// fill is the colour of the severity.
func (s Severity) fill() Fill {
	switch s {
	case Danger:
		return FillDanger
	case Fault:
		return FillLead
	case Close:
		return FillClose
	}
	return FillNote
}

// Outline is the severity's shape about a centre; size is the side of the square it fits in.
func (s Severity) Outline(centre Point, size float64) Path {
	r := size / 2
	around := func(angles ...float64) Path {
		points := make([]Point, len(angles))
		for i, a := range angles {
			points[i] = Pt(centre.X, centre.Y-r).Turn(centre, a)
		}
		return Polygon(points...)
	}
	switch s {
	case Danger:
		return around(22.5, 67.5, 112.5, 157.5, 202.5, 247.5, 292.5, 337.5)
	case Fault: // its middle of mass a little below the centre, so that the figure has room
		return Polygon(Pt(centre.X, centre.Y-r), Pt(centre.X+r*1.1, centre.Y+r*0.86), Pt(centre.X-r*1.1, centre.Y+r*0.86))
	case Close:
		return around(0, 90, 180, 270)
	}
	return Circle(centre, r*0.86)
}

// Flag ties a margin note to a place on the drawing: a numbered mark beside the drawing and a
// thin line that ends in a dot on the place.
type Flag struct {
	ID       string
	Severity Severity
	Number   int
	Place    Point   // what the note is about
	At       Point   // the centre of the mark
	Via      []Point // corners of the line, from the mark to the place
	Title    string  // the note's heading
	Href     string  // to the note
}

// Bounds is the room of the mark.
func (f Flag) Bounds() Rect {
	return Rect{f.At, f.At}.Inset(-FlagSize / 2)
}

// Group draws the flag.
func (f Flag) Group() Group {
	line := append(append([]Point{f.At}, f.Via...), f.Place)
	figure := Lettering{Text: strconv.Itoa(f.Number), At: f.At, Anchor: Middle, Level: Midline, Strong: true, Ink: InkFlag}
	if f.Severity == Fault {
		figure.At.Y += FlagSize * 0.12
	}
	return Group{ID: f.ID, Class: "flag " + string(f.Severity), Title: f.Title, Href: f.Href, Marks: []Mark{
		Stroke(PenLeader, Polyline(line...)),
		Shape{Path: Circle(f.Place, 0.6), Fill: FillInk},
		Shape{Path: f.Severity.Outline(f.At, FlagSize), Fill: f.Severity.fill()},
		figure,
	}}
}
