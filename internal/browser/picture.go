package browser

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/chromedp/chromedp"
)

// wanted says whether pictures are taken at all. They are for eyes, no test compares them, and taking them is a third of a test's time.
func wanted() bool { return os.Getenv("TUMBLEHOME_PICTURES") != "" }

// Screenshot writes what the window shows to pictures/NAME.png at the
// repository's root, where TUMBLEHOME_PICTURES is set.
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
	if !wanted() {
		return
	}
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
