package fit

import (
	"slices"

	"tumblehome/trade/finding"
)

// gone is so far off that a thing is in nobody's way [mm].
const gone = 1e5

// barsWay adds to a finding about a way, wide enough for nobody, which one thing it is that bars it: without it one gets there. It is proposed to be moved
// or made shorter, tried.
func (w *worker) barsWay(out *finding.Finding, mode *Mode, door Opening, to int) {
	if w.in.Nudge == nil && w.in.Lengthen == nil {
		return // this is an attempt itself
	}
	var names []string
	told := *out
	var attempts []attempt
	for i := range mode.Standings {
		if i == to || w.carriers[i] >= 0 || w.carries(i, to) || !w.inTheWay(i) || len(mode.Standings[i].Solid) == 0 || !w.opensWay(mode, door, to, i) {
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

// opensWay says whether one gets from a door to a thing once another and all it carries are out of the van.
func (w *worker) opensWay(mode *Mode, door Opening, to, i int) bool {
	sub := w.after(attempt{thing: i, by: [3]float64{gone, 0, 0}})
	sub.walkway()
	return slices.ContainsFunc(sub.result.Ways, func(way Way) bool {
		return way.Mode == mode.Name && way.Door == door.ID && way.To == w.in.Fittings[to].ID && way.Width >= sidling
	})
}
