package web

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"github.com/a-h/templ"

	"tumblehome/build/begin"
	"tumblehome/quantity"
)

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
		out["autofocus"] = v.wrongFields()[0].Field == name
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
