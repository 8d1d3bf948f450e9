package web

import (
	"fmt"
	"math"
	"strings"

	"tumblehome/trade/fit"
)

// placeOut is a bed or a seat with the ways out of it, in words.
type placeOut struct {
	From string
	Ways []string
}

// waysOut are the ways out of every bed and seat in the mode shown, in words; nothing while driving, and nothing of today, when not all is in yet.
func (v view) waysOut() []placeOut {
	var out []placeOut
	from := ""
	for _, r := range v.Fit.Routes() {
		if r.Mode != v.Mode {
			continue
		}
		if r.From != from {
			from = r.From
			out = append(out, placeOut{From: "From " + v.name(r.From)})
		}
		last := &out[len(out)-1]
		last.Ways = append(last.Ways, v.routeWords(r))
	}
	for i := range out {
		if len(out[i].Ways) < 2 {
			out[i].Ways = append(out[i].Ways, "A second way out was not found.")
		}
	}
	return out
}

// routeWords say one way out: feet first past the galley to the side door: 1.9 m, narrowest 430 mm between galley and bench.
func (v view) routeWords(r fit.Route) string {
	text := ""
	if table := v.some(r.Aside); table != "" {
		text = "put " + table + " away, then "
	}
	text += map[string]string{"feet": "feet first ", "head": "head first ", "side": "over its long side "}[r.First]
	if over := v.some(r.Over); over != "" {
		text += "over " + over + " "
	}
	if past := v.some(r.Past); past != "" {
		text += "past " + past + " "
	}
	text += fmt.Sprintf("to %s: %.1f m", r.OutCalled, math.Max(0.1, r.Length/1000))
	switch between := v.some(r.Between); {
	case r.Width >= fit.Roomy:
		text += fmt.Sprintf(", nowhere narrower than %d mm", fit.Roomy)
	case r.Doorway:
		text += ", narrowest " + fives(r.Width) + " mm in the doorway"
	case len(r.Between) > 1:
		text += ", narrowest " + fives(r.Width) + " mm between " + between
	case between != "":
		text += ", narrowest " + fives(r.Width) + " mm beside " + between
	default:
		text += ", narrowest " + fives(r.Width) + " mm"
	}
	return strings.ToUpper(text[:1]) + text[1:] + "."
}

// some names up to three fittings as one says them.
func (v view) some(ids []string) string {
	names := make([]string, min(3, len(ids)))
	for i := range names {
		names[i] = v.name(ids[i])
	}
	if len(names) > 1 {
		last := len(names) - 1
		return strings.Join(names[:last], ", ") + " and " + names[last]
	}
	return strings.Join(names, "")
}
