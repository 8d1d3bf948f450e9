package sheet

import (
	"slices"
	"strings"

	"tumblehome/draw"
)

// caption is a name to be lettered inside a box, with what the thing holds below if there is room.
type caption struct {
	box     draw.Rect
	name    string
	details []string
	quiet   bool
	ground  draw.Fill
}

// way is lettering that may be tried, with its size once turned.
type way struct {
	lines      []draw.Lettering
	bounds     []draw.Rect // of each line about a middle at 0, 0
	wide, high float64
}

// place finds room: name and contents, the name alone, the name in two lines, the name turned; first beside what lies on the thing,
// then over it.
func (c caption) place(taken, soft []draw.Rect) ([]draw.Lettering, bool) {
	ways := c.ways()
	if len(ways) == 0 {
		return nil, false
	}
	all := append(slices.Clone(taken), soft...)
	for _, avoid := range [][]draw.Rect{all, taken} {
		for _, w := range ways {
			if set, ok := c.fit(w, avoid); ok {
				return set, true
			}
		}
		if len(soft) == 0 {
			break
		}
	}
	return nil, false
}

// ways are the lettering that the box could hold, best first.
func (c caption) ways() []way {
	name := draw.Lettering{Text: c.name, Size: nameSize, Strong: !c.quiet, Anchor: draw.Middle, Level: draw.Midline, Ground: c.ground}
	if c.quiet {
		name.Size, name.Ink = plainSize, draw.InkQuiet
	}
	detail := draw.Lettering{Size: plainSize, Anchor: draw.Middle, Level: draw.Midline, Ink: draw.InkQuiet, Ground: c.ground}
	var out []way
	try := func(turn float64, lines ...draw.Lettering) {
		w := way{}
		for i, l := range lines {
			l.Turn = turn
			l.At = draw.Pt(0, (float64(i)-float64(len(lines)-1)/2)*leading)
			b := l.Bounds()
			w.lines, w.bounds = append(w.lines, l), append(w.bounds, b)
			w.wide, w.high = max(w.wide, b.Width()), b.Max.Y-w.bounds[0].Min.Y
		}
		if w.wide <= c.box.Width() && w.high <= c.box.Height() {
			out = append(out, w)
		}
	}
	if min(c.box.Width(), c.box.Height()) < plainSize {
		return nil
	}
	if text := fitting(c.details, c.box.Width()); text != "" {
		detail.Text = text
		try(0, name, detail)
	}
	try(0, name)
	if first, second, ok := halved(c.name); ok {
		upper, lower := name, name
		upper.Text, lower.Text = first, second
		try(0, upper, lower)
	}
	try(-90, name)
	return out
}

// fitting joins as many names as a width holds.
func fitting(names []string, width float64) string {
	text := ""
	for _, n := range names {
		next := n
		if text != "" {
			next = text + " · " + n
		}
		if draw.Measure(next, plainSize, false)*draw.Allowance+1 > width {
			break
		}
		text = next
	}
	return text
}

// halved breaks a name into two lines of nearly equal length.
func halved(name string) (string, string, bool) {
	best := -1
	for i, c := range name {
		if c == ' ' && (best < 0 || abs(2*i-len(name)) < abs(2*best-len(name))) {
			best = i
		}
	}
	if best < 0 {
		return "", "", false
	}
	return strings.TrimSpace(name[:best]), strings.TrimSpace(name[best+1:]), true
}

func abs(i int) int {
	if i < 0 {
		return -i
	}
	return i
}

const leading = 4.3 // from one line to the next [mm]

// fit tries a few places in the box, the middle first.
func (c caption) fit(w way, avoid []draw.Rect) ([]draw.Lettering, bool) {
	for _, across := range [...]float64{0.5, 0.25, 0.75, 0, 1} {
		for _, along := range [...]float64{0.5, 0.2, 0.8, 0, 1} {
			middle := draw.Pt(c.box.Min.X+w.wide/2+(c.box.Width()-w.wide)*across, c.box.Min.Y+w.high/2+(c.box.Height()-w.high)*along)
			if !w.meets(middle, avoid) {
				return w.at(middle), true
			}
		}
	}
	return nil, false
}

func (w way) meets(middle draw.Point, avoid []draw.Rect) bool {
	for _, b := range w.bounds {
		b = b.Move(middle)
		for i := range avoid {
			if b.Overlaps(avoid[i]) {
				return true
			}
		}
	}
	return false
}

func (w way) at(middle draw.Point) []draw.Lettering {
	for i := range w.lines {
		w.lines[i].At = w.lines[i].At.Add(middle)
	}
	return w.lines
}
