package web

import (
	"slices"
	"strings"

	"tumblehome/build/tree"
)

// errHeld says what keeps a fitting from being taken out.
type errHeld struct {
	ID     string
	Doc    *tree.Node
	Places []tree.Pointer
	Final  bool // not even together with these places
}

func (e *errHeld) Error() string {
	ids := strings.Split(e.ID, ",")
	says := capital(namesIn(e.Doc, ids)) + " is still wanted elsewhere."
	if len(ids) > 1 {
		says = capital(namesIn(e.Doc, ids)) + " are still wanted elsewhere."
	}
	if e.Final {
		says += " Take it out there first."
	}
	return says
}

// inFull is the sentence with the places, for a reader who sees no list.
func (e *errHeld) inFull() string {
	parts := []string{e.Error()}
	for _, l := range e.lists() {
		parts = append(parts, l.Title+": "+strings.Join(l.Items, "; ")+".")
	}
	return strings.Join(parts, " ")
}

// heldList is what becomes of some of what hangs on a thing that is taken out.
type heldList struct {
	Title string
	Items []string
}

// lists say what goes with it, what stays where it is, and who has nowhere to lie or sit then.
func (e *errHeld) lists() []heldList {
	var goes, stays, people []string
	for _, p := range e.Places {
		switch steps := p.Steps(); {
		case len(steps) > 3 && steps[0] == "fittings" && steps[2] == "at":
			stays = append(stays, called(e.Doc, "fittings", steps[1]))
		case len(steps) == 3 && steps[0] == "fittings" && (steps[2] == "in" || steps[2] == "upon" || steps[2] == "for"):
			goes = append(goes, called(e.Doc, "fittings", steps[1]))
		case len(steps) > 4 && steps[0] == "modes" && steps[2] == "people":
			people = append(people, called(e.Doc, "people", steps[3])+" "+steps[4]+" nowhere yet ("+unhyphen(steps[1])+")")
		default:
			goes = append(goes, pathWords(p.Path()))
		}
	}
	var out []heldList
	for _, l := range []heldList{{e.goesTitle(), goes}, {"Stays where it stands now", stays}, {"Then", people}} {
		slices.Sort(l.Items)
		if l.Items = slices.Compact(l.Items); len(l.Items) > 0 {
			out = append(out, l)
		}
	}
	return out
}

func (e *errHeld) goesTitle() string {
	if e.Final {
		return "Wanted at"
	}
	return "Goes with it"
}
