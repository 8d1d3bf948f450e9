package front_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"tumblehome/internal/browser"
)

// A galley at the front and a settle with a cushion behind it, both on the right.
func furniture() []thing {
	return []thing{
		{ID: "galley", X: 200, Y: 400, Long: 700, Wide: 480, High: 900},
		{ID: "settle", X: 1200, Y: 400, Long: 1000, Wide: 480, High: 400},
		{ID: "cushion", Carrier: "settle", X: 1200, Y: 400, Z: 400, Long: 1000, Wide: 480, High: 100},
	}
}

// pixels is how many pixels of the window some millimetres of the van are.
func pixels(p *browser.Page, mm float64) float64 {
	return browser.Eval[float64](p, `document.querySelector("svg.drawing").getScreenCTM().a`) * mm * scale
}

// middle is the middle of an element, whatever lies on it.
func middle(p *browser.Page, id string) browser.Point {
	at := browser.Eval[[2]float64](p, fmt.Sprintf(`(r => [r.left + r.width / 2, r.top + r.height / 2])(document.getElementById(%q).getBoundingClientRect())`, id))
	return browser.Point{X: at[0], Y: at[1]}
}

// kitCame waits until a drag can be predicted.
func kitCame(p *browser.Page) {
	p.WaitFor(`performance.getEntriesByType("resource").some(e => e.name.includes("drag-kit") && e.responseEnd > 0)`)
}

// practised says that the page has made ready for a drag of what is chosen.
const practised = `performance.getEntriesByName("practised").length > 0`

func TestWhatIsChosenIsMadeReadyToBeDraggedAndNothingOfThatIsSeen(t *testing.T) {
	b := serve(t, furniture()...)
	p := browser.Open(t, b.URL, browser.Desk)
	p.Click("#side-settle")
	p.WaitFor(practised)
	p.WaitFor(`!document.querySelector("svg [transform], .is-foul, .is-moving, svg .live, .is-moved")`)
	if edits, previews := b.count(); edits != 0 || previews != 0 {
		t.Errorf("%d edits and %d previews of a drag that nobody made", edits, previews)
	}
}

func (b *bench) wants(t *testing.T, p *browser.Page, id string, x, y, z, within float64) {
	t.Helper()
	p.WaitFor(`!document.body.classList.contains("is-working") && document.querySelectorAll("svg [data-fitting][transform]").length == 0`)
	gotX, gotY, gotZ := b.at(id)
	if math.Abs(gotX-x) > within || math.Abs(gotY-y) > within || math.Abs(gotZ-z) > within {
		t.Errorf("%s stands at %g, %g, %g, want %g, %g, %g", id, gotX, gotY, gotZ, x, y, z)
	}
}

// wantsSoon is wants for what is saved after a rest of the hand.
func (b *bench) wantsSoon(t *testing.T, p *browser.Page, id string, x, y, z float64) {
	t.Helper()
	p.WaitFor(fmt.Sprintf(`document.querySelector("#fitting-%s > p").textContent == "%g, %g, %g"`, id, x, y, z))
	b.wants(t, p, id, x, y, z, 0)
}

func TestDraggingASettleTakesItsCushionAlongInAllViews(t *testing.T) {
	b := serve(t, furniture()...)
	p := browser.Open(t, b.URL, browser.Desk)
	p.Click("#side-settle")
	p.WaitFor(`document.querySelectorAll(".is-selected").length == 4`) // three views and its line
	from := middle(p, "side-settle")
	p.Drag(from, browser.Point{X: from.X + pixels(p, 300), Y: from.Y})
	b.wants(t, p, "settle", 1500, 400, 0, 15)
	settle, _, _ := b.at("settle")
	b.wants(t, p, "cushion", settle, 400, 400, 0)
	if edits, previews := b.count(); edits != 1 || previews < 1 {
		t.Errorf("%d edits and %d previews, want one edit and a preview", edits, previews)
	}
	p.Screenshot(t, "front-dragged")
	p.Press("Control+z")
	p.WaitFor(`document.querySelector(".live[role=status]").textContent == "taken back"`)
	b.wants(t, p, "settle", 1200, 400, 0, 0)
}

func TestAPressOnTheCushionMovesTheSettleWithIt(t *testing.T) {
	all := furniture()
	all[1].Named, all[2].Bed = true, "settle"
	b := serve(t, all...)
	p := browser.Open(t, b.URL, browser.Desk)
	from := middle(p, "side-cushion")
	chosen := func(id string) {
		p.WaitFor(fmt.Sprintf(`document.querySelector("#fitting-%s.is-selected") && document.querySelectorAll(".fittings .is-selected").length == 1`, id))
	}
	p.Drag(from, browser.Point{X: from.X + pixels(p, 300), Y: from.Y})
	b.wants(t, p, "settle", 1500, 400, 0, 15)
	chosen("settle")
	from = middle(p, "plan-cushion")
	p.Drag(from, from)
	chosen("cushion")
	name := middle(p, "name-settle")
	p.Drag(name, name)
	chosen("settle")
	browser.Eval[bool](p, `(document.querySelector("#fitting-galley").focus(), true)`)
	p.Drag(name, name)
	chosen("settle")
}

func TestADragPredictsFoulsAndEscapeTakesItBack(t *testing.T) {
	b := serve(t, furniture()...)
	b.mute = true
	p := browser.Open(t, b.URL, browser.Desk)
	p.Click("#side-settle")
	kitCame(p)
	from := middle(p, "side-settle")
	p.Grasp(from, browser.Point{X: from.X - pixels(p, 502), Y: from.Y})
	p.WaitFor(`document.getElementById("side-settle").getAttribute("transform")?.startsWith("translate(-25")`)
	p.WaitFor(`document.querySelectorAll("#side-cushion[transform], #plan-cushion[transform]").length == 2`)
	p.WaitFor(`document.querySelectorAll(".is-foul[data-fitting=galley], .is-foul[data-fitting=settle]").length == 8`)
	p.WaitFor(`document.querySelector("svg .live .ghost") && document.querySelector("svg .live text").textContent == "500"`)
	p.WaitFor(`getComputedStyle(document.querySelector(".moved .predicted")).visibility == "visible"`)
	p.Screenshot(t, "front-dragging")
	p.Press("Escape")
	p.WaitFor(`!document.querySelector("svg [transform], .is-foul, svg .live, .is-moved") && document.querySelector(".moved").hidden`)
	p.Release(from)
	if edits, previews := b.count(); edits != 0 || previews == 0 {
		t.Errorf("%d edits after Escape, %d previews asked", edits, previews)
	}
}

func TestWhereThePreviewKnowsBetterItWins(t *testing.T) {
	b := serve(t, furniture()...)
	p := browser.Open(t, b.URL, browser.Desk)
	p.Click("#plan-cushion")
	kitCame(p)
	from := middle(p, "plan-cushion")
	p.Grasp(from, browser.Point{X: from.X, Y: from.Y + pixels(p, 42)})
	p.WaitFor(`document.querySelector(".moved .sentence")?.textContent.startsWith("cushion by 0, 20")`) // caught by the side of the room
	p.WaitFor(`document.querySelectorAll(".is-foul[data-fitting=galley]").length == 4`)
	p.WaitFor(`document.querySelector("[data-figure]").dataset.to == "1 371 kg"`)
	p.Release(from)
	b.wants(t, p, "cushion", 1200, 400, 400, 0)
}

func TestADragLaidAgainstAFaceNamesIt(t *testing.T) {
	b := serve(t, furniture()...)
	p := browser.Open(t, b.URL, browser.Desk)
	p.Click("#side-settle")
	kitCame(p)
	from := middle(p, "side-settle")
	p.Drag(from, browser.Point{X: from.X - pixels(p, 290), Y: from.Y})
	b.wants(t, p, "settle", 900, 400, 0, 0)
	if want := `"Snap":{"x":"galley.rear"}`; !strings.Contains(b.edits[0], want) {
		t.Errorf("edit %s lacks %s", b.edits[0], want)
	}
}

func TestAFingerDragsWhatIsSelectedAndTwoMoveThePaper(t *testing.T) {
	b := serve(t, furniture()...)
	p := browser.Open(t, b.URL, browser.Phone)
	p.WaitFor(`document.querySelector(".sheet").classList.contains("is-only-plan")`)
	p.Axe(t)
	from := middle(p, "plan-galley")
	away := browser.Point{X: from.X, Y: from.Y - pixels(p, 300)}
	p.TouchDrag(browser.Path{From: from, To: away}) // nothing is selected yet
	if x, y, _ := b.at("galley"); x != 200 || y != 400 {
		t.Errorf("a finger dragged what was not selected to %g, %g", x, y)
	}
	p.Tap("#plan-galley")
	p.WaitFor(`document.querySelector("#plan-galley.is-selected")`)
	kitCame(p)
	from = middle(p, "plan-galley")
	p.TouchDrag(browser.Path{From: from, To: browser.Point{X: from.X, Y: from.Y - pixels(p, 400)}})
	b.wants(t, p, "galley", 200, 0, 0, 15)
	before := pixels(p, 1000)
	mid := middle(p, "plan-settle")
	p.TouchDrag(
		browser.Path{From: browser.Point{X: mid.X - 20, Y: mid.Y}, To: browser.Point{X: mid.X - 60, Y: mid.Y}},
		browser.Path{From: browser.Point{X: mid.X + 20, Y: mid.Y}, To: browser.Point{X: mid.X + 60, Y: mid.Y}})
	if after := pixels(p, 1000); math.Abs(after/before-3) > 0.5 {
		t.Errorf("fingers three times as far apart made the drawing %g times as large", after/before)
	}
	if edits, _ := b.count(); edits != 1 {
		t.Errorf("%d edits, want the one of the galley", edits)
	}
	p.Screenshot(t, "front-phone")
	p.Click("[data-only=side]")
	p.WaitFor(`document.querySelector(".sheet").classList.contains("is-only-side") && getComputedStyle(document.querySelector("#view-plan")).visibility == "hidden"`)
	p.Screenshot(t, "front-phone-side")
}

func TestTheWheelZoomsAndADragBesideMovesThePaper(t *testing.T) {
	b := serve(t, furniture()...)
	p := browser.Open(t, b.URL, browser.Desk)
	at := middle(p, "view-cross")
	whole := pixels(p, 1000)
	p.Wheel(at, -400)
	p.WaitFor(fmt.Sprintf(`document.querySelector("svg.drawing").getScreenCTM().a * 50 > %g`, whole*1.5))
	now := middle(p, "view-cross")
	if math.Hypot(now.X-at.X, now.Y-at.Y) > 2 {
		t.Errorf("the place under the wheel went from %v to %v", at, now)
	}
	p.Drag(at, browser.Point{X: at.X - 60, Y: at.Y - 30})
	now = middle(p, "view-cross")
	if math.Hypot(now.X-at.X+60, now.Y-at.Y+30) > 2 {
		t.Errorf("the paper went from %v to %v", at, now)
	}
	p.Click(`[aria-label="The whole drawing"]`)
	p.WaitFor(`!document.querySelector(".sheet").classList.contains("is-zoomed")`)
}

// The design wants a median under 4 ms and 99 in 100 under 10 ms, with 200 fittings on a processor four times slower. It is measured, not
// tested: what else the machine is doing adds to every time. The first moves of a page are told apart: the browser has not yet compiled
// what they run.
func BenchmarkADragOf200FittingsOnASlowProcessor(b *testing.B) {
	many := []thing{}
	for i := range 200 {
		row, column := float64(i/20), float64(i%20)
		many = append(many, thing{ID: fmt.Sprintf("thing-%d", i), X: column * 150, Y: -890 + row*170, Long: 140, Wide: 160, High: 400})
	}
	page := serve(b, many...)
	for b.Loop() {
		p := browser.Open(b, page.URL, browser.Desk)
		p.Click("#plan-thing-50")
		p.WaitFor(practised)
		p.Slow(4)
		all := timed(b, p)
		first, rest := all[:12], slices.Sorted(slices.Values(all[12:]))
		b.Logf("first %.1f ms", first)
		b.ReportMetric(slices.Max(first), "ms-first")
		b.ReportMetric(rest[len(rest)/2], "ms-median")
		b.ReportMetric(rest[len(rest)*99/100], "ms-p99")
		b.ReportMetric(float64(len(rest)), "moves")
	}
}

// timed drags a thing across its neighbours, to and fro, and gives what each move took [ms].
func timed(t testing.TB, p *browser.Page) []float64 {
	t.Helper()
	from := middle(p, "plan-thing-50")
	away := browser.Point{X: from.X + 320, Y: from.Y + 95}
	p.Grasp(from, browser.Point{X: from.X + 12, Y: from.Y + 4})
	p.Trail(browser.Path{From: from, To: away}, 100)
	p.Trail(browser.Path{From: away, To: from}, 100)
	times := browser.Eval[[]float64](p, `new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => done(performance.getEntriesByName("drag").map(e => e.duration)))))`)
	p.Press("Escape")
	p.Release(from)
	return times
}
