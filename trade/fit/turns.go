package fit

import (
	"fmt"
	"math"
	"slices"

	"tumblehome/trade/finding"
)

// turns proposes to turn a bed that is too short by a quarter, wherever nothing graver comes of that: for each such bed the van is judged once more
// with the bed turned, and laid back into the room where it would stand out of it. It comes last, when all that is amiss already is known.
func (w *worker) turns() {
	if w.in.Turn == nil {
		return
	}
	for k := range w.result.Findings {
		f := &w.result.Findings[k]
		if f.Code != "fit.bed.length" {
			continue
		}
		mode := w.mode(f.Mode)
		for _, pose := range mode.Poses {
			if b, ok := w.berth(mode, pose); ok && f.About[0] == pointer("people", pose.Person) && w.longEnoughTurned(b, f.Limit.Value) {
				f.Proposals = append(w.turned(b, *f), f.Proposals...)
			}
		}
	}
}

// longEnoughTurned says whether the room is long enough for somebody the other way, before anything is tried.
func (w *worker) longEnoughTurned(b berth, need float64) bool {
	r, box := w.in.Room, b.mode.Standings[b.bed].Box
	if b.axis == 1 {
		return r.Rear()-r.Front() >= need
	}
	x := (box.MinX + box.MaxX) / 2
	return r.Right(x, box.MaxZ)-r.Left(x, box.MaxZ) >= need
}

// turned proposes to turn what carries a bed, with all upon it, if that clears a finding and brings nothing that is more than close.
func (w *worker) turned(b berth, f finding.Finding) []finding.Proposal {
	root := b.bed
	for w.carriers[root] >= 0 {
		root = w.carriers[root]
	}
	id := w.in.Fittings[root].ID
	after, ok := w.in.Turn(id, 0, 0)
	if !ok {
		return nil
	}
	dx, dy := w.backInside(after.Modes, root)
	if dx != 0 || dy != 0 {
		if after, ok = w.in.Turn(id, dx, dy); !ok {
			return nil
		}
	}
	in := w.in
	in.Modes, in.Parts, in.Before, in.RoomKey = after.Modes, after.Parts, nil, ""
	in.Nudge, in.Lengthen, in.Stretch, in.Slide, in.Turn = nil, nil, nil, nil, nil
	then := Work(in).Findings
	if slices.ContainsFunc(then, func(g finding.Finding) bool {
		return g.Key() == f.Key() || g.Severity >= finding.Fault && !known(w.result.Findings, g)
	}) {
		return nil
	}
	words := fmt.Sprintf("turn %s by a quarter, so that one lies %s the van", w.name(root), [2]string{"across", "along"}[b.axis])
	for _, way := range []struct {
		by         float64
		more, less string
	}{{dx, "rearwards", "forwards"}, {dy, "to the right", "to the left"}} {
		if way.by != 0 {
			words += fmt.Sprintf(", and %s %s", about(math.Abs(way.by)), map[bool]string{true: way.more, false: way.less}[way.by > 0])
		}
	}
	return []finding.Proposal{{Words: words, Patch: after.Patch}}
}

// known says whether something was found already, and at least as grave.
func known(all []finding.Finding, g finding.Finding) bool {
	return slices.ContainsFunc(all, func(f finding.Finding) bool {
		return f.Key() == g.Key() && f.Mode == g.Mode && f.Severity >= g.Severity
	})
}

// backInside is by how much a thing has to be moved, in whole mm, not to stand out of the room at its ends or sides in any mode.
func (w *worker) backInside(modes []Mode, i int) (dx, dy float64) {
	r := w.in.Room
	for m := range modes {
		b := modes[m].Standings[i].Box
		if len(modes[m].Standings[i].Solid) == 0 {
			continue
		}
		dx = min(dx, math.Floor(r.Rear()-b.MaxX))
		if b.MinX+dx < r.Front() {
			dx = math.Ceil(r.Front() - b.MinX)
		}
		for _, x := range [2]float64{b.MinX + dx, b.MaxX + dx} {
			for _, z := range [2]float64{b.MinZ, b.MaxZ} {
				dy = min(dy, math.Floor(r.Right(x, z)-b.MaxY))
				if b.MinY+dy < r.Left(x, z) {
					dy = math.Ceil(r.Left(x, z) - b.MinY)
				}
			}
		}
	}
	return dx, dy
}
