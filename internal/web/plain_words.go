package web

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"time"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/internal/store"
	"tumblehome/internal/words"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/trade/finding"
)

// keyWords says in plain words what some keys of the document mean; the others read as they are written.
var keyWords = map[string]string{
	"at.x": "place along the van", "at.y": "place across", "at.z": "height above the floor",
	"size.x": "length", "size.y": "width", "size.z": "height", "turn": "turn", "of": "board", "at": "place",
	"plate.gross": "most in all", "plate.front": "most on the front axle", "plate.rear": "most on the rear axle", "plate.train": "most with a trailer",
	"half": "half widths", "mass": "mass", "called": "name", "lay": "material", "take": "position",
}

// hushed are keys that say nothing to a reader where something follows them.
var hushed = map[string]bool{
	"fittings": true, "vehicle": true, "use": true, "shell": true, "build": true, "offsets": true, "stations": true, "openings": true,
	"cases": true, "people": true, "quick": true, "ribs": true, "arches": true, "defects": true, "spending": true, "accepted": true,
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
			if hushed[step] && len(parts) == 0 {
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

// wordsOf describes a patch for the history: "settle, place along the van: 1010 → 1110".
func wordsOf(before *tree.Node, patch tree.Patch) string {
	const told = 3
	after := tree.Merge(before, patch)
	var touched []tree.Pointer
	for _, p := range patch.Touches() {
		touched = append(touched, differing(before.At(p), after.At(p), p)...)
	}
	var parts []string
	for i, p := range touched {
		if i == told {
			parts = append(parts, fmt.Sprintf("%d more", len(touched)-told))
			break
		}
		parts = append(parts, changeWords(before, after, p))
	}
	return strings.Join(parts, "; ")
}

// differing goes into lists, which patches replace whole, for the places where two of equal length differ.
func differing(before, after *tree.Node, p tree.Pointer) []tree.Pointer {
	if before == nil || after == nil || before.Kind != after.Kind || before.Kind == tree.Scalar || len(before.Items) != len(after.Items) {
		return []tree.Pointer{p}
	}
	var out []tree.Pointer
	for i := range before.Items {
		if !tree.Equal(before.Items[i], after.Items[i]) {
			out = append(out, differing(before.Items[i], after.Items[i], p.Then(count(i)))...)
		}
	}
	for _, q := range tree.Difference(before, after).Touches() {
		if before.Kind == tree.Map {
			out = append(out, p+q)
		}
	}
	return out
}

func changeWords(before, after *tree.Node, p tree.Pointer) string {
	const longest = 40
	from, to := valueText(before, p), valueText(after, p)
	what := pathWords(p.Path())
	switch {
	case to == "":
		return what + " taken out"
	case len([]rune(to)) > longest:
		return what + " changed"
	case from == "" || len([]rune(from)) > longest:
		return what + ": " + to
	}
	return what + ": " + from + " → " + to
}

// tellingFigures are those that a sentence about a change names, the most telling first.
var tellingFigures = []string{
	"weight.rear-axle", "weight.front-axle", "weight.total", "weight.payload-left", "weight.roof",
	"shell.headroom", "lining.volume", "lining.mass", "cost.forecast", "cost.to-come", "cost.paid",
}

const mostTold = 4 // figures in one sentence

// sentence says what a change moves: "Settle 100 mm rearwards: on the rear axle +2 kg, on the front axle −2 kg."
func sentence(what string, d reckon.Difference) string {
	var told []string
	for _, c := range telling(d.Changes) {
		told = append(told, decapital(c.Label)+" "+changeOf(c))
		if len(told) == mostTold {
			break
		}
	}
	text := capital(cmp.Or(what, "this change"))
	if len(told) == 0 && len(d.Appeared)+len(d.Cleared) == 0 {
		return text + ": nothing else moves that you would notice."
	}
	if len(told) > 0 {
		text += ": " + strings.Join(told, ", ")
	}
	text += "."
	return text + someNotes(d.Appeared, func(f finding.Finding) string {
		return " New " + severityWords(f.Severity) + ": " + f.Title + inMode(f) + "."
	}, "new") +
		someNotes(d.Cleared, func(f finding.Finding) string { return " Cleared: " + f.Title + inMode(f) + "." }, "cleared")
}

// inMode says of a note that holds in one way the van stands only which that is, unless its title does: " (night)".
func inMode(f finding.Finding) string {
	if f.Mode == "" || strings.Contains(f.Title, strconv.Quote(f.Mode)) {
		return ""
	}
	return " (" + unhyphen(f.Mode) + ")"
}

const mostNotes = 3 // of one kind in one sentence: more are counted

// someNotes names a few notes and counts the rest.
func someNotes(all []finding.Finding, say func(finding.Finding) string, kind string) string {
	text := ""
	for i, f := range all {
		if i == mostNotes-1 && len(all) > mostNotes {
			return text + " And " + count(len(all)-i) + " more " + kind + "."
		}
		text += say(f)
	}
	return text
}

func changeOf(c reckon.Change) string {
	switch {
	case c.New:
		return "now " + words.Amount(c.To, c.Unit)
	case c.Gone:
		return "no longer told"
	}
	return words.Signed(c.To-c.From, c.Unit)
}

// telling picks the changes worth a sentence, in the order of tellingFigures, then what else is no detail.
func telling(changes []reckon.Change) []reckon.Change {
	rank := func(c reckon.Change) int {
		if i := slices.Index(tellingFigures, c.Code); i >= 0 {
			return i
		}
		return len(tellingFigures)
	}
	var out []reckon.Change
	for _, c := range changes {
		detail := strings.Count(c.Code, ".") > 1 || c.New || c.Gone
		if words.Moved(c) && (!detail || rank(c) < len(tellingFigures)) {
			out = append(out, c)
		}
	}
	slices.SortStableFunc(out, func(a, b reckon.Change) int { return cmp.Compare(rank(a), rank(b)) })
	return out
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

// sortedKeys are the ids of a collection as they are written.
func sortedKeys[T any](m map[string]T) []string { return build.SortedKeys(m) }

func cmpOr(texts ...string) string { return cmp.Or(texts...) }

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
