package fit

import (
	"fmt"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

const (
	slatOverlap = 30 // by which the two rows of slats of a bed that is pulled out must still lie between one another [mm]
	legThick    = 40 // of a leg under its far edge [mm]
	legInset    = 60 // of a leg from the bed's end [mm]
	legRests    = 5  // a leg may as well rest on what ends so near under the bed [mm]
)

var pullOutSource = finding.Source{Text: "slats of a pull-out bed lie between one another by 30 mm or more, its far edge stands on a leg at each end (common practice)", Sure: finding.Practice}

// pullOuts judges beds whose slats lie between one another, in the first mode that pulls each out: how far, and whether its legs find the floor.
func (w *worker) pullOuts() {
	seen := map[int]bool{}
	for m := range w.in.Modes {
		mode := &w.in.Modes[m]
		for _, mover := range mode.Movers {
			if i := mover.Fitting; w.in.Fittings[i].Make == "slat-bed" && !mover.ByHand && !seen[i] {
				seen[i] = true
				w.pullOut(mode, i)
			}
		}
	}
}

func (w *worker) pullOut(mode *Mode, bed int) {
	rest := w.resting(bed)
	if rest == nil {
		return
	}
	out, depth, by := pulled(rest.Box, mode.Standings[bed].Box)
	if by <= 0 {
		return
	}
	if left := depth - by; left < slatOverlap-touching {
		w.reportOverlap(mode, bed, left)
	}
	for _, leg := range legs(mode.Standings[bed].Box, out, w.in.Room.Floor()) {
		if on := w.under(mode, bed, leg); on >= 0 {
			w.reportLeg(mode, bed, on, leg)
			return
		}
	}
}

// pulled is the side on which a bed was pulled out, its depth at rest, and how far it came.
func pulled(rest, now solid.Bounds) (out solid.Side, depth, by float64) {
	grown := [4]float64{rest.MinX - now.MinX, now.MaxX - rest.MaxX, rest.MinY - now.MinY, now.MaxY - rest.MaxY}
	for side, more := range grown {
		if more > by {
			out, by = solid.Side(side), more
		}
	}
	if out <= solid.Rear {
		return out, rest.MaxX - rest.MinX, by
	}
	return out, rest.MaxY - rest.MinY, by
}

// legs are the two under the far edge, down to the floor.
func legs(bed solid.Bounds, out solid.Side, floor float64) [2]solid.Bounds {
	edge := bed
	edge.MinZ, edge.MaxZ = floor+touching, bed.MinZ-legRests
	switch out {
	case solid.Front:
		edge.MaxX = edge.MinX + legThick
	case solid.Rear:
		edge.MinX = edge.MaxX - legThick
	case solid.Left:
		edge.MaxY = edge.MinY + legThick
	default:
		edge.MinY = edge.MaxY - legThick
	}
	one, other := edge, edge
	if out <= solid.Rear {
		one.MinY, one.MaxY = edge.MinY+legInset, edge.MinY+legInset+legThick
		other.MinY, other.MaxY = edge.MaxY-legInset-legThick, edge.MaxY-legInset
	} else {
		one.MinX, one.MaxX = edge.MinX+legInset, edge.MinX+legInset+legThick
		other.MinX, other.MaxX = edge.MaxX-legInset-legThick, edge.MaxX-legInset
	}
	return [2]solid.Bounds{one, other}
}

// under is what stands where a leg should, or -1. What reaches up to the bed carries it instead.
func (w *worker) under(mode *Mode, bed int, leg solid.Bounds) int {
	for i := range mode.Standings {
		s, f := &mode.Standings[i], w.in.Fittings[i]
		if i == bed || f.Where != "" || f.In || f.Gives > 0 || len(s.Solid) == 0 || !s.Box.Meets(leg) || s.Box.MaxZ >= leg.MaxZ {
			continue
		}
		if deep, in := s.Solid.Deepest(solid.Solid{solid.Box(leg)}); in && deep.Depth > touching {
			return i
		}
	}
	return -1
}

func (w *worker) reportOverlap(mode *Mode, bed int, left float64) {
	out := finding.Finding{
		Code: "fit.pull-out", Severity: finding.Close, Mode: mode.Name, About: []string{pointer("fittings", w.in.Fittings[bed].ID)},
		Title:    fmt.Sprintf("%s is pulled out so far that its slats hardly hold one another", w.name(bed)),
		Words:    fmt.Sprintf("%s of them are left between the fixed ones; %d mm are wanted. Pull it out less, or make it deeper.", about(max(0, left)), slatOverlap),
		Measured: mm(left), Limit: mm(slatOverlap), Source: pullOutSource,
	}
	if about(left) == about(slatOverlap) {
		out.Words = fmt.Sprintf("%s of them too few are left between the fixed ones; %d mm are wanted. Pull it out less, or make it deeper.", about(slatOverlap-left), slatOverlap)
	}
	if left <= 0 {
		out.Severity, out.Title = finding.Fault, fmt.Sprintf("%s is pulled out farther than it is deep", w.name(bed))
		out.Words = fmt.Sprintf("Its slats would come out of one another. Leave %d mm of them between the fixed ones.", slatOverlap)
	}
	out.Proposals = w.lessOut(bed, slatOverlap-left)
	w.find(out)
}

func (w *worker) reportLeg(mode *Mode, bed, on int, leg solid.Bounds) {
	out := finding.Finding{
		Code: "fit.pull-out.leg", Severity: finding.Close, Mode: mode.Name,
		About:  []string{pointer("fittings", w.in.Fittings[bed].ID), pointer("fittings", w.in.Fittings[on].ID)},
		Title:  fmt.Sprintf("A leg of %s would stand where %s is", w.name(bed), w.name(on)),
		Words:  "The far edge of a bed that is pulled out needs a leg at each end, or something as high as its underside to rest on.",
		Source: pullOutSource,
	}
	out.Proposals = w.tried(out, (*worker).pullOuts, w.asides(on, leg, touching)...)
	w.find(out)
}
