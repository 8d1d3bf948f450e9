package front_test

import (
	"testing"

	"tumblehome/internal/browser"
)

func TestKeysMoveAFittingAndABurstIsOneEdit(t *testing.T) {
	b := serve(t, furniture()...)
	p := browser.Open(t, b.URL, browser.Desk)
	browser.Eval[bool](p, `(document.querySelector("#fitting-settle").focus(), true)`)
	kitCame(p)
	for _, key := range []string{"ArrowRight", "ArrowRight", "Shift+ArrowLeft", "Alt+ArrowRight", "ArrowUp", "PageUp"} {
		p.Press(key)
	}
	b.wantsSoon(t, p, "settle", 1319, 390, 10)
	if edits, _ := b.count(); edits != 1 {
		t.Errorf("%d edits, want one of the whole burst", edits)
	}
	p.WaitFor(`document.activeElement.id == "fitting-settle"`)
	p.WaitFor(`document.querySelector(".live[role=status]").textContent == "moved settle"`)
	p.Press("Shift+ArrowRight")
	b.wantsSoon(t, p, "settle", 1320, 390, 10)
	p.Press("ArrowDown")
	p.Press("Control+z") // ends the burst, which then is what it takes back
	b.wantsSoon(t, p, "settle", 1320, 390, 10)
	p.Press("Control+z")
	b.wantsSoon(t, p, "settle", 1319, 390, 10)
	p.Axe(t)
}

func TestDeleteAsksInItsLineAndAgainForWhatHangsOnIt(t *testing.T) {
	b := serve(t, furniture()...)
	p := browser.Open(t, b.URL, browser.Desk)
	p.Allow("status of 422")
	browser.Eval[bool](p, `(document.querySelector("#fitting-settle").focus(), true)`)
	p.Press("Delete")
	p.WaitFor(`document.activeElement.textContent == "Keep it"`)
	p.Axe(t)
	p.Press("Enter")
	p.WaitFor(`!document.querySelector(".removal") && document.activeElement.id == "fitting-settle"`)
	p.Press("Delete")
	p.Click(".removal button:last-of-type")
	p.WaitFor(`document.querySelector(".removal p").textContent == "Something stands on it."`)
	p.Click(".removal button:last-of-type")
	p.WaitFor(`!document.querySelector("[data-fitting=settle], [data-fitting=cushion]")`)
	if x, _, _ := b.at("settle"); x != -1 {
		t.Error("the settle is still there")
	}
}

func TestTabsShareOneStreamAndFollowEachOther(t *testing.T) {
	b := serve(t, furniture()...)
	p := browser.Open(t, b.URL, browser.Desk)
	second := p.Beside(t, b.URL)
	second.WaitFor(`document.querySelector("#fitting-galley p").textContent.startsWith("200,")`)
	browser.Eval[bool](second, `(document.querySelector("#fitting-settle").focus(), document.querySelector("#note-value").value = "half typ", true)`)
	browser.Eval[bool](p, `(document.querySelector("#fitting-galley").focus(), true)`)
	p.Press("ArrowRight")
	b.wantsSoon(t, p, "galley", 210, 400, 0)
	second.WaitFor(`document.querySelector("#fitting-galley p").textContent.startsWith("210,")`)
	second.WaitFor(`document.querySelector("#plan-galley path").getAttribute("d").startsWith("M30.5 ")`)
	second.WaitFor(`document.activeElement.id == "fitting-settle" && document.querySelector("#note-value").value == "half typ" && document.querySelector("#note-form [name=base]").value == "1"`)
	b.mu.Lock()
	streams := len(b.readers)
	b.mu.Unlock()
	if streams != 1 {
		t.Errorf("%d streams for two tabs of one browser", streams)
	}
}

func TestARefusalStandsBesideItsFieldAndAClashShowsBothValues(t *testing.T) {
	b := serve(t, furniture()...)
	p := browser.Open(t, b.URL, browser.Desk)
	p.Allow("status of 422")
	p.Allow("status of 409")
	p.Type("#note-value", "bad")
	p.Press("Enter")
	p.WaitFor(`document.querySelector("#note-value[aria-invalid=true] ~ .refused")?.textContent == "That is no note."`)
	p.Axe(t)
	p.Type("#note-value", "mine")
	b.mu.Lock()
	b.Note, b.noteAt, b.revision = "theirs", 2, 2
	b.news()
	b.mu.Unlock()
	p.WaitFor(`document.querySelector("#as-of").textContent == "revision 2" && document.querySelector("#note-value").value == "mine"`)
	p.Press("Enter")
	p.WaitFor(`document.querySelector("#note-form .refused button").textContent == "Keep mine: mine"`)
	p.Axe(t)
	p.Screenshot(t, "front-clash")
	p.Click("#note-form .refused button:nth-of-type(2)")
	p.WaitFor(`document.querySelector("#note-value").value == "theirs" && !document.querySelector(".refused")`)
	p.Type("#note-value", "agreed")
	p.Press("Enter")
	p.WaitFor(`document.querySelector("#as-of").textContent == "revision 3"`)
	if b.Note != "agreed" {
		t.Errorf("the note is %q", b.Note)
	}
}

func TestANoteItsFlagAndItsFittingsLightUpTogether(t *testing.T) {
	b := serve(t, furniture()...)
	p := browser.Open(t, b.URL, browser.Desk)
	p.Hover(p.Middle("#note-1"))
	p.WaitFor(`document.querySelectorAll("#flag-1.is-lit, .note.is-lit, g[data-fitting=settle].is-lit, g[data-fitting=galley].is-lit").length == 8`)
	p.Hover(p.Middle("#plan-galley"))
	p.WaitFor(`document.querySelector(".note.is-lit") && document.querySelector("#flag-1.is-lit")`)
	p.Hover(browser.Point{X: 2, Y: 2})
	p.WaitFor(`!document.querySelector(".is-lit")`)
	browser.Eval[bool](p, `(document.querySelector(".note a").focus(), true)`)
	p.WaitFor(`document.querySelector("#flag-1.is-lit")`)
	browser.Eval[bool](p, `(document.activeElement.blur(), true)`)
	p.Click("#flag-1 path:last-child")
	p.WaitFor(`document.activeElement == document.querySelector(".note a")`)
}

func TestAfterASleepThePageAsksAgain(t *testing.T) {
	b := serve(t, furniture()...)
	p := browser.Open(t, b.URL, browser.Desk)
	p.WaitFor(`document.querySelector("#as-of").textContent == "revision 1"`)
	b.mu.Lock()
	b.revision = 9 // and no news of it comes through
	b.mu.Unlock()
	browser.Eval[bool](p, `(window.dispatchEvent(new Event("online")), true)`)
	p.WaitFor(`document.querySelector("#as-of").textContent == "revision 9"`)
}
