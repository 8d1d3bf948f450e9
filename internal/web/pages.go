package web

import (
	"bytes"
	"net/http"
	"net/url"
	"regexp"
	"strings"

	"github.com/a-h/templ"

	"tumblehome/build"
	"tumblehome/build/tree"
)

// page is one whole page: the question it answers and what its sheet holds.
type page struct {
	question string
	sheet    func(view) templ.Component
}

// waysIn are the pages in the order of the work, as the navigation lists them.
var waysIn = []choice{
	{"arrangement", "Arrangement"}, {"shell", "Shell"}, {"build-up", "Build-up"}, {"warmth", "Warmth"}, {"power", "Power"}, {"weight", "Weight"}, {"cost", "Cost"}, {"revisions", "Revisions"},
}

func pages() map[string]page {
	return map[string]page{
		"arrangement": {"What are we building?", arrangementPage},
		"shell":       {"What have we got?", shellPage},
		"build-up":    {"What goes on the steel?", buildUpPage},
		"warmth":      {"Will we sleep warm and dry?", warmthPage},
		"power":       {"Will the lights stay on, and is the cable safe?", powerPage},
		"weight":      {"Is it legal, does it sit level?", weightPage},
		"cost":        {"What has it cost, what will it?", costPage},
		"revisions":   {"What did that change?", revisionsPage},
	}
}

// regions are the pieces of pages that fetch themselves.
func regions() map[string]func(view) templ.Component {
	return map[string]func(view) templ.Component{
		"modes": modesRegion, "drawing": drawingRegion, "notes": notesRegion, "headline": headlineRegion, "fittings": fittingsRegion, "said": saidRegion, "title": titleRegion, "mode": modeRegion, "suits": suitsRegion,
		"notice": noticeRegion, "weight": weightRegion, "revisions": revisionsRegion, "shell": shellRegion, "build-up": buildUpRegion, "cost": costRegion,
		"warmth": warmthRegion, "power": powerRegion, "cables": cablesRegion, "ways": waysRegion,
	}
}

// pieces are the regions of which one line can be had alone, by the place of the document that it shows; none where it shows none such.
func pieces() map[string]func(v view, place string) templ.Component {
	return map[string]func(view, string) templ.Component{"fittings": fittingPiece, "cables": cablePiece}
}

func wayTitle(name string) string {
	for _, w := range waysIn {
		if w.Value == name {
			return w.Words
		}
	}
	return "Pages"
}

func (s *Server) showPage(name string) http.HandlerFunc {
	return func(w http.ResponseWriter, r *http.Request) {
		s.desk.look(r.Context())
		now, err := s.desk.head(r.Context())
		if err != nil {
			s.fail(w, r, err)
			return
		}
		s.send(w, r, http.StatusOK, s.whole(s.viewOf(r, now, name, r.FormValue("mode"))))
	}
}

// whole is a whole page.
func (s *Server) whole(v view) templ.Component {
	p := s.pages[v.Page]
	return layout(v, p.question, p.sheet(v))
}

// sendRefusal shows the page that a form came from once more, with what was typed and why it was refused; a conflict has a page of its own.
func (s *Server) sendRefusal(w http.ResponseWriter, r *http.Request, now *state, f *refusal) {
	v := s.viewOf(r, now, "arrangement", "")
	back, _ := url.Parse(backTo(r)) // backTo gives only addresses that parse
	if name := strings.TrimPrefix(back.Path, "/"); s.pages[name].sheet != nil {
		v = s.viewOf(r, now, name, back.Query().Get("mode"))
		v.Night = nightChosen(back.Query())
		v.Open = now.listed(back.Query()["open"])
	}
	v.Refused = f
	if f.beside() {
		var page bytes.Buffer
		if err := s.whole(v).Render(r.Context(), &page); err == nil {
			if found := wrongMark.FindSubmatch(page.Bytes()); found != nil {
				v.WrongAt = string(found[1])
				s.send(w, r, f.Status, s.whole(v))
				return
			}
		}
	}
	s.send(w, r, f.Status, layout(v, "Nothing was saved", refusalPage(v)))
}

// wrongMark is where a page says beside a value what is wrong with it. No text of the builder's can read like this: its quotes are escaped.
var wrongMark = regexp.MustCompile(`<p class="wrong" id="([^"]*)"`)

// wrongPlaces names the values that were refused.
func (f *refusal) wrongPlaces() string {
	var places []string
	for _, path := range build.SortedKeys(f.Wrong) {
		places = append(places, pathWords(tree.Pointer(path).Path()))
	}
	return capital(strings.Join(places, "; ")) + "."
}

// beside reports whether all there is to say belongs beside values that were typed, where the page has their fields.
func (f *refusal) beside() bool {
	return len(f.Clashes) == 0 && f.Held == nil && len(f.Wrong) > 0 && f.Says == ""
}

func (s *Server) notFound(w http.ResponseWriter, r *http.Request) {
	s.noSuch(w, r, "page", "The pages of this build stand in the list beside.")
}

// noSuch answers the address of a thing that is not there.
func (s *Server) noSuch(w http.ResponseWriter, r *http.Request, thing, says string) {
	now, err := s.desk.head(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	v := s.viewOf(r, now, "", "")
	title := "There is no such " + thing
	s.send(w, r, http.StatusNotFound, layout(v, title, plainPage(title, says)))
}
