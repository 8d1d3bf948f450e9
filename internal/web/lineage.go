package web

import (
	"context"
	"errors"
	"net/http"
	"strings"

	"tumblehome/internal/store"
)

// A page may outlive the history that it shows: the program is stopped, an older state is put in the file's place, and the program is
// started again. Revision 12 of the page is then no longer revision 12 of the file. So forms say not only the number of the revision
// they were made for but also the beginning of its seal, and script says which run of the program its numbers are from.

var (
	errOtherHistory = errors.New("the page shows a state of the build that its file no longer holds")
	errOtherRun     = errors.New("the program was started again since the page was made")
)

// sealLetters is how much of a seal a form carries: enough to tell histories apart, since nobody makes them alike on purpose.
const sealLetters = 12

// markOf is how a form names a revision: 12-5f0c1a….
func markOf(r store.Revision) string {
	return count(r.N) + "-" + r.Seal[:min(sealLetters, len(r.Seal))]
}

// markAt is the mark of an older revision.
func (d *desk) markAt(ctx context.Context, n int) (string, error) {
	if now := d.now.Load(); now != nil && now.Revision.N == n {
		return markOf(now.Revision), nil
	}
	found, err := d.store.Revisions(ctx, n+1, 1)
	if err != nil {
		return "", err
	}
	if len(found) == 0 || found[0].N != n {
		return "", errOtherHistory
	}
	return markOf(found[0]), nil
}

// ofThisHistory lets a change pass only where its page shows a state of the build as its file has it, and takes the seal off its number.
func (s *Server) ofThisHistory(next http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if changes(r.Method) {
			if err := s.knowsPage(r); err != nil {
				s.refuse(w, r, err, nil)
				return
			}
		}
		next.ServeHTTP(w, r)
	})
}

func (s *Server) knowsPage(r *http.Request) error {
	base := ""
	if !isJSON(r) {
		if err := readForm(r); err != nil {
			return err
		}
		base = r.PostFormValue("base")
	}
	number, seal, marked := strings.Cut(base, "-")
	if !marked || seal == "" {
		return s.ofThisRun(r)
	}
	n, err := baseNumber(number)
	if err != nil {
		return err
	}
	known, err := s.desk.markAt(r.Context(), n)
	if err == nil && known != base {
		err = errOtherHistory
	}
	r.PostForm.Set("base", number)
	return err
}

// ofThisRun holds a bare number to the run of the program it is from, where script says it.
func (s *Server) ofThisRun(r *http.Request) error {
	if run := r.Header.Get("X-Tumblehome"); len(run) > 1 && run != s.desk.news.run {
		return errOtherRun
	}
	return nil
}
