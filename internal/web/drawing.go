package web

import (
	"bytes"
	"io"
	"net/http"

	"tumblehome/draw"
	"tumblehome/draw/paper"
	"tumblehome/draw/raster"
	"tumblehome/draw/sheet"
	"tumblehome/trade/arrangement"
)

// sheetScene is the arrangement as a request asks for it.
func (s *Server) sheetScene(w http.ResponseWriter, r *http.Request) (draw.Scene, bool) {
	now, err := s.desk.head(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return draw.Scene{}, false
	}
	v := s.viewOf(r, now, "arrangement", r.FormValue("mode"))
	revision := count(now.Revision.N) + ", " + revisionTime(now.Revision)
	return s.draw(now.Reckoning, sheet.View{Mode: v.Mode, Show: v.Show, Size: draw.A3, Revision: revision}), true
}

// sendFile sends a drawing made as a file of its own.
func (s *Server) sendFile(w http.ResponseWriter, r *http.Request, kind, name string, write func(draw.Scene, io.Writer) error) {
	scene, ok := s.sheetScene(w, r)
	if !ok {
		return
	}
	var file bytes.Buffer
	if err := write(scene, &file); err != nil {
		s.fail(w, r, err)
		return
	}
	w.Header().Set("Content-Type", kind)
	w.Header().Set("Content-Disposition", `attachment; filename="`+name+`"`)
	w.Header().Set("Cache-Control", "no-store")
	_, _ = w.Write(file.Bytes()) // a reader that left needs no answer
}

func (s *Server) sendSVG(w http.ResponseWriter, r *http.Request) {
	s.sendFile(w, r, "image/svg+xml", "arrangement.svg", func(scene draw.Scene, out io.Writer) error {
		return scene.SVG(out, draw.SVGOptions{Standalone: true, EmbedFonts: true})
	})
}

func (s *Server) sendPDF(w http.ResponseWriter, r *http.Request) {
	s.sendFile(w, r, "application/pdf", "arrangement.pdf", func(scene draw.Scene, out io.Writer) error {
		return paper.Write(out, []draw.Scene{scene}, paper.Options{Title: scene.Title})
	})
}

// sendPNG makes one picture at a time: each takes much memory while it is made. Whoever leaves the queue is not waited for.
func (s *Server) sendPNG(w http.ResponseWriter, r *http.Request) {
	select {
	case s.raster <- struct{}{}:
		defer func() { <-s.raster }()
	case <-r.Context().Done():
		return
	}
	s.sendFile(w, r, "image/png", "arrangement.png", func(scene draw.Scene, out io.Writer) error {
		return raster.PNG(out, scene, raster.Options{})
	})
}

// sendKit sends what a page needs to predict a drag.
func (s *Server) sendKit(w http.ResponseWriter, r *http.Request) {
	now, err := s.desk.head(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	v := s.viewOf(r, now, "arrangement", r.FormValue("mode"))
	mode := v.Mode
	if mode == today {
		mode = "drive"
	}
	kit, ok := now.DragKit(mode)
	if !ok {
		http.Error(w, "Nothing can be dragged in this mode.", http.StatusNotFound)
		return
	}
	sendJSON(w, http.StatusOK, struct {
		Revision int `json:"revision"`
		arrangement.Kit
	}{now.Revision.N, kit})
}
