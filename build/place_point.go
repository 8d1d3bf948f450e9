package build

import (
	"strings"

	"tumblehome/quantity"
)

// A Point is a place on one axis: a length in the frame, or a face and how far
// rearwards, to the right or up from it.
type Point struct {
	Face string          // front, rear, left, right, floor, roof, top, bottom; empty for a length
	Of   string          // the fitting whose face it is; empty for a face of the frame
	Plus quantity.Length // from the face, or the length itself
}

var (
	frameFaces   = []string{"front", "rear", "left", "right", "floor", "roof"}
	fittingFaces = []string{"front", "rear", "left", "right", "top", "bottom"}
)

const (
	idPattern   = `[a-z][a-z0-9]*(-[a-z0-9]+)*`
	facePattern = `(front|rear|left|right|floor|roof|` + idPattern + `\.(front|rear|left|right|top|bottom))`
)

// parsePoint reads `1200`, `rear`, `right - 30` or `galley.rear + 10`.
func parsePoint(text string) (Point, *quantity.Fault) {
	p, rest, isFace := cutFace(text)
	if !isFace {
		length, err := quantity.ParseLength(text)
		if err != nil {
			return Point{}, axisFault(err.(*quantity.Fault).Wrong, err.(*quantity.Fault).Near)
		}
		return Point{Plus: length}, nil
	}
	if fault := p.knowsFace(text); fault != nil || rest == "" {
		return p, fault
	}
	offset := strings.TrimLeft(rest[1:], " ")
	plus, err := quantity.ParseLength(offset)
	if err != nil || offset[0] == '-' {
		return Point{}, axisFault("`"+offset+"` in `"+text+"` is not a length", "")
	}
	if p.Plus = plus; rest[0] == '-' && plus != 0 {
		p.Plus = -plus
	}
	return p, nil
}

// cutFace takes a face off the front of a text: what is left begins with a plus
// or a minus, or is empty. Whether there is such a face is not looked at.
func cutFace(text string) (p Point, rest string, ok bool) {
	if dot := strings.IndexByte(text, '.'); dot > 0 && letters(text[dot+1:]) > 0 && isID(text[:dot]) {
		p.Of, text = text[:dot], text[dot+1:]
	}
	n := letters(text)
	p.Face, rest = text[:n], strings.TrimLeft(text[n:], " ")
	return p, rest, n > 0 && (rest == "" && len(text) == n || rest != "" && (rest[0] == '+' || rest[0] == '-'))
}

func letters(s string) int {
	i := 0
	for i < len(s) && s[i] >= 'a' && s[i] <= 'z' {
		i++
	}
	return i
}

// knowsFace refuses a face word that the frame or a fitting does not have.
func (p Point) knowsFace(text string) *quantity.Fault {
	faces, whose := frameFaces, "here"
	if p.Of != "" {
		faces, whose = fittingFaces, "of a fitting"
	}
	for _, f := range faces {
		if f == p.Face {
			return nil
		}
	}
	near := map[string]string{"top": "roof", "bottom": "floor", "roof": "top", "floor": "bottom", "back": "rear"}[p.Face]
	if near == "" {
		near = quantity.Near(p.Face, faces)
	}
	if near != "" {
		near = strings.Replace(text, p.Face, near, 1)
	}
	return axisFault("`"+p.Face+"` is no face "+whose, near)
}

// String is the canonical text.
func (p Point) String() string {
	if p.Face == "" {
		return p.Plus.String()
	}
	text := p.Face
	if p.Of != "" {
		text = p.Of + "." + p.Face
	}
	switch {
	case p.Plus > 0:
		text += " + " + p.Plus.String()
	case p.Plus < 0:
		text += " - " + (-p.Plus).String()
	}
	return text
}
