package web

import (
	"bytes"
	"net/http"

	"tumblehome/draw"
	"tumblehome/draw/paper"
	"tumblehome/draw/sheet"
)

// sendMeasuring sends the sheet to print and take to the van: the readings that matter for this arrangement.
func (s *Server) sendMeasuring(w http.ResponseWriter, r *http.Request) {
	now, err := s.desk.head(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	scene := sheet.Measuring(now.Reckoning)
	var file bytes.Buffer
	if err := paper.Write(&file, []draw.Scene{scene}, paper.Options{Title: scene.Title}); err != nil {
		s.fail(w, r, err)
		return
	}
	w.Header().Set("Content-Type", "application/pdf")
	w.Header().Set("Content-Disposition", `attachment; filename="measuring-sheet.pdf"`)
	w.Header().Set("Cache-Control", "no-store")
	_, _ = w.Write(file.Bytes()) // a reader that left needs no answer
}
