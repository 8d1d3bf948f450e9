package web

import (
	"cmp"

	"tumblehome/build"
)

// fittingEntries are the values of a fitting that a builder changes by hand.
func fittingEntries(doc *build.Document, id string) []entry {
	at, f := "/fittings/"+id, doc.Fittings[id]
	out := []entry{{Path: at + "/called", Label: "name"}}
	if f.For == "" {
		out = append(out,
			fieldOf(at+"/at/x", "place along, from the front", "mm"), fieldOf(at+"/at/y", "place across, from the middle", "mm"),
			fieldOf(at+"/at/z", "height above the floor", "mm"), fieldOf(at+"/turn", "turned, seen from above", "degrees"))
	}
	out = append(out, fieldOf(at+"/size/x", "length", "mm"), fieldOf(at+"/size/y", "width", "mm"), fieldOf(at+"/size/z", "height", "mm"))
	if f.Make != "" {
		out = append(out, fieldOf(at+"/of", "made of the board", ""))
	}
	if f.Where == "outside" {
		out = append(out, entry{Path: at + "/on-door", Label: "hangs on the door, and swings with it", Choices: doorChoices(doc)})
	}
	held := append([]choice{{"", "not said"}}, wordsAllowed("screwed", "bolted", "strapped", "latched", "wedged", "bonded", "loose")...)
	out = append(out, entry{Path: at + "/held", Label: "held while driving", Choices: held})
	if f.For == "" && (f.Make != "" || len(f.Scribe) > 0) {
		out = append(out, entry{Path: at + "/scribe", Label: "cut to follow the lining at", Ticks: true, Choices: linedSides})
	}
	return append(out,
		fieldOf(at+"/mass", "mass", "kg"),
		fieldOf(at+"/fitted", "in the van since", ""),
		entry{Path: at + "/note", Label: "remark", Long: true})
}

// doorChoices are the doors on which a thing outside may hang, and none.
func doorChoices(doc *build.Document) []choice {
	out := []choice{{"", "on none"}}
	for _, id := range build.SortedKeys(doc.Shell.Openings) {
		if o := doc.Shell.Openings[id]; o.Door != "" {
			out = append(out, choice{id, cmp.Or(o.Title, unhyphen(id))})
		}
	}
	return out
}

// linedSides are the surfaces of the room to which a face of a thing may be cut.
var linedSides = []choice{{"left", "the left side"}, {"right", "the right side"}, {"front", "the front"}, {"rear", "the rear"}, {"roof", "the roof"}}
