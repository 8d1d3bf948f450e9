package browser

import (
	"context"
	"fmt"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
)

// A Point is a place in the window, in CSS pixels from its top left corner.
type Point struct{ X, Y float64 }

// A Path is the way of a pointer or a finger.
type Path struct{ From, To Point }

// moves is how many moves a drag is made of, as a hand would.
const moves = 12

func (p Path) at(step, of int) Point {
	share := float64(step) / float64(of)
	return Point{p.From.X + share*(p.To.X-p.From.X), p.From.Y + share*(p.To.Y-p.From.Y)}
}

// place finds the middle of an element, brings it into the window and says whether
// a pointer there would hit the element or something within it.
const place = `(() => {
	const e = document.querySelector(%q);
	if (!e) return {free: false};
	e.scrollIntoView({block: "nearest", inline: "nearest", behavior: "instant"});
	const r = e.getBoundingClientRect();
	const x = r.left + r.width / 2, y = r.top + r.height / 2;
	const hit = document.elementFromPoint(x, y);
	return {x, y, free: !!hit && (e.contains(hit) || (e.labels && [...e.labels].some(l => l.contains(hit))))};
})()`

// Middle gives the middle of the first element found, once a pointer can reach it there.
func (p *Page) Middle(selector string) Point {
	p.t.Helper()
	var at struct {
		X, Y float64
		Free bool
	}
	p.until("reach "+selector+" (missing, hidden or covered)", func() (free bool, err error) {
		at, err = within(p, chromedp.Evaluate[struct {
			X, Y float64
			Free bool
		}](fmt.Sprintf(place, selector)))
		return at.Free, err
	})
	return Point{at.X, at.Y}
}

// Drag presses the mouse's left button at one point, moves and lets go at the other.
func (p *Page) Drag(from, to Point) {
	p.t.Helper()
	p.Grasp(from, to)
	p.Release(to)
}

// Grasp presses the mouse's left button at one point, moves to the other and holds there. The browser answers each move when it has
// drawn what came of it, so each has the patience of a step.
func (p *Page) Grasp(from, to Point) {
	p.t.Helper()
	path := Path{from, to}
	p.do("go there", chromedp.MouseEvent(input.DispatchMouseEventTypeMouseMoved, from.X, from.Y))
	p.do("press", chromedp.MouseEvent(input.DispatchMouseEventTypeMousePressed, from.X, from.Y, held, chromedp.ClickCount(1)))
	p.Trail(path, moves)
}

// Trail moves the mouse, its left button already down, along a path in so many moves.
func (p *Page) Trail(path Path, steps int) {
	p.t.Helper()
	for i := 1; i <= steps; i++ {
		at := path.at(i, steps)
		p.do("move", chromedp.MouseEvent(input.DispatchMouseEventTypeMouseMoved, at.X, at.Y, held))
	}
}

// Release lets go of the mouse's left button.
func (p *Page) Release(at Point) {
	p.t.Helper()
	p.do("release", chromedp.MouseEvent(input.DispatchMouseEventTypeMouseReleased, at.X, at.Y, chromedp.ButtonLeft, chromedp.ClickCount(1)))
}

// Hover moves the mouse without a button.
func (p *Page) Hover(at Point) {
	p.t.Helper()
	p.do("hover", chromedp.MouseEvent(input.DispatchMouseEventTypeMouseMoved, at.X, at.Y))
}

// Wheel turns the wheel by so many pixels, downwards if positive.
func (p *Page) Wheel(at Point, by float64) {
	p.t.Helper()
	p.do("turn the wheel", chromedp.MouseEvent(input.DispatchMouseEventTypeMouseWheel, at.X, at.Y, func(e *input.DispatchMouseEventParams) {
		e.DeltaX, e.DeltaY = 1e-9, by // the browser wants both, and a zero is not sent
	}))
}

// held says that the left button is down during a move.
func held(e *input.DispatchMouseEventParams) {
	e.Button = input.MouseButtonLeft
	e.Buttons = 1
}

// TouchDrag puts down one finger for each path, moves them together and lifts them.
func (p *Page) TouchDrag(paths ...Path) {
	p.t.Helper()
	p.do("touch", touch(input.DispatchTouchEventTypeTouchStart, paths, 0))
	for i := 1; i <= moves; i++ {
		p.do("move", touch(input.DispatchTouchEventTypeTouchMove, paths, i))
	}
	p.do("lift", touch(input.DispatchTouchEventTypeTouchEnd, nil, moves))
}

func touch(kind input.DispatchTouchEventType, paths []Path, step int) chromedp.Action[chromedp.Void] {
	points := make([]*input.TouchPoint, len(paths))
	for i, path := range paths {
		at, finger := path.at(step, moves), float64(i)
		points[i] = &input.TouchPoint{X: at.X, Y: at.Y, ID: &finger}
	}
	return chromedp.Func(func(ctx context.Context, t *chromedp.Target) error {
		_, err := cdp.Call(ctx, t, input.DispatchTouchEvent, input.DispatchTouchEventParams{Type: kind, TouchPoints: points})
		return err
	})
}
