package web

import (
	"bytes"
	"encoding/json"
	"errors"
	"net/http"
	"net/url"
	"strings"

	"github.com/a-h/templ"

	"tumblehome/internal/store"
)

// byScript tells a page's script, which is answered with JSON or with pieces of pages, from a plain browser.
func byScript(r *http.Request) bool { return isJSON(r) || r.Header.Get("X-Tumblehome") != "" }

// done answers a change that was saved: by its sentence and the fittings it made, or by sending a plain browser back where it came from.
func (s *Server) done(w http.ResponseWriter, r *http.Request, made ...string) {
	now, err := s.desk.head(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	if byScript(r) {
		sendJSON(w, http.StatusOK, map[string]any{"revision": now.Revision.N, "mark": markOf(now.Revision), "sentence": now.Said, "made": made})
		return
	}
	http.Redirect(w, r, backTo(r), http.StatusSeeOther)
}

func sendJSON(w http.ResponseWriter, status int, value any) {
	text, err := json.Marshal(value)
	if err != nil {
		http.Error(w, "The answer could not be written.", http.StatusInternalServerError)
		return
	}
	w.Header().Set("Content-Type", "application/json")
	w.Header().Set("Cache-Control", "no-store")
	w.WriteHeader(status)
	_, _ = w.Write(append(legible(text), '\n')) // a reader that left needs no answer
}

// legible puts ordinary unbreakable blanks in place of narrow ones, which the pages' face shows as hardly any.
func legible(text []byte) []byte { return bytes.ReplaceAll(text, []byte("\u202f"), []byte("\u00a0")) }

// send writes a component as HTML. It is drawn whole before a byte is sent, so that a failure never leaves half a page.
func (s *Server) send(w http.ResponseWriter, r *http.Request, status int, c templ.Component) {
	var page bytes.Buffer
	if err := c.Render(r.Context(), &page); err != nil {
		s.fail(w, r, err)
		return
	}
	w.Header().Set("Content-Type", "text/html; charset=utf-8")
	w.Header().Set("Cache-Control", "no-store")
	w.WriteHeader(status)
	_, _ = w.Write(legible(page.Bytes())) // a reader that left needs no answer
}

// fail answers a failure of the program: in full in the log, in one neutral line on the page. Trouble with the file or its disk says
// what its owner can do about it.
func (s *Server) fail(w http.ResponseWriter, r *http.Request, err error) {
	s.log.Error("request failed", "method", r.Method, "path", r.URL.Path, "error", err)
	var trouble *store.Trouble
	if errors.As(err, &trouble) {
		http.Error(w, trouble.Says, http.StatusServiceUnavailable)
		return
	}
	http.Error(w, "Something went wrong here; nothing was changed. The terminal says what.", http.StatusInternalServerError)
}

// backTo is the page a form came from, and never one of another server.
func backTo(r *http.Request) string {
	back, err := url.Parse(r.PostFormValue("back"))
	if err != nil || back.Host != "" || back.Scheme != "" || !strings.HasPrefix(back.Path, "/") || strings.HasPrefix(back.Path, "//") || strings.ContainsAny(back.Path, "\\") {
		return "/arrangement"
	}
	return back.String()
}
