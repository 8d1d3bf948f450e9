package sample

import (
	"tumblehome/draw"
	"tumblehome/draw/label"
)

// The three views of the sheet, all 1 : 20.
var (
	plan    = draw.View{Origin: draw.Pt(42, 86), Scale: 20}
	section = draw.View{Origin: draw.Pt(42, 254), Scale: 20, Up: true}
	cross   = draw.View{Origin: draw.Pt(340, 254), Scale: 20, Up: true}
)

// Sheet is a whole drawing sheet of a made-up van: plan above long section, cross-section
// beside, dimensions, rulers, flags, frame.
func Sheet() draw.Scene {
	frame := draw.Frame{Size: draw.A3, Heading: "What are we building?", Subheading: "the drawing, night, as planned",
		Cells: []draw.Cell{{Label: "build", Value: "Sample", Strong: true}, {Label: "cut at the third rib", Value: "1 : 20"}, {Label: "revision", Value: "214, 25 November"}}}
	s := draw.Scene{Size: draw.A3, Title: "A made-up van, as planned, at night",
		Description: "Plan above long section, cross-section beside."}
	s = s.With(frame.Group(),
		draw.Group{ID: "plan", Class: "view", Title: "plan", Marks: planMarks()},
		draw.Group{ID: "section", Class: "view", Title: "long section", Marks: sectionMarks()},
		draw.Group{ID: "cross", Class: "view", Title: "cross-section", Marks: append(CrossSection(cross), CrossDimensions(cross)...)},
	)
	s = s.With(draw.ScaleBar{At: draw.Pt(22, 279), Scale: 20, Metres: 2}.Marks()...)
	return s.With(flags(s)...)
}

func planMarks() []draw.Mark {
	v := plan
	body := draw.From(v.At(0, -905)).To(v.At(3200, -905)).Curve(v.At(3700, -900), v.At(3900, -850), v.At(4000, -790)).
		To(v.At(4000, 790)).Curve(v.At(3900, 850), v.At(3700, 900), v.At(3200, 905)).To(v.At(0, 905)).Close()
	inside := draw.From(v.At(30, -850)).To(v.At(3180, -850)).Curve(v.At(3650, -846), v.At(3840, -800), v.At(3945, -750)).
		To(v.At(3945, 750)).Curve(v.At(3840, 800), v.At(3650, 846), v.At(3180, 850)).To(v.At(30, 850)).Close()
	marks := []draw.Mark{
		draw.Area(draw.NoPen, draw.FillDeep, body.And(inside)),
		draw.Area(draw.PenFine, draw.FillPaper, inside),
		draw.Stroke(draw.PenCut, body),
		draw.Area(draw.NoPen, draw.FillWater, draw.Rectangle(v.Box(260, -915, 1150, 24))),
		draw.Lettering{Text: "sliding door", At: v.At(835, -800), Anchor: draw.Middle, Level: draw.Topline, Ink: draw.InkQuiet},
		draw.Stroke(draw.PenCentre, draw.Line(v.At(-60, 0), v.At(4080, 0))),
		fitting(v, "plan-drying", "drying", "", 1700, -840, 560, 480),
		fitting(v, "plan-left-bench", "left bench", "toilet · spare water", 2290, -840, 1340, 480),
		bed(v),
		fitting(v, "plan-galley", "galley", "hob · bowl · cool box", 60, 300, 1200, 540),
		draw.Hatch(draw.Rectangle(v.Box(2350, 640, 760, 200)), draw.HatchRising, 1.6),
	}
	marks = append(marks, draw.Ruler{Zero: v.At(0, -960), Along: draw.Horizontal, Metre: 50, To: 4}.Marks()...)
	below, _ := draw.Stack(v.At(0, 905).Y, true,
		draw.Chain{Stops: v.Points([2]float64{60, 850}, [2]float64{1260, 850}, [2]float64{1380, 850}, [2]float64{3280, 850}, [2]float64{3945, 750}),
			Texts: []string{"galley 1 200", "gap 120", "bed 1 900", "665"}, Ends: draw.Oblique},
		draw.Dimension(v.At(30, 850), v.At(3945, 750), draw.Horizontal, 0, "3 915 inside the lining"))
	marks = append(marks, draw.Dimensions(below...)...)
	return append(marks, draw.Dimension(v.At(3945, -750), v.At(3945, 750), draw.Vertical, v.At(4130, 0).X, "1 500").Marks()...)
}

func fitting(v draw.View, id, name, inside string, across, along, width, depth float64) draw.Group {
	r := v.Box(across, along, width, depth)
	return draw.Group{ID: id, Class: "fitting", Digest: "5c1d", Title: name, Data: map[string]string{"fitting": name}, Marks: []draw.Mark{
		draw.Area(draw.PenOutline, draw.FillTone, draw.Rounded(r, 0.8)),
	}}.With(draw.Caption(r, name, inside)...)
}

func bed(v draw.View) draw.Group {
	r := v.Box(1380, -300, 1900, 1140)
	g := draw.Group{ID: "plan-bed", Class: "fitting", Digest: "77", Title: "bed", Marks: []draw.Mark{draw.Area(draw.PenOutline, draw.FillPaper, draw.Rounded(r, 0.8))}}
	var slats draw.Path
	for u := 1430.0; u < 3260; u += 95 {
		slats = slats.And(draw.Rectangle(v.Box(u, -280, 45, 1100)))
	}
	return g.With(draw.Area(draw.NoPen, draw.FillTone, slats), person(v, 1490, -20, 1), person(v, 1490, 540, 0.9))
}

// person lies on the back with the head at a place, to scale.
func person(v draw.View, across, along, tall float64) draw.Group {
	at := func(u, w float64) draw.Point { return v.At(across+u*tall, along+w*tall) }
	body := draw.From(at(130, -150)).Curve(at(200, -240), at(330, -225), at(600, -190)).
		To(at(1640, -95)).Curve(at(1680, -40), at(1680, 40), at(1640, 95)).
		To(at(600, 190)).Curve(at(330, 225), at(200, 240), at(130, 150)).Curve(at(110, 80), at(110, -80), at(130, -150)).Close()
	return draw.Group{Class: "person", Marks: []draw.Mark{
		draw.Area(draw.PenPerson, draw.FillPaper, draw.Circle(at(0, 0), v.Length(95*tall))),
		draw.Area(draw.PenPerson, draw.FillPaper, body),
	}}
}

func sectionMarks() []draw.Mark {
	v := section
	body := draw.From(v.At(0, -40)).To(v.At(0, 1790)).Curve(v.At(900, 1890), v.At(2400, 1910), v.At(3300, 1880)).
		Curve(v.At(3800, 1860), v.At(3980, 1700), v.At(4000, 1500)).To(v.At(4000, -40)).Close()
	inside := draw.From(v.At(30, 0)).To(v.At(30, 1740)).Curve(v.At(900, 1838), v.At(2400, 1856), v.At(3290, 1826)).
		Curve(v.At(3740, 1806), v.At(3930, 1660), v.At(3945, 1480)).To(v.At(3945, 0)).Close()
	wheel := v.At(2730, 0)
	return append([]draw.Mark{
		draw.Area(draw.NoPen, draw.FillDeep, body.And(inside)),
		draw.Area(draw.PenFine, draw.FillPaper, inside),
		draw.Stroke(draw.PenCut, body),
		draw.Area(draw.NoPen, draw.FillWater, draw.Rectangle(v.Box(1600, 1905, 420, 50))),
		draw.Area(draw.NoPen, draw.FillWater, draw.Rectangle(v.Box(2150, 1905, 1150, 30))),
		draw.Lettering{Text: "fan", At: v.At(1810, 1985), Anchor: draw.Middle, Ink: draw.InkQuiet},
		draw.Lettering{Text: "panel 180 W", At: v.At(2725, 1985), Anchor: draw.Middle, Ink: draw.InkQuiet},
		fitting(v, "section-galley", "galley", "", 60, 0, 1200, 900),
		fitting(v, "section-locker", "over-locker", "", 1380, 1400, 1900, 340),
		draw.Group{ID: "section-cushion", Class: "fitting", Title: "cushion", Marks: []draw.Mark{
			draw.Area(draw.PenOutline, draw.FillWash, draw.Rounded(v.Box(1380, 400, 1900, 90), 1))}},
		fitting(v, "section-settle", "settle · battery · boots", "", 1380, 0, 1900, 400),
		draw.Hatch(draw.Rectangle(v.Box(2350, 0, 760, 130)), draw.HatchRising, 1.6),
		draw.Stroke(draw.PenHidden, draw.ArcOf(wheel, v.Length(340), 8, 172)),
	}, draw.Chain{Stops: v.Points([2]float64{1260, 0}, [2]float64{1260, 900}, [2]float64{1260, 1760}), Texts: []string{"900", "860"}, Along: draw.Vertical, At: v.At(1345, 0).X}.Marks()...)
}

// flags lays four margin notes about the drawing and ties them to their places.
func flags(s draw.Scene) []draw.Mark {
	notes := []draw.Flag{
		{ID: "flag-1", Severity: draw.Fault, Number: 1, Place: plan.At(1120, 380), Title: "Nothing holds the cool box when you brake", Href: "#note-1"},
		{ID: "flag-2", Severity: draw.Close, Number: 2, Place: section.At(2730, -120), Title: "Two rear tyres are nine years old", Href: "#note-2"},
		{ID: "flag-3", Severity: draw.Note, Number: 3, Place: plan.At(3300, -560), Title: "Toilet not decided", Href: "#note-3"},
		{ID: "flag-4", Severity: draw.Danger, Number: 4, Place: section.At(1700, 250), Title: "The battery cable has no fuse near the battery", Href: "#note-4"},
	}
	p := label.Problem{Bounds: draw.A3.Rect().Inset(14), Gap: 1, Obstacles: append(s.Letters(),
		plan.Box(-20, -980, 4060, 2280), section.Box(0, -40, 4000, 2080), cross.Box(-930, -40, 1860, 1940))}
	for _, f := range notes {
		p.Labels = append(p.Labels, label.Label{Place: f.Place, Width: draw.FlagSize, Height: draw.FlagSize, FromCentre: true, Reach: 3})
	}
	var out []draw.Mark
	for i, at := range label.Place(p) {
		notes[i].At = at.Box.Centre()
		out = append(out, notes[i].Group())
	}
	return out
}
