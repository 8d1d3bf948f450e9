package fit

import (
	"fmt"
	"math"
	"slices"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// What is kept free about an open flame, from the outline of the cooker and from its top [mm]: makers' instructions for hobs ask for 450 to 750 above
// and tell to keep cloth away, from memory; how far beside is common practice, no source.
const (
	flameAbove = 600 // less over it is close
	flameLeast = 400 // and less still a fault
	flameWider = 50  // the column of heat is so much wider than the cooker, and what stands beside it nearer than this gets hot
	flameCloth = 300 // from cloth and foam beside it
)

var flameSource = finding.Source{
	Text: "makers' instructions of hobs ask for 450 to 750 mm above an open flame; 300 mm to cloth and foam and 50 mm to wood beside it are common practice, no source", Sure: finding.Memory,
}

const flameCaution = "An open flame sets fire to what is over and beside it, and uses up the air. Cook with an opening above and one below open, keep an extinguisher at hand, and hold to the maker's instructions, which go before these lengths."

// flames tells of what hangs over a cooker with an open flame or stands too near beside it, where somebody cooks.
func (w *worker) flames() {
	for c := range w.in.Fittings {
		if !w.in.Fittings[c].Flame {
			continue
		}
		for _, mode := range w.cookedIn(c) {
			for i := range mode.Standings {
				w.nearFlame(mode, c, i)
			}
		}
	}
}

// cookedIn are the modes in which somebody cooks at a cooker, or at what carries it; the day where nobody is said to, unless it is put away.
func (w *worker) cookedIn(c int) (modes []*Mode) {
	for m := range w.in.Modes {
		mode := &w.in.Modes[m]
		if slices.ContainsFunc(mode.Poses, func(p Pose) bool {
			at, ok := w.index[p.At]
			return ok && p.Does == "cooks" && (at == c || w.carries(at, c)) && len(mode.Standings[c].Solid) > 0
		}) {
			modes = append(modes, mode)
		}
	}
	if day := w.named("day"); len(modes) == 0 && day != nil && len(day.Standings[c].Solid) > 0 && !w.putIn(c) {
		modes = append(modes, day)
	}
	return modes
}

// putIn says whether a cooker stands in something, or on what does: there it is put away.
func (w *worker) putIn(c int) bool {
	for ; c >= 0; c = w.carriers[c] {
		if w.in.Fittings[c].In {
			return true
		}
	}
	return false
}

// nearFlame judges one thing against one cooker; what is told in one mode is not told again in the next.
func (w *worker) nearFlame(mode *Mode, c, i int) {
	s, f := &mode.Standings[i], &w.in.Fittings[i]
	if i == c || len(s.Solid) == 0 || f.isOutside() || w.carries(i, c) || w.carries(c, i) || f.For != "" && f.Gives == 0 {
		return
	}
	out := finding.Finding{
		Code: "fit.flame", Mode: mode.Name, About: []string{pointer("fittings", f.ID), pointer("fittings", w.in.Fittings[c].ID)},
		Source: flameSource, Caution: flameCaution,
	}
	cooker := mode.Standings[c].Box
	off := cooker.Grown(flameWider)
	switch above, beside := gapAbove(cooker, s.Solid, flameWider), besideFlame(cooker, s.Solid); {
	case above < flameAbove-touching:
		w.overFlame(&out, c, i, above, gapAbove(cooker, s.Solid, 0) < flameLeast)
	case f.Gives > 0 && beside < flameCloth-touching:
		out.Severity, out.Measured, out.Limit = finding.Fault, mm(beside), mm(flameCloth)
		out.Title = fmt.Sprintf("%s is %s beside the flame of %s", w.name(i), apart(beside), w.name(c))
		out.Words = fmt.Sprintf("Cloth and foam catch fire easily: keep them %d away from an open flame. Move one of the two, or take it down before you cook.", flameCloth)
		off = cooker.Grown(flameCloth)
	case f.Burns && beside < flameWider-touching:
		out.Severity, out.Measured, out.Limit = finding.Close, mm(beside), mm(flameWider)
		out.Title = fmt.Sprintf("%s stands %s beside the flame of %s", w.name(i), apart(beside), w.name(c))
		out.Words = fmt.Sprintf("It is of wood and higher than the flame: it scorches. Keep %d free, or screw a sheet of metal or tiles before it.", flameWider)
	default:
		return
	}
	if slices.ContainsFunc(w.result.Findings, func(g finding.Finding) bool { return g.Key() == out.Key() }) {
		return
	}
	attempts := append(w.asides(i, off, touching), w.asides(c, s.Box.Grown(off.MaxX-cooker.MaxX), touching)...)
	if up := cooker.MaxZ + flameAbove - s.Box.MinZ; s.Box.MinZ >= cooker.MaxZ-touching {
		attempts = append(attempts, moves(i, solid.Roof, up))
	}
	attempts = slices.DeleteFunc(attempts, func(a attempt) bool { return a.less > 0 })
	out.Proposals = w.tried(out, (*worker).flames, attempts...)
	w.find(out)
}

func (w *worker) overFlame(out *finding.Finding, c, i int, above float64, right bool) {
	out.Severity, out.Measured, out.Limit = finding.Close, mm(above), mm(flameAbove)
	if above < flameLeast-touching && right {
		out.Severity = finding.Fault // what only hangs beside the column is close
	}
	out.Title = fmt.Sprintf("%s is %s over the open flame of %s", w.name(i), apart(above), w.name(c))
	out.Words = fmt.Sprintf("Over an open flame %d should be free, and never less than %d: the heat goes straight up. Move one of the two aside, or raise what is above.", flameAbove, flameLeast)
}

// apart is a gap in words.
func apart(gap float64) string {
	if gap < touching {
		return "right"
	}
	return "only " + about(gap)
}

// gapAbove is how much air there is between the top of a cooker and what is over its outline, widened.
func gapAbove(cooker solid.Bounds, s solid.Solid, wider float64) float64 {
	gap := math.Inf(1)
	for _, p := range s {
		b := p.Bounds()
		if overlap(b, cooker.Grown(wider)) && b.MinZ >= cooker.MaxZ-touching {
			gap = min(gap, max(0, b.MinZ-cooker.MaxZ))
		}
	}
	return gap
}

// besideFlame is how far from the outline of a cooker something is that stands higher than its top and begins below it.
func besideFlame(cooker solid.Bounds, s solid.Solid) float64 {
	gap := math.Inf(1)
	for _, p := range s {
		b := p.Bounds()
		if b.MinZ < cooker.MaxZ && b.MaxZ > cooker.MaxZ+touching {
			along, across := max(cooker.MinX-b.MaxX, b.MinX-cooker.MaxX, 0), max(cooker.MinY-b.MaxY, b.MinY-cooker.MaxY, 0)
			gap = min(gap, math.Hypot(along, across))
		}
	}
	return gap
}
