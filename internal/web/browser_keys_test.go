package web_test

import (
	"testing"

	"tumblehome/internal/browser"
)

const godwit = "../../examples/godwit.yaml"

// Who applies a proposal by key stands on the sentence that says what it did, not on the proposal of another note.
func TestTheFocusGoesToTheAnswer(t *testing.T) {
	w := open(t, godwit)
	p := browser.Open(t, w.http.URL+"/arrangement?mode=day", browser.Desk)
	n := w.rests(p)
	p.WaitFor(`document.querySelector(".hand")`)
	p.WaitFor(`[...document.querySelectorAll(".skip")].some(a => a.hash == "#notes-title")`)
	browser.Eval[bool](p, `(() => {
		const all = [...document.querySelectorAll(".notes form button.link")];
		for (const b of all) for (let d = b.closest("details"); d; d = d.parentElement.closest("details")) d.open = true;
		all[0].focus();
		return true;
	})()`)
	p.Press("Enter")
	p.Press("Enter") // unread: it must apply nothing else
	w.saved(n)
	w.rests(p)
	p.WaitFor(`document.activeElement.matches(".said .answered")`)
	if head, _ := w.store.Head(); head.N != n+1 {
		t.Errorf("two presses made %d changes", head.N-n)
	}
	n = w.rests(p)
	browser.Eval[bool](p, `(document.querySelector(".said form[action='/undo'] button").focus(), true)`)
	p.Press("Enter")
	w.saved(n)
	w.rests(p)
	p.WaitFor(`document.activeElement.matches(".said .answered, .said form[action='/undo'] button:enabled")`)
	n = w.rests(p)
	browser.Eval[bool](p, `(() => {
		const d = document.querySelector(".notes details.accept");
		for (let f = d; f; f = f.parentElement.closest("details")) f.open = true;
		d.querySelector("input[name=value]:not([type=hidden])").focus();
		return true;
	})()`)
	p.Type(".notes details.accept[open] input[name=value]:not([type=hidden])", "it is so")
	p.Press("Enter")
	w.saved(n)
	w.rests(p)
	p.WaitFor(`document.activeElement.matches(".said .answered")`)
	p.Axe(t)
}

// What is chosen by key in the list is moved with the drawing in sight.
func TestTheDrawingStaysInSightOfTheList(t *testing.T) {
	w := open(t, godwit)
	p := browser.Open(t, w.http.URL+"/arrangement?mode=day", browser.Desk)
	w.rests(p)
	p.WaitFor(`document.querySelector(".hand")`)
	browser.Eval[bool](p, `(document.querySelector(".fittings > li:nth-last-child(2)").focus(), true)`)
	p.Press("Tab")
	p.WaitFor(`(r => r.top >= 0 && r.top < 20 && r.height > 250 && r.bottom < 500)(document.querySelector("svg.drawing").getBoundingClientRect())`)
	p.WaitFor(`(r => r.top >= document.querySelector(".sheet").getBoundingClientRect().bottom && r.bottom < innerHeight)(document.activeElement.getBoundingClientRect())`)
	p.Screenshot(t, "listing-desk")
	p.Axe(t)
}

// The arrows are lines, not blots, and the key of the letters stands below the plan on a phone; held sideways the drawing has the height.
func TestAPhoneHeldUprightAndSideways(t *testing.T) {
	w := open(t, godwit)
	p := browser.Open(t, w.http.URL+"/arrangement?mode=day", browser.Phone)
	w.rests(p)
	p.WaitFor(`document.querySelectorAll(".sheet .letters dt").length > 3 && document.querySelector(".letters").getBoundingClientRect().height > 20`)
	browser.Eval[bool](p, `(scrollTo(0, 0), true)`)
	p.Screenshot(t, "keys-phone")
	p.Click("#fitting-galley > .unfolds")
	p.WaitFor(`getComputedStyle(document.querySelector("#fitting-galley .arrow")).fill == "none"`)
	browser.Eval[bool](p, `(document.querySelector("#fitting-galley .nudges").scrollIntoView({block: "center"}), true)`)
	p.Screenshot(t, "arrows-phone")
	for _, low := range []string{".accept summary", ".notes form button.link", ".unfolds", ".add button"} {
		if high := browser.Eval[float64](p, `Math.min(...[...document.querySelectorAll("`+low+`")].filter(e => e.checkVisibility()).map(e => e.getBoundingClientRect().height))`); high < 32 {
			t.Errorf("%s is %g px high", low, high)
		}
	}
	p.Axe(t)

	p = browser.Open(t, w.http.URL+"/arrangement?mode=day", browser.Size{Width: 740, Height: 360, Touch: true})
	w.rests(p)
	p.WaitFor(`document.querySelector(".headline").getBoundingClientRect().height < 45`)
	if high := browser.Eval[float64](p, `document.querySelector("svg.drawing").getBoundingClientRect().height`); high < 260 {
		t.Errorf("the drawing is %g px high of 360", high)
	}
	p.Screenshot(t, "sideways-phone")
	browser.Eval[bool](p, `(document.querySelector("svg.drawing").scrollIntoView({block: "start"}), true)`)
	p.Screenshot(t, "sideways-drawing-phone")
}
