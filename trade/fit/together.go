package fit

import (
	"fmt"

	"tumblehome/trade/finding"
)

// sitsWide is how much of a bench a grown person takes up [mm], as large as most; others in the proportion of their stature. Common practice, no source.
const sitsWide, asMost = 450.0, 1750.0

// together tells of seats on which more sit in a mode than have room side by side, once for a seat.
func (w *worker) together() {
	told := map[int]bool{}
	for m := range w.in.Modes {
		mode := &w.in.Modes[m]
		sitters := map[int][]string{}
		var order []int
		for _, pose := range mode.Poses {
			i, ok := w.index[pose.At]
			if !ok || pose.Does != "sits" || len(mode.Standings[i].Solid) == 0 {
				continue
			}
			if len(sitters[i]) == 0 {
				order = append(order, i)
			}
			sitters[i] = append(sitters[i], pose.Person)
		}
		for _, i := range order {
			b := mode.Standings[i].Box
			wide := max(b.MaxX-b.MinX, b.MaxY-b.MinY)
			if need := w.sideBySide(sitters[i]); len(sitters[i]) > 1 && need > wide+touching && !told[i] {
				told[i] = true
				w.reportTogether(mode, i, sitters[i], wide, need)
			} else if len(sitters[i]) > 1 && !told[i] {
				told[i] = w.placesLost(mode, i, sitters[i])
			}
		}
	}
}

// sideBySide is how much of a bench some people take up together.
func (w *worker) sideBySide(who []string) float64 {
	need := 0.0
	for _, id := range who {
		stature := float64(asMost)
		if k, known := w.people[id]; known {
			stature = w.in.People[k].Stature
		}
		need += sitsWide * stature / asMost
	}
	return need
}

func (w *worker) reportTogether(mode *Mode, seat int, who []string, wide, need float64) {
	whom := []string{pointer("fittings", w.in.Fittings[seat].ID)}
	for _, id := range who {
		whom = append(whom, pointer("people", id))
	}
	w.find(finding.Finding{
		Code: "fit.seat.width", Severity: finding.Fault, Mode: mode.Name, About: whom,
		Title:    fmt.Sprintf("%d sit on %s, which has room for %s", len(who), w.name(seat), counted(int(wide/need*float64(len(who))))),
		Words:    fmt.Sprintf("It is %s long; side by side they take up about %s. Let some sit elsewhere.", about(wide), about(need)),
		Measured: mm(wide), Limit: mm(need), Source: finding.Source{Text: "450 mm of a bench for a grown person: common practice, no source", Sure: finding.Practice},
		Proposals: w.longerSeat(mode, seat, need-wide),
	})
}

// longerSeat proposes a longer seat where it has room to grow at its far end.
func (w *worker) longerSeat(mode *Mode, seat int, by float64) []finding.Proposal {
	b := mode.Standings[seat].Box
	axis, far := 0, attempt{thing: seat, by: [3]float64{by, 0, 0}}
	if b.MaxY-b.MinY > b.MaxX-b.MinX {
		axis, far.by = 1, [3]float64{0, by, 0}
	}
	if by > farthest || !w.hasRoom(far) {
		return nil
	}
	return w.resize(seat, axis, by, "longer", "shorter")
}

// counted is a number of people in words, where it is a small one.
func counted(n int) string {
	if n < 5 {
		return [...]string{"nobody", "one", "two", "three", "four"}[n]
	}
	return fmt.Sprint(n)
}
