package shell

import (
	"math"

	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

// figures are the figures of the bare body. The finished headroom is the lining's.
func (b *Body) figures() []working.Figure {
	state := working.Current
	if b.Assumed {
		state = working.Assumed
	}
	figure := func(code, label string, value float64, unit string) working.Figure {
		return working.Figure{Code: code, Label: label, Value: value, Unit: unit, State: state}
	}
	return []working.Figure{
		figure("shell.length", "Bare length inside", b.Length(), "mm"),
		figure("shell.width", "Bare width between the skins at its widest", b.width(), "mm"),
		figure("shell.height", "Bare height in the middle", b.height(), "mm"),
		figure("shell.floor-area", "Bare floor between the wheel arches and skins", b.Areas(Floor).Net, "m2"),
		figure("shell.volume", "Bare room inside", b.Volume(), "m3"),
	}
}

// widest is where the body is widest, looked for every 100 along and 20 up: the
// sides bulge so little that this finds the width to a millimetre.
func (b *Body) widest() (x, z float64) {
	best := -1.0
	for at := b.Start(); at <= b.End(); at += 100 {
		for up := b.Floor(); up <= b.Eaves(); up += 20 {
			if y := b.Half(at, up); y > best {
				x, z, best = at, up, y
			}
		}
	}
	return x, z
}

func (b *Body) width() float64 { x, z := b.widest(); return 2 * b.Half(x, z) }

// middle is half way along the body.
func (b *Body) middle() float64 { return (b.Start() + b.End()) / 2 }

func (b *Body) height() float64 { return b.Roof(b.middle(), 0) - b.Floor() }

// lofted is the source of what is measured on the lofted surface.
var lofted = finding.Source{Text: "shape-preserving cubics through the readings (Fritsch and Butland 1984), integrated by Gauss and Legendre", Sure: finding.Computed}

// Working shows how a figure came about; false for a code that is not the shell's.
func (b *Body) Working(code string) (working.Working, bool) {
	here := working.Origin{Here: true}
	var w working.Working
	switch code {
	case "shell.length":
		w = working.Working{Formula: "L = x_rear − x_front", Lines: []working.Line{
			{Symbol: "x_front", Label: "first station", Value: b.Start(), Unit: "mm", From: b.origin()},
			{Symbol: "x_rear", Label: "last station", Value: b.End(), Unit: "mm", From: b.origin()},
			{Symbol: "L", Label: "length", Value: b.Length(), Unit: "mm", From: here}}}
	case "shell.width":
		x, z := b.widest()
		w = working.Working{Formula: "B = 2 y(x, z)", Lines: []working.Line{
			{Symbol: "x", Label: "where it is widest, along", Value: x, Unit: "mm", From: here},
			{Symbol: "z", Label: "where it is widest, up", Value: z, Unit: "mm", From: here},
			{Symbol: "y", Label: "half-breadth there", Value: b.Half(x, z), Unit: "mm", From: b.origin()},
			{Symbol: "B", Label: "width", Value: b.width(), Unit: "mm", From: here}}}
	case "shell.height":
		w = working.Working{Formula: "H = z_crown − z_floor", Lines: []working.Line{
			{Symbol: "z_crown", Label: "skin of the roof half way along", Value: b.Roof(b.middle(), 0), Unit: "mm", From: b.origin()},
			{Symbol: "z_floor", Label: "crests of the load floor", Value: b.Floor(), Unit: "mm", From: here},
			{Symbol: "H", Label: "height", Value: b.height(), Unit: "mm", From: here}}}
	case "shell.floor-area":
		a := b.Areas(Floor)
		w = working.Working{Formula: "A = ∫ 2 y dx − openings − arches", Lines: []working.Line{
			{Symbol: "A_gross", Label: "between the skins", Value: a.Gross, Unit: "m2", From: b.origin()},
			{Symbol: "A_open", Label: "openings through the floor", Value: a.Openings, Unit: "m2", From: working.Origin{Pointer: "/shell/openings"}},
			{Symbol: "A_arch", Label: "under the wheel arches", Value: a.Arches, Unit: "m2", From: working.Origin{Pointer: "/shell/arches"}},
			{Symbol: "A", Label: "floor", Value: a.Net, Unit: "m2", From: here}}}
	case "shell.volume":
		gross := b.surface.Volume(b.Start(), b.End()) / 1e9
		w = working.Working{Formula: "V = ∫ A(x) dx − arches", Lines: []working.Line{
			{Symbol: "V_gross", Label: "inside the skin", Value: gross, Unit: "m3", From: b.origin()},
			{Symbol: "V_arch", Label: "wheel arches", Value: gross - b.Volume(), Unit: "m3", From: working.Origin{Pointer: "/shell/arches"}},
			{Symbol: "V", Label: "room", Value: b.Volume(), Unit: "m3", From: here}}}
	default:
		return w, false
	}
	for _, f := range b.figures() {
		if f.Code == code {
			w.Code, w.Label, w.Source = code, f.Label, lofted
		}
	}
	x := b.middle()
	if s := b.Spread(x, (b.Floor()+b.Eaves())/2); s > 0 {
		w.Notes = append(w.Notes, "half-breadths are good to about ± "+mm(math.Ceil(s))+", 95 times in 100")
	}
	return w, true
}

// origin is where the readings stand.
func (b *Body) origin() working.Origin {
	if b.Assumed {
		return working.Origin{Assumption: "a typical body scaled to the quick readings"}
	}
	return working.Origin{Pointer: "/shell/offsets"}
}
