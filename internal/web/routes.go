package web

import "net/http"

// routes names every address; those of the first hour stand in start.go.
func (s *Server) routes() http.Handler {
	mux := http.NewServeMux()
	mux.HandleFunc("GET /{$}", s.home)
	s.startRoutes(mux)
	for name := range s.pages {
		mux.HandleFunc("GET /"+name, s.showPage(name))
	}
	mux.HandleFunc("GET /region/{name}", s.showRegion)
	mux.HandleFunc("GET /how/{code}", s.showHow)
	mux.HandleFunc("GET /alternatives/{id}", s.showAlternative)
	mux.HandleFunc("GET /revisions/{n}", s.showRevision)
	mux.HandleFunc("POST /alternatives/keep", s.keepAlternative)
	mux.HandleFunc("POST /alternatives/{id}/take", s.takeAlternative)
	mux.HandleFunc("POST /revisions/{n}/restore", s.restoreRevision)
	mux.HandleFunc("GET /add", s.showOffers)

	mux.HandleFunc("GET /drag-kit", s.sendKit)
	mux.HandleFunc("POST /preview", s.preview)
	mux.HandleFunc("POST /edit", s.edit)
	mux.HandleFunc("POST /fittings/add", s.addFitting)
	mux.HandleFunc("POST /fittings/{id}/nudge", s.nudgeFitting)
	mux.HandleFunc("POST /fittings/{id}/delete", s.deleteFitting)
	mux.HandleFunc("POST /fittings/{id}/put", s.putFitting)
	mux.HandleFunc("POST /fittings/{id}/duplicate", s.duplicateFitting)
	mux.HandleFunc("POST /power/kit", s.askKit)
	mux.HandleFunc("POST /power/ways", s.addWay)
	mux.HandleFunc("POST /undo", s.undo)
	mux.HandleFunc("POST /redo", s.redo)

	mux.Handle("GET /events", s.desk.news)
	mux.HandleFunc("GET /sheet.svg", s.sendSVG)
	mux.HandleFunc("GET /sheet.pdf", s.sendPDF)
	mux.HandleFunc("GET /sheet.png", s.sendPNG)
	mux.HandleFunc("GET /measuring.pdf", s.sendMeasuring)
	mux.Handle("GET /static/{file}", s.assets)
	mux.Handle("GET /favicon.ico", http.RedirectHandler(s.assets.address("mark.svg"), http.StatusSeeOther))
	mux.HandleFunc("GET /", s.notFound)
	return s.ofThisHistory(mux)
}
