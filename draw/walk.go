package draw

// Brush is what a painter can do. Everything else is made of these strokes, so that a scene
// cannot look different in two outputs by accident.
type Brush interface {
	Open(Group)
	Shut(Group)
	Shape(Shape)
	Letter(Lettering) // its Ground has been laid already
}

// Paint gives the marks to a brush in the order in which they lie on the paper.
func Paint(marks []Mark, b Brush) {
	for _, m := range marks {
		switch m := m.(type) {
		case Group:
			b.Open(m)
			Paint(m.Marks, b)
			b.Shut(m)
		case Shape:
			if !m.Path.Empty() {
				b.Shape(m)
			}
		case Lettering:
			if m.Ground != NoFill {
				b.Shape(Shape{Path: Polygon(m.Outline()...), Fill: m.Ground})
			}
			b.Letter(m)
		}
	}
}

// Follower follows a path in straight lines and cubic curves, which every output knows.
type Follower interface {
	MoveTo(Point)
	LineTo(Point)
	CurveTo(c1, c2, to Point)
	Close()
}

// Follow leads a follower along the path; arcs become curves (radius within 0.03 %).
func (p Path) Follow(f Follower) {
	var at Point
	for _, s := range p.steps {
		switch s.kind {
		case moveTo:
			f.MoveTo(s.to)
		case lineTo:
			f.LineTo(s.to)
		case arcTo:
			for _, b := range s.bends(at) {
				f.CurveTo(b.c1, b.c2, b.to)
			}
		case curveTo:
			f.CurveTo(s.c1, s.c2, s.to)
		case closeUp:
			f.Close()
		}
		at = s.to
	}
}
