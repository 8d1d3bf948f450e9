package sheet

import (
	"regexp"
	"strings"

	"tumblehome/draw"
)

// lane is a column where it stands.
type lane struct {
	head
	x, wide float64
}

func lanesOf(heads []head, field draw.Rect) []lane {
	sum := 0.0
	for _, h := range heads {
		sum += h.share
	}
	var out []lane
	x := field.Min.X
	for _, h := range heads {
		w := h.share / sum * field.Width()
		out = append(out, lane{h, x, w})
		x += w
	}
	return out
}

// withUnits finds numbers with their units, which stay on one line.
var withUnits = regexp.MustCompile(`(\d) (A|V|W|m|mm²|Ω|MΩ)([^\pL\pN²]|$)`)

// cell breaks a text for a lane, and where it says so; a word that is wider than the lane is cut short.
func (l lane) cell(text string) []string {
	if text == "" {
		return nil
	}
	var lines []string
	for part := range strings.SplitSeq(withUnits.ReplaceAllString(text, "$1\u00a0$2$3"), "\n") {
		lines = append(lines, wrapped(part, l.wide-2.4)...)
	}
	for i := range lines {
		lines[i] = cutShort(lines[i], l.wide-2.4, false)
	}
	return lines
}

// set letters a line in a lane.
func (l lane) set(text string, y float64, strong bool) draw.Lettering {
	out := draw.Lettering{Text: text, At: draw.Pt(l.x+1.2, y), Level: draw.Midline, Size: plainSize, Strong: strong}
	if l.right {
		out.Anchor, out.At.X = draw.End, l.x+l.wide-1.2
	}
	if strong {
		out.Ink = draw.InkQuiet
	}
	return out
}
