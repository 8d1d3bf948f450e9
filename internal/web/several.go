package web

import (
	"net/http"
	"slices"
	"strings"

	"tumblehome/build/tree"
	"tumblehome/internal/store"
)

// mostAtOnce is how many fittings one change names.
const mostAtOnce = 200

// named are the fittings that an address names: one, or several with commas between them.
func named(r *http.Request, doc *tree.Node) ([]string, error) {
	ids := strings.Split(r.PathValue("id"), ",")
	slices.Sort(ids)
	if ids = slices.Compact(ids); len(ids) > mostAtOnce {
		return nil, errUnreadable("that is more than is changed at once")
	}
	for _, id := range ids {
		if doc.At(tree.PointerTo("fittings", id)) == nil {
			return nil, errUnreadable("there is no " + unhyphen(strings.ToValidUTF8(id, "?")))
		}
	}
	return ids, nil
}

// namesIn names a few fittings of a document: "galley", "galley and table", "galley, table and 3 more".
func namesIn(doc *tree.Node, ids []string) string {
	names := make([]string, len(ids))
	for i, id := range ids {
		names[i] = called(doc, "fittings", id)
	}
	if len(names) > 3 {
		names = append(names[:2:2], count(len(names)-2)+" more")
	}
	if n := len(names); n > 1 {
		return strings.Join(names[:n-1], ", ") + " and " + names[n-1]
	}
	return strings.Join(names, "")
}

// duplicateFitting puts another one like it beside it, with all that it carries; of several, all of them side by side as they stand.
func (s *Server) duplicateFitting(w http.ResponseWriter, r *http.Request) {
	var made []string
	base, err := baseOf(r)
	if err == nil {
		made, err = s.saveAnother(r, base)
	}
	if err != nil {
		s.refuse(w, r, err, nil)
		return
	}
	s.done(w, r, made...)
}

func (s *Server) saveAnother(r *http.Request, base int) ([]string, error) {
	then, err := s.desk.at(r.Context(), base)
	if err != nil {
		return nil, err
	}
	asked, err := named(r, then.Node)
	if err != nil {
		return nil, err
	}
	ids := then.withCarried(asked)
	if len(ids) > mostAtOnce {
		return nil, errUnreadable("that is more than is changed at once")
	}
	names := then.copyNames(ids)
	patch, placed, err := s.beside(then, ids, names, len(asked) == 1)
	if err != nil {
		return nil, err
	}
	words := "another one like " + namesIn(then.Node, asked)
	if !placed {
		words += ", which waits for a place"
	}
	_, err = s.desk.save(r.Context(), store.Edit{Base: base, Patch: patch, Words: words})
	var made []string // what was asked for; what it carries goes without saying
	for i, id := range ids {
		if slices.Contains(asked, id) {
			made = append(made, names[i])
		}
	}
	return made, err
}
