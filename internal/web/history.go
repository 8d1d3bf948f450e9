package web

import (
	"context"
	"errors"
	"net/http"
	"strconv"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/internal/store"
	"tumblehome/reckon"
)

func (s *Server) undo(w http.ResponseWriter, r *http.Request) {
	s.reverse(w, r, s.desk.store.UndoSeen)
}
func (s *Server) redo(w http.ResponseWriter, r *http.Request) {
	s.reverse(w, r, s.desk.store.RedoSeen)
}

// reverse takes back, or brings back, only what its reader has seen to be the last change.
func (s *Server) reverse(w http.ResponseWriter, r *http.Request, step func(ctx context.Context, seen int, by string) (store.Revision, error)) {
	seen, err := baseOf(r)
	if err == nil && seen < 1 {
		err = store.ErrNoRevision // the store takes 0 for "whatever is newest"
	}
	if err == nil {
		err = s.desk.reverse(r.Context(), seen, step)
	}
	if err != nil {
		s.refuse(w, r, err, nil)
		return
	}
	s.done(w, r)
}

// shownRevisions is how many changes one page lists.
const shownRevisions = 60

// revisions are the newest changes, newest first; before, where the reader asks for older ones.
func (v view) revisions() ([]store.Revision, error) {
	return v.server.desk.store.Revisions(v.ctx, v.Before, shownRevisions)
}

// beside is one alternative laid beside the build.
type beside struct {
	ID, Why, By string
	reckon.Difference
	Trouble string // why it cannot be worked out
	to      *reckon.Reckoning
}

// alternatives works out every alternative of the build.
func (v view) alternatives() []beside {
	var out []beside
	for _, id := range build.SortedKeys(v.Doc.Alternatives) {
		out = append(out, v.alternative(id))
	}
	return out
}

func (v view) alternative(id string) beside {
	a := v.Doc.Alternatives[id]
	b := beside{ID: id, Why: a.Why, By: a.By}
	doc, err := build.TakeAlternative(v.Doc, id, v.server.desk.rows)
	if err != nil {
		b.Trouble = err.Error()
		return b
	}
	b.to = v.server.desk.reckon(doc, v.Day)
	b.Difference = reckon.Compare(v.Reckoning, b.to)
	return b
}

// revisionOf reads the number of a revision from an address.
func revisionOf(r *http.Request) (int, error) {
	n, err := strconv.Atoi(r.PathValue("n"))
	if err != nil || n < 1 {
		return 0, store.ErrNoRevision
	}
	return n, nil
}

// showRevision shows what one change moved.
func (s *Server) showRevision(w http.ResponseWriter, r *http.Request) {
	n, err := revisionOf(r)
	var then, before *state
	if err == nil {
		then, err = s.desk.at(r.Context(), n)
	}
	if err == nil {
		before, err = s.desk.at(r.Context(), max(n-1, 1))
	}
	if errors.Is(err, store.ErrNoRevision) && !byScript(r) {
		s.noSuch(w, r, "revision", "The changes of this build stand on the page of revisions.")
		return
	}
	if err != nil {
		s.refuse(w, r, err, nil)
		return
	}
	now, err := s.desk.head(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	list, err := s.desk.store.Revisions(r.Context(), n+1, 1)
	if err != nil || len(list) == 0 {
		s.refuse(w, r, store.ErrNoRevision, nil)
		return
	}
	v := s.viewOf(r, now, "revisions", "").in("revisions")
	s.showBeside(w, r, v, capital(list[0].Words), revisionDetail(v, list[0], reckon.Compare(before.Reckoning, then.Reckoning)))
}

// restoreRevision makes the build again what it was at a revision, as a new one. Whoever has not seen the newest would take back what
// they do not know of, so they are shown it first.
func (s *Server) restoreRevision(w http.ResponseWriter, r *http.Request) {
	base, err := baseOf(r)
	n := 0
	if err == nil {
		n, err = revisionOf(r)
	}
	if err == nil {
		err = s.restore(r, base, n)
	}
	if err != nil {
		s.refuse(w, r, err, nil)
		return
	}
	s.done(w, r)
}

func (s *Server) restore(r *http.Request, base, n int) error {
	now, err := s.desk.head(r.Context())
	if err != nil {
		return err
	}
	if base != now.Revision.N {
		return store.ErrMovedOn
	}
	then, err := s.desk.base(r.Context(), n)
	if err != nil {
		return err
	}
	_, err = s.desk.save(r.Context(), store.Edit{Base: base, Patch: tree.Difference(now.Node, then), Words: "as it was at revision " + count(n)})
	return err
}

// showAlternative lays one alternative beside the build, figure by figure.
func (s *Server) showAlternative(w http.ResponseWriter, r *http.Request) {
	now, err := s.desk.head(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	id := r.PathValue("id")
	if _, ok := now.Doc.Alternatives[id]; !ok {
		s.notFound(w, r)
		return
	}
	v := s.viewOf(r, now, "revisions", "").in("revisions")
	s.showBeside(w, r, v, "Beside it: "+unhyphen(id), alternativeDetail(v, v.alternative(id)))
}

// takeAlternative makes an alternative the build.
func (s *Server) takeAlternative(w http.ResponseWriter, r *http.Request) {
	base, err := baseOf(r)
	if err == nil {
		err = s.takeIt(r, base)
	}
	if err != nil {
		s.refuse(w, r, err, nil)
		return
	}
	s.done(w, r)
}

func (s *Server) takeIt(r *http.Request, base int) error {
	then, err := s.desk.at(r.Context(), base)
	if err != nil {
		return err
	}
	id := r.PathValue("id")
	doc, err := build.TakeAlternative(then.Doc, id, s.desk.rows)
	if err != nil {
		return err
	}
	// The alternatives stay, all but the one taken: it is the build now.
	taken := build.Encode(doc)
	if others := tree.Remove(then.Node, tree.PointerTo("alternatives", id)).Get("alternatives"); others != nil && len(others.Entries) > 0 {
		taken = tree.Merge(taken, tree.Setting("/alternatives", others))
	}
	_, err = s.desk.save(r.Context(), store.Edit{Base: base, Patch: tree.Difference(then.Node, taken), Words: "taken: " + unhyphen(id)})
	return err
}
