package build

import (
	"regexp"
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

var faceText = regexp.MustCompile(`^(?:([a-z][a-z0-9-]*)\.)?([a-z]+)(?: *([-+]) *(.+))?$`)

// parsePoint reads `1200`, `rear`, `right - 30` or `galley.rear + 10`.
func parsePoint(text string) (Point, *quantity.Fault) {
	var m []string
	if text != "" && text[0] >= 'a' && text[0] <= 'z' {
		m = faceText.FindStringSubmatch(text)
	}
	if m == nil {
		length, err := quantity.ParseLength(text)
		if err != nil {
			return Point{}, axisFault(err.(*quantity.Fault).Wrong, err.(*quantity.Fault).Near)
		}
		return Point{Plus: length}, nil
	}
	p := Point{Of: m[1], Face: m[2]}
	if p.Of != "" && !isID(p.Of) {
		return Point{}, axisFault("`"+p.Of+"` is no id of a fitting", "")
	}
	if fault := p.knowsFace(text); fault != nil {
		return Point{}, fault
	}
	if m[3] == "" {
		return p, nil
	}
	plus, err := quantity.ParseLength(m[4])
	if err != nil || m[4][0] == '-' {
		return Point{}, axisFault("`"+m[4]+"` in `"+text+"` is not a length", "")
	}
	if p.Plus = plus; m[3] == "-" && plus != 0 {
		p.Plus = -plus
	}
	return p, nil
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
