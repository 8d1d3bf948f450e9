package browser

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/chromedp/chromedp"
)

// Screenshot writes what the window shows to pictures/NAME.png at the
// repository's root, for eyes; no test compares it.
func (p *Page) Screenshot(t testing.TB, name string) {
	t.Helper()
	p.picture(t, name, chromedp.CaptureScreenshot())
}

// WholePage is Screenshot of the page to its end, also below the window.
func (p *Page) WholePage(t testing.TB, name string) {
	t.Helper()
	p.picture(t, name, chromedp.FullScreenshot(100))
}

func (p *Page) picture(t testing.TB, name string, take chromedp.Action[[]byte]) {
	t.Helper()
	png, err := within(p, take)
	if err != nil {
		t.Fatalf("picture %s: %v", name, err)
	}
	path := filepath.Join(root(t), "pictures", name+".png")
	if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, png, 0o644); err != nil {
		t.Fatal(err)
	}
}
