package web_test

import (
	"context"
	"encoding/json"
	"errors"
	"net/http"
	"strings"
	"testing"

	"tumblehome/build"
	"tumblehome/internal/store"
	"tumblehome/internal/web"
	"tumblehome/quantity"
)

// What cannot be taken is refused in a sentence, never as a failure of the program.
func TestUnclearRequests(t *testing.T) {
	run(t, dipper, []scenario{
		{name: "a value of broken letters", request: post("/edit", "path", "/build/title", "value", "D\xff", "base", "1"), status: http.StatusBadRequest, holds: []string{"holds letters that are none here"}},
		{name: "a place of broken letters", request: post("/edit", "path", "/build/\xc3", "value", "D", "base", "1"), status: http.StatusBadRequest},
		{name: "a patch of broken letters", request: postJSON("/edit", `{"revision": 1, "patch": {"build": {"title": "`+"\xff"+`"}}}`), status: http.StatusBadRequest},
		{name: "a wish of broken letters", request: post("/fittings/add", "words", "ben\xffch", "base", "1"), status: http.StatusBadRequest},
		{name: "a layer that is not there is not lost without a word", request: post("/edit", "path", "/lining/floor/99/lay", "value", "carpet-4way", "base", "1"), status: http.StatusBadRequest,
			holds: []string{"here to change"}},
		{name: "JSON that goes on after its end", request: postJSON("/preview", `{"revision": 1, "moves": [{"fitting": "galley", "dx": 10}]} and more`), status: http.StatusBadRequest, holds: []string{"goes on after its end"}},
		{name: "a preview of a fitting that is not there names it", request: postJSON("/preview", `{"revision": 1, "moves": [{"fitting": "grand-piano", "dx": 10}]}`), status: http.StatusBadRequest,
			holds: []string{"there is no grand piano in this build"}},
		{name: "a change that changes nothing says so to script", before: []*http.Request{post("/edit", "path", "/vehicle/width", "value", "1980", "base", "1")},
			request: with(post("/edit", "path", "/vehicle/wheelbase", "value", "3350", "base", "2"), byScript), status: 200, holds: []string{`"revision":2`, `"sentence":"Nothing changed."`}},
		{name: "and sends a plain browser back", request: post("/edit", "path", "/vehicle/wheelbase", "value", "3350", "base", "1", "back", "/weight"), status: http.StatusSeeOther, location: "/weight"},
		{name: "a revision that there never was", request: get("/revisions/99"), status: http.StatusNotFound, holds: []string{"<h1>There is no such revision</h1>"}, lacks: []string{"Nothing was saved"}},
	})
}

func TestLongWordsAreClipped(t *testing.T) {
	w := open(t, dipper)
	if got := w.answer(post("/edit", "path", "/vehicle/width", "value", "1980", "words", strings.Repeat("wé", 400), "base", "1")); got.Code != http.StatusSeeOther {
		t.Fatalf("it answers %d", got.Code)
	}
	if revision, _ := w.store.Head(); len([]rune(revision.Words)) != 200 || !strings.HasSuffix(revision.Words, "…") {
		t.Errorf("the words are %d long: %q", len([]rune(revision.Words)), revision.Words)
	}
}

// unwilling keeps a build that takes no change, for one reason.
type unwilling struct {
	web.Keeper
	why error
}

func (u unwilling) Save(context.Context, store.Edit) (store.Revision, error) {
	return store.Revision{}, u.why
}

func TestWhyTheFileTakesNoChange(t *testing.T) {
	kept := open(t, dipper).store
	fault := build.Fault{Path: "vehicle.wheelbase", Wrong: "is too long"}
	for name, c := range map[string]struct {
		why    error
		status int
		says   string
	}{
		"a full disk says what to do":            {&store.Trouble{Kind: store.ErrFull, Says: "The disk is full; make room and try again."}, 503, "The disk is full; make room and try again."},
		"two changes that break a rule together": {errors.Join(&store.Conflict{Base: 1, Head: 2}, build.Faults{fault}), 409, "do not go together"},
		"too large a build":                      {store.ErrTooLarge, 422, "The document would become larger"},
	} {
		t.Run(name, func(t *testing.T) {
			server, err := web.New(web.Options{Store: unwilling{kept, c.why}, Reckon: machine.Reckon, Today: func() quantity.Date { return quantity.Date{Year: 2026, Month: 9, Day: 19} }})
			if err != nil {
				t.Fatal(err)
			}
			w := &workshop{t: t, server: server}
			got := w.answer(with(post("/edit", "path", "/vehicle/wheelbase", "value", "3360", "base", "1"), byScript))
			var said struct {
				Message string
				Wrong   map[string]string
			}
			if err := json.Unmarshal(got.Body.Bytes(), &said); err != nil || got.Code != c.status || !strings.Contains(said.Message, c.says) {
				t.Errorf("it answers %d (%v) %+v", got.Code, err, said)
			}
			if c.status == 409 && !strings.Contains(said.Wrong["/vehicle/wheelbase"], "Is too long") {
				t.Errorf("the fault is not beside its field: %+v", said)
			}
		})
	}
}
