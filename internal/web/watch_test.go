package web_test

import (
	"context"
	"io"
	"net/http"
	"net/url"
	"os"
	"strings"
	"testing"

	"tumblehome/internal/store"
)

// page is what the program answers at an address.
func (g *program) page(address string) string {
	g.t.Helper()
	answer, err := http.Get("http://" + g.address + address)
	if err != nil {
		g.t.Fatal(err)
	}
	defer answer.Body.Close()
	text, err := io.ReadAll(answer.Body)
	if err != nil {
		g.t.Fatal(err)
	}
	return string(text)
}

// sends posts a form of a page, as script does, which says of which run of the program it is.
func (g *program) sends(run string, pairs ...string) (status int, says string) {
	g.t.Helper()
	fields := url.Values{}
	for i := 0; i < len(pairs); i += 2 {
		fields.Set(pairs[i], pairs[i+1])
	}
	r, err := http.NewRequest(http.MethodPost, "http://"+g.address+"/edit", strings.NewReader(fields.Encode()))
	if err != nil {
		g.t.Fatal(err)
	}
	r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
	r.Header.Set("X-Tumblehome", run)
	answer, err := http.DefaultClient.Do(r)
	if err != nil {
		g.t.Fatal(err)
	}
	defer answer.Body.Close()
	text, _ := io.ReadAll(answer.Body)
	return answer.StatusCode, string(text)
}

func TestWhatAnotherProgramWritesReachesAnOpenPage(t *testing.T) {
	t.Parallel()
	g := started(t)
	news := listen(t, "http://"+g.address)
	next(t, news)
	other, err := store.Open(context.Background(), g.file, g.options())
	if err != nil {
		t.Fatal(err)
	}
	defer other.Close()
	sets(t, other, "/vehicle/wheelbase", "3360")
	if got := nextRevision(t, news, 1); !strings.HasPrefix(got, `data: {"revision":2,`) {
		t.Errorf("the page hears %q", got)
	}
	if got := g.page("/region/weight?page=weight"); !strings.Contains(got, `value="3360"`) {
		t.Error("the page does not show what the other program wrote")
	}
}

func TestAPageSaysForAsLongAsNothingCanBeSaved(t *testing.T) {
	t.Parallel()
	g := started(t)
	news := listen(t, "http://"+g.address)
	next(t, news)
	if err := os.Rename(g.file, g.file+"-away"); err != nil {
		t.Fatal(err)
	}
	for !strings.Contains(next(t, news), `"notice"`) { // news of tried proposals may come first
	}
	if got := g.page("/weight"); !strings.Contains(got, "was moved, renamed or deleted while it was open. Nothing more can be saved.") {
		t.Error("the page does not say that the file is gone")
	}
	status, says := g.sends("1", "path", "/vehicle/wheelbase", "value", "3360", "base", "1")
	if status != http.StatusServiceUnavailable || !strings.Contains(says, "Nothing of this change was saved") {
		t.Errorf("an edit is answered %d %s", status, says)
	}
	if err := os.Rename(g.file+"-away", g.file); err != nil {
		t.Fatal(err)
	}
	for said := next(t, news); !strings.Contains(said, `"notice"`); said = next(t, news) {
	}
	if got := g.page("/weight"); strings.Contains(got, "was moved") {
		t.Error("the page still says so when the file is back")
	}
	if status, says := g.sends("1", "path", "/vehicle/wheelbase", "value", "3360", "base", "1"); status != http.StatusOK {
		t.Errorf("then an edit is answered %d %s", status, says)
	}
}

func TestABuildThatCanOnlyBeReadSaysSoOnEveryPage(t *testing.T) {
	t.Parallel()
	g := started(t)
	g.stop()
	if err := os.Chmod(g.file, 0o444); err != nil {
		t.Fatal(err)
	}
	g.start()
	for _, page := range allPages {
		if got := g.page("/" + page); !strings.Contains(got, "is marked read-only. It can be looked at, but nothing can be saved") {
			t.Errorf("%s does not say so", page)
		}
	}
	status, says := g.sends("1", "path", "/vehicle/wheelbase", "value", "3360", "base", "1")
	if status != http.StatusServiceUnavailable || !strings.Contains(says, "is marked read-only") {
		t.Errorf("an edit is answered %d %s", status, says)
	}
}

// A number says little when the file holds another history by now.
func TestAPageOfAnotherHistoryIsTold(t *testing.T) {
	w := open(t, dipper)
	page := w.answer(get("/weight")).Body.String()
	_, after, _ := strings.Cut(page, `name="base" value="`)
	base, _, _ := strings.Cut(after, `"`)
	other := "1-" + strings.Repeat("0", len(base)-2)
	edit := func(base string) *http.Request {
		return post("/edit", "path", "/vehicle/wheelbase", "value", "3360", "base", base)
	}
	run(t, dipper, []scenario{
		{name: "a form of another history", request: edit(other), status: http.StatusConflict, holds: []string{"no longer in its file", "Nothing was saved"}},
		{name: "a form of a revision that the file does not have", request: edit("7" + base[1:]), status: http.StatusConflict, holds: []string{"no longer in its file"}},
		{name: "a form whose seal is no seal", request: edit("1-"), status: http.StatusBadRequest},
		{name: "an undo of another history", request: post("/undo", "base", other), status: http.StatusConflict},
		{name: "a drag of another run of the program", request: with(postJSON("/edit", `{"revision": 1, "moves": [{"fitting": "galley", "dx": 10}]}`), func(r *http.Request) { r.Header.Set("X-Tumblehome", "ANOTHERRUN") }),
			status: http.StatusConflict, holds: []string{"started again", "Nothing was saved"}},
	})
	if got := w.answer(edit(base)); got.Code != http.StatusSeeOther {
		t.Errorf("a form of this history is answered %d", got.Code)
	}
	if got := w.answer(edit(base)); got.Code >= 400 {
		t.Errorf("the same again, of a revision that is not the newest any more: %d", got.Code)
	}
}
