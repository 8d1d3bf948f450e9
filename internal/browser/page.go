package browser

import (
	"context"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
)

// patience is how long a step waits. It is generous because CI shares two slow cores.
const patience = time.Minute

// A Page is one open tab.
type Page struct {
	t        testing.TB
	ctx      context.Context
	complain *complaints
}

// Open opens the address in a new tab of the given size, with storage of its
// own, and waits until it has loaded. The tab closes with the test.
func Open(t testing.TB, url string, size Size) *Page {
	t.Helper()
	ctx, closeTab := chromedp.NewContext(start(t), chromedp.WithNewBrowserContext())
	t.Cleanup(closeTab)
	if err := chromedp.Do(ctx); err != nil {
		t.Fatalf("no new tab: %v", err)
	}
	p := &Page{t: t, ctx: ctx, complain: listen(ctx)}
	t.Cleanup(func() { p.judge() })
	var mobile []chromedp.EmulateViewportOption
	if size.Touch {
		mobile = append(mobile, chromedp.EmulateMobile, chromedp.EmulateTouch, chromedp.EmulateScale(2))
	}
	p.do("set the window's size", chromedp.EmulateViewport(size.Width, size.Height, mobile...))
	p.Go(url)
	return p
}

// Beside opens the address in another tab of the same browser, which shares the storage of the first.
func (p *Page) Beside(t testing.TB, url string) *Page {
	t.Helper()
	ctx, closeTab := chromedp.NewContext(p.ctx)
	t.Cleanup(closeTab)
	if err := chromedp.Do(ctx); err != nil {
		t.Fatalf("no second tab: %v", err)
	}
	second := &Page{t: t, ctx: ctx, complain: listen(ctx)}
	t.Cleanup(func() { second.judge() })
	second.Go(url)
	return second
}

// Go opens another address in the same tab.
func (p *Page) Go(url string) {
	p.t.Helper()
	p.do("open "+url, chromedp.Navigate(url))
}

// do carries out one action and stops the test when it fails.
func (p *Page) do(what string, action chromedp.Action[chromedp.Void]) {
	p.t.Helper()
	if _, err := within(p, action); err != nil {
		p.t.Fatalf("%s: %v%s", what, err, p.complain.sofar())
	}
}

// within carries out an action within the patience of a step.
func within[T any](p *Page, action chromedp.Action[T]) (T, error) {
	ctx, cancel := context.WithTimeout(p.ctx, patience)
	defer cancel()
	return chromedp.Run(ctx, action)
}
