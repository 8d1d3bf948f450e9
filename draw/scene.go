package draw

// Size is the size of a sheet in millimetres.
type Size struct{ Width, Height float64 }

// The sheets that a home printer or a copy shop has, lying on their side.
var (
	A3 = Size{420, 297}
	A4 = Size{297, 210}
)

// Rect is the whole sheet.
func (s Size) Rect() Rect { return Box(0, 0, s.Width, s.Height) }

// Scene is one drawing, in millimetres on paper, from which every output is painted. It is a
// value: build it, then only read it.
type Scene struct {
	Size        Size
	Title       string // said by a screen reader
	Description string // the drawing in words: its text equivalent
	Marks       []Mark // painted in this order
}

// Mark is a piece of a drawing: a Shape, a Lettering or a Group of marks.
type Mark interface{ mark() }

// Shape is a path with a pen, a fill, or both.
type Shape struct {
	Path Path
	Pen  Pen
	Fill Fill
}

// Group is a part of the drawing that means something: a fitting, a flag, a view. It is what
// a page selects, drags, replaces and describes.
type Group struct {
	ID     string            // unique within a page, e.g. "plan-galley"
	Class  string            // blank-separated, e.g. "fitting"
	Digest string            // of what the group shows; the page refetches when it changes
	Title  string            // said by a screen reader, shown when hovered over
	Href   string            // "#note-3" or "/making/galley": makes the group a link
	Data   map[string]string // further data-… attributes, keys in lower case
	Marks  []Mark
}

func (Shape) mark()     {}
func (Lettering) mark() {}
func (Group) mark()     {}

// With gives the group with further marks on top.
func (g Group) With(marks ...Mark) Group {
	g.Marks = concat(g.Marks, marks)
	return g
}

// With gives the scene with further marks on top.
func (s Scene) With(marks ...Mark) Scene {
	s.Marks = concat(s.Marks, marks)
	return s
}

// concat copies, so that two scenes grown from one never share their ends.
func concat(a, b []Mark) []Mark {
	out := make([]Mark, 0, len(a)+len(b))
	return append(append(out, a...), b...)
}

// Stroke is a shape that is only a line.
func Stroke(pen Pen, path Path) Shape { return Shape{Path: path, Pen: pen} }

// Area is a shape with outline and fill.
func Area(pen Pen, fill Fill, path Path) Shape { return Shape{Path: path, Pen: pen, Fill: fill} }
