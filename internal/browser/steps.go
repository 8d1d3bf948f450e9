package browser

import (
	"context"
	"fmt"
	"strings"
	"time"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// Click clicks the middle of the first element that the CSS selector finds,
// once it is there and nothing covers it.
func (p *Page) Click(selector string) {
	p.t.Helper()
	at := p.Middle(selector)
	p.do("click "+selector, chromedp.MouseClickXY(at.X, at.Y))
}

// Tap is Click with a finger.
func (p *Page) Tap(selector string) {
	p.t.Helper()
	at := p.Middle(selector)
	p.do("tap "+selector, chromedp.TapXY(at.X, at.Y))
}

// Type puts the text in place of what a field holds, key by key.
func (p *Page) Type(selector, text string) {
	p.t.Helper()
	p.Click(selector)
	script := fmt.Sprintf("document.querySelector(%q).select()", selector)
	p.do("select what is in "+selector, chromedp.Evaluate[chromedp.Void](script))
	p.do("type into "+selector, chromedp.KeyEvent(text))
}

// modifiers are the names that Press takes before a plus.
var modifiers = map[string]chromedp.Modifier{
	"Alt": chromedp.ModifierAlt, "Control": chromedp.ModifierCtrl, "Shift": chromedp.ModifierShift,
}

// Press presses one key where the focus is, named as in KeyboardEvent.key, with
// modifiers: "ArrowRight", "Shift+ArrowRight", "Tab", "r".
func (p *Page) Press(key string) {
	p.t.Helper()
	parts := strings.Split(key, "+")
	name := parts[len(parts)-1]
	var held []chromedp.Modifier
	for _, part := range parts[:len(parts)-1] {
		m, ok := modifiers[part]
		if !ok {
			p.t.Fatalf("press %s: no modifier is called %q", key, part)
		}
		held = append(held, m)
	}
	p.do("press "+key, chromedp.KeyEvent(keyRune(name), chromedp.KeyModifiers(held...)))
}

// keyRune gives the rune under which chromedp knows a named key; a letter is its own.
func keyRune(name string) string {
	for r, k := range kb.Keys {
		if k.Key == name && k.Code == name && r != '\n' { // Enter is known as \r and \n
			return string(r)
		}
	}
	return name
}

// Text gives the visible text of the first element found, once it is there.
func (p *Page) Text(selector string) string {
	p.t.Helper()
	p.WaitFor(fmt.Sprintf("document.querySelector(%q) != null", selector))
	return Eval[string](p, fmt.Sprintf("document.querySelector(%q).innerText", selector))
}

// WaitFor waits until the page has loaded and the JavaScript expression is true: an
// address changes before anything of the new page is there.
func (p *Page) WaitFor(condition string) {
	p.t.Helper()
	p.until("wait for "+condition, func() (bool, error) {
		return within(p, chromedp.Evaluate[bool]("document.readyState == 'complete' && !!("+condition+")"))
	})
}

// Eval gives the value of a JavaScript expression, awaited if it is a promise.
func Eval[T any](p *Page, expression string) T {
	p.t.Helper()
	v, err := within(p, chromedp.Evaluate[T](expression, chromedp.EvalAwaitPromise))
	if err != nil {
		p.t.Fatalf("evaluate %s: %v", expression, err)
	}
	return v
}

// until asks again until the answer is yes. A page that is just being replaced
// cannot answer; that is no failure unless it lasts.
func (p *Page) until(what string, ask func() (bool, error)) {
	p.t.Helper()
	ctx, cancel := context.WithTimeout(p.ctx, patience)
	defer cancel()
	for {
		yes, err := ask()
		if yes && err == nil {
			return
		}
		select {
		case <-ctx.Done():
			if err == nil {
				err = fmt.Errorf("not within %s", patience)
			}
			p.t.Fatalf("%s: %v%s", what, err, p.complain.sofar())
		case <-time.After(20 * time.Millisecond):
		}
	}
}
