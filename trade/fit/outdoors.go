package fit

import (
	"fmt"

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
