package fit

import (
	"fmt"

	"tumblehome/trade/finding"
)

// askMounting tells of a seat with belts of which nobody says how it is held: what holds it holds who sits there in a crash. Nothing is proposed:
// that a seat is safe must not be got by a click.
func (w *worker) askMounting(i int) {
	w.find(finding.Finding{
		Code: "fit.seat.mounting", Severity: finding.Close, Mode: "drive", About: []string{pointer("fittings", w.in.Fittings[i].ID)},
		Title: fmt.Sprintf("Nobody has said how %s, a seat with belts, is held", w.name(i)),
		Words: "In a crash its mounting holds the seat and everybody belted to it. It is bolted through the floor to a tested frame, never screwed to wood. " +
			"Once a workshop has taken that on, choose bolted under \"held while driving\" in the form of the seat, or write held: bolted with it in the file.",
		Source:  finding.Source{Text: "seats and belt anchorages are type-approved with their mounting (UN Regulations 14 and 17, from memory)", Sure: finding.Memory},
		Caution: "Have it mounted by a workshop with a tested mounting, and have that certified, before anybody rides on it.",
	})
}
