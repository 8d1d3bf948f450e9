package web

import (
	"cmp"
	"net/http"
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/internal/store"
	"tumblehome/trade/runs"
)

// addWay lays a way as a form asks for it, and lets the cables ticked take it: one change.
func (s *Server) addWay(w http.ResponseWriter, r *http.Request) {
	e, err := s.wayOf(r)
	if err == nil {
		_, err = s.desk.save(r.Context(), e)
	}
	if err != nil {
		s.refuse(w, r, err, nil)
		return
	}
	s.done(w, r)
}

func (s *Server) wayOf(r *http.Request) (store.Edit, error) {
	base, err := baseOf(r)
	if err != nil {
		return store.Edit{}, err
	}
	then, err := s.desk.at(r.Context(), base)
	if err != nil {
		return store.Edit{}, err
	}
	v := view{state: then, server: s}
	path, known := chosenPath(r.PostFormValue("path"))
	manner, made := chosenManner(r.PostFormValue("manner"))
	from, begins := spotNamed(v, r.PostFormValue("from"))
	to, ends := spotNamed(v, r.PostFormValue("to"))
	switch {
	case !known || !made:
		return store.Edit{}, errUnreadable("the form does not say which path the way takes, or what it is made of")
	case !begins || !ends:
		return store.Edit{}, errUnsaid("What the way leads from or to has no place in the van yet. Put it on the drawing first, then lead the way there.")
	}
	corners := v.Runs.Lay(path, manner, from, to)
	if len(corners) < 2 {
		return store.Edit{}, errUnsaid("The way would begin and end at the same place. Choose another place for one of its ends.")
	}
	name := strings.TrimSpace(r.PostFormValue("new"))
	id := free(cmp.Or(asID(name), path.ID), v.Doc.Runs)
	patch, err := tree.ParsePatch([]byte(wayPatch(v, id, wayItem(corners, manner), cablesTicked(v, r.PostForm["cable"]))))
	return store.Edit{Base: base, Patch: patch, Words: clipped("added the way " + unhyphen(id) + ", " + path.Words)}, err
}

func cablesTicked(v view, paths []string) []led {
	return slices.DeleteFunc(ledCables(v), func(c led) bool { return !slices.Contains(paths, c.Path) })
}

func chosenPath(id string) (runs.Path, bool) {
	i := slices.IndexFunc(runs.Paths, func(p runs.Path) bool { return p.ID == id })
	if i < 0 {
		return runs.Path{}, false
	}
	return runs.Paths[i], true
}

func chosenManner(id string) (runs.Manner, bool) {
	i := slices.IndexFunc(runs.Manners, func(m runs.Manner) bool { return m.ID == id })
	if i < 0 {
		return runs.Manner{}, false
	}
	return runs.Manners[i], true
}

// The two ends of the living space, where a way may end without a thing; no fitting may be called so.
const (
	atFront = "front"
	atRear  = "rear"
)

func spotNamed(v view, id string) (runs.Spot, bool) {
	switch id {
	case atFront:
		return v.Runs.Front(), true
	case atRear:
		return v.Runs.Rear(), true
	}
	return v.Runs.Spot(id)
}

// spotChoices are the places where a way may begin or end: what has to do with electricity first.
func spotChoices(v view) []choice {
	out := []choice{{atFront, "the front end, behind the cab"}, {atRear, "the rear doors"}}
	var others []choice
	for _, id := range build.SortedKeys(v.Doc.Fittings) {
		if _, ok := v.Runs.Spot(id); !ok {
			continue
		}
		c := choice{id, capital(v.name(id))}
		if electrical(v, id) {
			out = append(out, c)
		} else {
			others = append(others, c)
		}
	}
	return append(out, others...)
}

// electrical reports whether a fitting holds, brings, shares out or draws current, as far as its row tells.
func electrical(v view, id string) bool {
	row, ok := v.Rows.Row(v.Doc.Fittings[id].Buy)
	return ok && (row.Volts != nil || row.AmpHours != nil || row.Amps != nil || strings.HasPrefix(v.Doc.Fittings[id].Buy, "fusebox-"))
}

// usualStart is where most ways begin: at the fuse box, else the battery, else the front.
func usualStart(v view) string {
	for _, beginning := range []string{"fusebox-", "battery-"} {
		for _, id := range build.SortedKeys(v.Doc.Fittings) {
			if _, placed := v.Runs.Spot(id); placed && strings.HasPrefix(v.Doc.Fittings[id].Buy, beginning) {
				return id
			}
		}
	}
	return atFront
}
