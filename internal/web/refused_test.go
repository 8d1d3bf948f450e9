package web_test

import (
	"net/http"
	"regexp"
	"testing"
)

// Without script nobody opens for the reader what hides the value that was refused.
func TestARefusedValueIsInSight(t *testing.T) {
	run(t, dipper, []scenario{
		{name: "of a thing in the list: its fields are open, and the top of the page leads there", request: post("/edit", "path", "/fittings/galley/mass", "value", "heavy", "base", "1", "back", "/arrangement"),
			status: http.StatusUnprocessableEntity, holds: []string{`<details open data-key="fields">`, "Nothing was saved: <a href=\"#wrong-fittings-fittings-galley-mass\">Galley, mass.</a>", `id="wrong-fittings-fittings-galley-mass"`}},
		{name: "of a layer", request: post("/edit", "path", "/lining/floor/0/lay", "value", "gold", "base", "1", "back", "/build-up"), status: http.StatusUnprocessableEntity, holds: []string{"<details open>", "Nothing was saved: <a"}},
		{name: "of a page as it stands nothing is open", request: get("/build-up"), status: 200, lacks: []string{"<details open>", "Nothing was saved"}},
	})
}

var noteAbout = regexp.MustCompile(`data-about="([^"]*)"`)

// What is only planned is no fault of the van as it stands.
func TestNotesOfTodayAreAboutWhatIsIn(t *testing.T) {
	w := open(t, dipper)
	_, doc := w.store.Head()
	for _, found := range noteAbout.FindAllStringSubmatch(w.answer(get("/region/notes?mode=today")).Body.String(), -1) {
		for id, f := range doc.Fittings {
			if f.Fitted == nil && regexp.MustCompile(`/fittings/`+id+`( |/|$)`).MatchString(found[1]) {
				t.Errorf("a note of today is about %s, which is only planned", id)
			}
		}
	}
	if len(noteAbout.FindAllString(w.answer(get("/region/notes?mode=day")).Body.String(), -1)) == 0 {
		t.Error("the plan has no note, so that this proves nothing")
	}
}
