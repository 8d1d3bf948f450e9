package fit

import (
	"fmt"
	"slices"
	"strings"

	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

func (w *worker) showOrder(from, to *Mode, movers []mover, order []int) {
	how := working.Working{Formula: "number of moves in the shortest order in which nothing runs into anything", Source: unfoldSource,
		Notes: []string{"From the mode " + from.Name + ". What is lifted out by hand can be carried past anything."}}
	words := make([]string, len(order))
	for n, i := range order {
		words[n] = w.moveWords(movers[i])
		how.Lines = append(how.Lines, working.Line{Label: fmt.Sprintf("%d: %s", n+1, words[n]), Value: float64(n + 1), Unit: "1",
			From: working.Origin{Pointer: pointer("fittings", w.in.Fittings[movers[i].fitting].ID)}})
	}
	how.Lines = append(how.Lines, working.Line{Symbol: "n", Label: "moves", Value: float64(len(order)), Unit: "1", From: working.Origin{Here: true}})
	w.show(working.Figure{Code: "fit.moves." + to.Name, Value: float64(len(order)), Unit: "1", Label: "Moves from " + from.Name + " to " + to.Name,
		Words: strings.Join(words, ", then ")}, how)
}

// moveWords says one move: the position's own name, or back.
func (w *worker) moveWords(m mover) string {
	if m.position == "" {
		return w.name(m.fitting) + " back where it stood"
	}
	return w.name(m.fitting) + " " + strings.ReplaceAll(m.position, "-", " ")
}

// reportBarred tells of the first mover that cannot go.
func (w *worker) reportBarred(to *Mode, movers []mover, bar []int) {
	stuck, met := firstStuck(movers, bar)
	out := finding.Finding{
		Code: "fit.moves", Severity: finding.Fault, Mode: to.Name, Source: unfoldSource, Limit: mm(touching),
		About: []string{pointer("fittings", w.in.Fittings[movers[stuck].fitting].ID)},
		Title: fmt.Sprintf("%s cannot be brought to %q: %s is in its way", w.name(movers[stuck].fitting), movers[stuck].position, w.meetingWords(met)),
	}
	if movers[stuck].position == "" {
		out.Title = fmt.Sprintf("%s cannot be put back: %s is in its way", w.name(movers[stuck].fitting), w.meetingWords(met))
	}
	if met.way.Depth > 0 {
		out.Measured = mm(met.way.Depth)
	}
	names := make([]string, len(bar))
	for i, f := range bar {
		names[i] = w.name(f)
		if at := pointer("fittings", w.in.Fittings[f].ID); !slices.Contains(out.About, at) {
			out.About = append(out.About, at)
		}
	}
	if met.fitting >= 0 && len(bar) == 0 {
		out.About = append(out.About, pointer("fittings", w.in.Fittings[met.fitting].ID))
	}
	out.Words = fmt.Sprintf("No order of moves makes up the mode %q.", to.Name)
	if len(bar) > 0 {
		out.Words += fmt.Sprintf(" Without %s there is one.", and(names))
	}
	out.Proposals = w.clear(met)
	w.find(out)
}

// firstStuck is the first mover that something bars, and what: one of the bar if it can.
func firstStuck(movers []mover, bar []int) (int, meeting) {
	for i, m := range movers {
		for _, wall := range m.walls {
			if wall.fitting < 0 || len(bar) == 0 || slices.Contains(bar, wall.fitting) {
				return i, wall
			}
		}
	}
	for i, m := range movers {
		for j := range movers {
			if (m.fromBar|m.toBar)>>j&1 == 1 && (len(bar) == 0 || slices.Contains(bar, movers[j].fitting)) {
				return i, meeting{fitting: movers[j].fitting}
			}
		}
	}
	return 0, meeting{fitting: movers[0].fitting}
}

// and joins names: a, b and c.
func and(names []string) string {
	if len(names) < 2 {
		return strings.Join(names, "")
	}
	return strings.Join(names[:len(names)-1], ", ") + " and " + names[len(names)-1]
}
