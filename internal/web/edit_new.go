package web

import (
	"cmp"
	"errors"
	"net/http"
	"slices"
	"strings"

	"tumblehome/build/begin"
	"tumblehome/build/tree"
	"tumblehome/internal/store"
)

// newID stands in the paths of a form for the id of an item that is yet to be named.
const newID = "{new}"

// withNewID puts an id made from a name, and not yet taken, in place of {new}. A name of other letters than an id has is kept beside it.
func withNewID(doc *tree.Node, changes []change, name string) []change {
	out := slices.Clone(changes)
	for i, c := range out {
		before, after, found := strings.Cut(string(c.Path), "/"+newID)
		if !found {
			continue
		}
		taken := map[string]bool{}
		for _, e := range entries(doc.At(tree.Pointer(before))) {
			taken[e.Key] = true
		}
		item := before + "/" + free(idIn(before, name), taken)
		out[i].Path = tree.Pointer(item + after)
		kept := change{Path: tree.Pointer(item + "/" + namesAt[before]), Value: name}
		if namesAt[before] != "" && !plainLetters(name) && !slices.Contains(out, kept) {
			out = append(out, kept)
		}
	}
	return out
}

// idIn is an id made of a name: accents are left off, and one without a letter of the Latin alphabet is called by what it is.
func idIn(section, name string) string {
	if plainLetters(name) {
		return cmp.Or(asID(name), "new")
	}
	return cmp.Or(asID(begin.ID(name)), oneOf[section], "new")
}

func plainLetters(name string) bool {
	return !strings.ContainsFunc(name, func(r rune) bool { return r > 127 })
}

// namesAt are the keys under which items of a collection have a name beside their id.
var namesAt = map[string]string{"/power/circuits": "called", "/people": "called", "/shell/openings": "title", "/vehicle/cases": "title"}

// oneOf is what an item of a collection is.
var oneOf = map[string]string{"/power/circuits": "circuit", "/power/sources": "source", "/power/batteries": "bank", "/people": "person", "/shell/openings": "opening",
	"/shell/ribs": "rib", "/shell/defects": "defect", "/shell/offsets/stations": "station", "/vehicle/cases": "case", "/vehicle/weighed": "ticket", "/use/trips": "trip", "/use/gear": "thing", "/removed": "part"}

// addedAlready says of a new item that was not saved whether it stands there just so: the button was pressed twice.
func (s *Server) addedAlready(r *http.Request, w wish, unsaved error) bool {
	var clash *store.Conflict
	if w.newName == "" || !errors.Is(unsaved, store.ErrNoChange) && !errors.As(unsaved, &clash) {
		return false
	}
	base, err := s.desk.base(r.Context(), w.Revision)
	if err != nil {
		return false
	}
	now, err := s.desk.head(r.Context())
	if err != nil {
		return false
	}
	return !slices.ContainsFunc(withNewID(base, w.changes, w.newName), func(c change) bool {
		return valueText(now.Node, c.Path) != strings.TrimSpace(c.Value)
	})
}
