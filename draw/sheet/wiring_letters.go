package sheet

import (
	"slices"
	"strings"

	"tumblehome/draw"
	"tumblehome/reckon"
	"tumblehome/trade/cables"
	"tumblehome/trade/runs"
)

// wiringLetters are the numbers of the cables: on each way those that it carries, at each load its own. In the long section, where left
// and right lie on one another, only the ways are lettered. What has no room at its place stands beside it, with a line that leads there.
func (d *drawing) wiringLetters(s *sketch, view string, at func(runs.Point) place, taken *[]draw.Rect) {
	numbers, bounds := d.cableNumbers(), d.paperOf(view)
	var set []draw.Lettering
	if d.onlyWiring() { // names may stand beside the van, where there are no dimensions
		bounds = bounds.Inset(-besideFlags)
		bounds.Min.Y += besideFlags
	}
	letter := func(p runs.Point, text string, beside bool) {
		if text == "" {
			return
		}
		spot := s.view.At(at(p)[0], at(p)[1])
		l, ok := tag(text, spot, bounds, taken, beside)
		if !ok {
			return
		}
		if foot := nearest(l.Bounds(), spot); foot.Distance(spot) > ledFrom {
			s.put(draw.PenLeader, draw.NoFill, draw.Line(foot, spot))
		}
		set = append(set, l)
	}
	for i := range d.r.Runs.Ways {
		w := &d.r.Runs.Ways[i]
		if len(w.At) < 2 || view != Side && d.shortWay(w, s.view) {
			continue
		}
		var all []string
		for _, c := range w.Carries {
			all = append(all, numbers[cableKey{c.ID, c.Source, false}])
		}
		letter(longest(w.At), strings.Join(all, " "), false)
	}
	if view != Side {
		for _, p := range d.wiredPlaces(numbers) {
			letter(p.at, p.words(), true)
		}
	}
	for _, l := range set {
		s.text(l)
	}
}

// ledFrom is how far from its place lettering may stand without a line that leads there [mm of the paper].
const ledFrom = 2.0

// shortWay says whether a way with a single cable is so short on the paper that the number at the cable's end is enough.
func (d *drawing) shortWay(w *runs.Led, v draw.View) bool {
	long := 0.0
	for i := range len(w.At) - 1 {
		a, b := w.At[i], w.At[i+1]
		long += v.At(a[0], a[1]).Distance(v.At(b[0], b[1]))
	}
	return len(w.Carries) == 1 && long < enoughWay
}

const enoughWay = 15.0 // mm of the paper

// paperOf is what a view takes of the paper.
func (d *drawing) paperOf(view string) draw.Rect {
	b, v := d.space, d.views[view]
	if view == Side {
		return v.Box(b.MinX, b.MinZ, b.MaxX-b.MinX, b.MaxZ-b.MinZ)
	}
	return v.Box(b.MinX, b.MinY, b.MaxX-b.MinX, b.MaxY-b.MinY)
}

// tag is lettering that belongs to a place, on it or beside it or as near as no other lettering stands; none where there is no room at all.
func tag(text string, at draw.Point, bounds draw.Rect, taken *[]draw.Rect, beside bool) (draw.Lettering, bool) {
	l := draw.Lettering{Text: text, At: at, Anchor: draw.Middle, Level: draw.Midline, Strong: true, Ink: draw.InkGood, Ground: draw.FillPaper}
	free := func(at draw.Point) bool {
		l.At = at
		b := l.Bounds()
		return b.Within(bounds) && !slices.ContainsFunc(*taken, b.Overlaps)
	}
	ok := !beside && free(at)
	small := l.Bounds().Move(draw.Pt(-l.At.X, -l.At.Y))
	for out := 1.2; !ok && out <= tagReach; out += 1.2 {
		for _, way := range []draw.Point{{X: 1}, {X: -1}, {Y: -1}, {Y: 1}, {X: 1, Y: -1}, {X: 1, Y: 1}, {X: -1, Y: -1}, {X: -1, Y: 1}} {
			if ok = free(at.Add(draw.Pt(way.X*(out+small.Width()/2), way.Y*(out+small.Height()/2)))); ok {
				break
			}
		}
	}
	if ok {
		*taken = append(*taken, l.Bounds().Inset(-tagAir))
	}
	return l, ok
}

// tagAir is what stays free about it [mm of the paper].
const tagAir = 0.5

// tagReach is how far from its place lettering is looked for [mm of the paper].
const tagReach = 36.0

// cableKey is that of a circuit, a source or its lead.
type cableKey struct {
	id           string
	source, lead bool
}

// routeOf is how a cable goes, or nil.
func routeOf(r *reckon.Reckoning, c *cables.Cable) *runs.Route {
	if c.Role == cables.Lead {
		return r.Runs.Lead(c.ID)
	}
	return r.Runs.Route(c.ID, c.Role == cables.Charge)
}

// cableNumbers are the numbers of cables by circuit and source.
func (d *drawing) cableNumbers() map[cableKey]string {
	out := map[cableKey]string{}
	for i := range d.r.Cables.Cables {
		if c := &d.r.Cables.Cables[i]; c.ID != "" {
			out[cableKey{c.ID, c.Role == cables.Charge || c.Role == cables.Lead, c.Role == cables.Lead}] = c.Number
		}
	}
	return out
}

// longest is the middle of the longest leg of a way.
func longest(line []runs.Point) runs.Point {
	best, far := line[0], -1.0
	for i := 0; i+1 < len(line); i++ {
		a, b, sum := line[i], line[i+1], 0.0
		for k := range a {
			sum += (b[k] - a[k]) * (b[k] - a[k])
		}
		if sum > far {
			far = sum
			for k := range a {
				best[k] = (a[k] + b[k]) / 2
			}
		}
	}
	return best
}
