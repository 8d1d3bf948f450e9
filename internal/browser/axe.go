package browser

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// finding is what axe reports, as far as it is printed here.
type finding struct {
	ID, Help string
	Nodes    []struct {
		HTML           string
		FailureSummary string
	}
}

// Axe runs axe-core on the page as it is now and fails the test for everything it finds. The
// script is evaluated from outside, which the page's content policy does not concern.
func (p *Page) Axe(t testing.TB) {
	t.Helper()
	p.axe(t, `{resultTypes: ["violations"]}`)
}

// Contrast is Axe for the contrast of letters only: all that a change of colours can spoil.
func (p *Page) Contrast(t testing.TB) {
	t.Helper()
	p.axe(t, `{resultTypes: ["violations"], runOnly: ["color-contrast"]}`)
}

func (p *Page) axe(t testing.TB, options string) {
	t.Helper()
	path := filepath.Join(root(t), "node_modules", "axe-core", "axe.min.js")
	script, err := os.ReadFile(path)
	if err != nil {
		t.Fatalf("axe-core is missing, run npm ci: %v", err)
	}
	if _, err := within(p, chromedp.Evaluate[chromedp.Void](string(script))); err != nil {
		t.Fatalf("axe-core does not load: %v", err)
	}
	found, err := within(p, chromedp.Evaluate[[]finding](
		"axe.run(document, "+options+").then(r => r.violations)", chromedp.EvalAwaitPromise))
	if err != nil {
		t.Fatalf("axe-core does not run: %v", err)
	}
	for _, f := range found {
		t.Errorf("axe finds %s: %s%s", f.ID, f.Help, f.where())
	}
}

// where shows the first elements concerned; one rule often finds dozens.
func (f finding) where() string {
	const shown = 3
	var text strings.Builder
	for i, n := range f.Nodes {
		if i == shown {
			fmt.Fprintf(&text, "\n  and %d more", len(f.Nodes)-shown)
			break
		}
		fmt.Fprintf(&text, "\n  %s\n    %s", n.HTML, strings.ReplaceAll(n.FailureSummary, "\n", "\n    "))
	}
	return text.String()
}

// root is the repository's root, the folder of go.mod.
func root(t testing.TB) string {
	t.Helper()
	folder, err := os.Getwd()
	if err != nil {
		t.Fatal(err)
	}
	for {
		if _, err := os.Stat(filepath.Join(folder, "go.mod")); err == nil {
			return folder
		}
		parent := filepath.Dir(folder)
		if parent == folder {
			t.Fatal("no go.mod above the test's folder")
		}
		folder = parent
	}
}
