package web

import (
	"cmp"
	"net/http"
	"net/url"
	"strconv"
	"strings"

	"github.com/a-h/templ"

	"tumblehome/internal/words"
	"tumblehome/reckon"
	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

// showHow shows how a figure came about, or what a margin note means; where a figure and a note share a code, both.
func (s *Server) showHow(w http.ResponseWriter, r *http.Request) {
	now, err := s.desk.head(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	v := s.viewOf(r, now, "", "")
	code := r.PathValue("code")
	title, parts := "", []templ.Component(nil)
	if explained, ok := reckon.Explain(code); ok {
		title, parts = explained.Meaning, append(parts, howNote(v, explained, here(now.Findings, code, r.FormValue("about"))))
	}
	if how, ok := now.Working(code); ok {
		figure, _ := now.Figure(code)
		title, parts = how.Label, append(parts, howFigure(v, figure, how))
	}
	if len(parts) == 0 {
		s.notFound(w, r)
		return
	}
	s.showBeside(w, r, v, title, templ.Join(parts...))
}

// here are the findings of a code in this build; where one is asked for by what it is about, that one alone.
func here(all []finding.Finding, code, about string) []finding.Finding {
	var out []finding.Finding
	for _, f := range all {
		if f.Code == code && (about == "" || len(f.About) > 0 && f.About[0] == about) {
			out = append(out, f)
		}
	}
	return out
}

// origin is where a line of a working came from, with the page where that can be looked at or changed.
type origin struct{ Words, Address string }

func originOf(o working.Origin) origin {
	switch {
	case o.Pointer != "":
		return origin{"from this build: " + pathWords(pointerPath(o.Pointer)), addressOf(o.Pointer)}
	case o.Row != "":
		return origin{"from the catalogue: " + o.Row, ""}
	case o.Figure != "":
		return origin{"another figure", "/how/" + url.PathEscape(o.Figure)}
	case o.Assumption != "":
		return origin{"assumed: " + o.Assumption, ""}
	}
	return origin{"from the lines above", ""}
}

func pointerPath(pointer string) string {
	return strings.ReplaceAll(strings.TrimPrefix(pointer, "/"), "/", ".")
}

// homes are the pages where the sections of the document can be changed.
var homes = map[string]string{
	"fittings": "/arrangement", "modes": "/arrangement", "shell": "/shell", "removed": "/shell", "lining": "/build-up",
	"vehicle": "/weight", "people": "/weight", "use": "/weight", "spending": "/cost", "prices": "/cost", "build": "/cost",
	"stock": "/cost", "air": "/warmth", "alternatives": "/revisions",
}

// warmsUs are the parts of the use of a van that stand on the page of warmth.
var warmsUs = map[string]bool{"climate": true, "altitude": true, "weather": true, "trips": true}

// addressOf is the page where a place of the document can be changed.
func addressOf(pointer string) string {
	steps := strings.Split(strings.TrimPrefix(pointer, "/"), "/")
	home := homes[steps[0]]
	if steps[0] == "use" && len(steps) > 1 && warmsUs[steps[1]] {
		home = "/warmth"
	}
	if steps[0] == "fittings" && len(steps) > 1 {
		return home + "#fitting-" + url.PathEscape(steps[1])
	}
	return home
}

// lineValue writes a line's value with the digits needed to follow the sum by hand.
func lineValue(l working.Line) string {
	decimals := 2
	if l.Value == float64(int64(l.Value)) {
		decimals = 0
	}
	text := strconv.FormatFloat(l.Value, 'f', decimals, 64)
	if l.Unit == "" || l.Unit == "1" {
		return text
	}
	return text + " " + unitWords(l.Unit)
}

var unitSigns = map[string]string{"m2": "m²", "m3": "m³", "mm2": "mm²", "cm2": "cm²", "kg/m2": "kg/m²", "g/m2": "g/m²", "W/m2K": "W/m²K", "m2K/W": "m²K/W", "m3/h": "m³/h", "kWh/m2": "kWh/m²"}

func unitWords(unit string) string { return cmp.Or(unitSigns[unit], unit) }

// sureWords says how far a source can be trusted.
func sureWords(s finding.Sure) string {
	return map[finding.Sure]string{
		finding.Read: "read in the source named", finding.Memory: "from memory, not looked up",
		finding.Practice: "a habit of the trade", finding.Computed: "follows from figures of this build",
	}[s]
}

// sourceWords name a source and how far it can be trusted, unless its own text says so.
func sourceWords(s finding.Source) string {
	if strings.Contains(s.Text, string(s.Sure)) {
		return s.Text
	}
	return s.Text + " (" + sureWords(s.Sure) + ")"
}

// measureWords writes what was measured, or its limit.
func measureWords(m *finding.Measure) string {
	if m == nil {
		return ""
	}
	return words.Fine(m.Value, m.Unit)
}

// stateWords says when a figure is less than sure.
func stateWords(s working.State) string {
	return map[working.State]string{working.Assumed: "rests on something not decided or not measured yet", working.Older: "of an earlier revision; the new one is on its way"}[s]
}
