package web_test

import (
	"testing"

	"tumblehome/internal/browser"
)

// On the narrowest phone the figures in short are wider than the window: a shadow says that there is more, and the keys lead to the last of them.
func TestTheFiguresInShortSayThatThereAreMore(t *testing.T) {
	w := open(t, dipper)
	p := browser.Open(t, w.http.URL+"/weight", browser.Size{Width: 320, Height: 568})
	w.rests(p)
	bar := browser.Eval[struct {
		Wide, Seen int
		Grounds    string
	}](p, `(() => { const e = document.querySelector(".headline"); return {Wide: e.scrollWidth, Seen: e.clientWidth, Grounds: getComputedStyle(e).backgroundAttachment}; })()`)
	if bar.Wide <= bar.Seen {
		t.Fatalf("%d px are seen of %d, so that this proves nothing", bar.Seen, bar.Wide)
	}
	if bar.Grounds != "local, local, scroll, scroll, scroll" {
		t.Errorf("its grounds are %s: no shadow says that there is more", bar.Grounds)
	}
	p.Screenshot(t, "headline-320")
	browser.Eval[bool](p, `([...document.querySelectorAll(".headline a")].at(-2).focus(), true)`)
	p.Press("Tab")
	p.WaitFor(`document.activeElement === [...document.querySelectorAll(".headline a")].at(-1) && document.activeElement.getBoundingClientRect().right <= innerWidth`)
}
