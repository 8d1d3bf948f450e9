package web

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"tumblehome/internal/words"
	"tumblehome/reckon"
	"tumblehome/trade/finding"
)

// tellingFigures are those that a sentence about a change names, the most telling first.
var tellingFigures = []string{
	"weight.rear-axle", "weight.front-axle", "weight.total", "weight.payload-left", "weight.roof",
	"shell.headroom", "lining.volume", "lining.mass", "cost.forecast", "cost.to-come", "cost.paid",
}

const mostTold = 4 // figures in one sentence

// sentence says what a change moves: "Settle 100 mm rearwards: on the rear axle +2 kg, on the front axle −2 kg." What moves with the thing
// that was moved, because it is tied to it, stands in brackets.
func sentence(what, with string, d reckon.Difference) string {
	n := newsIn(d)
	var told []string
	for _, c := range telling(d.Changes) {
		told = append(told, decapital(c.Label)+" "+changeOf(c))
		if len(told) == mostTold {
			break
		}
	}
	text := capital(cmp.Or(what, "this change"))
	if with != "" {
		text += " (with it: " + with + ")"
	}
	if len(told)+len(n.Appeared)+len(n.Cleared)+len(n.Graver)+len(n.Milder) == 0 {
		return text + ": nothing else moves that you would notice."
	}
	if len(told) > 0 {
		text += ": " + strings.Join(told, ", ")
	}
	text += "."
	return text + someNotes(n.Appeared, func(f finding.Finding) string {
		return " New " + severityWords(f.Severity) + ": " + f.Title + inMode(f) + "."
	}, "new") +
		someNotes(n.Graver, noteAfter("Graver now"), "graver") + someNotes(n.Milder, noteAfter("Less grave now"), "less grave") +
		someNotes(n.Cleared, noteAfter("Cleared"), "cleared")
}

func noteAfter(word string) func(finding.Finding) string {
	return func(f finding.Finding) string { return " " + word + ": " + f.Title + inMode(f) + "." }
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
