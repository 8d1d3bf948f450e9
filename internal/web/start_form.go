package web

import (
	"fmt"
	"net/url"
	"slices"
	"strconv"
	"strings"

	"github.com/a-h/templ"

	"tumblehome/build/begin"
	"tumblehome/quantity"
)

// mostSleepers is how many rows the question about people has.
const mostSleepers = 4

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
		a.Rules = cmpOr(f.word("rules", "gb", "eu", "us"), a.Rules)
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

// typed is a form while it is being read.
type typed struct {
	url.Values
	wrong map[string]string
}

func (f typed) text(name string) string { return strings.TrimSpace(f.Get(name)) }

// length reads millimetres, or a length with its unit.
func (f typed) length(name string) *quantity.Length {
	return parsed(f, name, quantity.ParseLength)
}

func (f typed) mass(name string) *quantity.Mass { return parsed(f, name, quantity.ParseMass) }

func (f typed) money(name string) *quantity.Money { return parsed(f, name, quantity.ParseMoney) }

func parsed[T any](f typed, name string, parse func(string) (T, error)) *T {
	text := f.text(name)
	if text == "" {
		return nil
	}
	v, err := parse(withoutBlanks(text))
	if err != nil {
		f.wrong[name] = capital(err.Error()) + "."
		return nil
	}
	return &v
}

// withoutBlanks takes out the blanks by which people part thousands: 1 865 is 1865.
func withoutBlanks(text string) string {
	var b strings.Builder
	runes := []rune(text)
	for i, r := range runes {
		if (r == ' ' || r == '\u00a0' || r == '\u202f') && i > 0 && i+1 < len(runes) && isDigit(runes[i-1]) && isDigit(runes[i+1]) {
			continue
		}
		b.WriteRune(r)
	}
	return b.String()
}

func isDigit(r rune) bool { return r >= '0' && r <= '9' }

func (f typed) count(name string) *int {
	text := f.text(name)
	if text == "" {
		return nil
	}
	n, err := strconv.Atoi(text)
	if err != nil || n < 0 || n > 520 {
		f.wrong[name] = "Write a whole number of weekends, such as 30."
		return nil
	}
	return &n
}

func (f typed) word(name string, allowed ...string) string {
	if text := f.text(name); slices.Contains(allowed, text) {
		return text
	}
	return ""
}

// sleepers reads the rows that hold anything. A stature without a name gets one.
func (f typed) sleepers() []begin.Sleeper {
	var all []begin.Sleeper
	for i := 1; i <= mostSleepers; i++ {
		name, field := f.text(fmt.Sprintf("name-%d", i)), fmt.Sprintf("stature-%d", i)
		stature := f.length(field)
		switch {
		case stature == nil && name != "" && f.wrong[field] == "":
			f.wrong[field] = "How tall is " + name + "? Roughly is enough."
		case stature != nil:
			all = append(all, f.sleeper(name, i, *stature, all))
		}
	}
	return all
}

// sleeper is one row, with an id that nobody else has yet. Names that differ only by accents get a number.
func (f typed) sleeper(name string, row int, stature quantity.Length, taken []begin.Sleeper) begin.Sleeper {
	id := cmpOr(begin.ID(name), fmt.Sprintf("sleeper-%d", row))
	for _, other := range taken {
		if name != "" && strings.EqualFold(other.Called(), name) {
			f.wrong[fmt.Sprintf("name-%d", row)] = "Two have this name; the second needs another, so that they can be told apart."
		} else if other.ID == id {
			id += fmt.Sprintf("-%d", row)
		}
	}
	if name == id { // then the id says it
		name = ""
	}
	return begin.Sleeper{ID: id, Name: name, Stature: stature}
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

// said is what stands in a field: what was typed, else what the build says, else nothing.
func (v startView) said(field string) string {
	if v.Typed != nil {
		return v.Typed.Get(field)
	}
	a, r, p := v.Answers, v.Answers.Readings, v.Answers.Plate
	switch field {
	case "body":
		return a.Body
	case "length", "knee", "arches", "height", "door-width", "door-height":
		return textOf(map[string]*quantity.Length{"length": r.Length, "knee": r.Knee, "arches": r.Arches, "height": r.Height,
			"door-width": r.DoorWidth, "door-height": r.DoorHeight}[field])
	case "door-side":
		return r.DoorSide
	case "gross", "front", "rear", "train":
		return textOf(map[string]*quantity.Mass{"gross": p.Gross, "front": p.Front, "rear": p.Rear, "train": p.Train}[field])
	case "wheelbase":
		return textOf(a.Wheelbase)
	case "rules":
		return a.Rules
	case "currency":
		return v.Doc.Build.Currency
	case "title":
		return a.Title
	case "budget":
		return textOf(a.Budget)
	case "weekends":
		if a.Weekends != nil {
			return strconv.Itoa(*a.Weekends)
		}
	}
	return v.saidOfSleeper(field)
}

func (v startView) saidOfSleeper(field string) string {
	what, row, _ := strings.Cut(field, "-")
	i, err := strconv.Atoi(row)
	if err != nil || i < 1 || i > len(v.Answers.Sleepers) {
		return ""
	}
	s := v.Answers.Sleepers[i-1]
	if what == "name" {
		return s.Called()
	}
	return s.Stature.String()
}

// wished tells whether a card is picked.
func (v startView) wished(id string) bool {
	if v.Typed != nil {
		return slices.Contains(v.Typed["wish"], id)
	}
	return slices.Contains(v.Answers.Wishes, id)
}

func textOf[T fmt.Stringer](p *T) string {
	if p == nil {
		return ""
	}
	return (*p).String()
}

// startInput describes a field to a screen reader, and asks a phone for the right keys.
func startInput(v startView, name, hint, unit string) templ.Attributes {
	out, described := templ.Attributes{}, ""
	if hint != "" {
		described = "hint-" + name
	}
	if v.Wrong[name] != "" {
		described = strings.TrimSpace("wrong-" + name + " " + described)
		out["aria-invalid"] = "true"
	}
	if described != "" {
		out["aria-describedby"] = described
	}
	if unit == "kg" || unit == "weekends" {
		out["inputmode"] = "decimal"
	}
	return out
}

func startCurrent(here bool) string {
	if here {
		return "step"
	}
	return "false"
}

func sleeperLabel(i int) string {
	if i == 1 {
		return "Who"
	}
	return "And who"
}

func currencySign(currency string) string {
	return map[string]string{"GBP": "£", "EUR": "€", "USD": "$"}[currency]
}

// changeAddress is where something assumed can be said.
func changeAddress(a begin.Assumption) string {
	switch {
	case a.Asked != "":
		return "/start/" + a.Asked
	case strings.HasPrefix(a.Path, "/lining"):
		return "/build-up"
	}
	return "/weight"
}
