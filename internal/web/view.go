package web

import (
	"cmp"
	"context"
	"net/http"
	"net/url"
	"slices"
	"strconv"
	"strings"

	"github.com/a-h/templ"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/draw"
	"tumblehome/draw/sheet"
	"tumblehome/trade/cables"
)

// view is what a page is drawn from: the build as it is now, and what its reader asked for.
type view struct {
	*state
	Page    string // which page
	Mode    string // drive, day, night, the builder's own, or today
	Show    sheet.Overlay
	Region  string // the region being drawn; ids begin with it, since one value may stand in two
	Base    int    // the revision that forms are made for
	Refused *refusal
	WrongAt string      // id of the first value said to be wrong on the page, where one is
	Before  int         // of the history: only what is older
	Night   chosenNight // on the page of warmth
	Open    []string    // things in the list, or cables, whose fields are shown, and whether all notes are
	Told    int         // how many bulletins there were before it is drawn
	ctx     context.Context
	server  *Server
}

// viewOf reads from a request what its reader wants to see.
func (s *Server) viewOf(r *http.Request, now *state, pageName, mode string) view {
	if !now.knows(mode) {
		mode = now.firstMode()
	}
	before, _ := strconv.Atoi(r.FormValue("before")) // what is no number asks for the newest
	return view{state: now, Page: pageName, Mode: mode, Show: overlayOf(r.FormValue("show")), Base: now.Revision.N, Before: max(before, 0), Night: nightChosen(r.Form), Open: now.listed(r.Form["open"]), Told: s.desk.news.told(), ctx: r.Context(), server: s}
}

// in is the view while one region of it is drawn.
func (v view) in(region string) view {
	v.Region = region
	return v
}

// address is that of the page itself, to come back to after a post.
func (v view) address() string {
	if v.Page == "arrangement" {
		return v.showing(v.Show) + v.openQuery()
	}
	query := v.openQuery()
	if chosen := v.Night.query(); chosen != "" && v.asksMonth() {
		query = "&" + chosen + query
	}
	if query == "" {
		return "/" + v.Page
	}
	return "/" + v.Page + "?" + query[1:]
}

// asksMonth reports whether the page shows one month of the reader's choice.
func (v view) asksMonth() bool { return v.Page == "warmth" || v.Page == "power" }

// showing is the address of the drawing with something laid over it.
func (v view) showing(overlay sheet.Overlay) string { return drawn(v.Mode, overlay) }

// drawn is the address of the drawing in a mode, with something laid over it.
func drawn(mode string, overlay sheet.Overlay) string {
	address := "/arrangement?mode=" + url.QueryEscape(mode)
	if overlay != sheet.NoOverlay {
		address += "&show=" + url.QueryEscape(string(overlay))
	}
	return address
}

// overlayOf is the overlay of a name; what nobody knows is none.
func overlayOf(name string) sheet.Overlay {
	if overlay := sheet.Overlay(name); slices.Contains(sheet.Overlays, overlay) {
		return overlay
	}
	return sheet.NoOverlay
}

// overlayWords are what the overlays are called on the page.
var overlayWords = []struct {
	overlay sheet.Overlay
	words   string
}{{sheet.NoOverlay, "nothing more"}, {sheet.Moves, "what moves"}, {sheet.Way, "ways in and out"}, {sheet.Upright, "headroom"}, {sheet.Wiring, "the wiring"}}

// regionAddress is where a region fetches itself.
func (v view) regionAddress(name string) string {
	address := "/region/" + name + "?mode=" + url.QueryEscape(v.Mode) + "&page=" + url.QueryEscape(v.Page)
	if v.Show != sheet.NoOverlay && name == "drawing" {
		address += "&show=" + url.QueryEscape(string(v.Show))
	}
	if name == "fittings" || name == "cables" || name == "notes" && v.opens(allNotes) {
		address += v.openQuery()
	}
	if chosen := v.Night.query(); chosen != "" && v.asksMonth() {
		address += "&" + chosen
	}
	return address
}

// openQuery says in an address which things in the list have their fields shown.
func (v view) openQuery() string {
	var query strings.Builder
	for _, id := range v.Open {
		query.WriteString("&open=" + url.QueryEscape(id))
	}
	return query.String()
}

// opens reports whether the fields of a place of the document are shown: a builder asked for them, or typed something there that was
// refused.
func (v view) opens(place string) bool {
	return slices.Contains(v.Open, place) || v.wrongUnder(place)
}

// opening is the address of the page with the fields of one place shown, at an element of it.
func (v view) opening(place, anchor string) string {
	v.Open = []string{place}
	return v.address() + "#" + anchor
}

// region makes an element one that script fetches again when it shows something older than the newest revision.
func (v view) region(name string) templ.Attributes {
	return templ.Attributes{"id": "region-" + name, "data-region": name, "data-src": v.regionAddress(name)}
}

// text is what stands at a place of the document; where a value was refused, what was typed there.
func (v view) text(path string) string {
	if typed, _, ok := v.Refused.at(path); ok {
		return typed
	}
	return valueText(v.Node, tree.Pointer(path))
}

// wrong is why the value typed at a place was refused, or "".
func (v view) wrong(path string) string {
	_, wrong, _ := v.Refused.at(path)
	return wrong
}

// wrongUnder reports whether a value below a place was refused, so that what hides it is opened.
func (v view) wrongUnder(place string) bool {
	if v.Refused == nil {
		return false
	}
	for path := range v.Refused.Wrong {
		if strings.HasPrefix(path, place+"/") {
			return true
		}
	}
	return false
}

// base is the revision that a form is made for, as it names it; a region that is drawn for none is told later.
func (v view) base() string {
	if v.Base == 0 {
		return "0"
	}
	return markOf(v.Revision)
}

// asset is the address of a file that pages load.
func (v view) asset(name string) string { return v.server.assets.address(name) }

// drawing is the arrangement in the mode asked for, as SVG of our own making.
func (v view) drawing() templ.Component {
	return svgOf(v.server.draw(v.Reckoning, sheet.View{Mode: v.Mode, Show: v.Show}), "sheet-drawing")
}

// svgOf writes a drawing into a page. The writer escapes every text of the builder's.
func svgOf(scene draw.Scene, id string) templ.Component {
	var text strings.Builder
	_ = scene.SVG(&text, draw.SVGOptions{ID: id}) // a builder of text takes everything
	return templ.Raw(text.String())
}

// today is the mode of the van as it stands.
const today = sheet.Today

// listed are those of some places that are a fitting or a cable of the build, or the notes.
func (s *state) listed(places []string) []string {
	return slices.DeleteFunc(slices.Clone(places), func(place string) bool {
		if place == allNotes {
			return false
		}
		if id, fitting := strings.CutPrefix(place, "/fittings/"); fitting {
			_, known := s.Doc.Fittings[id]
			return !known
		}
		return !slices.ContainsFunc(s.Cables.Cables, func(c cables.Cable) bool { return cablePath(c) == place && place != "" })
	})
}

// firstMode is what is shown when nobody asks for a mode.
func (s *state) firstMode() string { return "day" }

// modes are the ways the van stands, each with its title, the van of today last.
func (s *state) modes() []choice {
	out := []choice{{"drive", "Drive"}, {"day", "Day"}, {"night", "Night"}}
	for i := range out {
		if title := s.Doc.Modes[out[i].Value].Title; title != "" {
			out[i].Words = title
		}
	}
	for _, id := range build.SortedKeys(s.Doc.Modes) {
		if id != "drive" && id != "day" && id != "night" {
			out = append(out, choice{id, capital(cmp.Or(s.Doc.Modes[id].Title, unhyphen(id)))})
		}
	}
	return append(out, choice{today, "Today"})
}

func (s *state) knows(mode string) bool {
	for _, m := range s.modes() {
		if m.Value == mode {
			return true
		}
	}
	return false
}
