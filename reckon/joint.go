package reckon

import (
	"encoding/json"
	"slices"
	"strconv"

	"tumblehome/build"
	"tumblehome/trade/cables"
)

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
