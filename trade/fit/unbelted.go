package fit

import (
	"encoding/json"
	"fmt"
	"slices"

	"tumblehome/trade/finding"
)

var beltSource = finding.Source{Text: "only seats whose belts and mountings were approved together may be ridden on (UN Regulations 14, 16 and 17, from memory; check locally)", Sure: finding.Memory}

// unbelted tells of people who ride, while the van is driven, on anything but a seat with belts. The cab's own seats are no fittings of the living space.
func (w *worker) unbelted() {
	drive := w.named("drive")
	if drive == nil {
		return
	}
	for _, pose := range drive.Poses {
		i, known := w.index[pose.At]
		if !known || len(drive.Standings[i].Solid) == 0 || drive.Standings[i].Box.MaxX <= w.in.Room.Front() {
			continue
		}
		if pose.Does != "sits" || !w.hasBelts(drive, i) {
			w.reportUnbelted(i, pose)
		}
	}
}

// hasBelts says whether a seat, or what it lies upon, was bought with belts or has one of the belted seats of the vehicle over it.
func (w *worker) hasBelts(mode *Mode, seat int) bool {
	if slices.ContainsFunc(w.in.Seats, func(s Seat) bool { return within(mode.Standings[seat].Box, s.Middle) }) {
		return true
	}
	for i, n := seat, 0; i >= 0 && n <= len(w.carriers); i, n = w.carriers[i], n+1 {
		if w.in.Fittings[i].Belted {
			return true
		}
	}
	return false
}

func (w *worker) reportUnbelted(i int, pose Pose) {
	name := pose.Person
	if p, ok := w.people[pose.Person]; ok {
		name = w.in.People[p].name()
	}
	out := finding.Finding{
		Code: "fit.seat.belts", Severity: finding.Danger, Mode: "drive", Source: beltSource,
		About: []string{pointer("people", pose.Person), pointer("fittings", w.in.Fittings[i].ID)},
		Title: fmt.Sprintf("%s rides on %s, which has no belts", name, w.name(i)),
		Words: "In a crash who rides there is thrown forward with many times their weight, and hits whoever sits before them. " +
			"Let everybody ride on a seat with belts; if this is one, write it down among the vehicle's seats.",
		Caution: "Nobody rides on a bed, a bench or a box, for no distance.",
	}
	if pose.Does != "sits" {
		out.Title = fmt.Sprintf("%s %s at %s while the van is driven", name, pose.Does, w.name(i))
		out.Words = "In a crash who does not sit belted is thrown forward with many times their weight, and hits whoever sits before them. Let everybody ride on a seat with belts."
	}
	patch, err := json.Marshal(map[string]any{"modes": map[string]any{"drive": map[string]any{"people": map[string]any{pose.Person: nil}}}})
	if err == nil {
		out.Proposals = []finding.Proposal{{Words: "let " + name + " ride in the cab", Patch: patch}}
	}
	w.find(out)
}
