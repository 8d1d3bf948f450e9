package reckon

import (
	"encoding/json"

	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/trade/power"
)

// What a thing that is not joined up could be told to be.
const (
	Feeds    = "feeds"    // a battery
	Charges  = "charges"  // a panel, a charger, a relay
	Controls = "controls" // what stands between panels and battery
	IsFed    = "is fed"   // what draws current
)

// Unjoined is an electrical thing that stands in the van and that neither a battery bank, a source nor a circuit names.
type Unjoined struct {
	ID, Name, Is string
	Patch        json.RawMessage // that joins it; none while there is no battery to join it to
}

// Unjoined are the things that are not joined up yet, batteries first, and the patch that joins up all of them at once.
func (r *Reckoning) Unjoined() (all []Unjoined, together json.RawMessage) {
	rows := catalogue.Builtin().Overlay(r.Document.Catalogue)
	w := &stages{doc: r.Document, rows: rows, things: completed(r.Document, rows)}
	everything := w.joint()
	for _, kind := range []string{Feeds, Charges, Controls, IsFed} {
		for _, id := range build.SortedKeys(w.things) {
			if w.couldBe(id) != kind || everything.named[id] {
				continue
			}
			alone := w.joint()
			alone.join(id, kind)
			everything.join(id, kind)
			all = append(all, Unjoined{id, nameOf(id, w.things[id].Fitting), kind, alone.patch()})
		}
	}
	return all, everything.patch()
}

// couldBe says what a thing does with electricity, or nothing.
func (w *stages) couldBe(id string) string {
	t := w.things[id]
	if t.row == nil || t.later() {
		return ""
	}
	var s power.Source
	w.addSource(&s, t)
	switch {
	case valueOf(t.row.AmpHours) > 0:
		return Feeds
	case s.Kind != "":
		return Charges
	case isController(t):
		return Controls
	case valueOf(t.row.Volts).Float() > 0 && valueOf(t.row.Volts).Float() < lowVoltage && valueOf(t.row.Watts).Float() > 0:
		return IsFed
	}
	return ""
}
