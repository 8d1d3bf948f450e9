package web

import (
	"fmt"
	"strings"

	"tumblehome/trade/finding"
)

// noteGroup is one note, or many about one fitting that would fill the margin.
type noteGroup struct {
	Thing string // the fitting they share; "" for a single note
	Notes []note
	Shown []note // those of them that are on the page
}

// wall is how many notes about one fitting stand under one line: fewer are read as they are.
const wall = 4

// atFirst is how many notes a page has before more are asked for: nobody reads a thousand at once, and each has its forms.
const atFirst = 40

// marginOf is what the margin shows, the gravest first, and what it leaves until it is asked for.
func marginOf(v view) (shown []noteGroup, rest []note) {
	room := atFirst
	if v.opens(allNotes) {
		room = len(v.Findings)
	}
	for _, g := range groupsOf(notesFor(v)) {
		n := min(room, len(g.Notes))
		room -= n
		rest = append(rest, g.Notes[n:]...)
		if g.Shown = g.Notes[:n]; n > 0 {
			shown = append(shown, g)
		}
	}
	return shown, rest
}

// allNotes is how an address asks for the notes that a page leaves out.
const allNotes = "notes"

// groupsOf puts notes of one fitting under one line where there are many, at the place of the gravest. A note about two such fittings
// belongs to the one with more.
func groupsOf(notes []note) []noteGroup {
	with := map[string]string{} // anchor of a note: the fitting it goes under
	for {
		thing, most := "", wall-1
		counts := map[string]int{}
		for _, n := range notes {
			if with[n.anchor()] != "" {
				continue
			}
			for _, id := range n.things() {
				if counts[id]++; counts[id] > most || counts[id] == most && id < thing {
					thing, most = id, counts[id]
				}
			}
		}
		if thing == "" {
			break
		}
		for _, n := range notes {
			for _, id := range n.things() {
				if id == thing && with[n.anchor()] == "" {
					with[n.anchor()] = thing
				}
			}
		}
	}
	var out []noteGroup
	at := map[string]int{}
	for _, n := range notes {
		thing := with[n.anchor()]
		if i, begun := at[thing]; begun && thing != "" {
			out[i].Notes = append(out[i].Notes, n)
			continue
		}
		at[thing] = len(out)
		out = append(out, noteGroup{Thing: thing, Notes: []note{n}})
	}
	return out
}

// things are the fittings that a note is about where they stand, each once; what a note says of anything else is read on its own.
func (n note) things() []string {
	if !startsWith(n.Code, "fit") {
		return nil
	}
	var out []string
	for _, about := range n.About {
		if id, ok := fittingOf(about); ok && !strings.Contains(" "+strings.Join(out, " ")+" ", " "+id+" ") {
			out = append(out, id)
		}
	}
	return out
}

// words say what hides under the line: "Galley: 13 faults where it stands", "Galley: 9 notes where it stands, 7 of them faults".
func (g noteGroup) words(v view) string {
	worst := 0
	for _, n := range g.Notes {
		if n.Severity == g.Notes[0].Severity {
			worst++
		}
	}
	name := capital(v.name(g.Thing))
	kind := map[finding.Severity]string{
		finding.Danger: "dangers", finding.Fault: "faults", finding.Close: "close to the limit", finding.Note: "notes",
	}[g.Notes[0].Severity]
	if worst == len(g.Notes) {
		return fmt.Sprintf("%s: %d %s where it stands", name, worst, kind)
	}
	return fmt.Sprintf("%s: %d notes where it stands, %d of them %s", name, len(g.Notes), worst, kind)
}
