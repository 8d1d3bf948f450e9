package web

import (
	"cmp"
	"net/http"
	"strings"

	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/internal/store"
)

// keepAlternative keeps the build without one fitting as an alternative, with all that hangs on the fitting.
func (s *Server) keepAlternative(w http.ResponseWriter, r *http.Request) {
	base, err := baseOf(r)
	if err == nil {
		err = s.saveAlternative(r, base)
	}
	if err != nil {
		s.refuse(w, r, err, nil)
		return
	}
	s.done(w, r)
}

func (s *Server) saveAlternative(r *http.Request, base int) error {
	then, err := s.desk.at(r.Context(), base)
	if err != nil {
		return err
	}
	doc := then.Node
	id, name, why := r.PostFormValue("fitting"), strings.TrimSpace(r.PostFormValue("new")), strings.TrimSpace(r.PostFormValue("why"))
	if doc.At(tree.PointerTo("fittings", id)) == nil || id == "" {
		return errUnsaid("Choose the thing that the alternative does without.")
	}
	if why == "" {
		return errUnsaid("Say what question the alternative answers.")
	}
	kept, err := then.withoutFitting(id, why, s.desk.rows)
	if err != nil {
		return err
	}
	taken := map[string]bool{}
	for _, e := range entries(doc.At("/alternatives")) {
		taken[e.Key] = true
	}
	at := tree.PointerTo("alternatives", free(cmp.Or(asID(name), shortID("no-"+id)), taken))
	_, err = s.desk.save(r.Context(), store.Edit{Base: base, Patch: tree.Setting(at, kept), Words: "alternative kept: without " + then.name(id)})
	return err
}

// withoutFitting is the alternative that takes out a fitting with what hangs on it. What stays, but otherwise, is changed in it.
func (s *state) withoutFitting(id, why string, rows *catalogue.Catalogue) (*tree.Node, error) {
	alone := tree.Remove(s.Node, "/alternatives") // what these take out is their own affair
	rest, _, err := s.takenOut(alone, id, rows)
	if err != nil {
		return nil, errUnsaid(capital(s.name(id)) + " is wanted elsewhere in a way that cannot be undone by itself. Take it out there first; the button take out of the thing says where.")
	}
	out, with := []*tree.Node{}, tree.MapOf()
	for _, p := range tree.Difference(alone, rest).Touches() {
		if now := rest.At(p); now != nil {
			with = tree.Merge(with, tree.Setting(p, now))
		} else {
			out = append(out, tree.Plain(p.Path()))
		}
	}
	kept := tree.MapOf(tree.Entry{Key: "why", Value: tree.Plain(why)}, tree.Entry{Key: "without", Value: tree.ListOf(out...)})
	if len(with.Entries) > 0 {
		kept.Entries = append(kept.Entries, tree.Entry{Key: "with", Value: with})
	}
	return kept, nil
}
