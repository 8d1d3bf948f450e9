package fit

import (
	"cmp"
	"slices"

	"tumblehome/trade/finding"
)

// gone is so far off that a thing is in nobody's way [mm].
const gone = 1e5

// barsWay adds to a finding about a way, wide enough for nobody, which one thing it is that bars it: without it one gets there. It is proposed to be moved
// or made shorter, tried.
func (w *worker) barsWay(out *finding.Finding, mode *Mode, door Opening, way Way) {
	if w.in.Nudge == nil && w.in.Lengthen == nil {
		return // this is an attempt itself
	}
	var names []string
	told := *out
	var attempts []attempt
	to := w.index[way.To]
	for _, i := range w.mayBar(mode, door, way) {
		if !w.opensWay(mode, door, to, i) {
			continue
		}
		names = append(names, w.name(i))
		out.About = append(out.About, pointer("fittings", w.in.Fittings[i].ID))
		if door.Through == "left" || door.Through == "right" {
			attempts = append(attempts, w.beyondDoor(door, i, escapeWidth+touching)...)
		}
	}
	switch len(names) {
	case 0:
		return
	case 1:
		out.Words = names[0] + " bars it: without it one gets there. Move it, or make it shorter."
	default:
		out.Words = listed(names) + " bar it: without any one of them one gets there. Move one of them, or make it shorter."
	}
	out.Proposals = append(out.Proposals, w.tried(told, (*worker).walkway, attempts...)...)
}

// mostBarring is how many things are tried to be taken out: each time a way is looked for again.
const mostBarring = 4

// mayBar are the largest things on the floor that stand behind the door or at the narrowest place of the way.
func (w *worker) mayBar(mode *Mode, door Opening, way Way) (things []int) {
	to := w.index[way.To]
	for i := range mode.Standings {
		b := mode.Standings[i].Box
		near := way.X > b.MinX-sidling && way.X < b.MaxX+sidling && way.Y > b.MinY-sidling && way.Y < b.MaxY+sidling
		if i != to && len(mode.Standings[i].Solid) > 0 && (near || door.meets(b)) && w.carriers[i] < 0 && w.inTheWay(i) && !w.carries(i, to) {
			things = append(things, i)
		}
	}
	ground := func(i int) float64 {
		b := mode.Standings[i].Box
		return (b.MaxX - b.MinX) * (b.MaxY - b.MinY)
	}
	slices.SortStableFunc(things, func(i, j int) int { return cmp.Compare(ground(j), ground(i)) })
	return things[:min(len(things), mostBarring)]
}

// opensWay says whether one gets from a door to a thing once another and all it carries are out of the van.
func (w *worker) opensWay(mode *Mode, door Opening, to, i int) bool {
	sub := w.after(attempt{thing: i, by: [3]float64{gone, 0, 0}})
	sub.waysFrom(door, sub.mode(mode.Name), []int{to}, true)
	return slices.ContainsFunc(sub.result.Ways, func(way Way) bool { return way.Width >= sidling })
}
