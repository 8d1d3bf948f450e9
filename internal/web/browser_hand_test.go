package web_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"tumblehome/internal/browser"
)

// grip is the middle of a handle of the chosen fitting.
func grip(p *browser.Page, name string) browser.Point {
	p.WaitFor(fmt.Sprintf(`document.querySelector('svg .grip[data-grip="%s"]')`, name))
	at := browser.Eval[[]float64](p, fmt.Sprintf(`(r => [r.left + r.width / 2, r.top + r.height / 2])(document.querySelector('svg .grip[data-grip="%s"] .target').getBoundingClientRect())`, name))
	return browser.Point{X: at[0], Y: at[1]}
}

func (w *workshop) sizeX(id string) float64 { return w.fitting(id).Size.X.Float() }

// A builder makes the galley shorter by its handle, tries the settle's cut side, turns the table, and takes both back.
func TestStretchingAndTurningByHandles(t *testing.T) {
	w := open(t, dipper)
	p := browser.Open(t, w.http.URL+"/arrangement?mode=day", browser.Desk)
	n := w.rests(p)
	selected(p, "galley")
	from := grip(p, "rear")
	to := browser.Point{X: from.X - px(p, 150), Y: from.Y}
	p.Grasp(from, to)
	p.WaitFor(`document.querySelector("svg .live .shape").getAttribute("d") && document.querySelector("svg .live .value").textContent.startsWith("8")`)
	p.WaitFor(`document.querySelector(".moved .sentence").textContent.startsWith("Galley stretched, its rear face")`)
	p.Screenshot(t, "stretch-desk")
	p.Release(to)
	w.saved(n)
	n = w.rests(p)
	if got := w.sizeX("galley"); math.Abs(got-800) > 20 || math.Mod(got, 10) != 0 {
		t.Errorf("the galley is %g long, want about 800, in whole centimetres", got)
	}
	p.Press("Control+z")
	w.saved(n)
	n = w.rests(p)
	if got := w.sizeX("galley"); got != 950 {
		t.Errorf("after undo it is %g long", got)
	}

	at := grip(p, "right")
	p.Drag(at, browser.Point{X: at.X, Y: at.Y - 20})
	p.WaitFor(`document.querySelector(".moved .sentence").textContent.includes("cut to the lining")`)
	p.Axe(t)

	selected(p, "table")
	at = grip(p, "turn")
	r := browser.Eval[[]float64](p, `(r => [r.left + r.width / 2, r.top + r.height / 2])(document.querySelector("#plan-table > path").getBoundingClientRect())`)
	side := browser.Point{X: r[0] - (at.Y - r[1]), Y: r[1] + (at.X - r[0])} // a quarter further, clockwise
	p.Grasp(at, side)
	p.WaitFor(`document.querySelector("svg .live .value").textContent == "90°"`)
	p.Screenshot(t, "turn-desk")
	p.Press("Escape") // puts it back, and it stays chosen
	p.Release(side)
	at = grip(p, "turn")
	p.Drag(at, side)
	w.saved(n)
	w.rests(p)
	if got := w.fitting("table").Turn; got == nil || got.Float() != 90 {
		t.Errorf("the table is turned by %v", got)
	}
}

func TestSeveralAreArrangedTogether(t *testing.T) {
	w := open(t, dipper)
	p := browser.Open(t, w.http.URL+"/arrangement?mode=day", browser.Desk)
	n := w.rests(p)
	selected(p, "galley")
	browser.Eval[bool](p, `(document.querySelector('.fittings [data-fitting="table"]').focus({preventScroll: true}), true)`)
	p.Press(" ") // the table stays chosen while the focus goes on
	browser.Eval[bool](p, `(document.querySelector('.fittings [data-fitting="dry-locker"]').focus({preventScroll: true}), true)`)
	p.WaitFor(`document.querySelector(".hand .what").textContent.startsWith("2 things")`)
	p.Screenshot(t, "several-desk")
	p.Press("Shift+ArrowLeft")
	w.saved(n)
	n = w.rests(p)
	if x, y := w.place("table"), w.place("dry-locker"); x != "1059" || y == "" {
		t.Errorf("table at %s, dry locker at %s", x, y)
	}
	p.Click(`.hand [data-act="fronts-in-line"]`)
	w.saved(n)
	n = w.rests(p)
	if a, b := w.place("table"), w.place("dry-locker"); a != b {
		t.Errorf("in line, the table is at %s and the dry locker at %s", a, b)
	}
	p.Press("Control+d")
	w.saved(n)
	n = w.rests(p)
	p.WaitFor(`document.querySelector("#plan-table-2.is-selected") && document.querySelector("#plan-dry-locker-2.is-selected")`)
	p.Press("Delete")
	p.WaitFor(`document.activeElement.textContent == "Keep it"`)
	p.Allow("status of 422") // the copies carry what the originals carry, so it is asked again
	p.Press("Tab")
	p.Press("Enter")
	p.WaitFor(`document.querySelector(".removal button:last-child").textContent == "Take out all of it" && document.activeElement.textContent == "Keep it"`)
	p.Press("Tab")
	p.Press("Enter")
	w.saved(n)
	n = w.rests(p)
	if _, doc := w.store.Head(); len(doc.Fittings["table-2"].Make) > 0 {
		t.Error("table-2 is still there")
	}

	p.Click(`.hand [data-act="frame"]`)
	frame := browser.Eval[[]float64](p, `(r => [r.left, r.top, r.right, r.bottom])(document.querySelector("#plan-dry-locker").getBoundingClientRect())`)
	p.Grasp(browser.Point{X: frame[0] - 3, Y: frame[1] - 3}, browser.Point{X: frame[2] + 3, Y: frame[3] + 3})
	p.WaitFor(`document.querySelector("svg .marquee[width]")`)
	p.Screenshot(t, "frame-desk")
	p.Release(browser.Point{X: frame[2] + 3, Y: frame[3] + 3})
	p.WaitFor(`document.querySelector("#plan-dry-locker.is-selected")`)
	p.Axe(t)
	if got, _ := w.store.Head(); got.N != n {
		t.Errorf("choosing made a revision: %d after %d", got.N, n)
	}
}

func TestWhatIsLockedStays(t *testing.T) {
	w := open(t, dipper)
	p := browser.Open(t, w.http.URL+"/arrangement?mode=day", browser.Desk)
	n := w.rests(p)
	selected(p, "table")
	p.Press("l")
	w.saved(n)
	n = w.rests(p)
	p.WaitFor(`document.querySelector("#fitting-table .padlock-mark") && document.querySelector(".hand .what").textContent.includes("locked") && !document.querySelector("svg .grip")`)
	p.Screenshot(t, "locked-desk")
	from := spot(t, p, "plan", "table")
	p.Drag(from, browser.Point{X: from.X + 60, Y: from.Y})
	p.WaitFor(`document.querySelector(".moved .sentence").textContent == "Table stays as it is: it is locked."`)
	p.Press("ArrowRight")
	p.Press("l")
	w.saved(n)
	w.rests(p)
	if w.place("table") != "1060" {
		t.Errorf("the table went to %s", w.place("table"))
	}
}

func TestMeasuringOnThePaper(t *testing.T) {
	w := open(t, dipper)
	p := browser.Open(t, w.http.URL+"/arrangement?mode=day", browser.Desk)
	w.rests(p)
	selected(p, "table")
	p.Press("m")
	p.WaitFor(`document.querySelector(".sheet.is-measuring") && document.querySelector(".ruler select option[value=galley]")`)
	r := browser.Eval[[]float64](p, `(r => [r.left, r.top, r.right, r.bottom])(document.querySelector("#plan-table > path").getBoundingClientRect())`)
	press := func(x, y float64) { p.Drag(browser.Point{X: x, Y: y}, browser.Point{X: x, Y: y}) }
	press(r[0]+2, r[1]+2)
	press(r[2]-2, r[3]-3)
	p.WaitFor(`document.querySelector(".live[role=status]").textContent == "along 700, across 420, straight 816 mm"`)
	p.Screenshot(t, "measure-desk")
	browser.Eval[bool](p, `(() => { const [a, b] = document.querySelectorAll(".ruler select"); a.value = "galley"; b.value = "settle"; b.dispatchEvent(new Event("change")); return true; })()`)
	p.WaitFor(`document.querySelector(".ruler output").textContent.startsWith("along 5,")`)
	p.Axe(t)
	p.Press("Escape")
	p.WaitFor(`!document.querySelector("svg .measure circle")`)
	p.Press("Escape")
	p.WaitFor(`!document.querySelector(".is-measuring")`)
}

func TestThePaperIsMovedByKeysAndTheKeysAreListed(t *testing.T) {
	w := open(t, dipper)
	p := browser.Open(t, w.http.URL+"/arrangement?mode=day", browser.Desk)
	w.rests(p)
	p.WaitFor(`document.querySelector(".hand")`)
	wide := func() float64 {
		return browser.Eval[float64](p, `+document.querySelector("svg.drawing").getAttribute("viewBox").split(" ")[2]`)
	}
	whole := wide()
	p.Press("=")
	if got := wide(); math.Abs(whole/got-1.5) > 0.01 {
		t.Errorf("nearer by %g", whole/got)
	}
	p.Press("0")
	if got := wide(); got != whole {
		t.Errorf("the whole is %g wide, was %g", got, whole)
	}
	p.Press("?")
	p.WaitFor(`!document.querySelector(".keys").hidden`)
	p.Axe(t)
	p.Screenshot(t, "keys-desk")
}

// By touch: on a phone a thing no larger than a finger has no handles, a larger one has some that are wide enough for it.
// The page is at its top, where nothing can be scrolled back.
func TestATapLeavesTheDrawingWhereItIsOnAPhone(t *testing.T) {
	w := open(t, dipper)
	p := browser.Open(t, w.http.URL+"/arrangement?mode=day", browser.Phone)
	w.rests(p)
	top := func() float64 {
		return browser.Eval[float64](p, `(scrollTo(0, 0), document.querySelector(".sheet").getBoundingClientRect().top)`)
	}
	before := top()
	for _, id := range []string{"galley", "settle", "table"} {
		selected(p, id)
		p.WaitFor(fmt.Sprintf(`document.querySelector("#plan-%s.is-selected") && /\d mm/.test(document.querySelector(".hand .what").textContent)`, id))
		if after := top(); after != before {
			t.Errorf("with the %s chosen the drawing is at %g px, before at %g", id, after, before)
		}
	}
}

func TestAFingerStretchesOnAPhone(t *testing.T) {
	w := open(t, dipper)
	p := browser.Open(t, w.http.URL+"/arrangement?mode=day", browser.Phone)
	n := w.rests(p)
	browser.Eval[bool](p, `(document.querySelector("#plan-settle").scrollIntoView({block: "center", behavior: "instant"}), true)`)
	p.Click(`.paper-tools [aria-label="Nearer"]`)
	selected(p, "settle")
	grip(p, "left")
	browser.Eval[bool](p, `(document.querySelector("#plan-settle").scrollIntoView({block: "center", behavior: "instant"}), true)`)
	p.Screenshot(t, "grips-phone")
	from := grip(p, "left")
	size := browser.Eval[float64](p, `document.querySelector('svg .grip[data-grip="left"] .target').getBoundingClientRect().width`)
	if size < 24 {
		t.Errorf("a handle is %g px wide", size)
	}
	p.Grasp(from, browser.Point{X: from.X, Y: from.Y - 15})
	p.WaitFor(`document.querySelector("svg .live .shape").getAttribute("d")`)
	if outlines := browser.Eval[int](p, `document.querySelector("svg .live .shape").getAttribute("d").split("M").length - 1`); outlines != 1 {
		t.Errorf("the new shape is drawn in %d views, of which one is shown", outlines)
	}
	p.Press("Escape")
	p.Release(from)
	w.rests(p)
	from = grip(p, "left")
	p.TouchDrag(browser.Path{From: from, To: browser.Point{X: from.X, Y: from.Y - math.Max(15, px(p, 100))}})
	w.saved(n)
	w.rests(p)
	if got, _ := w.store.Head(); !strings.Contains(got.Words, "its left face") {
		t.Errorf("the change reads %q", got.Words)
	}
	p.WaitFor(`document.querySelector(".moved.is-result:not([hidden]) .sentence").textContent.includes("its left face")`)
	p.Axe(t)
	selected(p, "dry-locker")
	p.WaitFor(`document.querySelectorAll("svg .grip").length == 0`)
}

// What is added is chosen at once and can be put somewhere beside the drawing; there it is also asked whether it is taken out again.
func TestWhatIsAddedIsChosenBesideTheDrawing(t *testing.T) {
	w := open(t, dipper)
	p := browser.Open(t, w.http.URL+"/arrangement?mode=day", browser.Desk)
	n := w.rests(p)
	p.Type("#add-words", "galley, about 1 m")
	p.Press("Enter")
	p.WaitFor(`document.querySelector("form.add + #beside .offers") && document.activeElement.matches("#beside h2")`)
	p.Click("#beside .offers button")
	w.saved(n)
	p.WaitFor(`document.activeElement.matches(".fittings .is-selected") && !document.querySelector("#beside .offers")`)
	p.WaitFor(`document.querySelector(".hand + div form.spots, #plan-galley-2.is-selected")`)
	p.Screenshot(t, "added-desk")
	if place := browser.Eval[bool](p, `document.querySelector(".hand + div form.spots") != null`); place {
		n = w.rests(p)
		p.Click(".hand + div form.spots button")
		w.saved(n)
		p.WaitFor(`!document.querySelector(".hand + div form.spots")`)
	}
	w.rests(p)
	at := browser.Eval[float64](p, `document.querySelector(".sheet").getBoundingClientRect().top`)
	p.Press("Delete")
	p.WaitFor(`document.activeElement.textContent == "Keep it" && document.activeElement.getBoundingClientRect().top > 0`)
	p.Press("Escape")
	p.WaitFor(`!document.querySelector(".removal")`)
	if now := browser.Eval[float64](p, `document.querySelector(".sheet").getBoundingClientRect().top`); now != at {
		t.Errorf("the drawing went from %g to %g px", at, now)
	}
}

// Another way the van stands is another page, on which the drawing stands at the same place and what was chosen still is.
func TestWhatIsChosenStaysSoInAnotherMode(t *testing.T) {
	w := open(t, dipper)
	p := browser.Open(t, w.http.URL+"/arrangement?mode=day", browser.Desk)
	w.rests(p)
	selected(p, "galley")
	top := func() float64 {
		return browser.Eval[float64](p, `document.querySelector("#region-drawing").getBoundingClientRect().top + window.scrollY`)
	}
	before := top()
	for _, mode := range []string{"night", "drive"} {
		p.Click(`.modes a[href*="mode=` + mode + `"]`)
		p.WaitFor(`document.body.dataset.mode == "` + mode + `" && document.querySelector("#plan-galley.is-selected")`)
		if now := top(); now != before {
			t.Errorf("in mode %s the drawing is at %g px, before at %g", mode, now, before)
		}
	}
	if over := browser.Eval[float64](p, `(e => e.scrollWidth - e.clientWidth)(document.querySelector(".suits .scroll"))`); over > 0 {
		t.Errorf("who fits is %g px wider than its place", over)
	}
	p.Screenshot(t, "modes-desk")
}

// Whoever undoes once too often is asked before the first things are taken out again.
func TestUndoingTheStartingArrangementIsAskedAbout(t *testing.T) {
	w := open(t, dipper)
	if got := w.answer(post("/edit", "path", "/build/note", "value", "It rains.", "words", "first hour: starting arrangement picked", "base", "1")); got.Code != 303 {
		t.Fatal(got.Body)
	}
	p := browser.Open(t, w.http.URL+"/arrangement?mode=day", browser.Desk)
	n := w.rests(p)
	p.Press("Control+z")
	p.WaitFor(`document.querySelector(".moved:not([hidden]) .sentence").textContent.includes("Undo once more")`)
	if head, _ := w.store.Head(); head.N != n {
		t.Errorf("it is undone at once: revision %d", head.N)
	}
	p.Press("Control+z")
	w.saved(n)
}
