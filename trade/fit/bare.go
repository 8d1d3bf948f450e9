package fit

import (
	"fmt"
	"math"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

const (
	bareShare = 0.2 // of a bed that may be without a cushion: its edges
	cushionOn = 30  // how far a cushion may lie above or below what it is laid on [mm]
)

// bedBare tells of a bed on which cushions lie, but not where all sleep: what is pulled out is slats until something is laid on it. A bed without any
// cushion is one whose mattress nobody has planned yet, and is not told of.
func (w *worker) bedBare(b berth) {
	bed := b.mode.Standings[b.bed].Box
	whole := solid.Box(bed).Outline
	area, covered := (bed.MaxX-bed.MinX)*(bed.MaxY-bed.MinY), 0.0
	for i := range b.mode.Standings {
		s := &b.mode.Standings[i]
		if !w.cushions(i, b.bed, s.Box, bed) {
			continue
		}
		covered += solid.SharedArea(whole, solid.Box(s.Box).Outline)
	}
	bare := 1 - covered/area
	if g := w.in.Fittings[b.bed].Gives; g > 0 || covered == 0 || bare <= bareShare {
		return
	}
	w.find(finding.Finding{
		Code: "fit.bed.bare", Severity: finding.Close, Mode: b.mode.Name, About: []string{pointer("fittings", w.in.Fittings[b.bed].ID)},
		Title:    fmt.Sprintf("Part of %s has no cushion on it", w.name(b.bed)),
		Words:    fmt.Sprintf("Cushions lie on about %.0f %% of it; on the rest one lies on bare boards. Let cushions unfold, or lay a second one there for the night.", 100*(1-bare)),
		Measured: &finding.Measure{Value: 100 * bare, Unit: "%"}, Limit: &finding.Measure{Value: 100 * bareShare, Unit: "%"},
		Source: finding.Source{Text: "the places and sizes of this build", Sure: finding.Computed},
	})
}

// cushions says whether a fitting is a cushion on a bed: one it carries, or one that is laid there.
func (w *worker) cushions(i, bed int, box, on solid.Bounds) bool {
	f := w.in.Fittings[i]
	return f.Rests && f.Gives > 0 && f.Gives < 1 && f.Where == "" && (w.carries(bed, i) || math.Abs(box.MinZ-on.MaxZ) <= cushionOn)
}
