package reckon

import (
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/trade/cables"
)

// only is the one fitting between a bank and its circuits that is bought as a row of this kind; nil when there is none, or more than one.
func (w *stages) only(row, bank string) *cables.Part {
	var found *cables.Part
	for _, id := range w.ids() {
		if !strings.HasPrefix(w.things[id].Buy, row) || w.ownerOf(id) != bank {
			continue
		}
		if found != nil {
			return nil
		}
		found = w.part(id)
	}
	return found
}

// ownerOf is the bank that an isolator, a shunt, a busbar or a fuse board belongs to: the one whose circuit names it, or else the one with the most circuits.
func (w *stages) ownerOf(part string) string {
	count := map[string]int{}
	for _, id := range build.SortedKeys(w.doc.Power.Circuits) {
		c := w.doc.Power.Circuits[id]
		bank := w.bankBefore(c.From)
		if slices.Contains(c.Loads, part) {
			return bank
		}
		count[bank]++
	}
	best := ""
	for _, id := range build.SortedKeys(w.doc.Power.Batteries) {
		if best == "" || count[id] > count[best] {
			best = id
		}
	}
	return best
}

// bankBefore is the bank at the beginning of a row of circuits; "" where there is none.
func (w *stages) bankBefore(from string) string {
	for range len(w.doc.Power.Circuits) + 1 {
		if _, bank := w.doc.Power.Batteries[from]; bank {
			return from
		}
		from = w.doc.Power.Circuits[from].From
	}
	return ""
}
