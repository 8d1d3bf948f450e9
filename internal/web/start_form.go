package web

import (
	"cmp"
	"net/url"
	"slices"
	"strings"

	"tumblehome/build/begin"
)

// startFields are the fields of each screen that a doubt may stand beside.
var startFields = map[string][]string{
	"tape":   {"length", "knee", "arches", "height", "door-width", "door-height"},
	"plate":  {"gross", "train", "front", "rear", "wheelbase"},
	"people": {"stature-1", "stature-2", "stature-3", "stature-4"},
}

// readAnswer puts what was typed on one screen into the answers, and says by field what could not be read. A field left empty is a
// question left open.
func readAnswer(step string, a begin.Answers, form url.Values) (begin.Answers, map[string]string) {
	f := typed{form, map[string]string{}}
	switch step {
	case "outline":
		if body := form.Get("body"); begin.BodyOf(body).ID == body {
			a.Body = body
		} else {
			f.wrong["body"] = "Pick the one that comes nearest, or skip this question."
		}
		a.Arrangement = fitting(a)
	case "tape":
		r := &a.Readings
		r.Length, r.Knee, r.Arches, r.Height = f.length("length"), f.length("knee"), f.length("arches"), f.length("height")
		r.DoorWidth, r.DoorHeight, r.DoorSide = f.length("door-width"), f.length("door-height"), f.word("door-side", "left", "right", "none")
	case "plate":
		a.Rules = cmp.Or(f.word("rules", "gb", "eu", "us"), a.Rules)
		a.Plate = begin.Plate{Gross: f.mass("gross"), Train: f.mass("train"), Front: f.mass("front"), Rear: f.mass("rear")}
		a.Wheelbase = f.length("wheelbase")
	case "people":
		a.Sleepers = f.sleepers()
	case "wishes":
		a.Wishes = f.wishes()
	case "means":
		a.Title, a.Currency = strings.TrimSpace(form.Get("title")), f.word("currency", "GBP", "EUR", "USD")
		a.Budget, a.Weekends = f.money("budget"), f.count("weekends")
	case "answers":
		a.Arrangement = f.arrangement(a)
	}
	return a, f.wrong
}

// fitting is the arrangement picked before, if it is one for the outline picked now.
func fitting(a begin.Answers) string {
	for _, o := range begin.Offers(a) {
		if o.ID == a.Arrangement {
			return a.Arrangement
		}
	}
	return ""
}

func (f typed) wishes() []string {
	var out []string
	for _, w := range begin.Wishes() {
		if slices.Contains(f.Values["wish"], w.ID) {
			out = append(out, w.ID)
		}
	}
	return out
}

func (f typed) arrangement(a begin.Answers) string {
	for _, o := range begin.Offers(a) {
		if o.ID == f.text("arrangement") {
			return o.ID
		}
	}
	f.wrong["arrangement"] = "Pick one of the three to go on; every piece can be moved afterwards."
	return a.Arrangement
}
