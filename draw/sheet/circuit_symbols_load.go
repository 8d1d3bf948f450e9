package sheet

import (
	"tumblehome/draw"
	"tumblehome/trade/cables"
)

// loadHalf is how far above and below its middle the leads of a load end.
const loadHalf = 1.5 * module

// loadSymbol is a load by its kind.
func loadSymbol(at draw.Point, kind cables.Appliance) []draw.Mark {
	switch kind {
	case cables.Light:
		return lampSymbol(at)
	case cables.Pump:
		return motorSymbol(at, true)
	case cables.Fan:
		return motorSymbol(at, false)
	case cables.Fridge:
		return append([]draw.Mark{rectangle(at, 3, 3)}, snow(at)...)
	case cables.Heater:
		return heaterSymbol(at)
	case cables.Socket:
		return socketSymbol(at)
	case cables.Inverter:
		return converterSymbol(at, "~")
	}
	return []draw.Mark{rectangle(at, 1.5, 3)}
}

// leadsTo draws the leads of a symbol that is smaller than others.
func leadsTo(at draw.Point, half float64) []draw.Mark {
	return strokes(seg(at, 0, -1.5, 0, -half), seg(at, 0, half, 0, 1.5))
}

// lampSymbol (08-10-01): a circle with a diagonal cross.
func lampSymbol(at draw.Point) []draw.Mark {
	const d = 0.7071
	out := []draw.Mark{draw.Area(penSymbol, draw.FillPaper, draw.Circle(at, module))}
	out = append(out, strokes(seg(at, -d, -d, d, d), seg(at, -d, d, d, -d))...)
	return append(out, leadsTo(at, 1)...)
}

// motorSymbol: a circle with M over the sign of direct current; of a pump with a triangle on the outlet side (ISO 14617).
func motorSymbol(at draw.Point, pump bool) []draw.Mark {
	out := []draw.Mark{draw.Area(penSymbol, draw.FillPaper, draw.Circle(at, 1.5*module))}
	out = append(out, draw.Lettering{Text: "M", At: at.Add(draw.Pt(0, -0.3*module)), Anchor: draw.Middle, Level: draw.Midline, Size: plainSize, Strong: true})
	out = append(out, direct(at.Add(draw.Pt(0, 0.75*module)))...)
	if pump {
		out = append(out, draw.Area(draw.NoPen, draw.FillInk, draw.Polygon(at.Add(draw.Pt(-1.5*module, 0)), at.Add(draw.Pt(-0.95*module, -0.35*module)), at.Add(draw.Pt(-0.95*module, 0.35*module)))))
	}
	return out
}

// snow is the sign of cold: a star of three lines.
func snow(at draw.Point) []draw.Mark {
	return strokes(seg(at, -0.9, 0, 0.9, 0), seg(at, -0.45, -0.78, 0.45, 0.78), seg(at, -0.45, 0.78, 0.45, -0.78))
}

// heaterSymbol: a rectangle divided across.
func heaterSymbol(at draw.Point) []draw.Mark {
	return append([]draw.Mark{rectangle(at, 1.2, 3)}, strokes(seg(at, -0.6, -0.75, 0.6, -0.75), seg(at, -0.6, 0, 0.6, 0), seg(at, -0.6, 0.75, 0.6, 0.75))...)
}

// socketSymbol: a half circle open to the lead, with the sign of direct current.
func socketSymbol(at draw.Point) []draw.Mark {
	top := at.Add(draw.Pt(0, -0.75*module))
	out := []draw.Mark{draw.Stroke(penSymbol, draw.From(top.Add(draw.Pt(-1.5*module, 0))).Arc(1.5*module, false, top.Add(draw.Pt(1.5*module, 0))))}
	out = append(out, strokes(seg(at, 0, -1.5, 0, -0.75), seg(at, -0.75, -0.75, 0.75, -0.75), seg(at, 0, 0.75, 0, 1.5))...)
	return append(out, direct(at.Add(draw.Pt(0, -0.05*module)))...)
}

// relaySymbol: the coil and the contact of a relay that joins two batteries, in one box.
func relaySymbol(at draw.Point) []draw.Mark {
	out := []draw.Mark{rectangle(at, 3, 3)}
	out = append(out, strokes(seg(at, 0, -1.5, 0, -0.7), seg(at, 0, 0.7, 0.8, -0.6), seg(at, 0, 0.7, 0, 1.5))...)
	return append(out, draw.Area(penSymbol, draw.FillPaper, draw.Rectangle(draw.Box(at.X-1.25*module, at.Y-0.35*module, 0.7*module, 0.7*module))))
}
