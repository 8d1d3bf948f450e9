package web_test

import (
	"net/http"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

const emptyVan = `
tumblehome: 1
build: {title: Wren, rules: gb, currency: GBP}
people: {ada: {stature: 1700, mass: 70}}
use: {trips: {weekends: {months: [5, 6, 7, 8], often: 2 /month, nights: 2, aboard: [ada], driving: 2 h/trip}}}
vehicle: {wheelbase: 3350, datum: 1290}
shell: {}
`

// openEmpty opens a workspace on a van in which nothing stands.
func openEmpty(t *testing.T) *workshop {
	t.Helper()
	file := filepath.Join(t.TempDir(), "wren.yaml")
	if err := os.WriteFile(file, []byte(emptyVan), 0o600); err != nil {
		t.Fatal(err)
	}
	return open(t, file)
}

// press sends the form of a button of the page Power, as a browser without script does.
func (w *workshop) press(t *testing.T, button string) {
	t.Helper()
	page := w.answer(get("/power")).Body.String()
	i := strings.Index(page, button)
	if i < 0 {
		t.Fatalf("there is no button %q", button)
	}
	form := page[strings.LastIndex(page[:i], "<form"):i]
	action, _, _ := strings.Cut(between(form, `action="`), `"`)
	var pairs []string
	for _, piece := range strings.Split(form, `<input type="hidden" name="`)[1:] {
		name, rest, _ := strings.Cut(piece, `"`)
		value, _, _ := strings.Cut(between(rest, `value="`), `"`)
		pairs = append(pairs, name, strings.NewReplacer("&#34;", `"`, "&amp;", "&", "&#39;", "'").Replace(value))
	}
	if got := w.answer(post(action, pairs...)); got.Code != http.StatusSeeOther {
		t.Fatalf("%s: it answers %d %.300s", button, got.Code, got.Body)
	}
}

// between is what follows a piece of text.
func between(text, piece string) string {
	_, rest, _ := strings.Cut(text, piece)
	return rest
}

// From an empty van to whether the lights stay on, and is the cable safe, without leaving the page and without an id.
func TestFromAnEmptyVanToLight(t *testing.T) {
	w := openEmpty(t)
	if page := w.answer(get("/power")).Body.String(); strings.Contains(page, `id="unjoined"`) || !strings.Contains(page, `id="first"`) {
		t.Error("an empty van is asked to join up something, or not told what to begin with")
	}
	for _, put := range []string{"a lamp under", "a fridge", "a battery", "a fuse box", "a solar panel", "the solar controller"} {
		w.press(t, `aria-label="put in: `+put)
	}
	if page := w.answer(get("/power")).Body.String(); !strings.Contains(page, "A battery stands in the van, but it is not told to feed anything.") {
		t.Error("nobody is told that the battery feeds nothing")
	}
	w.press(t, `aria-label="join up all of it`)
	page := w.answer(get("/power")).Body.String()
	for _, piece := range []string{"the lights never went out", "No cable has a way yet", "Lead these cables"} {
		if !strings.Contains(page, piece) {
			t.Errorf("the page lacks %q", piece)
		}
	}
	for _, piece := range []string{`id="unjoined"`, `id="first"`, "No circuits are written down yet"} {
		if strings.Contains(page, piece) {
			t.Errorf("the page still holds %q", piece)
		}
	}
	if sun := w.at(t, "/power/sources/sun"); !strings.Contains(sun, `"by":"regulator"`) {
		t.Errorf("the panel charges by %s", sun)
	}
	w.press(t, `aria-label="Lead W`)
	if page := w.answer(get("/power")).Body.String(); !strings.Contains(page, "of 4 cables") && !strings.Contains(page, "of 3 cables") || strings.Contains(page, "No cable has a way yet") {
		t.Error("one cable was led and the page does not say so")
	}
}

// A battery that feeds nothing keeps no lights on, however good the sums are.
func TestWithoutACableNothingIsSaidToLight(t *testing.T) {
	w := open(t, dipper)
	for _, change := range []struct{ path, said string }{
		{"/power/circuits", "No cable leads from the battery yet, so nothing would light."},
		{"/use/climate", "Nobody has said where you travel: the weather of "},
	} {
		if page := w.answer(get("/power")).Body.String(); strings.Contains(page, change.said) {
			t.Errorf("the whole build says %q", change.said)
		}
		revision, _ := w.store.Head()
		if got := w.answer(post("/edit", "path", change.path, "value", "", "base", strconv.FormatInt(int64(revision.N), 10))); got.Code != http.StatusSeeOther {
			t.Fatalf("%s: %d %.200s", change.path, got.Code, got.Body)
		}
		if page := w.answer(get("/power")).Body.String(); !strings.Contains(page, change.said) {
			t.Errorf("without %s nobody says %q", change.path, change.said)
		}
	}
}
