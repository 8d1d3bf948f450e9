package sheet

import (
	"tumblehome/draw"
)

// Symbols of IEC 60617, from memory, in a module of 2.5 mm, standing in a wire that comes from above. Each gives its marks about a middle
// and, where it is not the same for all, how far above and below the middle its leads end.

const penSymbol = draw.PenCable

func strokes(lines ...[2]draw.Point) []draw.Mark {
	var p draw.Path
	for _, l := range lines {
		p = p.And(draw.Line(l[0], l[1]))
	}
	return []draw.Mark{draw.Stroke(penSymbol, p)}
}

// seg is a line from one place about a middle to another, in modules.
func seg(at draw.Point, x0, y0, x1, y1 float64) [2]draw.Point {
	return [2]draw.Point{at.Add(draw.Pt(x0*module, y0*module)), at.Add(draw.Pt(x1*module, y1*module))}
}

// rectangle about a middle, in modules.
func rectangle(at draw.Point, wide, high float64) draw.Mark {
	return draw.Area(penSymbol, draw.FillPaper, draw.Rectangle(draw.Box(at.X-wide*module/2, at.Y-high*module/2, wide*module, high*module)))
}

// fuseSymbol (07-21-01): a rectangle with the lead drawn through it.
func fuseSymbol(at draw.Point) []draw.Mark {
	return append([]draw.Mark{rectangle(at, 0.7, 2)}, strokes(seg(at, 0, -1, 0, 1))...)
}

// batterySymbol (06-15-01): the long line is the positive pole, here above; two cells with a dashed line between.
func batterySymbol(at draw.Point) []draw.Mark {
	out := strokes(seg(at, -1, -0.75, 1, -0.75), seg(at, -0.5, -0.25, 0.5, -0.25), seg(at, -1, 0.25, 1, 0.25), seg(at, -0.5, 0.75, 0.5, 0.75))
	out = append(out, draw.Stroke(draw.PenHidden, draw.Line(at.Add(draw.Pt(0, -0.25*module)), at.Add(draw.Pt(0, 0.25*module)))))
	return append(out, draw.Lettering{Text: "+", At: at.Add(draw.Pt(-1.5*module, -1.1*module)), Anchor: draw.Middle, Level: draw.Midline, Size: plainSize})
}

const batteryHalf = 0.75 * module

// isolatorSymbol: a make contact, drawn open, with a short bar across its fixed end.
func isolatorSymbol(at draw.Point) []draw.Mark {
	return strokes(seg(at, 0, -2, 0, -1), seg(at, -0.35, -1, 0.35, -1), seg(at, 0, 1, -1, -0.73), seg(at, 0, 1, 0, 2))
}

// shuntSymbol: a resistor with two taps.
func shuntSymbol(at draw.Point) []draw.Mark {
	return append([]draw.Mark{rectangle(at, 0.7, 2)}, strokes(seg(at, -0.35, -0.6, -1.1, -0.6), seg(at, -0.35, 0.6, -1.1, 0.6))...)
}

// bodySymbol (02-15-04): the frame or chassis.
func bodySymbol(at draw.Point) []draw.Mark {
	return strokes(seg(at, -1, 0, 1, 0), seg(at, -0.8, 0, -1.2, 0.6), seg(at, 0, 0, -0.4, 0.6), seg(at, 0.8, 0, 0.4, 0.6))
}

// direct is the sign of direct current: a line over a dashed one.
func direct(at draw.Point) []draw.Mark {
	return strokes(seg(at, -0.5, -0.18, 0.5, -0.18), seg(at, -0.5, 0.18, -0.25, 0.18), seg(at, -0.12, 0.18, 0.12, 0.18), seg(at, 0.25, 0.18, 0.5, 0.18))
}

// converterSymbol (06-14-02): a square with a diagonal, the kind of current in each half; a regulator says how it regulates.
func converterSymbol(at draw.Point, above string) []draw.Mark {
	out := append([]draw.Mark{rectangle(at, 3, 3)}, strokes(seg(at, -1.5, 1.5, 1.5, -1.5))...)
	out = append(out, direct(at.Add(draw.Pt(-0.75*module, -0.75*module)))...)
	if above == "~" {
		from := at.Add(draw.Pt(0.25*module, 0.75*module))
		wave := draw.From(from).Arc(0.27*module, true, from.Add(draw.Pt(0.5*module, 0))).Arc(0.27*module, false, from.Add(draw.Pt(module, 0)))
		return append(out, draw.Stroke(penSymbol, wave))
	}
	return append(out, direct(at.Add(draw.Pt(0.75*module, 0.75*module)))...)
}

const converterHalf = 1.5 * module

// panelSymbol: a generator of light: a box with a triangle, two arrows pointing at it.
func panelSymbol(at draw.Point) []draw.Mark {
	out := []draw.Mark{rectangle(at, 3, 2)}
	out = append(out, draw.Stroke(penSymbol, draw.Polyline(at.Add(draw.Pt(-1.5*module, -module)), at.Add(draw.Pt(0, -0.1*module)), at.Add(draw.Pt(1.5*module, -module)))))
	for _, dy := range []float64{-0.9, -0.1} {
		tip := at.Add(draw.Pt(-1.6*module, dy*module+0.4*module))
		out = append(out, strokes(seg(tip, -1.2, -0.9, 0, 0))...)
		out = append(out, draw.Area(draw.NoPen, draw.FillInk, draw.Polygon(tip, tip.Add(draw.Pt(-0.5*module, -0.12*module)), tip.Add(draw.Pt(-0.22*module, -0.46*module)))))
	}
	return out
}

const panelHalf = module
