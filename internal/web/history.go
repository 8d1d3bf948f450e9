package web

import "net/http"

func (s *Server) undo(w http.ResponseWriter, r *http.Request) {
	if _, err := s.desk.reverse(r.Context(), s.desk.store.Undo); err != nil {
		s.refuse(w, r, err, nil)
		return
	}
	s.done(w, r)
}

func (s *Server) redo(w http.ResponseWriter, r *http.Request) {
	if _, err := s.desk.reverse(r.Context(), s.desk.store.Redo); err != nil {
		s.refuse(w, r, err, nil)
		return
	}
	s.done(w, r)
}
func (s *Server) showAlternative(w http.ResponseWriter, r *http.Request) {}
func (s *Server) showRevision(w http.ResponseWriter, r *http.Request) {}
