package lining

import (
	"fmt"
	"math"

	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

// groups are the parts that masses are given for, each with its surfaces.
var groups = [...]struct {
	code, label string
	surfaces    []string
}{
	{"floor", "Floor", []string{Floor}},
	{"sides", "Sides", []string{Left, Right}},
	{"roof", "Roof", []string{Roof}},
	{"doors", "Doors", []string{Doors}},
	{"front", "Partition", []string{Front}},
}

// figures are the figures of the lining, the finished headroom among them.
func (r *Result) figures() []working.Figure {
	room := r.Room
	figures := []working.Figure{
		{Code: "shell.headroom", Label: "Finished headroom in the middle", Value: room.Headroom(room.Middle(), 0), Unit: "mm"},
		{Code: "lining.floor-thickness", Label: "Floor lining at its thickest", Value: r.thickness(Floor), Unit: "mm"},
		{Code: "lining.side-thickness", Label: "Side lining from the skin at its thickest", Value: r.thickness("sides"), Unit: "mm"},
		{Code: "lining.roof-thickness", Label: "Roof lining from the skin at its thickest", Value: r.thickness(Roof), Unit: "mm"},
		{Code: "lining.floor-area", Label: "Finished floor", Value: room.FloorArea(), Unit: "m2"},
		{Code: "lining.volume", Label: "Room inside the lining", Value: room.Volume(), Unit: "m3"},
		{Code: "lining.mass", Label: "Lining in all", Value: r.mass(""), Unit: "kg"},
	}
	for _, g := range groups {
		figures = append(figures, working.Figure{Code: "lining.mass-" + g.code, Label: g.label + " lining", Value: r.mass(g.code), Unit: "kg"})
	}
	for i := range figures {
		figures[i].State = working.Current
		if r.laid.in.Assumed {
			figures[i].State = working.Assumed
		}
	}
	return figures
}

// thickness is the greatest depth from the skin of a group of surfaces.
func (r *Result) thickness(group string) float64 {
	t := 0.0
	for _, g := range groups {
		for _, s := range g.surfaces {
			if g.code == group {
				t = math.Max(t, thickest(r.laid.fields[s]))
			}
		}
	}
	return t
}

// mass is the mass of a group of surfaces, of all for "".
func (r *Result) mass(group string) float64 {
	sum := 0.0
	for _, g := range groups {
		if group == "" || g.code == group {
			sum += r.massOf(g.surfaces)
		}
	}
	return sum
}

func (r *Result) massOf(surfaces []string) float64 {
	sum := 0.0
	for _, s := range surfaces {
		for i := range r.Lines {
			if r.Lines[i].Surface == s {
				sum += r.Lines[i].Mass
			}
		}
	}
	return sum
}

// here marks a line of a working that follows from those above it.
var here = working.Origin{Here: true}

var summed = finding.Source{Text: "sum over the build-up", Sure: finding.Computed}

// Working shows how a figure came about; false for a code that is not the lining's.
func (r Result) Working(code string) (working.Working, bool) {
	w, ok := working.Working{Source: summed}, false
	for _, f := range r.Figures {
		if f.Code == code {
			w.Code, w.Label, ok = code, f.Label, true
			w.Formula, w.Lines = r.steps(code)
			w.Lines = append(w.Lines, working.Line{Label: f.Label, Value: f.Value, Unit: f.Unit, From: here})
		}
	}
	return w, ok
}

// steps are the formula of a figure and the lines before its last.
func (r *Result) steps(code string) (string, []working.Line) {
	room, b := r.Room, r.laid.in.Body
	x := room.Middle()
	line := func(symbol, label string, v float64, unit string, from working.Origin) working.Line {
		return working.Line{Symbol: symbol, Label: label, Value: v, Unit: unit, From: from}
	}
	height := working.Origin{Figure: "shell.height"}
	switch code {
	case "shell.headroom":
		return "h = z_skin − t_roof − z_floor", []working.Line{
			line("z_skin", fmt.Sprintf("skin of the roof in the middle, at x %.0f", x), b.RoofInside(x, 0, 0), "mm", height),
			line("t_roof", "bow and lining under it", b.RoofInside(x, 0, 0)-room.Roof(x, 0), "mm", working.Origin{Figure: "lining.roof-thickness"}),
			line("z_floor", "finished floor", room.Floor(), "mm", working.Origin{Figure: "lining.floor-thickness"})}
	case "lining.floor-thickness":
		return r.stack(Floor)
	case "lining.side-thickness":
		return r.stack("sides")
	case "lining.roof-thickness":
		return r.stack(Roof)
	case "lining.floor-area":
		return "A = ∫ (y_right − y_left) dx", []working.Line{
			line("x_1", "finished front", room.Front(), "mm", here), line("x_2", "finished rear", room.Rear(), "mm", here)}
	case "lining.volume":
		return "V = ∫ A(x) dx", []working.Line{
			line("x_1", "finished front", room.Front(), "mm", here), line("x_2", "finished rear", room.Rear(), "mm", here),
			line("A", "section in the middle", room.SectionArea(x), "m2", here)}
	case "lining.mass":
		var lines []working.Line
		for _, g := range groups {
			lines = append(lines, line("", g.label, r.mass(g.code), "kg", working.Origin{Figure: "lining.mass-" + g.code}))
		}
		return "m = Σ m_surface", lines
	}
	return "m = Σ A · m″ (areas) + Σ L · m′ (battens)", r.materials(code)
}
