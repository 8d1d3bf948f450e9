package reckon

import (
	"encoding/json"
	"slices"
	"strconv"

	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/trade/cables"
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

// joint is how the things of a van are joined, while more are joined to it.
type joint struct {
	*stages
	named                    map[string]bool
	banks, sources, circuits map[string][]string // what each names already
	sun                      string              // the source of the panels
	changed                  map[string]map[string]any
}

func (w *stages) joint() *joint {
	j := &joint{stages: w, named: map[string]bool{}, banks: map[string][]string{}, sources: map[string][]string{}, circuits: map[string][]string{}, changed: map[string]map[string]any{}}
	if p := w.doc.Power; p != nil {
		for id, b := range p.Batteries {
			j.banks[id] = b.Is
			j.name(b.Is...)
		}
		for _, id := range build.SortedKeys(p.Sources) {
			s := p.Sources[id]
			j.sources[id] = s.Is
			j.name(append([]string{s.By}, s.Is...)...)
			if w.kindOf(s) == cables.Sun {
				j.sun = id
			}
		}
		for id, c := range p.Circuits {
			j.circuits[id] = c.Loads
			j.name(c.Loads...)
		}
	}
	return j
}

func (j *joint) name(ids ...string) {
	for _, id := range ids {
		j.named[id] = true
	}
}

// bank is the battery bank that things are joined to, or none.
func (j *joint) bank() string {
	if ids := build.SortedKeys(j.banks); len(ids) > 0 {
		return ids[0]
	}
	return ""
}

func (j *joint) join(id, kind string) {
	bank := j.bank()
	switch {
	case kind == Feeds:
		if bank == "" {
			bank = "house"
		}
		j.add(j.banks, "batteries", bank, "is", id)
	case bank == "":
	case kind == Charges && j.things[id].charges() == cables.Sun:
		if j.sun == "" {
			j.sun = unused("sun", j.sources)
			j.put("sources", j.sun, "to", bank)
		}
		j.add(j.sources, "sources", j.sun, "is", id)
	case kind == Charges:
		source := unused(id, j.sources)
		j.add(j.sources, "sources", source, "is", id)
		j.put("sources", source, "to", bank)
	case kind == Controls && j.sun != "":
		j.put("sources", j.sun, "by", id)
	case kind == IsFed:
		j.feed(id, bank)
	}
}

// lights is the circuit that lamps share.
const lights = "lights"

func (j *joint) feed(id, bank string) {
	circuit := unused(id, j.circuits)
	_, shared := j.circuits[lights]
	if appliance(j.things[id]) == cables.Light {
		circuit = lights
	}
	if circuit != lights || !shared {
		j.put("circuits", circuit, "from", bank)
	}
	j.add(j.circuits, "circuits", circuit, "loads", id)
}

// add puts one more thing into a list.
func (j *joint) add(lists map[string][]string, section, id, key, thing string) {
	lists[id] = append(slices.Clone(lists[id]), thing)
	j.put(section, id, key, lists[id])
}

func (j *joint) put(section, id, key string, value any) {
	if j.changed[section] == nil {
		j.changed[section] = map[string]any{}
	}
	item, _ := j.changed[section][id].(map[string]any)
	if item == nil {
		item = map[string]any{}
		j.changed[section][id] = item
	}
	item[key] = value
}

// patch is the merge patch of what was joined; none of nothing.
func (j *joint) patch() json.RawMessage {
	if len(j.changed) == 0 {
		return nil
	}
	text, err := json.Marshal(map[string]any{"power": j.changed})
	if err != nil {
		return nil // maps, lists and text always marshal
	}
	return text
}

// unused is an id that none of a collection has.
func unused(id string, taken map[string][]string) string {
	free := id
	for n := 2; ; n++ {
		if _, ok := taken[free]; !ok {
			return free
		}
		free = id + "-" + strconv.Itoa(n)
	}
}
