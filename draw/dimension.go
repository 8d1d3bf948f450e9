package draw

import (
	"math"
	"sort"
)

// Ends says how a dimension line ends.
type Ends int

// The ends of a dimension line, after ISO 129-1.
const (
	Arrows  Ends = iota // slim closed arrowheads; oblique strokes where they would not fit
	Oblique             // short strokes at 45°
)

// Sizes of a dimension in millimetres. Gap and overshoot are about eight line widths, as
// ISO 129-1 draws them (from memory).
const (
	extensionGap  = 1.2
	extensionOver = 1.5
	arrowLength   = 2.4
	arrowWidth    = 0.7
	obliqueReach  = 0.9
	textLift      = 0.9 // from the dimension line to the foot of its figures
)

// Chain is a run of dimensions on one line: two stops make a single dimension. The texts
// stand above the line, each over its own piece; one that is too long for its piece goes
// beyond the end of the line, or one row higher with a small leader. So no two texts of a
// chain ever collide.
type Chain struct {
	Stops []Point  // what is measured from and to; extension lines start here
	Texts []string // one fewer than stops
	Along Direction
	At    float64 // the line's y (Horizontal), x (Vertical) or mm above the first stop (Aligned)
	Size  float64 // of the lettering; 0 means SizeSmall
	Ends  Ends
	Ink   Ink
	Pen   Pen // NoPen means PenDimension
}

// Dimension is a chain of a single piece.
func Dimension(from, to Point, along Direction, at float64, text string) Chain {
	return Chain{Stops: []Point{from, to}, Texts: []string{text}, Along: along, At: at}
}

// Marks draws the chain, all lines before all texts.
func (c Chain) Marks() []Mark { return Dimensions(c) }

// Dimensions draws several chains, all lines before all texts, so that no extension line runs
// over a figure.
func Dimensions(chains ...Chain) []Mark {
	var lines, texts []Mark
	for _, c := range chains {
		if len(c.Stops) < 2 {
			continue
		}
		s := c.set()
		lines = append(lines, s.lines()...)
		texts = append(texts, s.texts()...)
	}
	return append(lines, texts...)
}

// Bounds is the room the chain takes with its texts, without extension lines.
func (c Chain) Bounds() Rect {
	if len(c.Stops) < 2 {
		return Rect{}
	}
	set := c.set()
	r := around([]Point{set.axes.paper(set.from, set.line), set.axes.paper(set.to, set.line)}).Inset(-extensionOver)
	for _, m := range set.texts() {
		if l, ok := m.(Lettering); ok {
			r = r.Union(l.Bounds())
		}
	}
	return r
}

// setChain is a chain laid out: stops in order along the line, a place for every text.
type setChain struct {
	Chain
	axes     axes
	line     float64   // t of the dimension line
	stops    []Point   // in order along the line
	s        []float64 // of the stops
	places   []textPlace
	from, to float64 // ends of the line, where texts outside have drawn it out
}

// textPlace is where the middle of a text stands.
type textPlace struct {
	text   string
	s      float64
	raised bool
	width  float64
}

func (c Chain) set() *setChain {
	c.Size = Lettering{Size: c.Size}.height()
	if c.Pen == NoPen {
		c.Pen = PenDimension
	}
	last := len(c.Stops) - 1
	set := &setChain{Chain: c, axes: c.Along.axes(c.Stops[0], c.Stops[last])}
	set.line = -c.At
	if c.Along == Aligned {
		_, t := set.axes.local(c.Stops[0])
		set.line = t + c.At
	}
	set.order()
	set.place()
	return set
}

// order sorts the stops along the line, and the texts with them.
func (set *setChain) order() {
	set.stops = append([]Point{}, set.Stops...)
	along := func(p Point) float64 { s, _ := set.axes.local(p); return s }
	texts := append([]string{}, set.Texts...)
	if along(set.stops[0]) > along(set.stops[len(set.stops)-1]) {
		for i, j := 0, len(texts)-1; i < j; i, j = i+1, j-1 {
			texts[i], texts[j] = texts[j], texts[i]
		}
	}
	set.Texts = texts
	sort.SliceStable(set.stops, func(i, j int) bool { return along(set.stops[i]) < along(set.stops[j]) })
	for _, p := range set.stops {
		set.s = append(set.s, along(p))
	}
	set.from, set.to = set.s[0], set.s[len(set.s)-1]
}

// place finds room for each text: over its piece, else beyond the end, else one row higher.
func (set *setChain) place() {
	const air = 1.0
	last := len(set.s) - 2
	for i := 0; i <= last; i++ {
		if i >= len(set.Texts) || set.Texts[i] == "" {
			continue
		}
		p := textPlace{text: set.Texts[i], s: (set.s[i] + set.s[i+1]) / 2}
		p.width = Measure(p.text, set.Size, false) * Allowance
		switch room := set.s[i+1] - set.s[i]; {
		case p.width+air <= room:
		case i == last:
			p.s = set.s[i+1] + extensionOver + p.width/2
			set.to = p.s + p.width/2
		case i == 0:
			p.s = set.s[0] - extensionOver - p.width/2
			set.from = p.s - p.width/2
		default:
			p.raised = true
		}
		set.places = append(set.places, p)
	}
	set.spreadRaised(air)
	set.short()
}

// spreadRaised moves the texts of the upper row apart.
func (set *setChain) spreadRaised(air float64) {
	var which []int
	var at, width []float64
	for i, p := range set.places {
		if p.raised {
			which, at, width = append(which, i), append(at, p.s), append(width, p.width+air)
		}
	}
	for k, s := range Spread(at, width) {
		set.places[which[k]].s = s
	}
}

// short chooses oblique strokes where a piece has no room for two arrowheads.
func (set *setChain) short() {
	for i := 1; i < len(set.s); i++ {
		if set.s[i]-set.s[i-1] < 2.5*arrowLength {
			set.Ends = Oblique
		}
	}
}

// rowHeight is how far the upper row lies above the lower.
func (set *setChain) rowHeight() float64 { return set.Size*1.3 + textLift }

// Height is the room between the dimension line and the top of its texts, in millimetres.
func (c Chain) Height() float64 {
	if len(c.Stops) < 2 {
		return 0
	}
	set := c.set()
	h := textLift + set.Size*1.15
	for _, p := range set.places {
		if p.raised {
			return h + set.rowHeight()
		}
	}
	return h
}

// texts letters the chain.
func (set *setChain) texts() []Mark {
	var out []Mark
	for _, p := range set.places {
		t, ground := set.line+textLift, NoFill
		if p.raised { // over extension lines, which must not run through it
			t, ground = t+set.rowHeight(), FillSheet
		}
		out = append(out, Lettering{Text: p.text, At: set.axes.paper(p.s, t), Size: set.Size, Anchor: Middle,
			Turn: math.Round(set.axes.turn()*100) / 100, Ink: set.Ink, Ground: ground})
	}
	return out
}
