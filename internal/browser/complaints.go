package browser

import (
	"context"
	"fmt"
	"strings"
	"sync"
	"time"

	"github.com/chromedp/chromedp"
)

// complaints gathers what the browser finds wrong with a page: console
// errors, uncaught exceptions, failed requests, content policy reports.
type complaints struct {
	sync.Mutex
	texts   []string
	allowed []string
	heard   chan string // marks, in the order in which they were written
}

// mark begins the console message by which judge knows that all earlier ones have come in.
const mark = "heard everything up to "

func listen(ctx context.Context) *complaints {
	c := &complaints{heard: make(chan string, 8)}
	messages := chromedp.Console(ctx)
	go func() {
		for m, err := range messages {
			if err != nil {
				return
			}
			c.take(m)
		}
	}()
	return c
}

func (c *complaints) take(m chromedp.ConsoleMessage) {
	switch m.Type {
	case chromedp.ConsoleDebug:
		if at, ok := strings.CutPrefix(m.Text, mark); ok {
			c.heard <- at
		}
	case chromedp.ConsoleError, chromedp.ConsoleException, "assert":
		c.Lock()
		defer c.Unlock()
		c.texts = append(c.texts, fmt.Sprintf("%s (%s:%d)", m, m.URL, m.Line+1))
	}
}

// Allow says that a complaint containing the text is part of the test, such as the
// "status of 422" of a form that is refused on purpose.
func (p *Page) Allow(text string) {
	p.complain.Lock()
	defer p.complain.Unlock()
	p.complain.allowed = append(p.complain.allowed, text)
}

// judge fails the test for every complaint that was not allowed.
func (p *Page) judge() {
	p.t.Helper()
	if err := p.drain(); err != nil {
		p.t.Errorf("the page's console could not be read to its end: %v", err)
	}
	p.complain.Lock()
	defer p.complain.Unlock()
	for _, text := range p.complain.texts {
		if !p.complain.foreseen(text) {
			p.t.Errorf("the page complains: %s", text)
		}
	}
}

// drain writes a mark to the console and waits until it comes back.
func (p *Page) drain() error {
	at := time.Now().String()
	script := fmt.Sprintf("console.debug(%q)", mark+at)
	if _, err := within(p, chromedp.Evaluate[chromedp.Void](script)); err != nil {
		return err
	}
	timeout := time.After(patience)
	for {
		select {
		case got := <-p.complain.heard:
			if got == at {
				return nil
			}
		case <-timeout:
			return context.DeadlineExceeded
		}
	}
}

func (c *complaints) foreseen(text string) bool {
	for _, a := range c.allowed {
		if strings.Contains(text, a) {
			return true
		}
	}
	return false
}

// sofar lists the complaints behind the message of a step that failed: they are often its cause.
func (c *complaints) sofar() string {
	c.Lock()
	defer c.Unlock()
	if len(c.texts) == 0 {
		return ""
	}
	return "\nthe page complains:\n" + strings.Join(c.texts, "\n")
}
