package fit

import (
	"fmt"
	"math"

	"tumblehome/quantity"
	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// Arch is a wheel arch of the bare body.
type Arch struct {
	Side solid.Side
	X    [2]float64
	Up   float64 // z of its top
}

// overArch is the most that a lining adds about a wheel arch [mm]: common practice, no source.
const overArch = 60

// archMet is the wheel arch that makes a box stand out of a side by so much: just above the arch it would stand out by less.
func (w *worker) archMet(b solid.Bounds, side solid.Side, by float64) (Arch, bool) {
	for _, a := range w.in.Arches {
		if a.Side != side || b.MinX >= a.X[1]+overArch || b.MaxX <= a.X[0]-overArch || b.MinZ >= a.Up+overArch {
			continue
		}
		above := b
		above.MinZ, above.MaxZ = a.Up+overArch, a.Up+overArch+touching
		if w.boxExcess(above, side) < by-touching {
			return a, true
		}
	}
	return Arch{}, false
}

// atArch says of a finding that a thing stands out of a side that it is the wheel arch that it meets, and adds what gets it off.
func (w *worker) atArch(out *finding.Finding, i int, side solid.Side, by float64, mode *Mode) {
	a, met := w.archMet(mode.Standings[i].Box, side, by)
	if !met {
		return
	}
	arch := "the wheel arch on the " + [6]string{solid.Left: "left", solid.Right: "right"}[side]
	out.Title = fmt.Sprintf("%s stands %s into %s", w.name(i), about(by), arch)
	out.Words = fmt.Sprintf("It is the wheel arch that it meets, which goes up to about %s over the load floor; above it, and before and behind it, there is more room. Cut it round the arch, raise it over it, or make it smaller.", about(a.Up))
	if out.Mode == "" {
		out.Proposals = append(w.offArch(*out, i, side, a, by, arch), out.Proposals...)
	}
}

// offArch proposes to make a thing narrower, or shorter so that it ends before or behind an arch, and to raise it over it.
func (w *worker) offArch(f finding.Finding, i int, side solid.Side, a Arch, by float64, arch string) (out []finding.Proposal) {
	s := w.resting(i)
	if s == nil || w.in.Nudge == nil {
		return nil
	}
	b := s.Box
	if by < (b.MaxY-b.MinY)/2 {
		out = append(out, w.drawnIn(i, side, by, "narrower, clear of "+arch)...)
	}
	for end, face := range [2]solid.Side{solid.Front, solid.Rear} {
		less := [2]float64{a.X[1] - b.MinX, b.MaxX - a.X[0]}[end]
		for add := 0.0; add <= overArch && less > 0 && less+add < (b.MaxX-b.MinX)/2; add += 5 {
			now := attempt{thing: i, less: less + add, drawsIn: face}.standing(*s)
			if w.boxExcess(now.Box, side) <= touching {
				out = append(out, w.drawnIn(i, face, less+add, "shorter, so that it ends at "+arch)...)
				break
			}
		}
	}
	for up := a.Up - b.MinZ; up <= a.Up+overArch-b.MinZ && w.carriers[i] < 0; up += 5 {
		if up > 0 && w.fitsAt(i, 0, 0, up) {
			return append(out, w.tried(f, func(sub *worker) { sub.insideOf(i) }, moves(i, solid.Roof, up))...)
		}
	}
	return out
}

// drawnIn proposes to draw one face of a thing in, the others staying where they are, in whole 5 mm.
func (w *worker) drawnIn(i int, face solid.Side, less float64, how string) []finding.Proposal {
	less = math.Ceil(less/5-1e-9) * 5
	var low, high float64
	if face == solid.Front || face == solid.Left {
		low = -less
	} else {
		high = -less
	}
	if w.in.Stretch == nil {
		return nil
	}
	patch, ok := w.in.Stretch(w.in.Fittings[i].ID, int(face)/2, low, high)
	if !ok {
		return nil
	}
	return []finding.Proposal{{Words: fmt.Sprintf("make %s %s mm %s", w.name(i), quantity.Parted(less), how), Patch: patch}}
}
