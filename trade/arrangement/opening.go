package arrangement

import (
	"strings"

	"tumblehome/build"
	"tumblehome/quantity"
)

// opening of the dotted path that `for:` names: shell.openings.rear.
func (w *worker) opening(path string) (build.Opening, bool) {
	o, ok := w.in.Openings[path[strings.LastIndexByte(path, '.')+1:]]
	return o, ok
}

func (w *worker) hasOpening(path string) bool {
	_, ok := w.opening(path)
	return ok
}

// thin is the thickness [mm] taken for what covers an opening and has no size of its own.
const thin = 15

// atOpening fills in the rules and sizes that the builder left out of a fitting that belongs to an opening: its middle is the
// opening's, it is as large as the opening, and it lies against the surface: a made thing inside, a bought one outside.
func (w *worker) atOpening(thing *Thing, r rules, size [3]float64) (rules, [3]float64) {
	o, _ := w.opening(thing.For)
	through := axisOf(sideOf[o.Through])
	for axis, extent := range [3]*build.Extent{o.X, o.Y, o.Z} {
		switch {
		case axis == through:
			if size[axis] == 0 {
				size[axis] = thin
			}
			if r[axis].Form == build.LeftOut {
				r[axis] = build.AxisRule{Form: build.Against, A: build.Point{Face: o.Through}}
			}
		case extent != nil:
			low, high := float64(extent.From), float64(extent.To)
			if size[axis] == 0 {
				size[axis] = high - low
			}
			if r[axis].Form == build.LeftOut {
				r[axis] = build.AxisRule{Form: build.LowAt, A: build.Point{Plus: quantity.Length((low+high)/2 - size[axis]/2)}}
			}
		}
	}
	return r, size
}
