package web_test

import (
	"net/http"
	"strings"
	"testing"
)

// scenario is one request and what its answer must and must not hold.
type scenario struct {
	name     string
	before   []*http.Request // sent first, answered well
	request  *http.Request
	status   int
	location string   // of a redirect
	holds    []string // pieces the answer must hold
	lacks    []string // and must not
	headers  map[string]string
}

func run(t *testing.T, file string, all []scenario, edits ...func(string) string) {
	t.Helper()
	for _, s := range all {
		t.Run(s.name, func(t *testing.T) {
			t.Parallel()
			w := open(t, file, edits...)
			for _, r := range s.before {
				if got := w.answer(r); got.Code >= 400 {
					t.Fatalf("%s %s before it: %d %s", r.Method, r.URL, got.Code, got.Body)
				}
			}
			s.check(t, w)
		})
	}
}

func (s scenario) check(t *testing.T, w *workshop) {
	t.Helper()
	got := w.answer(s.request)
	if got.Code != s.status {
		t.Errorf("status %d, want %d; the answer begins %.300q", got.Code, s.status, got.Body.String())
	}
	if to := got.Header().Get("Location"); to != s.location {
		t.Errorf("sent to %q, want %q", to, s.location)
	}
	text := got.Body.String()
	for _, piece := range s.holds {
		if !strings.Contains(text, piece) {
			t.Errorf("the answer lacks %q", piece)
		}
	}
	for _, piece := range s.lacks {
		if strings.Contains(text, piece) {
			t.Errorf("the answer holds %q", piece)
		}
	}
	for name, want := range s.headers {
		if have := got.Header().Get(name); have != want {
			t.Errorf("%s is %q, want %q", name, have, want)
		}
	}
}
