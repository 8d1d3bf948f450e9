package web

import (
	"strings"

	"tumblehome/build"
)

// bodies are the outlines of the first hour: length, then height.
var bodies = []string{"short-low", "short-mid", "short-high", "mid-low", "mid-mid", "mid-high", "long-low", "long-mid", "long-high"}

// listWords joins words as a reader does.
func listWords(words []string) string { return strings.Join(words, ", ") }

// openingWords says what an opening is.
func openingWords(o build.Opening) string {
	var parts []string
	if o.Door != "" {
		parts = append(parts, o.Door+" door")
	}
	parts = append(parts, "through the "+o.Through)
	if o.In != "" {
		parts = append(parts, "in "+unhyphen(o.In))
	}
	if o.Door == "" && o.Made == nil {
		parts = append(parts, "not cut yet")
	}
	return strings.Join(parts, ", ")
}

// openingEntries are the values of an opening that lie in its surface, and what else bears on warmth, air and leaving in a hurry.
func openingEntries(id string, o build.Opening) []entry {
	at := "/shell/openings/" + id
	along, across := "/x", "/z"
	switch o.Through {
	case "floor", "roof":
		across = "/y"
	case "front", "rear":
		along = "/y"
	}
	names := map[string]string{"/x": "along, from and to", "/y": "across, from and to", "/z": "up, from and to"}
	out := []entry{fieldOf(at+along, names[along], "mm"), fieldOf(at+across, names[across], "mm"), fieldOf(at+"/glazed", "glass", "")}
	if o.Door == "" {
		return append(out, fieldOf(at+"/free-area", "lets air through", ""), fieldOf(at+"/made", "cut on", ""))
	}
	return append(out, entry{Path: at + "/way-out", Label: "a way out from inside", Choices: wordsAllowed("yes", "no")})
}

func defectPlace(d build.Defect) string {
	place := d.Where
	if place == "" && d.Near != "" {
		place = "near " + pathWords(d.Near)
	}
	return strings.TrimSuffix(unhyphen(d.Kind)+", "+place, ", ")
}
