package web

import (
	"cmp"
	"strconv"
	"strings"
	"time"

	"tumblehome/build/tree"
	"tumblehome/internal/store"
	"tumblehome/quantity"
)

// keyWords says in plain words what some keys of the document mean; the others read as they are written.
var keyWords = map[string]string{
	"at.x": "place along the van", "at.y": "place across", "at.z": "height above the floor",
	"size.x": "length", "size.y": "width", "size.z": "height", "turn": "turn", "of": "board", "at": "place",
	"plate.gross": "most in all", "plate.front": "most on the front axle", "plate.rear": "most on the rear axle", "plate.train": "most with a trailer",
	"half": "half widths", "mass": "mass", "called": "name", "lay": "material", "take": "position", "head": "head towards",
}

// hushed are keys that say nothing to a reader where something follows them.
var hushed = map[string]bool{
	"fittings": true, "vehicle": true, "use": true, "shell": true, "build": true, "offsets": true, "stations": true, "openings": true,
	"cases": true, "people": true, "quick": true, "ribs": true, "arches": true, "defects": true, "spending": true, "accepted": true, "modes": true,
}

// pathWords says in plain words which place of the document a dotted path means: "settle, place along the van".
func pathWords(path string) string {
	if path == "" {
		return "the whole build"
	}
	steps := strings.Split(path, ".")
	var parts []string
	for i := 0; i < len(steps); i++ {
		step := steps[i]
		if i+1 < len(steps) {
			if said, ok := keyWords[step+"."+steps[i+1]]; ok {
				parts = append(parts, said)
				i++
				continue
			}
			if hushed[step] && i == 0 {
				continue
			}
			if hushed[step] && (len(parts) == 0 || steps[0] == "modes" && i == 2) {
				continue
			}
		}
		parts = append(parts, stepWords(steps, i))
	}
	return strings.Join(parts, ", ")
}

func stepWords(steps []string, i int) string {
	if n, err := strconv.Atoi(steps[i]); err == nil && i > 0 {
		if steps[0] == "lining" {
			return "layer " + strconv.Itoa(n+1)
		}
		return strconv.Itoa(n+1) + " from below"
	}
	if said, ok := keyWords[steps[i]]; ok {
		return said
	}
	return unhyphen(steps[i])
}

func capital(s string) string {
	r, rest := firstRune(s)
	return strings.ToUpper(r) + rest
}

// decapital makes a label fit for the middle of a sentence, unless it begins with an abbreviation.
func decapital(s string) string {
	r, rest := firstRune(s)
	if second, _ := firstRune(rest); second != "" && second == strings.ToUpper(second) && second != strings.ToLower(second) {
		return s
	}
	return strings.ToLower(r) + rest
}

func firstRune(s string) (first, rest string) {
	for i := range s {
		if i > 0 {
			return s[:i], s[i:]
		}
	}
	return s, ""
}

// unhyphen reads an id as words.
func unhyphen(id string) string { return strings.ReplaceAll(id, "-", " ") }

func orNothing(value string) string { return cmp.Or(value, "nothing") }

func count(n int) string { return strconv.Itoa(n) }

func startsWith(text string, beginnings ...string) bool {
	for _, b := range beginnings {
		if text == b || strings.HasPrefix(text, b+".") {
			return true
		}
	}
	return false
}

func dayWords(d quantity.Date) string {
	return time.Date(d.Year, time.Month(d.Month), d.Day, 0, 0, 0, 0, time.UTC).Format("2 January 2006")
}

func revisionTime(r store.Revision) string { return r.When.Local().Format("2 January, 15:04") }

// current marks the link to where the reader is.
func current(here bool) string {
	if here {
		return "page"
	}
	return "false"
}

// fittingOf is the fitting that a pointer is about.
func fittingOf(pointer string) (string, bool) {
	steps := tree.Pointer(pointer).Steps()
	if len(steps) < 2 || steps[0] != "fittings" {
		return "", false
	}
	return steps[1], true
}
