package fit

import (
	"fmt"
	"slices"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// Wheel is the space of a wheel or an axle, with what it needs to spring and steer.
type Wheel struct {
	Name  string // the left rear wheel, the rear axle
	Box   solid.Bounds
	About string // JSON Pointer of what its place follows from
}

// airGap is how far over an opening a thing must lie for air to pass and a hand to reach in [mm]: common practice, no source.
const airGap = 30

var outdoorsSource = finding.Source{Text: "the places and sizes of this build", Sure: finding.Computed}

// lidRises is how far the lid of a roof vent comes up, as a share of its shorter side: the sine of 30°.
const lidRises = 0.5

var lidSource = finding.Source{Text: "the lid of a roof vent is hung at one side and opens by 30° or more: common practice, no source", Sure: finding.Practice}

var wheelSource = finding.Source{
	Text: "the wheelbase, track and tyres of this van; wheels spring up by 80 mm, and what steers needs 120 more inwards: common practice, no source", Sure: finding.Practice,
}

// outdoors judges what is on the van or under it: is it there at all, is it clear of the wheels, and does it leave the openings free?
func (w *worker) outdoors() {
	for i := range w.in.Fittings {
		f := &w.in.Fittings[i]
		s := w.resting(i)
		if s == nil || !f.isOutside() {
			continue
		}
		if w.astray(i, s) {
			continue
		}
		if f.Where == "under" {
			w.clearOfWheels(i, s)
		}
		w.overOpenings(i, s)
		w.overLids(i, s)
	}
}

// clearOfWheels tells of the wheel or axle that a thing is deepest in.
func (w *worker) clearOfWheels(i int, s *Standing) {
	var worst *Wheel
	var out solid.Way
	for k := range w.in.Wheels {
		wheel := &w.in.Wheels[k]
		if deep, in := s.Solid.Deepest(solid.Solid{solid.Box(wheel.Box)}); in && deep.Depth > max(touching, out.Depth) {
			worst, out = wheel, deep
		}
	}
	if worst == nil {
		return
	}
	w.find(finding.Finding{
		Code: "fit.wheel", Severity: finding.Fault, About: []string{pointer("fittings", w.in.Fittings[i].ID), worst.About},
		Title:    fmt.Sprintf("%s is %s in the way of %s", w.name(i), about(out.Depth), worst.Name),
		Words:    "Wheels and axles move up and down with the springs, and the front wheels steer. What they touch is torn off, or stops them. Look under the van before you decide.",
		Measured: mm(out.Depth), Limit: mm(touching), Source: wheelSource, Proposals: w.offWheels(i, s),
		Caution: "What touches a wheel can burst a tyre or block the steering.",
	})
}

// offWheels is to move a thing along the van, the shorter way, until it is clear of all wheels and axles.
func (w *worker) offWheels(i int, s *Standing) []finding.Proposal {
	var all solid.Solid
	for _, wheel := range w.in.Wheels {
		all = append(all, solid.Box(wheel.Box))
	}
	forwards, rearwards := s.Solid.Exit(all, -1, 0, 0), s.Solid.Exit(all, 1, 0, 0)
	if forwards < rearwards {
		return w.nudge(i, -forwards, 0, 0, "")
	}
	return w.nudge(i, rearwards, 0, 0, "")
}

// overOpenings tells of openings that a thing lies over or hangs under. One with something in it that stands out of the skin is a foul.
func (w *worker) overOpenings(i int, s *Standing) {
	through := map[string]string{"outside": "roof", "under": "floor"}[w.in.Fittings[i].Where]
	for _, o := range w.in.Openings {
		gap := s.Box.MinZ - w.in.OuterRoof
		if through == "floor" {
			gap = w.in.Underside - s.Box.MaxZ
		}
		if o.Through != through || gap >= airGap || !o.meets(s.Box) || w.filled(o) {
			continue
		}
		w.find(finding.Finding{
			Code: "fit.covered", Severity: finding.Close, About: []string{pointer("fittings", w.in.Fittings[i].ID), o.pointer()},
			Title:    fmt.Sprintf("%s covers %s", w.name(i), o.called()),
			Words:    fmt.Sprintf("It lies over it with less than %d mm between. Air does not pass, and the hole cannot be reached to seal it. Move one of the two.", airGap),
			Measured: mm(max(0, gap)), Limit: mm(airGap), Source: outdoorsSource, Proposals: w.offOpening(i, s, o),
		})
	}
}

// overLids tells of roof vents whose lid comes up against what lies over them.
func (w *worker) overLids(i int, s *Standing) {
	for j := range w.in.Fittings {
		vent := w.resting(j)
		if vent == nil || !w.in.Fittings[j].Lid {
			continue
		}
		k := slices.IndexFunc(w.in.Openings, func(o Opening) bool { return w.in.Fittings[j].For == "shell.openings."+o.ID })
		gap := s.Box.MinZ - vent.Box.MaxZ
		need := lidRises * min(vent.Box.MaxX-vent.Box.MinX, vent.Box.MaxY-vent.Box.MinY)
		if k < 0 || gap < -touching || gap >= need-touching || !w.in.Openings[k].meets(s.Box) {
			continue
		}
		w.find(finding.Finding{
			Code: "fit.covered", Severity: finding.Close, About: []string{pointer("fittings", w.in.Fittings[i].ID), pointer("fittings", w.in.Fittings[j].ID)},
			Title:    fmt.Sprintf("The lid of %s comes up against %s", w.name(j), w.name(i)),
			Words:    fmt.Sprintf("Between them there is %s; a lid that opens by a third of a right angle takes about %s. Move one of the two, or raise what lies over it.", about(max(0, gap)), about(need)),
			Measured: mm(max(0, gap)), Limit: mm(need), Source: lidSource, Proposals: w.offOpening(i, s, w.in.Openings[k]),
		})
	}
}

// filled says whether something bought sits in an opening and stands out of it.
func (w *worker) filled(o Opening) bool {
	for i := range w.in.Fittings {
		if f := &w.in.Fittings[i]; w.throughSkin(i) && f.For == "shell.openings."+o.ID {
			return true
		}
	}
	return false
}

// throughSkin says whether a fitting sits in an opening and stands out of the skin: a fan, a window, a vent.
func (w *worker) throughSkin(i int) bool {
	f := &w.in.Fittings[i]
	return f.For != "" && f.Make == ""
}

// offOpening is to move a thing the shortest way along or across the van until it leaves an opening free.
func (w *worker) offOpening(i int, s *Standing, o Opening) []finding.Proposal {
	hole := solid.Bounds{MinX: o.X[0], MaxX: o.X[1], MinY: o.Y[0], MaxY: o.Y[1], MinZ: s.Box.MinZ - 1, MaxZ: s.Box.MaxZ + 1}
	best, far := [2]float64{}, 0.0
	for _, d := range [4][2]float64{{-1, 0}, {1, 0}, {0, -1}, {0, 1}} {
		if by := s.Solid.Exit(solid.Solid{solid.Box(hole)}, d[0], d[1], 0); far == 0 || by < far {
			best, far = d, by
		}
	}
	return w.nudge(i, best[0]*far, best[1]*far, 0, "")
}
