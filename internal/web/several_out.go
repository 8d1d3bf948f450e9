package web

import (
	"net/http"
	"slices"
	"strings"

	"tumblehome/build/tree"
	"tumblehome/internal/store"
)

// deleteFitting takes fittings out; with=yes takes out with them what hangs on them.
func (s *Server) deleteFitting(w http.ResponseWriter, r *http.Request) {
	base, err := baseOf(r)
	if err == nil {
		err = s.takeOut(r, base)
	}
	if err != nil {
		s.refuse(w, r, err, nil)
		return
	}
	s.done(w, r)
}

func (s *Server) takeOut(r *http.Request, base int) error {
	then, err := s.desk.at(r.Context(), base)
	if err != nil {
		return err
	}
	doc := then.Node
	ids, err := named(r, doc)
	if err != nil {
		return err
	}
	rest, hung, err := s.without(then, ids)
	words := "taken out: " + namesIn(doc, ids)
	together := strings.Join(ids, ",")
	switch {
	case err != nil:
		return &errHeld{ID: together, Doc: doc, Places: hung, Final: true}
	case len(hung) > 0 && r.PostFormValue("with") != "yes":
		return &errHeld{ID: together, Doc: doc, Places: hung}
	case len(hung) > 0:
		words += ", with what hangs on it"
	}
	_, err = s.desk.save(r.Context(), store.Edit{Base: base, Patch: tree.Difference(doc, rest), Words: words})
	return err
}

// without is a document without some fittings, and the places of what stays that hung on them.
func (s *Server) without(then *state, ids []string) (rest *tree.Node, hung []tree.Pointer, err error) {
	rest = then.Node
	for _, id := range ids {
		if rest.At(tree.PointerTo("fittings", id)) == nil {
			continue // it went with what carried it
		}
		var places []tree.Pointer
		rest, places, err = then.takenOut(rest, id, s.desk.rows)
		for _, p := range places {
			if steps := p.Steps(); len(steps) < 2 || steps[0] != "fittings" || !slices.Contains(ids, steps[1]) {
				hung = append(hung, p)
			}
		}
		if err != nil {
			return rest, hung, err
		}
	}
	return rest, hung, nil
}
