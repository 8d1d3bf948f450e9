package web

import (
	"bytes"
	"net/http"
	"sync"

	"github.com/a-h/templ"
)

// bases remembers since which revision each region reads as it does. A form in a region that nobody has changed is as good as new, and
// the region's digest stays the same from one revision to the next.
type bases struct {
	mu    sync.Mutex
	known map[string]since
}

type since struct {
	digest, base string
}

// of is the revision since which a region reads like this.
func (b *bases) of(key, digest, head string) string {
	b.mu.Lock()
	defer b.mu.Unlock()
	if b.known == nil {
		b.known = map[string]since{}
	}
	if b.known[key].digest != digest {
		b.known[key] = since{digest, head}
	}
	return b.known[key].base
}

// showRegion sends one region, or says that it reads as the asker has it.
func (s *Server) showRegion(w http.ResponseWriter, r *http.Request) {
	draw, ok := regions()[r.PathValue("name")]
	if !ok {
		http.Error(w, "There is no such region.", http.StatusNotFound)
		return
	}
	now, err := s.desk.head(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	page := r.FormValue("page")
	if _, known := s.pages[page]; !known {
		page = "arrangement"
	}
	v := s.viewOf(r, now, page, r.FormValue("mode")).in(r.PathValue("name"))
	v.Base = 0
	line := r.FormValue("line")
	if line != "" {
		if draw, ok = lineOf(v, line); !ok {
			http.Error(w, "There is no such line.", http.StatusNotFound)
			return
		}
	}
	var text bytes.Buffer
	if err := draw(v).Render(r.Context(), &text); err != nil {
		s.fail(w, r, err)
		return
	}
	sum := digest(text.Bytes())
	w.Header().Set("Revision", count(now.Revision.N))
	w.Header().Set("ETag", `"`+sum+`"`)
	w.Header().Set("Cache-Control", "no-cache")
	if r.Header.Get("If-None-Match") == `"`+sum+`"` {
		w.WriteHeader(http.StatusNotModified)
		return
	}
	base := s.bases.of(v.Region+"?"+v.Page+"&"+v.Mode+"&"+v.Night.query()+line, sum, markOf(now.Revision))
	w.Header().Set("Content-Type", "text/html; charset=utf-8")
	_, _ = w.Write(legible(based(text.Bytes(), base))) // a reader that left needs no answer
}

// lineOf draws one line of a region alone, where the region has it.
func lineOf(v view, place string) (func(view) templ.Component, bool) {
	piece, ok := pieces()[v.Region]
	if !ok {
		return nil, false
	}
	line := piece(v, place)
	return func(view) templ.Component { return line }, line != nil
}

// based writes into the forms of a region, drawn for no revision, which one they are made for. No text of the builder's can read like
// this: its quotes are escaped.
func based(region []byte, base string) []byte {
	return bytes.ReplaceAll(region, []byte(`name="base" value="0"`), []byte(`name="base" value="`+base+`"`))
}
