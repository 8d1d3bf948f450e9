package web

import (
	"net/url"
	"slices"
	"strings"

	"tumblehome/build/tree"
	"tumblehome/trade/finding"
)

// note is a finding as it stands in the margin. Its number is that of its flag on the drawing: findings nobody has accepted, counted
// from one in the order of the reckoning, those of another mode left out.
type note struct {
	finding.Finding
	Number int
}

// openNotes numbers what a mode shows.
func openNotes(all []finding.Finding, mode string) []note {
	var out []note
	for _, f := range all {
		if f.Accepted == "" && (f.Mode == "" || f.Mode == mode) {
			out = append(out, note{f, len(out) + 1})
		}
	}
	return out
}

// concerns names the beginnings of codes that a page's margin is about; none means all of them.
var concerns = map[string][]string{
	"weight": {"weight"}, "shell": {"shell"}, "build-up": {"lining"}, "warmth": {"warmth", "climate", "trips"}, "cost": {"cost", "stock"},
}

// notesFor are the notes of a page. Of the van of today what is only planned says nothing; the others keep their numbers, as the flags do.
func notesFor(v view) []note {
	return slices.DeleteFunc(openNotes(v.Findings, v.Mode), func(n note) bool {
		return !concern(v.Page, n.Code) || v.Mode == today && v.planned(n)
	})
}

// planned reports whether a note is about a thing that is not in the van yet.
func (s *state) planned(n note) bool {
	return slices.ContainsFunc(n.About, func(about string) bool {
		id, ok := fittingOf(about)
		f, known := s.Doc.Fittings[id]
		return ok && known && f.Fitted == nil
	})
}

func acceptedFor(v view) []finding.Finding {
	return slices.DeleteFunc(slices.Clone(v.Findings), func(f finding.Finding) bool { return f.Accepted == "" || !concern(v.Page, f.Code) })
}

func concern(page, code string) bool {
	about, some := concerns[page]
	return !some || startsWith(code, about...)
}

func (n note) anchor() string { return "note-" + count(n.Number) }

// about is what the note is about in the first place.
func (n note) about() string {
	if len(n.About) == 0 {
		return ""
	}
	return n.About[0]
}

// all that the note is about, for the page's script.
func (n note) all() string { return strings.Join(n.About, " ") }

// why is the page that explains the note.
func (n note) why() string {
	return "/how/" + url.PathEscape(n.Code) + "?about=" + url.QueryEscape(n.about())
}

// acceptancePath is where living with a note is written down; a second acceptance of one code takes a number.
func (n note) acceptancePath(v view) string {
	id := strings.Trim(strings.ReplaceAll(n.Code, ".", "-"), "-")
	if len(id) > longestID-3 {
		id = strings.Trim(id[:longestID-3], "-")
	}
	return "/accepted/" + free(id, v.Doc.Accepted)
}

// acceptance is everything of it but the reason.
func (n note) acceptance(v view) []change {
	at := tree.Pointer(n.acceptancePath(v))
	out := []change{{Path: at.Then("finding"), Value: n.Code}, {Path: at.Then("as"), Value: n.Severity.String()}, {Path: at.Then("date"), Value: v.Day.String()}}
	if about := tree.Pointer(n.about()).Path(); about != "" {
		out = append(out, change{Path: at.Then("about"), Value: about})
	}
	return out
}

func moreNotes(n int) string {
	if n == 1 {
		return "1 more note"
	}
	return count(n) + " more notes"
}

func severityWords(s finding.Severity) string {
	return map[finding.Severity]string{
		finding.Danger: "danger", finding.Fault: "fault", finding.Close: "close to the limit", finding.Note: "note",
	}[s]
}

// applyWords is what the button of a proposal says: its first is the usual way.
func applyWords(i int, proposal string) string {
	if i == 0 {
		return "apply: " + decapital(proposal)
	}
	return "or: " + decapital(proposal)
}

// markLine is where the number stands in a mark: a triangle is widest below.
func markLine(severity string) string {
	if severity == "fault" {
		return "16"
	}
	return "14"
}
