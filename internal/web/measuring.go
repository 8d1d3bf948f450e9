package web

import (
	"bytes"
	"net/http"

	"tumblehome/draw"
	"tumblehome/draw/paper"
	"tumblehome/draw/sheet"
	"tumblehome/reckon"
)

// sendMeasuring sends the sheet to print and take to the van: the readings that matter for this arrangement.
func (s *Server) sendMeasuring(w http.ResponseWriter, r *http.Request) {
	now, err := s.desk.head(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	scenes := sheet.Printed(now.Reckoning, func(r *reckon.Reckoning) []draw.Scene { return []draw.Scene{sheet.Measuring(r)} })
	var file bytes.Buffer
	if err := paper.Write(&file, scenes, paper.Options{Title: scenes[0].Title}); err != nil {
		s.fail(w, r, err)
		return
	}
	w.Header().Set("Content-Type", "application/pdf")
	w.Header().Set("Content-Disposition", `attachment; filename="measuring-sheet.pdf"`)
	w.Header().Set("Cache-Control", "no-store")
	_, _ = w.Write(file.Bytes()) // a reader that left needs no answer
}
