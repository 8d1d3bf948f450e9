package web

import (
	"fmt"
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/trade/cables"
	"tumblehome/trade/runs"
)

// led is a cable as the section of the ways knows it.
type led struct {
	ID, Number, Name string
	Path             string // of the circuit or source
	Source           bool
	Along            []string
}

// label is how a cable is told: its number and where it leads.
func (c led) label() string { return strings.TrimSpace(c.Number + " " + c.Name) }

// cable is its line in the schedule, or nil. The lead of a source stands there under the source too where nothing is written of it.
func (c led) cable(v view) *cables.Cable {
	for i := range v.Cables.Cables {
		if known := &v.Cables.Cables[i]; known.About == c.Path && known.Role != cables.Lead && known.Role != cables.Bond {
			return known
		}
	}
	return nil
}

// ledCables are all circuits and sources that are written down.
func ledCables(v view) []led {
	if v.Doc.Power == nil {
		return nil
	}
	var out []led
	add := func(section, id string, source bool, along []string) {
		c := led{ID: id, Name: unhyphen(id), Path: "/power/" + section + "/" + id, Source: source, Along: along}
		if known := c.cable(v); known != nil {
			c.Number, c.Name = known.Number, known.To.Words
		}
		out = append(out, c)
	}
	for _, id := range build.SortedKeys(v.Doc.Power.Circuits) {
		add("circuits", id, false, v.Doc.Power.Circuits[id].Along)
	}
	for _, id := range build.SortedKeys(v.Doc.Power.Sources) {
		add("sources", id, true, v.Doc.Power.Sources[id].Along)
	}
	return out
}

// waysAnswer says how many cables have a way.
func waysAnswer(v view) string {
	all := ledCables(v)
	if len(all) == 0 {
		return "Once a circuit is written down, its cable can be led here."
	}
	without := len(withoutWay(v))
	switch {
	case without == 0 && len(unledWords(v)) > 0:
		return "Every cable that wants a way has one."
	case without == 0:
		return "Every cable has a way."
	case without == len(all):
		return "No cable has a way yet: each is taken to follow the walls, floor and roof the shortest way round, which is a guess."
	}
	return fmt.Sprintf("%s of %s have no way yet: they are taken to follow the walls, floor and roof the shortest way round, which is a guess.", capital(count(without)), cableCount(len(all)))
}

// shortLead is up to what length a cable between things that stand together wants no way of its own [mm]: practice, no source.
const shortLead = 1000

// unledWords say of the cables that no way can be written for (leads, and the cable from the battery where nobody wrote it) which they are.
func unledWords(v view) []string {
	var short, long []string
	for _, c := range v.Cables.Cables {
		switch written := c.Role == cables.Feed || c.Role == cables.Charge || c.Role == cables.Trunk && c.ID != ""; {
		case written:
		case c.Length.MM <= shortLead:
			short = append(short, c.Number)
		default:
			long = append(long, fmt.Sprintf("%s (%s)", c.Number, metres(c.Length.MM)))
		}
	}
	var out []string
	if len(short) > 0 {
		out = append(out, joined(short)+": short, no way needed.")
	}
	if len(long) > 0 {
		out = append(out, joined(long)+": no way can be written for what leads between battery, fuse board and chargers; its length is guessed from where they stand, unless you measure it.")
	}
	return out
}

func withoutWay(v view) []led {
	return slices.DeleteFunc(ledCables(v), func(c led) bool { return len(c.Along) > 0 })
}

// metres is a length as one cuts it, to the 100 mm.
func metres(mm float64) string { return fmt.Sprintf("%.1f m", mm/1000) }

// lengthNow says how long a cable without a way is, and how that is known.
func lengthNow(v view, c led) string {
	r := v.Runs.Route(c.ID, c.Source)
	switch {
	case r != nil && r.Circuit.Written != nil:
		return metres(*r.Circuit.Written) + " one way, as measured"
	case r != nil && r.Known:
		said := metres(r.Reckoned) + " one way, guessed"
		if under := v.Runs.Underfoot(r); len(under) > 0 {
			said += "; as guessed it " + joined(under) + ": lead it"
		}
		return said
	}
	return "length not known: what it leads from or to has no place yet"
}

// offeredWay is a way for a cable, one click away.
type offeredWay struct{ Words, Meets, Patch, Says string }

// offersOfWays are the ways that a cable could take.
func offersOfWays(v view, c led) []offeredWay {
	var out []offeredWay
	for _, o := range v.Runs.Offers(c.ID, c.Source) {
		way, ways := o.Way, map[string]any(nil)
		words := fmt.Sprintf("in the way %s: %s", unhyphen(o.Way), metres(o.Length))
		if o.Way == "" {
			manner := runs.MannerFor(sectionOf(v, c))
			way = free(shortID(c.ID)+"-way", v.Doc.Runs)
			ways = wayItem(o.Corners, manner)
			words = fmt.Sprintf("a new way %s: %s", o.Path.Words, metres(o.Length))
		}
		out = append(out, offeredWay{words, joined(o.Meets), wayPatch(v, way, ways, []led{c}), c.Name + " led " + strings.TrimPrefix(words, "a new way ")})
	}
	return out
}

func sectionOf(v view, c led) float64 {
	if known := c.cable(v); known != nil {
		return known.Section.MM2
	}
	return 0
}

// waySummary says of a way how long it is, of what, and what lies in it.
func waySummary(v view, id string) string {
	text := capital(unhyphen(id))
	l := v.Runs.Way(id)
	if l != nil && l.Length > 0 {
		text += ": " + metres(l.Length)
	}
	if bore := v.Doc.Runs[id].Bore; bore != nil {
		text += fmt.Sprintf(", conduit %.0f mm inside", bore.Float())
	}
	var carries []string
	for _, c := range ledCables(v) {
		if slices.Contains(c.Along, id) {
			carries = append(carries, c.label())
		}
	}
	if len(carries) == 0 {
		return text + ", empty"
	}
	return text + ", carries " + strings.Join(carries, ", ")
}
