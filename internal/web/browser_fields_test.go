package web_test

import (
	"testing"

	"tumblehome/internal/browser"
)

// The fields of a thing come when they are asked for; what is typed in them stays, and closed they stay closed.
func TestFieldsOfTheListOpenInPlace(t *testing.T) {
	w := open(t, dipper)
	p := browser.Open(t, w.http.URL+"/arrangement?mode=day", browser.Desk)
	n := w.rests(p)
	p.Click("#fitting-galley > .unfolds")
	p.WaitFor(`document.activeElement.matches("#fitting-galley > details[open] > summary")`)
	name := `document.querySelector("#fitting-galley > details [name=path][value$=called]").parentElement.querySelector("[name=value]")`
	browser.Eval[bool](p, `(`+name+`.value = "cook", document.querySelector("#fitting-table").focus(), true)`)
	p.Press("Enter")
	p.WaitFor(`document.activeElement.matches("#fitting-table > details[open] input")`)
	p.WaitFor(name + `.value == "cook"`)
	p.Click("#fitting-table > details > summary")
	browser.Eval[bool](p, `(document.querySelector("#fitting-settle").focus({preventScroll: true}), true)`)
	p.Press("ArrowRight")
	w.saved(n)
	w.rests(p)
	p.WaitFor(`document.querySelector("#fitting-table > details:not([open])") && document.querySelector("#fitting-galley > details[open]") && ` + name + `.value == "cook"`)
	p.Axe(t)
}

// A flag whose note the margin left out brings that note too.
func TestNotesThatWereLeftOutComeInPlace(t *testing.T) {
	w := open(t, dipper, many(170))
	p := browser.Open(t, w.http.URL+"/arrangement?mode=day", browser.Desk)
	w.rests(p)
	p.WaitFor(`document.querySelectorAll(".note[data-number]").length == 40`)
	left := browser.Eval[string](p, `document.querySelector(".more span[id]").id`)
	browser.Eval[bool](p, `(document.querySelector("a.unfolds-all").click(), true)`)
	p.WaitFor(`document.activeElement.closest("li.note")?.id == "` + left + `" && !document.querySelector("a.unfolds-all")`)
	p.Go(w.http.URL + "/arrangement?mode=day")
	hidden := `[...document.querySelectorAll(".more span[id]")].find(s => document.getElementById(s.id.replace("note", "flag")))`
	p.WaitFor(`document.querySelector(".paper-tools") && ` + hidden)
	flagged := browser.Eval[string](p, hidden+`.id`)
	browser.Eval[bool](p, `(document.getElementById("`+flagged+`".replace("note", "flag")).querySelector("path").dispatchEvent(new MouseEvent("click", {bubbles: true, cancelable: true})), true)`)
	p.WaitFor(`document.activeElement.closest("li.note")?.id == "` + flagged + `"`)
}
