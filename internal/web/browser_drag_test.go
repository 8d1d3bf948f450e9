package web_test

import (
	"fmt"
	"math"
	"testing"
	"time"

	"tumblehome/internal/browser"
)

// spot is a place where a pointer takes hold of a fitting in a view, whatever else lies on it.
func spot(t *testing.T, p *browser.Page, view, id string) browser.Point {
	t.Helper()
	p.WaitFor(`document.querySelector(".paper-tools")`) // the script has begun
	at := browser.Eval[[]float64](p, fmt.Sprintf(`(() => {
		const g = document.querySelector('#view-%s [data-fitting="%s"]');
		g.scrollIntoView({block: "center", behavior: "instant"});
		const r = g.getBoundingClientRect();
		for (let i = 1; i < 20; i++) for (let j = 1; j < 20; j++) {
			const x = r.left + r.width * j / 20, y = r.top + r.height * i / 20;
			if (document.elementsFromPoint(x, y).some(e => e.closest("[data-fitting]") === g)) return [x, y];
		}
		return [];
	})()`, view, id))
	if len(at) == 0 {
		t.Fatalf("no pointer can take hold of %s in the %s", id, view)
	}
	return browser.Point{X: at[0], Y: at[1]}
}

// selected takes hold of a fitting by its line of the list, as with keys, and waits until a drag can be predicted.
func selected(p *browser.Page, id string) {
	browser.Eval[bool](p, fmt.Sprintf(`(document.querySelector('.fittings [data-fitting="%s"]').focus({preventScroll: true}), true)`, id))
	predicts(p)
}

// predicts waits until a drag can be predicted.
func predicts(p *browser.Page) {
	p.WaitFor(`performance.getEntriesByType("resource").some(e => e.name.includes("drag-kit") && e.responseEnd > 0)`)
}

// px is how many pixels of the window some millimetres of the van are.
func px(p *browser.Page, mm float64) float64 {
	return mm * browser.Eval[float64](p, `document.querySelector("svg.drawing").getScreenCTM().a * document.querySelector("#view-plan, #view-side").dataset.scale`)
}

// rests waits until everything shown is of one revision and drawn where the server has it, and gives that revision.
func (w *workshop) rests(p *browser.Page) int {
	w.t.Helper()
	head, _ := w.store.Head()
	p.WaitFor(fmt.Sprintf(`document.body.dataset.revision == "%d" && !document.querySelector("body.is-working, svg [data-fitting][transform], .moved:not([hidden], .is-result)")`, head.N))
	return head.N
}

// saved waits for the next revision after n.
func (w *workshop) saved(n int) {
	w.t.Helper()
	for end := time.Now().Add(time.Minute); time.Now().Before(end); {
		if head, _ := w.store.Head(); head.N > n {
			return
		}
		time.Sleep(20 * time.Millisecond)
	}
	w.t.Fatalf("nothing was saved after revision %d", n)
}

func (w *workshop) place(id string) string {
	_, doc := w.store.Head()
	return doc.Fittings[id].At.X.String()
}

// A builder pulls the galley rearwards, reads what that did, sees the second window follow, and takes it back.
func TestDraggingTheGalleyIsOneRevisionAndOneUndo(t *testing.T) {
	w := open(t, dipper)
	p := browser.Open(t, w.http.URL+"/arrangement?mode=drive", browser.Desk)
	second := p.Beside(t, w.http.URL+"/arrangement?mode=drive")
	second.WaitFor(`document.querySelector(".paper-tools")`)
	n := w.rests(p)
	was := w.place("galley")

	from := spot(t, p, "plan", "galley")
	to := browser.Point{X: from.X + px(p, 200), Y: from.Y}
	selected(p, "galley")
	p.Grasp(from, to)
	p.WaitFor(`document.querySelector("svg .live .ghost") && document.querySelector("#plan-galley[transform].is-moving")`)
	p.WaitFor(`document.querySelector(".moved .sentence").textContent.startsWith("Galley")`)
	p.WaitFor(`document.querySelectorAll(".headline .is-moved[data-to]").length > 0`)
	p.Screenshot(t, "drag-desk")
	p.Release(to)
	w.saved(n)
	w.rests(p)
	if w.place("galley") == was {
		t.Errorf("the galley is still at %s", was)
	}
	if got, _ := w.store.Head(); got.N != n+1 {
		t.Errorf("revision %d, want %d: a drag is one", got.N, n+1)
	}
	digest := browser.Eval[string](p, `document.querySelector("#plan-galley").dataset.digest`)
	second.WaitFor(fmt.Sprintf(`document.querySelector("#plan-galley").dataset.digest == %q`, digest))

	p.Press("Control+z")
	w.saved(n + 1)
	w.rests(p)
	if got := w.place("galley"); got != was {
		t.Errorf("after undo the galley is at %s, want %s", got, was)
	}
	second.WaitFor(fmt.Sprintf(`document.querySelector("#plan-galley").dataset.digest != %q`, digest))
	p.Axe(t)
}

func TestADragIntoTheSettleIsMarkedAndEscapeKeepsTheBuild(t *testing.T) {
	w := open(t, dipper)
	p := browser.Open(t, w.http.URL+"/arrangement?mode=drive", browser.Desk)
	n := w.rests(p)
	from := spot(t, p, "side", "galley")
	selected(p, "galley")
	p.Grasp(from, browser.Point{X: from.X + px(p, 600), Y: from.Y})
	p.WaitFor(`document.querySelector("#plan-settle.is-foul, #side-settle.is-foul")`)
	p.WaitFor(`document.querySelector(".moved .appears")`)
	p.Screenshot(t, "drag-foul-desk")
	p.Press("Escape")
	p.Release(from)
	w.rests(p)
	p.WaitFor(`!document.querySelector(".is-foul, svg .live")`)
	if got, _ := w.store.Head(); got.N != n {
		t.Errorf("revision %d after Escape, want %d", got.N, n)
	}
}

// Everything a pointer can do to a fitting's place can be done by keys in the list.
func TestTheArrangementIsChangedByKeysAlone(t *testing.T) {
	w := open(t, dipper)
	p := browser.Open(t, w.http.URL+"/arrangement?mode=drive", browser.Desk)
	n := w.rests(p)
	was := w.place("galley")
	selected(p, "galley")
	for range 3 {
		p.Press("ArrowRight")
	}
	w.saved(n)
	if n = w.rests(p); w.place("galley") == was {
		t.Errorf("the galley is still at %s", was)
	}
	p.WaitFor(`document.activeElement.matches(".fittings [data-fitting=galley]")`)
	p.WaitFor(`document.querySelector(".live[role=status]").textContent.startsWith("Galley 30 mm rearwards")`)
	p.Press("Enter")
	p.WaitFor(`document.activeElement.matches(".fittings [data-fitting=galley] input")`)
	p.Press("Control+z") // nothing is typed in the field yet that could be meant
	w.saved(n)
	w.rests(p)
	if got := w.place("galley"); got != was {
		t.Errorf("after undo the galley is at %s, want %s", got, was)
	}
	browser.Eval[bool](p, `(document.querySelector(".fittings [data-fitting=galley]").focus(), true)`)
	p.Press("Delete")
	p.WaitFor(`document.activeElement.textContent == "Keep it"`)
	p.Axe(t)
	p.Press("Escape")
	p.WaitFor(`document.activeElement.matches(".fittings [data-fitting=galley]")`)
}

// middle is the middle of the first element that the CSS selector finds.
func middle(p *browser.Page, selector string) browser.Point {
	at := browser.Eval[[]float64](p, fmt.Sprintf(`(() => { const r = document.querySelector(%q).getBoundingClientRect(); return [r.left + r.width / 2, r.top + r.height / 2] })()`, selector))
	return browser.Point{X: at[0], Y: at[1]}
}

func TestAFingerDragsOnAPhone(t *testing.T) {
	w := open(t, dipper)
	p := browser.Open(t, w.http.URL+"/arrangement?mode=drive", browser.Phone)
	n := w.rests(p)
	spot(t, p, "plan", "dry-locker")      // brings it into sight
	from := middle(p, "#plan-dry-locker") // away from the handles that it has once chosen
	for range 6 {                         // a tap in one place selects what lies there, one after the other
		p.TouchDrag(browser.Path{From: from, To: from})
		if browser.Eval[bool](p, `document.querySelector("#plan-dry-locker.is-selected") != null`) {
			break
		}
	}
	p.WaitFor(`document.querySelector("#plan-dry-locker.is-selected")`)
	predicts(p)
	was := w.place("dry-locker")
	from = middle(p, "#plan-dry-locker") // what is told of it may have moved the drawing
	p.TouchDrag(browser.Path{From: from, To: browser.Point{X: from.X + math.Max(15, px(p, 150)), Y: from.Y}})
	w.saved(n)
	w.rests(p)
	if w.place("dry-locker") == was {
		t.Errorf("the locker is still at %s", was)
	}
	p.Screenshot(t, "drag-phone")
	p.Axe(t)
}

func TestAWorkingOpensBesideTheDrawing(t *testing.T) {
	w := open(t, dipper)
	p := browser.Open(t, w.http.URL+"/arrangement?mode=drive", browser.Desk)
	w.rests(p)
	p.Click(".headline a.opens")
	p.WaitFor(`document.querySelector("#beside .how")`)
	p.Axe(t)
	p.Screenshot(t, "working-desk")
	p.Click("#beside .closes")
	p.WaitFor(`!document.querySelector("#beside *") && document.activeElement.matches(".headline a.opens")`)
}
