package web_test

import (
	"net/http"
	"strings"
	"testing"

	"tumblehome/internal/browser"
)

// A drop means a place where the hand saw the thing go. Where somebody else moved it meanwhile, or what it is bound to, it is not made.
func TestWhatSomebodyElseMovedIsNotMovedAgainFromThere(t *testing.T) {
	theirs := func(moves string) []*http.Request { return []*http.Request{moved(moves)} }
	wanted := func(moves string) *http.Request {
		return postJSON("/edit", `{"revision": 2, "seen": 1, "mode": "day", "moves": [`+moves+`]}`)
	}
	table := func(change string) string { return `{"fitting": "table", ` + change + `}` }
	refused := []string{`"message":"Somebody else moved or changed table meanwhile`, `"revision":2`}
	run(t, dipper, []scenario{
		{name: "the other dragged it", before: theirs(table(`"dx": 140`)), request: wanted(table(`"dx": -210`)), status: http.StatusConflict, holds: refused},
		{name: "the other turned it half round, so that it stands in the same box", before: theirs(table(`"turn": 180`)), request: wanted(table(`"dx": -210`)), status: http.StatusConflict, holds: refused},
		{name: "the other stretched it", before: theirs(table(`"stretch": [{"face": "rear", "by": 50}]`)), request: wanted(table(`"turn": 90`)), status: http.StatusConflict, holds: refused},
		{name: "one of several was moved", before: theirs(table(`"dx": 140`)), request: wanted(table(`"dx": -10`) + `, {"fitting": "dry-locker", "dx": -10}`), status: http.StatusConflict, holds: refused},
		{name: "what it stands in was moved", before: theirs(`{"fitting": "galley", "dx": 40}`), request: wanted(`{"fitting": "bowl", "dx": 10}`), status: http.StatusConflict, holds: []string{"Somebody else moved or changed bowl"}},
		{name: "another thing was moved", before: theirs(`{"fitting": "dry-locker", "dx": -50}`), request: wanted(table(`"dx": -210`)), status: 200, holds: []string{`"revision":3`, "Table 210 mm forwards"}},
		{name: "a page that has not heard of it yet is told the same", before: theirs(table(`"dx": 140`)), request: postJSON("/edit", `{"revision": 1, "seen": 1, "mode": "day", "moves": [`+table(`"dx": -210`)+`]}`), status: http.StatusConflict, holds: refused},
		{name: "a hand that saw it where it is now moves it", before: theirs(table(`"dx": 140`)), request: postJSON("/edit", `{"revision": 2, "seen": 2, "mode": "day", "moves": [`+table(`"dx": -210`)+`]}`), status: 200, holds: []string{"Table 210 mm forwards"}},
	})
}

func TestOneThingIsDraggedInTwoBrowsers(t *testing.T) {
	w := open(t, dipper)
	p := browser.Open(t, w.http.URL+"/arrangement?mode=day", browser.Desk)
	p.Allow("status of 409")
	w.rests(p)
	selected(p, "table")
	at := spot(t, p, "plan", "table")
	to := browser.Point{X: at.X - 40, Y: at.Y}
	p.Grasp(at, at)
	if got := w.answer(moved(`{"fitting": "table", "dx": 140}`)); got.Code != 200 {
		t.Fatal(got.Body)
	}
	p.WaitFor(`document.body.dataset.revision == "2" && !document.querySelector("body.is-working")`)
	_, before := w.store.Head()
	p.Trail(browser.Path{From: at, To: to}, 4)
	p.Release(to)
	p.WaitFor(`document.querySelector(".moved")?.textContent.includes("Somebody else moved or changed table meanwhile")`)
	head, doc := w.store.Head()
	if head.N != 2 || doc.Fittings["table"].At.X != before.Fittings["table"].At.X {
		t.Errorf("revision %d was made", head.N)
	}
	p.WaitFor(`!document.querySelector("svg [data-fitting][transform]")`)

	// From there it goes, twice in one breath: what one has done oneself is no other's.
	browser.Eval[bool](p, `(document.querySelector('.fittings [data-fitting="table"]').focus({preventScroll: true}), true)`)
	for range 2 {
		p.Press("ArrowLeft")
		browser.Eval[bool](p, `(document.activeElement.blur(), document.querySelector('.fittings [data-fitting="table"]').focus({preventScroll: true}), true)`)
	}
	w.saved(3)
	w.rests(p)
	if said := browser.Eval[string](p, `document.querySelector(".said").textContent`); !strings.Contains(said, "10 mm forwards") {
		t.Errorf("it says %q", said)
	}
}
