package sample

import "tumblehome/draw"

// Card is a card of everything the drawing model can lay down: pens, fills, inks, hatchings,
// severities, dimensions each way.
func Card() draw.Scene {
	f := draw.Frame{Size: draw.A4, Heading: "Pens, fills and inks", Subheading: "every name of the drawing office",
		Cells: []draw.Cell{{Label: "sheet", Value: "card"}, {Label: "scale", Value: "1 : 1"}}}
	s := draw.Scene{Size: draw.A4, Title: "Card of pens, fills and inks"}.With(f.Group())
	s = s.With(pens(draw.Pt(20, 34))...).With(fills(draw.Pt(98, 32))...).With(inks(draw.Pt(160, 34))...)
	s = s.With(hatches(draw.Pt(160, 82))...).With(severities(draw.Pt(205, 40))...).With(measures()...)
	return s.With(draw.CheckLine{From: draw.Pt(20, 190), Along: draw.Horizontal}.Marks()...)
}

func pens(at draw.Point) []draw.Mark {
	var out []draw.Mark
	for i, p := range draw.Pens {
		y := at.Y + float64(i)*6.2
		out = append(out, draw.Stroke(p, draw.Line(draw.Pt(at.X, y), draw.Pt(at.X+40, y))), name(string(p), draw.Pt(at.X+44, y)))
	}
	return out
}

func fills(at draw.Point) []draw.Mark {
	var out []draw.Mark
	for i, f := range draw.Fills {
		y := at.Y + float64(i)*8.8
		out = append(out, draw.Area(draw.PenFine, f, draw.Rounded(draw.Box(at.X, y, 24, 6.4), 1)), name(string(f), draw.Pt(at.X+28, y+3.2)))
	}
	return out
}

func name(text string, at draw.Point) draw.Lettering {
	return draw.Lettering{Text: text, At: at, Level: draw.Midline}
}

func inks(at draw.Point) []draw.Mark {
	out := []draw.Mark{draw.Lettering{Text: "plain ink 0123456789", At: at, Size: draw.SizePlain}}
	for i, ink := range draw.Inks[:len(draw.Inks)-1] {
		out = append(out, draw.Lettering{Text: string(ink) + " 1 680 mm", At: at.Add(draw.Pt(0, float64(i+1)*6)), Size: 3, Ink: ink})
	}
	return out
}

func hatches(at draw.Point) []draw.Mark {
	var out []draw.Mark
	for i, h := range []draw.Hatching{draw.HatchRising, draw.HatchFalling, draw.HatchCross, draw.HatchZigzag, draw.HatchGrain} {
		r := draw.Rectangle(draw.Box(at.X+float64(i)*22, at.Y, 18, 14)).And(draw.Circle(draw.Pt(at.X+float64(i)*22+9, at.Y+7), 3))
		out = append(out, draw.Area(draw.PenOutline, draw.FillTone, r), draw.Hatch(r, h, 1.8))
	}
	return out
}

func severities(at draw.Point) []draw.Mark {
	var out []draw.Mark
	for i, s := range []draw.Severity{draw.Danger, draw.Fault, draw.Close, draw.Note} {
		mark := draw.Pt(at.X+float64(i)*17, at.Y)
		f := draw.Flag{ID: "card-" + string(s), Severity: s, Number: 9 + i, At: mark, Place: mark.Add(draw.Pt(-4, 16)), Title: string(s)}
		out = append(out, f.Group(), draw.Lettering{Text: string(s), At: mark.Add(draw.Pt(-4, 21)), Anchor: draw.Middle, Level: draw.Midline})
	}
	return out
}

// measures are dimensions every way about a crooked board.
func measures() []draw.Mark {
	a, b, c, d := draw.Pt(172, 118), draw.Pt(232, 118), draw.Pt(262, 148), draw.Pt(172, 148)
	board := draw.Polygon(a, b, c, d)
	below, _ := draw.Stack(148, true, draw.Dimension(d, c, draw.Horizontal, 0, "900"),
		draw.Chain{Stops: []draw.Point{d, draw.Pt(187, 148), draw.Pt(190, 148), draw.Pt(194, 148), draw.Pt(232, 148), c}, Texts: []string{"150", "30", "40", "380", "300"}})
	left, _ := draw.Stack(172, false, draw.Dimension(a, d, draw.Vertical, 0, "300"))
	slant := draw.Dimension(b, c, draw.Aligned, 8, "424")
	above := draw.Dimension(a, draw.Pt(178, 118), draw.Horizontal, 111, "60 from the edge")
	marks := []draw.Mark{draw.Area(draw.PenOutline, draw.FillDeep, board), draw.Hatch(board, draw.HatchGrain, 2.5), draw.Stroke(draw.PenCut, board)}
	return append(marks, draw.Dimensions(append(append(below, left...), slant, above)...)...)
}
