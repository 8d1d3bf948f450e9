package web_test

import (
	"net/http"
	"testing"
)

// Whatever is typed into whatever place, it is taken, or refused in words; the build that is left is always sound.
func FuzzEdit(f *testing.F) {
	w := open(f, dipper)
	for _, seed := range [][2]string{
		{"/vehicle/wheelbase", "3360"}, {"/vehicle/wheelbase", ""}, {"/lining/floor/-/lay", "ply-birch-9"}, {"/lining/floor/99/lay", "x"},
		{"", "x"}, {"/", "{}"}, {"/fittings", ""}, {"/fittings/galley/at", "undecided"}, {"/fittings/galley/mass", "{likely: 3, low: 2, high: 9}"},
		{"/shell/offsets/stations/s2/half/3", "[1, 2]"}, {"/people/{new}/mass", "70"}, {"/build/title", "[not a list"}, {"/a~1b/~0", "\x00"},
		{"/vehicle/cases/finished-dry/people", "{a: {b: {c: [1, {d: 2}]}}}"}, {"/fittings/galley/of", "{undecided: [ply-birch-9, ply-birch-12]}"},
		{"/vehicle/wheelbase", "3,36 m"}, {"/vehicle/wheelbase", "3,360"}, {"/vehicle/wheelbase", "-3,3600 m,"}, {"/people/{new}/mass", "70,5 kg"},
		{"/vehicle/wheelbase", "3.360"}, {"/vehicle/wheelbase", `10' 11 1/2"`}, {"/vehicle/wheelbase", "-131,5″"}, {"/vehicle/plate/gross", "3.3 t"}, {"/vehicle/plate/gross", "9999999999999 tonnes"},
	} {
		f.Add(seed[0], seed[1])
	}
	f.Fuzz(func(t *testing.T, path, value string) {
		revision, _ := w.store.Head()
		got := w.answer(post("/edit", "path", path, "value", value, "new", value, "base", count(revision.N), "back", "/weight"))
		switch got.Code {
		case http.StatusSeeOther, http.StatusUnprocessableEntity, http.StatusBadRequest, http.StatusConflict:
		default:
			t.Fatalf("%q = %q answers %d: %.300s", path, value, got.Code, got.Body)
		}
		if page := w.answer(get("/weight")); page.Code != http.StatusOK {
			t.Fatalf("%q = %q leaves a page that answers %d", path, value, page.Code)
		}
	})
}

// Whatever JSON is sent as a patch or a move, a preview answers and saves nothing.
func FuzzPreview(f *testing.F) {
	w := open(f, dipper)
	for _, seed := range []string{
		`{"revision": 1, "moves": [{"fitting": "galley", "dx": 10}]}`, `{"revision": 1, "patch": {"fittings": {"galley": null}}}`,
		`{"revision": 1, "patch": []}`, `{"revision": 1, "patch": "x"}`, `{"revision": -1}`, `null`, `[]`, `{"revision": 1, "moves": [{"snap": {"x": "galley.rear"}, "fitting": "settle", "turn": 45}]}`,
	} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, body string) {
		got := w.answer(postJSON("/preview", body))
		if got.Code >= 500 {
			t.Fatalf("%s answers %d", body, got.Code)
		}
		if revision, _ := w.store.Head(); revision.N != 1 {
			t.Fatalf("%s was saved", body)
		}
	})
}
