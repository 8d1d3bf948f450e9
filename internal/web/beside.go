package web

import (
	"net/http"

	"github.com/a-h/templ"
)

// showBeside shows something that is no page of its own: with script beside the drawing, else on a sheet of its own.
func (s *Server) showBeside(w http.ResponseWriter, r *http.Request, v view, title string, content templ.Component) {
	title = capital(title)
	w.Header().Set("Vary", "X-Tumblehome")
	if byScript(r) {
		s.send(w, r, http.StatusOK, besideFragment(title, content))
		return
	}
	s.send(w, r, http.StatusOK, layout(v, title, besidePage(title, content)))
}
