package web

import (
	"strings"

	"tumblehome/build"
)

// caseEntries are the values of a load case: fuel, and how full each tank is.
func caseEntries(v view, id string) []entry {
	at := "/vehicle/cases/" + id
	out := []entry{
		{Path: at + "/title", Label: "called"},
		{Path: at + "/people", Label: "who", List: true},
		fieldOf(at+"/fuel", "fuel", ""),
	}
	for _, tank := range build.SortedKeys(v.Doc.Fittings) {
		if f := v.Doc.Fittings[tank]; f.Holds != nil {
			out = append(out, fieldOf(at+"/fill/"+tank, v.name(tank)+", how full", ""))
		}
	}
	return append(out, entry{Path: at + "/gear", Label: "things taken along", Choices: wordsAllowed("yes", "no")})
}

// sureOf says how well a mass is known.
func sureOf(r heavyRow) string {
	var parts []string
	if r.Guess {
		parts = append(parts, "a guess")
	}
	if r.Fitted {
		parts = append(parts, "in the van today")
	} else {
		parts = append(parts, "planned")
	}
	return strings.Join(parts, ", ")
}

func splitPointer(pointer string) []string {
	return strings.Split(strings.TrimPrefix(pointer, "/"), "/")
}

func joinSteps(steps []string) string { return strings.Join(steps, "/") }

// loadWidth is a share as the width of a bar on which the plate lies at 100.
func loadWidth(share float64) string { return plainNumber(100 * min(max(share, 0), 1.2)) }
