package fit

import (
	"fmt"
	"math"
	"slices"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

// How far a thing may reach over the edge of what it lies or stands on: a cushion so far [mm], what is hard so far or this share of its length that
// way, whichever is more. Common practice, no source.
const (
	hangsOut   = 50
	hangsShare = 0.2
)

// hangsOver notes a cushion, or a hard thing that was bought or found or is a box, that reaches over the edge of what carries it where nothing else is
// under it. Boards that reach over are made so.
func (w *worker) hangsOver(i, host int, a, b *Standing) {
	f := &w.in.Fittings[i]
	cushion := f.Rests && f.Gives > 0
	if !cushion && (f.Gives > 0 || f.Make != "" && f.Make != "box") {
		return
	}
	by, edge := 0.0, solid.Front
	for side, out := range [4]float64{b.Box.MinX - a.Box.MinX, a.Box.MaxX - b.Box.MaxX, b.Box.MinY - a.Box.MinY, a.Box.MaxY - b.Box.MaxY} {
		if out > by {
			by, edge = out, solid.Side(side)
		}
	}
	limit, level := float64(hangsOut), float64(cushionOn)
	verb, words := "hangs", "Nothing is under it there: it gives way under who sits or lies on that edge. Lay it back, or make it as large as what it lies on."
	if !cushion {
		long := [2]float64{a.Box.MaxX - a.Box.MinX, a.Box.MaxY - a.Box.MinY}[edge/2]
		limit, level = max(hangsOut, hangsShare*long), touching
		verb, words = "reaches", "Nothing is under it there: a push on that end tips it. Move it back, or make what it stands on longer."
	}
	if by <= limit || slices.Contains(a.Scribed, edge) || w.heldAt(i, host, a, edge, by, level) {
		return
	}
	out := finding.Finding{
		Code: "fit.upon", Severity: finding.Note, About: []string{pointer("fittings", f.ID), pointer("fittings", w.in.Fittings[host].ID)},
		Title:    fmt.Sprintf("%s %s %s over %s at the %s", w.name(i), verb, about(by), w.name(host), [4]string{"front", "rear", "left", "right"}[edge]),
		Words:    words,
		Measured: mm(by), Limit: mm(limit), Source: finding.Source{Text: "the places and sizes of this build; how far a thing may reach over is common practice, no source", Sure: finding.Practice},
	}
	out.Proposals = w.tried(out, (*worker).uponIt, moves(i, edge^1, by))
	w.find(out)
}

// heldAt says whether something else, level with what carries a thing within so much, is under the middle of the part that reaches over an edge.
func (w *worker) heldAt(i, host int, s *Standing, edge solid.Side, by, level float64) bool {
	b, d := s.Box, solid.Directions[edge]
	x, y := (b.MinX+b.MaxX)/2+d[0]*(b.MaxX-b.MinX-by)/2, (b.MinY+b.MaxY)/2+d[1]*(b.MaxY-b.MinY-by)/2
	for j := range w.in.Fittings {
		o := w.resting(j)
		if j == i || j == host || o == nil || w.carries(i, j) {
			continue
		}
		if math.Abs(o.Box.MaxZ-b.MinZ) <= level && within(o.Box, solid.Point{X: x, Y: y}) {
			return true
		}
	}
	return false
}
