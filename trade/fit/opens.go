package fit

import (
	"math"
	"slices"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

const (
	opensWell = 0.8 // a part that opens so far is of use as it was meant
	opensHalf = 0.5 // one that does not even so far is of little use
)

var opensSource = finding.Source{Text: "the space that the part passes through, in this build; how far is far enough is common practice", Sure: finding.Practice}

// Opens is how far a part opens by day, hung in the better of its ways.
type Opens struct {
	Part  int // in Inputs.Parts
	Way   int
	Share float64
}

// opened is how far a part opens in a mode, what it meets there, and what bars it from opening wholly.
type opened struct {
	share       float64
	way         int // in which of its ways it is hung
	meets, bars meeting
	mode        string
}

// opens judges every lid, door and drawer: by day, and where it does not open by day in the other modes in which people are aboard and the van stands.
func (w *worker) opens() {
	shut := 0
	how := working.Working{Formula: "number of lids, doors and drawers that open less than eight tenths", Source: opensSource, Notes: []string{
		"A door may be hung at either side; it counts with the better one.", "Cushions and slats are taken off a lid first; tables and steps are put aside. A lid on which somebody lies in a mode stays shut then.",
		"How high each drawer is says only the joinery: they are looked at as one, as large as their front.",
	}}
	how.Lines, w.result.Opens = slices.Grow(how.Lines, len(w.in.Parts)+1), slices.Grow(w.result.Opens, len(w.in.Parts))
	for p := range w.in.Parts {
		part := &w.in.Parts[p]
		if part.Still || part.Inward {
			shut++
			how.Lines = append(how.Lines, working.Line{Label: w.partName(part), Unit: "%", Sum: "by day " + percent(0), From: working.Origin{Pointer: w.movePointer(part)}})
			w.result.Opens = append(w.result.Opens, Opens{Part: p})
			w.reportNever(part)
			continue
		}
		best, day := w.bestOpening(part)
		how.Lines = append(how.Lines, working.Line{
			Label: w.partName(part), Value: best.share * 100, Unit: "%", Sum: "by day " + percent(day.share),
			From: working.Origin{Pointer: pointer("fittings", w.in.Fittings[part.Fitting].ID)},
		})
		w.result.Opens = append(w.result.Opens, Opens{Part: p, Way: day.way, Share: day.share})
		if best.share < opensWell {
			shut++
		}
		if day.share < opensWell {
			w.reportOpens(part, best, day)
		}
	}
	if len(w.in.Parts) == 0 {
		return
	}
	none := 0.0
	how.Lines = append(how.Lines, working.Line{Symbol: "n", Label: "do not open well", Value: float64(shut), Unit: "1", From: working.Origin{Here: true}})
	w.show(working.Figure{Code: "fit.opens", Value: float64(shut), Unit: "1", Label: "Lids, doors and drawers that do not open", Limit: &none}, how)
}

// bestOpening is how far a part opens where it opens farthest, and how far by day.
func (w *worker) bestOpening(p *Part) (best, day opened) {
	best.share = -1
	hangs := hangsOf(p)
	for m := range w.in.Modes {
		mode := &w.in.Modes[m]
		if mode.Name == "drive" || mode.Standings[p.Fitting].Moved || mode.Name != "day" && w.sleptUpon(mode, p) {
			continue
		}
		o := w.openingKnown(mode, p, hangs)
		if mode.Name == "day" {
			day = o
		}
		if o.share > best.share {
			best = o
		}
		if mode.Name == "day" && o.share == 1 {
			break
		}
	}
	if day.mode == "" { // by day it is elsewhere than at rest
		day = best
	}
	if best.share < 0 { // it is never where it rests
		return opened{share: 1}, opened{share: 1, mode: "day"}
	}
	return best, day
}

// sleptUpon says whether somebody lies on a lid in a mode: nobody gets up for it.
func (w *worker) sleptUpon(mode *Mode, p *Part) bool {
	return p.Kind == "lid" && slices.ContainsFunc(mode.Poses, func(pose Pose) bool {
		i, known := w.index[pose.At]
		return known && pose.Does == "lies" && (i == p.Fitting || !w.in.Fittings[i].In && w.carries(p.Fitting, i))
	})
}

// opening is how far a part opens in a mode, hung in the better way, and the box about all that this depends on.
func (w *worker) opening(mode *Mode, p *Part, hangs []hung) (opened, solid.Bounds) {
	reach := mode.Standings[p.Fitting].Box
	reach.MinZ, reach.MaxZ = reach.MinZ-2*touching, reach.MaxZ+2*touching
	if i, stands := w.onLid(mode, p); stands {
		return opened{meets: meeting{fitting: i}, mode: mode.Name}, reach
	}
	best := opened{share: -1}
	for way := range hangs {
		reach = reach.Join(hangs[way].through(1).Bounds())
		if o := w.openingHung(mode, &hangs[way]); o.share > best.share {
			best = o
		}
	}
	return best, reach
}

// openingHung halves the share that is in doubt, a few times.
func (w *worker) openingHung(mode *Mode, h *hung) opened {
	free := opened{share: 1, way: h.way, mode: mode.Name}
	path := h.through(1)
	if len(path.Solid) == 0 {
		return free
	}
	near := w.onItsWay(mode, h.Part, path.Bounds())
	met, barred := w.partMeets(mode, h, near, 1)
	if !barred {
		return free
	}
	low, high, bars := 0.0, 1.0, met
	for range 6 {
		mid := (low + high) / 2
		if m, barred := w.partMeets(mode, h, near, mid); barred {
			high, met = mid, m
		} else {
			low = mid
		}
	}
	return opened{low, h.way, met, bars, mode.Name}
}

// onItsWay are the fittings that a part may meet when it opens, however far: what it passes through on less of its way may be taken a little
// larger than on all of it.
func (w *worker) onItsWay(mode *Mode, p *Part, path solid.Bounds) (near []int) {
	about := path.Grown(2 * sweptRoughly)
	for i := range mode.Standings {
		s := &mode.Standings[i]
		if !s.Box.Meets(about) || i == p.Fitting {
			continue
		}
		if f := &w.in.Fittings[i]; f.In || w.aside(s, i) || w.belong(i, p.Fitting) {
			continue
		}
		if p.Kind == "lid" && w.liesOn(i, s, mode.Standings[p.Fitting].Box.MaxZ) {
			continue
		}
		near = append(near, i)
	}
	return near
}

// partMeets is what a part runs into when it is opened so far: the fitting that it is deepest in, of those near, or a side of the room.
func (w *worker) partMeets(mode *Mode, h *hung, near []int, share float64) (deepest meeting, meets bool) {
	if len(near) > 0 {
		path := h.through(share)
		b := path.Bounds()
		for _, i := range near {
			s := &mode.Standings[i]
			if !s.Box.Meets(b) {
				continue
			}
			if hit := w.meets(path, i, s); hit.Depth > deepest.way.Depth {
				deepest = meeting{fitting: i, way: hit}
			}
		}
	}
	if deepest.way.Depth > 0 {
		return deepest, true
	}
	return w.leavesRoom(mode, h.leaving(w, share))
}

// liesOn says whether a fitting lies on a lid for people to sit or lie on: it is taken off first. liesThick is the most that slats and cushions are.
func (w *worker) liesOn(i int, s *Standing, top float64) bool {
	const liesThick = 200
	f := w.in.Fittings[i]
	return (f.Rests || f.Gives > 0) && s.Box.MinZ >= top-touching && s.Box.MaxZ <= top+liesThick
}

// onLid is what stands on a lid and is not made to be lifted off it.
func (w *worker) onLid(mode *Mode, p *Part) (fitting int, stands bool) {
	if p.Kind != "lid" {
		return 0, false
	}
	host := mode.Standings[p.Fitting].Box
	top := host.MaxZ
	for i := range mode.Standings {
		s, f := &mode.Standings[i], w.in.Fittings[i]
		if len(s.Solid) > 0 && !f.In && !f.Rests && f.Gives == 0 && !w.aside(s, i) && w.carries(p.Fitting, i) && math.Abs(s.Box.MinZ-top) <= touching &&
			s.Box.MinX < host.MaxX && host.MinX < s.Box.MaxX && s.Box.MinY < host.MaxY && host.MinY < s.Box.MaxY {
			return i, true
		}
	}
	return 0, false
}
