package sample

import "tumblehome/draw"

// half is the right half of a made-up van body, looking forward: millimetres from the middle
// and above the floor, as a starting point and cubic curves.
type half struct {
	start  [2]float64
	curves [][3][2]float64
}

var skin = half{[2]float64{860, -40}, [][3][2]float64{
	{{905, 300}, {925, 600}, {920, 850}},
	{{912, 1200}, {850, 1600}, {800, 1740}},
	{{770, 1820}, {640, 1850}, {500, 1870}},
	{{330, 1890}, {160, 1898}, {0, 1900}},
}}

var lining = half{[2]float64{805, 0}, [][3][2]float64{
	{{850, 300}, {872, 600}, {868, 850}},
	{{860, 1190}, {802, 1580}, {756, 1700}},
	{{730, 1768}, {620, 1796}, {490, 1816}},
	{{320, 1836}, {160, 1844}, {0, 1846}},
}}

// side is the half drawn from the floor to the middle of the roof, to the right (1) or the
// left (-1).
func (h half) side(v draw.View, hand float64) draw.Path {
	p := draw.From(v.At(hand*h.start[0], h.start[1]))
	for _, c := range h.curves {
		p = p.Curve(v.At(hand*c[0][0], c[0][1]), v.At(hand*c[1][0], c[1][1]), v.At(hand*c[2][0], c[2][1]))
	}
	return p
}

// whole is the closed outline, up on the left, over the roof and down on the right.
func (h half) whole(v draw.View) draw.Path {
	p := h.side(v, -1)
	right := append([][3][2]float64{}, h.curves...)
	for i := len(right) - 1; i >= 0; i-- {
		end := h.start
		if i > 0 {
			end = right[i-1][2]
		}
		c := right[i]
		p = p.Curve(v.At(c[1][0], c[1][1]), v.At(c[0][0], c[0][1]), v.At(end[0], end[1]))
	}
	return p.Close()
}

// CrossSection is a van cut across at a rib: skin, wool, lining, an over-locker, two benches.
func CrossSection(v draw.View) []draw.Mark {
	body := []draw.Mark{
		draw.Area(draw.NoPen, draw.FillDeep, skin.whole(v)),
		wool(v, -1), wool(v, 1),
		draw.Area(draw.PenFine, draw.FillPaper, lining.whole(v)),
		draw.Stroke(draw.PenCut, skin.whole(v)),
		draw.Stroke(draw.PenCentre, draw.Line(v.At(0, -60), v.At(0, 1985))),
	}
	return []draw.Mark{
		draw.Group{ID: "cross-body", Class: "body", Title: "body, cut at the third rib", Marks: body},
		draw.Group{ID: "cross-locker", Class: "fitting", Digest: "3f", Title: "over-locker", Marks: []draw.Mark{
			draw.Area(draw.PenOutline, draw.FillTone, draw.Polygon(v.Points([2]float64{460, 1795}, [2]float64{460, 1480}, [2]float64{800, 1480}, [2]float64{735, 1735}, [2]float64{640, 1790})...)),
		}},
		bench(v, "cross-galley", "galley", -795, 520, 900),
		bench(v, "cross-settle", "settle", 300, 500, 400),
		draw.Group{ID: "cross-cushion", Class: "fitting", Title: "cushion", Marks: []draw.Mark{
			draw.Area(draw.PenOutline, draw.FillWash, draw.Rounded(v.Box(300, 400, 520, 90), 1)),
		}},
	}
}

func wool(v draw.View, hand float64) draw.Shape {
	return draw.Quilt(skin.side(v, hand).Flatten(0.05)[0], lining.side(v, hand).Flatten(0.05)[0], 2.4)
}

func bench(v draw.View, id, name string, from, wide, tall float64) draw.Group {
	r := v.Box(from, 0, wide, tall)
	return draw.Group{ID: id, Class: "fitting", Digest: "1a", Title: name, Marks: []draw.Mark{
		draw.Area(draw.PenOutline, draw.FillTone, draw.Rectangle(r)),
	}}.With(draw.Caption(r, name, "")...)
}

// CrossDimensions are the dimensions of the cross-section.
func CrossDimensions(v draw.View) []draw.Mark {
	below, _ := draw.Stack(v.At(0, -40).Y, true,
		draw.Dimension(v.At(-805, 0), v.At(805, 0), draw.Horizontal, 0, "1 610 between the linings"),
		draw.Chain{Stops: v.Points([2]float64{-795, 0}, [2]float64{-275, 0}, [2]float64{300, 0}, [2]float64{800, 0}), Texts: []string{"520", "575", "500"}, Ends: draw.Oblique},
	)
	headroom := draw.Dimension(v.At(0, 0), v.At(0, 1846), draw.Vertical, v.At(1020, 0).X, "headroom 1 846")
	headroom.Stops = []draw.Point{v.At(860, 0), v.At(756, 1846)}
	return draw.Dimensions(append(below, headroom)...)
}
