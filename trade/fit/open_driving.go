package fit

import (
	"fmt"
	"slices"

	"tumblehome/trade/finding"
)

// opensOut says whether a thing is a drawer, or has a lid, doors or drawers, so that out of its place it is open.
func (w *worker) opensOut(i int) bool {
	return w.slidesOut(i) || slices.ContainsFunc(w.in.Parts, func(p Part) bool { return p.Fitting == i && p.Kind != "flap" })
}

// openDriving tells of lids that are up and drawers that are out while the van is driven. What stands out of the room so is told of as that.
func (w *worker) openDriving() {
	drive := w.named("drive")
	if drive == nil {
		return
	}
	for _, m := range drive.Movers {
		s := &drive.Standings[m.Fitting]
		if !s.Moved || len(s.Solid) == 0 || m.ByHand || !w.opensOut(m.Fitting) {
			continue
		}
		w.leftOpen = true
		back := w.leftThere(drive, m.Fitting)
		if len(back) == 0 || slices.ContainsFunc(w.result.Findings, func(f finding.Finding) bool {
			return f.Code == "fit.sticks-out" && f.Mode == drive.Name && f.About[0] == pointer("fittings", w.in.Fittings[m.Fitting].ID)
		}) {
			continue
		}
		w.find(finding.Finding{
			Code: "fit.door.open", Severity: finding.Fault, Mode: drive.Name, About: []string{pointer("fittings", w.in.Fittings[m.Fitting].ID)},
			Title:     fmt.Sprintf("%s is open while the van is driven", w.name(m.Fitting)),
			Words:     "A lid that is up falls, a drawer that is out shoots on, and what is in it flies out. Shut it to drive; say in another mode that it is open.",
			Source:    finding.Source{Text: "driven with everything shut: common practice, no source", Sure: finding.Practice},
			Proposals: back,
		})
	}
}
