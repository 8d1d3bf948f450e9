package web_test

import (
	"context"
	"net"
	"net/http"
	"os"
	"path/filepath"
	"testing"
	"time"

	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/internal/browser"
	"tumblehome/internal/store"
	"tumblehome/internal/web"
	"tumblehome/quantity"
)

// wheelbase is the field that the people of these tests quarrel over.
const wheelbase = `.value:has(> input[value='/vehicle/wheelbase']) [name=value]`

func shows(p *browser.Page, value string) {
	p.WaitFor(`document.querySelector("` + wheelbase + `")?.value == "` + value + `"`)
}

// Both values are shown and one is chosen; then the other takes it back, and both windows show that.
func TestOneValueIsEditedInTwoBrowsers(t *testing.T) {
	w := open(t, dipper)
	mine := browser.Open(t, w.http.URL+"/weight", browser.Desk)
	mine.Allow("status of 409")
	theirs := browser.Open(t, w.http.URL+"/weight", browser.Desk)
	w.rests(mine)
	mine.Type(wheelbase, "3370")
	theirs.Type(wheelbase, "3360")
	theirs.Press("Enter")
	w.saved(1)
	w.rests(mine)
	shows(mine, "3370") // what is being typed is not taken away
	mine.Click(wheelbase)
	mine.Press("Enter")
	mine.WaitFor(`[...document.querySelectorAll("form .refused button")].map(b => b.textContent).join() == "Keep mine: 3370,Take theirs: 3360"`)
	if head, _ := w.store.Head(); head.N != 2 {
		t.Fatalf("revision %d was saved before anybody chose", head.N)
	}
	mine.Click("form .refused button")
	w.saved(2)
	w.rests(theirs)
	shows(theirs, "3370")
	theirs.Click("form[action='/undo'] button")
	w.saved(3)
	w.rests(mine)
	shows(mine, "3360")
	mine.WaitFor(`document.querySelector(".said p").textContent.includes("Undo: wheelbase")`)
	mine.WaitFor(`!document.querySelector("form .refused")`)
}

// The machine slept, no news came through, and somebody worked on the build meanwhile.
func TestAPageLeftOpenOverNightClashesOnlyWhereTheBuildHasChanged(t *testing.T) {
	w := open(t, dipper)
	p := browser.Open(t, w.http.URL+"/weight", browser.Desk)
	p.Allow("status of 409")
	p.Allow("ERR_INTERNET_DISCONNECTED")
	w.rests(p)
	p.Type(wheelbase, "3370")
	p.Offline(true)
	for i, e := range []string{"/vehicle/wheelbase", "/vehicle/width"} {
		if got := w.answer(post("/edit", "path", e, "value", []string{"3360", "1980"}[i], "base", "1")); got.Code != http.StatusSeeOther {
			t.Fatal(got.Body)
		}
	}
	p.Offline(false)
	w.rests(p)
	shows(p, "3370")
	p.WaitFor(`document.querySelector(".value:has(> input[value='/vehicle/width']) [name=value]").value == "1980"`)
	p.Click(wheelbase)
	p.Press("Enter")
	p.WaitFor(`document.querySelector("form .refused button:nth-of-type(2)")?.textContent == "Take theirs: 3360"`)
}

// program is the workspace on a build's own file, started and stopped as the command does, always at one address.
type program struct {
	t             *testing.T
	file, address string
	store         *store.Store
	stop          func()
}

func started(t *testing.T) *program {
	t.Helper()
	g := &program{t: t, file: filepath.Join(t.TempDir(), "build.tumblehome"), address: "127.0.0.1:0"}
	w := open(t, dipper)
	_, doc := w.store.Head()
	kept, err := store.Create(context.Background(), g.file, doc, g.options())
	if err != nil {
		t.Fatal(err)
	}
	kept.Close()
	g.start()
	t.Cleanup(func() { g.stop() })
	return g
}

func (g *program) options() store.Options {
	return store.Options{Rows: catalogue.Builtin(), Now: time.Now}
}

func (g *program) start() {
	g.t.Helper()
	var err error
	if g.store, err = store.Open(context.Background(), g.file, g.options()); err != nil {
		g.t.Fatal(err)
	}
	server, err := web.New(web.Options{Store: g.store, Reckon: machine.Reckon, Today: func() quantity.Date { return quantity.Date{Year: 2026, Month: 9, Day: 19} }})
	if err != nil {
		g.t.Fatal(err)
	}
	listener, err := net.Listen("tcp", g.address)
	if err != nil {
		g.t.Fatal(err)
	}
	g.address = listener.Addr().String()
	ctx, leave := context.WithCancel(context.Background())
	ended := make(chan error, 1)
	go func() { ended <- server.Serve(ctx, listener) }()
	g.stop = func() {
		leave()
		if err := <-ended; err != nil {
			g.t.Error(err)
		}
		if err := g.store.Close(); err != nil {
			g.t.Error(err)
		}
	}
}

// sets changes one value of a build's own file, as another program on the same computer would.
func sets(t *testing.T, kept *store.Store, place, value string) {
	t.Helper()
	head, _ := kept.Head()
	if _, err := kept.Save(context.Background(), store.Edit{Base: head.N, Patch: tree.Setting(tree.Pointer(place), tree.Plain(value)), Words: "elsewhere"}); err != nil {
		t.Fatal(err)
	}
}

func TestTheProgramIsStoppedAndStartedUnderAnOpenPage(t *testing.T) {
	g := started(t)
	p := browser.Open(t, "http://"+g.address+"/weight", browser.Desk)
	typing := browser.Open(t, "http://"+g.address+"/weight", browser.Desk)
	for _, page := range []*browser.Page{p, typing} {
		page.Allow("net::ERR_") // a program that ends leaves requests refused, reset, empty or cut short
		page.Allow("status of 409")
		shows(page, "3350")
		page.WaitFor(`document.querySelector(".paper-tools, [data-drawn]")`)
	}
	typing.Type(wheelbase, "3370")
	first := filepath.Join(t.TempDir(), "first.tumblehome")
	g.stop()
	if err := copied(g.file, first); err != nil {
		t.Fatal(err)
	}
	p.WaitFor(`document.querySelector(".told")?.textContent.startsWith("The workspace does not answer")`)
	kept, err := store.Open(context.Background(), g.file, g.options())
	if err != nil {
		t.Fatal(err)
	}
	sets(t, kept, "/vehicle/width", "1980")
	sets(t, kept, "/vehicle/wheelbase", "3360")
	kept.Close()
	g.start()
	p.WaitFor(`document.querySelector(".told")?.textContent.startsWith("The workspace was started again; this page is up to date")`)
	shows(p, "3360")
	typing.WaitFor(`document.querySelector(".told")?.textContent.startsWith("The workspace was started again. What you typed is still here")`)
	typing.WaitFor(`document.querySelector(".value:has(> input[value='/vehicle/width']) [name=value]").value == "1980"`)
	shows(typing, "3370")
	typing.Click(wheelbase)
	typing.Press("Enter") // made for revision 1, which the file still has: a clash like any other
	typing.WaitFor(`document.querySelector("form .refused button:nth-of-type(2)")?.textContent == "Take theirs: 3360"`)

	// The first state is put back, and the build goes its own way up to a revision of the same number.
	p.Type(wheelbase, "3390")
	g.stop()
	if _, _, err := store.Restore(context.Background(), first, g.file, g.options()); err != nil {
		t.Fatal(err)
	}
	g.start()
	sets(t, g.store, "/people/tall/mass", "90")
	sets(t, g.store, "/people/tall/mass", "91")
	p.WaitFor(`document.querySelector(".told")?.textContent.startsWith("The workspace was started again. What you typed")`)
	p.WaitFor(`document.querySelector(".value:has(> input[value='/vehicle/width']) [name=value]").value != "1980"`)
	p.Click(wheelbase)
	p.Press("Enter") // made for a revision 3 that is in no file any more
	p.WaitFor(`document.querySelector("form .refused")?.textContent.startsWith("This page shows a state of the build that is no longer in its file")`)
	shows(p, "3390")
	if head, doc := g.store.Head(); head.N != 3 || doc.Vehicle.Wheelbase != 3350 {
		t.Errorf("revision %d has a wheelbase of %v", head.N, doc.Vehicle.Wheelbase)
	}
}

func copied(from, to string) error {
	text, err := os.ReadFile(from)
	if err != nil {
		return err
	}
	return os.WriteFile(to, text, 0o600)
}
