package draw

import "strconv"

// ScaleBar is a bar of metres in alternate halves, with the scale beside it.
type ScaleBar struct {
	At     Point   // its left end, on the bar's upper edge
	Scale  float64 // 20 for 1 : 20
	Metres int     // 0 means one
}

// Marks draws the bar.
func (b ScaleBar) Marks() []Mark {
	if !(b.Scale > 0) {
		return nil
	}
	half, tall := 500/b.Scale, 1.2
	n := 2 * max(b.Metres, 1)
	whole := Box(b.At.X, b.At.Y, half*float64(n), tall)
	dark := Shape{Fill: FillInk}
	var texts []Mark
	for i := 0; i <= n; i++ {
		x := b.At.X + half*float64(i)
		if i < n && i%2 == 0 {
			dark.Path = dark.Path.And(Rectangle(Box(x, b.At.Y, half, tall)))
		}
		if i%2 == 0 {
			texts = append(texts, Lettering{Text: strconv.Itoa(i / 2), At: Pt(x, b.At.Y-1), Anchor: Middle, Ink: InkQuiet})
		}
	}
	texts = append(texts, Lettering{Text: "m   1 : " + number(b.Scale), At: Pt(whole.Max.X+3, b.At.Y-1), Ink: InkQuiet})
	return append([]Mark{Area(PenEdge, FillPaper, Rectangle(whole)), dark}, texts...)
}

// CheckLine is a line of exactly 100 mm by which the builder sees whether the printer has kept
// the size. Every sheet to be used at full size has one each way.
type CheckLine struct {
	From  Point // its left or lower end
	Along Direction
}

// Marks draws the line.
func (c CheckLine) Marks() []Mark {
	to := c.From.Add(c.Along.axes(Point{}, Point{}).along.Mul(100))
	d := Dimension(c.From, to, c.Along, c.From.Y, "this line must measure 100 mm: print at 100 %")
	if c.Along == Vertical {
		d.At = c.From.X
	}
	d.Ends = Oblique
	return d.Marks()
}
