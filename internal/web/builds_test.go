package web_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// barely is as little as a build can be: nobody, nothing in it, a typical body.
const barely = `tumblehome: 1
build: {title: Barely, rules: eu, currency: EUR}
vehicle: {wheelbase: 3350, datum: 1290}
shell: {quick: {body: mid-mid}}
`

func TestEveryBuildCanBeLookedAt(t *testing.T) {
	least := filepath.Join(t.TempDir(), "barely.yaml")
	if err := os.WriteFile(least, []byte(barely), 0o600); err != nil {
		t.Fatal(err)
	}
	for _, file := range []string{least, dipper, "../../examples/twite.yaml", "../../examples/godwit.yaml"} {
		t.Run(filepath.Base(file), func(t *testing.T) {
			t.Parallel()
			w := open(t, file)
			addresses := []string{"/arrangement?mode=drive", "/arrangement?mode=night", "/arrangement?mode=today", "/sheet.svg?mode=day", "/drag-kit?mode=day", "/revisions/1"}
			for _, name := range allPages {
				addresses = append(addresses, "/"+name)
			}
			for _, address := range addresses {
				got := w.answer(get(address))
				if got.Code != 200 {
					t.Errorf("%s: %d %.200s", address, got.Code, got.Body)
				}
				if strings.HasPrefix(address, "/sheet") {
					continue
				}
				for _, word := range forbidden {
					if at := strings.Index(got.Body.String(), word); at >= 0 {
						t.Errorf("%s holds %q: …%s…", address, word, got.Body.String()[max(0, at-60):min(got.Body.Len(), at+40)])
					}
				}
			}
		})
	}
}

// Every figure and every kind of note of every demo opens its working, or what it means.
func TestEveryFigureAndNoteCanBeShown(t *testing.T) {
	for _, file := range []string{dipper, "../../examples/twite.yaml", "../../examples/godwit.yaml"} {
		t.Run(filepath.Base(file), func(t *testing.T) {
			t.Parallel()
			w := open(t, file)
			r := w.reckoned()
			for _, f := range r.Figures {
				if got := w.answer(get("/how/" + f.Code)); got.Code != 200 || !strings.Contains(got.Body.String(), "from where") {
					t.Errorf("the working of %s: %d", f.Code, got.Code)
				}
			}
			for _, f := range r.Findings {
				if got := w.answer(get("/how/" + f.Code)); got.Code != 200 || !strings.Contains(got.Body.String(), "What usually clears it") {
					t.Errorf("the meaning of %s: %d", f.Code, got.Code)
				}
			}
		})
	}
}
