package web

import (
	"bytes"
	"cmp"
	"io"
	"net/http"
	"slices"
	"strings"

	"tumblehome/draw"
	"tumblehome/draw/paper"
	"tumblehome/draw/raster"
	"tumblehome/draw/sheet"
	"tumblehome/reckon"
	"tumblehome/trade/arrangement"
)

// papers are the names of what can be had as a file of its own.
var papers = []string{"arrangement", "wiring", "circuit", "cables", "tests"}

// noPaper says what there is, to whoever asks for something else.
func noPaper() string {
	return "There is no such sheet. There are: " + strings.Join(papers, ", ") + "."
}

// paperwork is what can be had as a file of its own: its name, and its sheets; none where nobody knows the name.
func (s *Server) paperwork(r *http.Request, now *state) (name string, sheets []draw.Scene) {
	name = cmp.Or(r.FormValue("sheet"), papers[0])
	if !slices.Contains(papers, name) {
		return "", nil
	}
	v := s.viewOf(r, now, "arrangement", r.FormValue("mode"))
	revision := count(now.Revision.N) + ", " + revisionTime(now.Revision)
	return name, sheet.Printed(now.Reckoning, func(r *reckon.Reckoning) []draw.Scene {
		switch name {
		case "wiring":
			return []draw.Scene{sheet.WiringPlan(r, v.Mode, revision)}
		case "circuit":
			return sheet.Circuits(r, revision)
		case "cables":
			return sheet.Schedule(r, revision)
		case "tests":
			return sheet.Tests(r, revision)
		}
		return []draw.Scene{s.draw(r, sheet.View{Mode: v.Mode, Show: v.Show, Size: draw.A3, Revision: revision})}
	})
}

// sendFile sends sheets made as a file of their own.
func (s *Server) sendFile(w http.ResponseWriter, r *http.Request, kind, ending string, write func([]draw.Scene, io.Writer) error) {
	now, err := s.desk.head(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	name, sheets := s.paperwork(r, now)
	if name == "" {
		http.Error(w, noPaper(), http.StatusNotFound)
		return
	}
	if len(sheets) > 1 && ending != ".pdf" {
		http.Error(w, "That takes "+count(len(sheets))+" sheets, which only a PDF has: /sheet.pdf?sheet="+name, http.StatusNotFound)
		return
	}
	if len(sheets) == 0 || len(sheets[0].Marks) == 0 {
		http.Error(w, "There is nothing to draw yet.", http.StatusNotFound)
		return
	}
	var file bytes.Buffer
	if err := write(sheets, &file); err != nil {
		s.fail(w, r, err)
		return
	}
	w.Header().Set("Content-Type", kind)
	w.Header().Set("Content-Disposition", `attachment; filename="`+name+ending+`"`)
	w.Header().Set("Cache-Control", "no-store")
	_, _ = w.Write(file.Bytes()) // a reader that left needs no answer
}

func (s *Server) sendSVG(w http.ResponseWriter, r *http.Request) {
	s.sendFile(w, r, "image/svg+xml", ".svg", func(sheets []draw.Scene, out io.Writer) error {
		return sheets[0].SVG(out, draw.SVGOptions{Standalone: true, EmbedFonts: true})
	})
}

func (s *Server) sendPDF(w http.ResponseWriter, r *http.Request) {
	s.sendFile(w, r, "application/pdf", ".pdf", func(sheets []draw.Scene, out io.Writer) error {
		return paper.Write(out, sheets, paper.Options{Title: sheets[0].Title})
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
	s.sendFile(w, r, "image/png", ".png", func(sheets []draw.Scene, out io.Writer) error {
		return raster.PNG(out, sheets[0], raster.Options{})
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
