package browser

import (
	"context"
	"os"
	"os/exec"
	"sync"
	"testing"

	"github.com/chromedp/chromedp"
)

// A Size is a window and the hand that works it.
type Size struct {
	Width, Height int64 // CSS pixels
	Touch         bool  // a phone: mobile layout, touch events
}

// The two sizes that pages are made for.
var (
	Desk  = Size{Width: 1440, Height: 900}
	Phone = Size{Width: 360, Height: 800, Touch: true}
)

// chromium is the browser of this test process, started by the first Open
// and stopped by Main.
var chromium struct {
	sync.Mutex
	governed bool // Main runs the tests and will stop the browser
	root     context.Context
	stop     func()
}

// Main runs the tests of a package and stops the browser behind them.
func Main(m *testing.M) {
	chromium.governed = true
	code := m.Run()
	if chromium.stop != nil {
		chromium.stop()
	}
	os.Exit(code)
}

// start gives the browser's context, in which each page is a tab.
func start(t testing.TB) context.Context {
	t.Helper()
	if testing.Short() {
		t.Skip("pages are not opened in short tests")
	}
	chromium.Lock()
	defer chromium.Unlock()
	if !chromium.governed {
		t.Fatal("this package lacks: func TestMain(m *testing.M) { browser.Main(m) }")
	}
	if chromium.root != nil {
		return chromium.root
	}
	path, err := exec.LookPath("chromium")
	switch {
	case err != nil && os.Getenv("CI") == "":
		t.Skip("no chromium on the PATH: page not tested")
	case err != nil:
		t.Fatalf("CI needs a browser: %v", err)
	}
	allocated, release := chromedp.NewExecAllocator(context.Background(), options(path)...)
	root, closeBrowser := chromedp.NewContext(allocated)
	if err := chromedp.Do(root); err != nil {
		release()
		t.Fatalf("chromium does not start: %v", err)
	}
	chromium.root = root
	chromium.stop = func() { closeBrowser(); release() }
	return root
}

// options are chromedp's own for a headless browser, and what makes pictures
// the same on every machine. Chromium's sandbox refuses to run as root, as CI does;
// it only ever opens pages that the tests serve.
func options(path string) []chromedp.ExecAllocatorOption {
	return append(chromedp.DefaultExecAllocatorOptions[:],
		chromedp.ExecPath(path),
		chromedp.NoSandbox,
		chromedp.WindowSize(int(Desk.Width), int(Desk.Height)),
		chromedp.Flag("disable-component-update", true),
		chromedp.Flag("disable-quic", true),
		chromedp.Flag("hide-scrollbars", true),
		chromedp.Flag("disable-gpu", true),
		chromedp.Flag("lang", "en-GB"),
	)
}
