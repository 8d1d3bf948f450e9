package fit

import (
	"encoding/json"
	"fmt"
	"math"
	"slices"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// comesOut tells of bought and found things that stand in something closed and are too large for each of its doors and lids: they can only be built
// in. What stands behind drawers is left out, since how high each drawer is says only the joinery.
func (w *worker) comesOut() {
	for i := range w.in.Fittings {
		f, host := &w.in.Fittings[i], w.carriers[i]
		s := w.resting(i)
		if s == nil || host < 0 || !f.In || f.Make != "" || f.Gives > 0 || f.Later {
			continue
		}
		b := s.Box
		sides := [3]float64{b.MaxX - b.MinX, b.MaxY - b.MinY, b.MaxZ - b.MinZ}
		short, known := w.tooLargeFor(host, sides)
		if known && short > touching {
			w.reportComesOut(i, host, short, w.fewerDoors(host, sides))
		}
	}
}

// tooLargeFor is by how much a thing is too large for the largest of what opens of a host; not known if nothing does, or if it has drawers.
func (w *worker) tooLargeFor(host int, sides [3]float64) (short float64, known bool) {
	short = math.Inf(1)
	for p := range w.in.Parts {
		part := &w.in.Parts[p]
		if part.Fitting != host {
			continue
		}
		if part.Kind == "drawer" {
			return 0, false
		}
		b := part.Opened(0, 0).Bounds()
		leaf := []float64{b.MaxX - b.MinX, b.MaxY - b.MinY, b.MaxZ - b.MinZ}
		slices.Sort(leaf)
		frame := 2 * w.in.Fittings[host].Board
		short = min(short, tooLarge(sides, leaf[2]-frame, leaf[1]-frame))
	}
	return short, !math.IsInf(short, 1)
}

// tooLarge is by how much a thing of three sides must shrink to go through a hole, whichever of its sides goes first.
func tooLarge(sides [3]float64, long, wide float64) float64 {
	best := math.Inf(1)
	for first := range sides {
		p, q := sides[(first+1)%3], sides[(first+2)%3]
		best = min(best, max(0, oversize(max(p, q), min(p, q), max(0, long), max(0, wide))))
	}
	return best
}

// fewerDoors proposes as many doors less, each the wider for it, as let a thing out; nothing where not all that opens is a door.
func (w *worker) fewerDoors(host int, sides [3]float64) []finding.Proposal {
	var leaf solid.Bounds
	n, frame := 0, 2*w.in.Fittings[host].Board
	for p := range w.in.Parts {
		part := &w.in.Parts[p]
		if part.Fitting == host && part.Kind != "door" {
			return nil
		}
		if part.Fitting == host {
			leaf = part.Opened(0, 0).Bounds()
			n++
		}
	}
	for less := n - 1; less > 0; less-- {
		wide, high := max(leaf.MaxX-leaf.MinX, leaf.MaxY-leaf.MinY)*float64(n)/float64(less), leaf.MaxZ-leaf.MinZ
		if tooLarge(sides, max(wide, high)-frame, min(wide, high)-frame) > touching {
			continue
		}
		patch, err := json.Marshal(map[string]any{"fittings": map[string]any{w.in.Fittings[host].ID: map[string]any{"fronts": map[string]int{"doors": less}}}})
		if err != nil {
			return nil
		}
		word := "one wider door"
		if less > 1 {
			word = fmt.Sprintf("%d wider doors", less)
		}
		return []finding.Proposal{{Words: fmt.Sprintf("give %s %s", w.name(host), word), Patch: patch}}
	}
	return nil
}

func (w *worker) reportComesOut(i, host int, short float64, proposals []finding.Proposal) {
	w.find(finding.Finding{
		Code: "fit.comes-out", Severity: finding.Note, About: []string{pointer("fittings", w.in.Fittings[i].ID), pointer("fittings", w.in.Fittings[host].ID)},
		Title:    fmt.Sprintf("%s does not come out of %s by its doors or lid", w.name(i), w.name(host)),
		Words:    fmt.Sprintf("It is %s too large for the largest of them. It must be built in, and whoever mends it takes the furniture apart. Make the door or lid larger, or leave one side to be screwed off.", about(short)),
		Measured: mm(short), Limit: mm(0), Source: indoorsSource, Proposals: proposals,
	})
}
