package web_test

import (
	"strings"
	"testing"

	"tumblehome/internal/browser"
)

// The pages that every build has.
var allPages = []string{"arrangement", "shell", "build-up", "warmth", "power", "weight", "cost", "revisions"}

func TestEveryPageIsSoundInABrowser(t *testing.T) {
	w := open(t, dipper)
	for _, size := range []struct {
		name string
		browser.Size
	}{{"desk", browser.Desk}, {"phone", browser.Phone}} {
		for _, name := range allPages {
			t.Run(name+" on a "+size.name, func(t *testing.T) {
				page := browser.Open(t, w.http.URL+"/"+name, size.Size)
				page.Axe(t)
				if wide := browser.Eval[bool](page, `document.documentElement.scrollWidth > innerWidth`); wide {
					t.Errorf("the page is wider than the window")
				}
				page.Screenshot(t, name+"-"+size.name)
				page.WholePage(t, name+"-"+size.name+"-whole")
			})
		}
	}
}

func TestPagesAreLegibleAsChalkOnSlate(t *testing.T) {
	w := open(t, dipper)
	for _, name := range []string{"arrangement?mode=night", "warmth", "power", "build-up", "weight", "cost"} {
		t.Run(name, func(t *testing.T) {
			page := browser.Open(t, w.http.URL+"/"+name, browser.Desk)
			browser.Eval[bool](page, `(document.documentElement.dataset.theme = "dark") == "dark"`)
			page.Contrast(t)
			page.Screenshot(t, strings.NewReplacer("?", "-", "=", "-").Replace(name)+"-dark")
		})
	}
}
