package shell

import (
	"math"
	"strings"

	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

// lofted is the source of what is measured on the lofted surface.
var lofted = finding.Source{Text: "shape-preserving cubics through the readings (Fritsch and Butland 1984), integrated by Gauss and Legendre", Sure: finding.Computed}

// here marks a line of a working that follows from those above it.
var here = working.Origin{Here: true}

// Working shows how a figure came about; false for a code that is not the shell's.
func (b *Body) Working(code string) (working.Working, bool) {
	for _, f := range b.shown {
		if f.Code != code {
			continue
		}
		w := working.Working{Code: code, Label: f.Label, Source: lofted}
		w.Formula, w.Lines = b.steps(code)
		w.Lines = append(w.Lines, working.Line{Symbol: w.Formula[:1], Label: f.Label, Value: f.Value, Unit: f.Unit, From: here})
		if s := b.Spread(b.middle(), (b.Floor()+b.Eaves())/2); s > 0 {
			w.Notes = append(w.Notes, "half-breadths are good to about ± "+mm(math.Ceil(s))+", 95 times in 100")
		}
		return w, true
	}
	return working.Working{}, false
}

// steps are the formula of a figure and the lines before its last.
func (b *Body) steps(code string) (string, []working.Line) {
	read := b.origin()
	line := func(symbol, label string, v float64, unit string, from working.Origin) working.Line {
		return working.Line{Symbol: symbol, Label: label, Value: v, Unit: unit, From: from}
	}
	switch code {
	case "shell.length":
		return "L = x_rear − x_front", []working.Line{
			line("x_front", "first station", b.Start(), "mm", read), line("x_rear", "last station", b.End(), "mm", read)}
	case "shell.width":
		x, z := b.widest()
		return "B = 2 y(x, z)", []working.Line{
			line("x", "where it is widest, along", x, "mm", here), line("z", "where it is widest, up", z, "mm", here),
			line("y", "half-breadth there", b.Half(x, z), "mm", read)}
	case "shell.height":
		return "H = z_crown − z_floor", []working.Line{
			line("z_crown", "skin of the roof half way along", b.Roof(b.middle(), 0), "mm", read), line("z_floor", "crests of the load floor", b.Floor(), "mm", here)}
	case "shell.floor-area":
		a := b.Areas(Floor)
		return "A = ∫ 2 y dx − openings − arches", []working.Line{
			line("A_gross", "between the skins", a.Gross, "m2", read),
			line("A_open", "openings through the floor", a.Openings, "m2", b.openingsFrom()),
			line("A_arch", "under the wheel arches", a.Arches, "m2", b.archesFrom())}
	}
	gross := b.surface.Volume(b.Start(), b.End()) / 1e9
	return "V = ∫ A(x) dx − arches", []working.Line{
		line("V_gross", "inside the skin", gross, "m3", read), line("V_arch", "wheel arches", gross-b.Volume(), "m3", b.archesFrom())}
}

// origin is where the readings stand.
func (b *Body) origin() working.Origin {
	if b.Assumed {
		return working.Origin{Assumption: "an invented body of its kind, stretched to the six readings"}
	}
	return working.Origin{Pointer: "/shell/offsets"}
}

// archesFrom and openingsFrom are where these stand, if anybody wrote them down.
func (b *Body) archesFrom() working.Origin {
	ids := make([]string, len(b.arches))
	for i, a := range b.arches {
		ids[i] = a.ID
	}
	return written("/shell/arches", "wheel arches", ids)
}

func (b *Body) openingsFrom() working.Origin {
	ids := make([]string, len(b.openings))
	for i, o := range b.openings {
		ids[i] = o.ID
	}
	return written("/shell/openings", "openings", ids)
}

func written(pointer, what string, ids []string) working.Origin {
	switch {
	case len(ids) == 0:
		return working.Origin{Assumption: "no " + what + " are written down"}
	case strings.HasPrefix(ids[0], typicalID):
		return working.Origin{Assumption: "those of an invented body of its kind"}
	}
	return working.Origin{Pointer: pointer}
}
