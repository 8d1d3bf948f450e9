package web

import (
	"net/http"
	"strconv"
	"strings"

	"tumblehome/internal/store"
	"tumblehome/reckon"
)

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

func shortID(id string) string {
	if len(id) > longestID-3 {
		return strings.Trim(id[:longestID-3], "-")
	}
	return id
}
