package runs

import (
	"fmt"
	"strings"

	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

var (
	geometry = finding.Source{Text: "geometry: sum of straight legs", Sure: finding.Computed}
	practice = finding.Source{Text: "common practice, no source", Sure: finding.Practice}
	iso10133 = finding.Source{Text: "ISO 10133:2012, support of conductors, read in a public excerpt", Sure: finding.Read}
	filling  = finding.Source{Text: "40 % of the bore, the working value for conduit; outer diameters of cables and sizes of conduit from memory", Sure: finding.Memory}
	here     = working.Origin{Here: true}
)

func (r *Result) lengthWorking() (working.Working, bool) {
	total, n := r.total()
	w := working.Working{Code: "runs.length", Label: "All ways together", Formula: "L = Σ Lᵢ", Source: geometry}
	for i := range r.Ways {
		if l := &r.Ways[i]; len(l.At) > 1 {
			w.Lines = append(w.Lines, working.Line{Label: l.ID, Value: l.Length, Unit: "mm", From: working.Origin{Figure: "runs.way." + l.ID + ".length"}})
		}
	}
	w.Lines = append(w.Lines, working.Line{Symbol: "L", Label: "together", Value: total, Unit: "mm", From: here})
	return w, n > 0
}

func (l *Led) pointer() string { return "/runs/" + l.ID }

// working of one of the figures of a way.
func (l *Led) working(code, what string) (working.Working, bool) {
	for _, f := range l.figures() {
		if f.Code == code {
			w := working.Working{Code: code, Label: f.Label}
			switch what {
			case "length":
				l.showLength(&w)
			case "supports":
				l.showSupports(&w)
			case "bore":
				l.showBore(&w)
			case "fill":
				l.showFill(&w)
			}
			return w, true
		}
	}
	return working.Working{}, false
}

func (l *Led) showLength(w *working.Working) {
	w.Formula, w.Source = "L = Σ √(Δx² + Δy² + Δz²)", geometry
	for i := 0; i+1 < len(l.At); i++ {
		a, b := l.At[i], l.At[i+1]
		w.Lines = append(w.Lines, working.Line{Symbol: fmt.Sprintf("L%d", i+1), Label: fmt.Sprintf("from corner %d to corner %d", i+1, i+2), Value: distance(a, b), Unit: "mm",
			Sum: fmt.Sprintf("√(%.0f² + %.0f² + %.0f²)", b[0]-a[0], b[1]-a[1], b[2]-a[2]), From: working.Origin{Pointer: l.pointer() + "/points"}})
	}
	for _, b := range l.Bends {
		w.Notes = append(w.Notes, fmt.Sprintf("At corner %d it turns by %.0f°; there is room for a bend of %.0f mm radius.", b.Corner+1, b.Turn, b.Radius))
	}
	w.Lines = append(w.Lines, working.Line{Symbol: "L", Label: "along the way", Value: l.Length, Unit: "mm", From: here})
}

func (l *Led) showSupports(w *working.Working) {
	w.Formula, w.Source = "n = ⌈L / s⌉ + 1", iso10133
	why := "450 mm at most"
	if l.Every == batteryHeldEvery {
		why = "300 mm for conductors of the battery"
	}
	w.Lines = []working.Line{
		{Symbol: "L", Label: "along the way", Value: l.Length, Unit: "mm", From: working.Origin{Figure: "runs.way." + l.ID + ".length"}},
		{Symbol: "s", Label: "how far apart it is held", Value: l.Every, Unit: "mm", From: working.Origin{Assumption: why}},
		{Symbol: "n", Label: "fixings, both ends held", Value: float64(l.Supports), Unit: "1", From: here},
	}
}

// showConductors are the outer diameters of what the way carries, and the area they take.
func (l *Led) showConductors(w *working.Working) {
	w.Source = filling
	for _, c := range l.Carries {
		about := working.Origin{Pointer: "/power/circuits/" + c.ID + "/cable"}
		if c.Source {
			about.Pointer = "/power/sources/" + c.ID + "/cable"
		}
		w.Lines = append(w.Lines, working.Line{Symbol: "d", Label: fmt.Sprintf("two conductors of %s, %g mm² each, outer diameter", c.ID, c.Section), Value: c.Diameter, Unit: "mm", From: about})
	}
	w.Lines = append(w.Lines, working.Line{Symbol: "A", Label: "area they take", Value: Area(l.conductors()), Unit: "mm2", From: here})
}

func (l *Led) showFill(w *working.Working) {
	w.Formula = "f = Σ (π d²/4) / (π b²/4)"
	l.showConductors(w)
	w.Lines = append(w.Lines, working.Line{Symbol: "b", Label: "bore", Value: l.Bore, Unit: "mm", From: working.Origin{Pointer: l.pointer() + "/bore"}},
		working.Line{Symbol: "f", Label: "how full it is", Value: 100 * l.Fill, Unit: "%", From: here})
}

func (l *Led) showBore(w *working.Working) {
	w.Formula = "b ≥ √(4 Σ (π d²/4) / (0.40 π))"
	l.showConductors(w)
	w.Lines = append(w.Lines, working.Line{Symbol: "b", Label: "least bore at 40 %", Value: BoreFor(l.conductors(), mostFull), Unit: "mm", From: here},
		working.Line{Label: "smallest on sale that has it: " + strings.Trim(strings.Join(strings.Fields(fmt.Sprint(bores)), ", "), "[]"), Value: l.Least, Unit: "mm", From: here})
}

func (r *Route) working() working.Working {
	long, _ := r.Length()
	w := working.Working{Code: r.Circuit.code(), Label: r.label(), Formula: "l = Σ lᵢ", Source: geometry}
	for _, s := range r.Steps {
		from := here
		switch {
		case s.Way != "":
			from = working.Origin{Pointer: "/runs/" + s.Way}
		case s.Assumed != "":
			from = working.Origin{Assumption: s.Assumed}
		}
		w.Lines = append(w.Lines, working.Line{Label: s.Words, Value: s.Length, Unit: "mm", From: from})
	}
	if r.Circuit.Written == nil {
		w.Lines = append(w.Lines, working.Line{Symbol: "l", Label: "to the farthest end", Value: long, Unit: "mm", From: here})
		return w
	}
	if r.Known {
		w.Lines = append(w.Lines, working.Line{Label: "followed on the drawing", Value: r.Reckoned, Unit: "mm", From: here})
	}
	w.Formula, w.Source = "as measured", finding.Source{Text: "measured by the builder", Sure: finding.Computed}
	w.Lines = append(w.Lines, working.Line{Symbol: "l", Label: "as measured, which wins", Value: long, Unit: "mm", From: working.Origin{Pointer: r.Circuit.Pointer() + "/route"}})
	return w
}
