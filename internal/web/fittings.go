package web

import (
	"math"
	"net/http"
	"strconv"
	"strings"

	"tumblehome/build/tree"
	"tumblehome/internal/store"
	"tumblehome/reckon"
)

// errHeld says what keeps a fitting from being taken out.
type errHeld struct {
	ID     string
	Places []tree.Pointer
	Final  bool // not even together with these places
}

func (e *errHeld) Error() string {
	if e.Final {
		return capital(unhyphen(e.ID)) + " is still wanted elsewhere. Take it out there first:"
	}
	return capital(unhyphen(e.ID)) + " is still wanted elsewhere. Take it out there first, or take out all of it:"
}

// inFull is the sentence with the places, for a reader who sees no list.
func (e *errHeld) inFull() string {
	words := make([]string, len(e.Places))
	for i, p := range e.Places {
		words[i] = pathWords(p.Path())
	}
	return e.Error() + " " + strings.Join(words, "; ") + "."
}

// nudgeFitting moves a fitting by some millimetres, or turns it, for whoever uses no pointer.
func (s *Server) nudgeFitting(w http.ResponseWriter, r *http.Request) {
	m, base, err := readNudge(r)
	if err == nil {
		err = s.saveMove(r, base, m)
	}
	if err != nil {
		s.refuse(w, r, err, nil)
		return
	}
	s.done(w, r)
}

func (s *Server) saveMove(r *http.Request, revision int, m reckon.Move) error {
	then, err := s.desk.at(r.Context(), revision)
	if err != nil {
		return err
	}
	patch, words, err := then.patchOfMoves([]reckon.Move{m})
	if err != nil {
		return err
	}
	_, err = s.desk.save(r.Context(), store.Edit{Base: revision, Patch: patch, Words: words})
	return err
}

// readNudge reads step=`x -10`, or axis=x and by=-10.
func readNudge(r *http.Request) (reckon.Move, int, error) {
	base, err := baseOf(r)
	if err != nil {
		return reckon.Move{}, 0, err
	}
	axis, text := r.PostFormValue("axis"), r.PostFormValue("by")
	if step := r.PostFormValue("step"); step != "" {
		axis, text, _ = strings.Cut(step, " ")
	}
	by, err := strconv.ParseFloat(text, 64)
	if err != nil || bad(by) {
		return reckon.Move{}, 0, errUnreadable("the form does not say how far")
	}
	m := reckon.Move{Fitting: r.PathValue("id")}
	switch axis {
	case "x":
		m.DX = by
	case "y":
		m.DY = by
	case "z":
		m.DZ = by
	case "turn":
		m.Turn = by
	default:
		return reckon.Move{}, 0, errUnreadable("the form does not say which way")
	}
	return m, base, nil
}

// baseOf is the revision that a form was made for.
func baseOf(r *http.Request) (int, error) {
	if err := readForm(r); err != nil {
		return 0, err
	}
	return baseNumber(r.PostFormValue("base"))
}

func baseNumber(text string) (int, error) {
	base, err := strconv.Atoi(text)
	if err != nil {
		return 0, errUnreadable("the form does not say which revision it was made for")
	}
	return base, nil
}

// duplicateFitting puts another one like it behind it.
func (s *Server) duplicateFitting(w http.ResponseWriter, r *http.Request) {
	base, err := baseOf(r)
	if err == nil {
		err = s.saveAnother(r, base)
	}
	if err != nil {
		s.refuse(w, r, err, nil)
		return
	}
	s.done(w, r)
}

func (s *Server) saveAnother(r *http.Request, base int) error {
	id := r.PathValue("id")
	then, err := s.desk.at(r.Context(), base)
	if err != nil {
		return err
	}
	if then.Node.At(tree.PointerTo("fittings", id)) == nil {
		return errUnreadable("there is no " + unhyphen(id))
	}
	patch := then.another(id, free(shortID(id), then.Doc.Fittings))
	_, err = s.desk.save(r.Context(), store.Edit{Base: base, Patch: patch, Words: "another one like " + unhyphen(id)})
	return err
}

// another is a copy of a fitting, planned, and behind the first where that one has a place of its own.
func (s *state) another(id, name string) tree.Patch {
	at := tree.PointerTo("fittings", id)
	copied := tree.Remove(s.Node, at.Then("fitted")).At(at)
	patch := tree.Setting(tree.PointerTo("fittings", name), copied)
	standing := s.Places.Find(id)
	if standing == nil || !standing.Placed() {
		return patch
	}
	moved, ok := s.MovePatch(reckon.Move{Fitting: id, DX: math.Ceil(standing.Box.MaxX - standing.Box.MinX)})
	place := tree.Merge(s.Node, moved).At(at.Then("at"))
	if !ok || place == nil {
		return patch
	}
	return tree.Difference(s.Node, tree.Merge(tree.Merge(s.Node, patch), tree.Setting(tree.PointerTo("fittings", name, "at"), place)))
}

func shortID(id string) string {
	if len(id) > longestID-3 {
		return strings.Trim(id[:longestID-3], "-")
	}
	return id
}

// deleteFitting takes a fitting out; with=yes takes out with it what hangs on it.
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
	id := r.PathValue("id")
	doc, err := s.desk.base(r.Context(), base)
	if err != nil {
		return err
	}
	if doc.At(tree.PointerTo("fittings", id)) == nil {
		return errUnreadable("there is no " + unhyphen(id))
	}
	rest, hung, err := takenOut(doc, id, s.desk.rows)
	words := "taken out: " + unhyphen(id)
	switch {
	case err != nil:
		return &errHeld{ID: id, Places: hung, Final: true}
	case len(hung) > 0 && r.PostFormValue("with") != "yes":
		return &errHeld{ID: id, Places: hung}
	case len(hung) > 0:
		words += ", with what hangs on it"
	}
	_, err = s.desk.save(r.Context(), store.Edit{Base: base, Patch: tree.Difference(doc, rest), Words: words})
	return err
}
