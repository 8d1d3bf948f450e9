package reckon

import (
	"tumblehome/trade/cables"
	"tumblehome/trade/takeoff"
)

// cableLines are the lines of the cables, each halfway between its ends, by the metre as cut. Where the document names fittings that stand for cables in mass
// and money there are none: nothing is counted twice. Fuses and crimps are too light, and too cheap beside their sets, to have lines.
func (w *stages) cableLines(r *cables.Result) []takeoff.Line {
	if w.doc.Power == nil || len(w.doc.Power.CountedIn) > 0 {
		return nil
	}
	var lines []takeoff.Line
	for _, c := range r.Cables {
		row := c.Row()
		mass, known := w.rows.UnitMass(row)
		if !known {
			continue
		}
		g := spreadOf(mass)
		metres := float64(c.Cores()) * c.Cut / 1000
		g.mean, g.dev, g.key = g.mean*metres, g.dev*metres, "cables" // one maker's cable is heavy in every size
		line := g.line(c.About, row, "cable", w.halfway(c), false)
		line.Net, line.Unit, line.Guess = metres, "m", c.Length.Known != cables.Measured
		lines = append(lines, line)
	}
	return lines
}

// halfway is between the fittings at both ends, at the one that has a place, or else in the middle of the living space.
func (w *stages) halfway(c cables.Cable) [3]float64 {
	var sum [3]float64
	ends := 0.0
	for _, e := range []cables.End{c.From, c.To} {
		s := w.places.Find(e.Fitting)
		if s == nil || !s.Placed() {
			continue
		}
		ends++
		for axis := range sum {
			sum[axis] += s.Middle[axis]
		}
	}
	if ends == 0 {
		return [3]float64{(w.room.Front() + w.room.Rear()) / 2, 0, w.room.Floor() + looseHeight}
	}
	for axis := range sum {
		sum[axis] /= ends
	}
	return sum
}
