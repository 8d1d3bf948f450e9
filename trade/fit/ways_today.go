package fit

import (
	"slices"

	"tumblehome/trade/working"
)

// waysToday counts the ways out with only what is in the van today, where that is not all: beds are where they will be, on the floor if
// they are not in yet.
func (w *worker) waysToday() {
	mode := w.named("night")
	if mode == nil || w.allIn() || !slices.ContainsFunc(w.in.Fittings, func(f Fitting) bool { return f.Today }) {
		return
	}
	places := slices.DeleteFunc(w.places(mode), func(p place) bool { return !p.lies })
	if len(places) == 0 {
		return
	}
	shut := w.shut(mode, true)
	w.count(mode, places, shut, true)
	worst, wanted := fewest(places), float64(waysWanted)
	how := w.waysWorking(worst, shut, float64(len(worst.ways)))
	how.Notes = append(how.Notes, "With only what is in the van today; openings still to be cut are no way out.")
	w.show(working.Figure{Code: "fit.today.ways-out", Value: float64(len(worst.ways)), Unit: "1", Label: "Ways out at night as the van stands today", Limit: &wanted, Least: true,
		Words: "from where " + w.name(worst.at) + " is or will be"}, how)
	if len(worst.ways) < waysWanted {
		out := w.tooFew("fit.way-out.today", mode, places, " as the van stands today")
		out.Words += " This is about sleeping in the half-built van, with only what is in it today."
		w.find(out)
	}
}

// allIn says whether the van is as it will be.
func (w *worker) allIn() bool {
	return !slices.ContainsFunc(w.in.Fittings, func(f Fitting) bool { return !f.Today && !f.Later }) &&
		!slices.ContainsFunc(w.in.Openings, func(o Opening) bool { return o.WayOut && !o.Made })
}
