package warmth

import (
	"fmt"
	"math"

	"tumblehome/build"
	"tumblehome/trade/finding"
)

// glassArea is all glass of the room's air, m2.
func (r *Result) glassArea() (area float64, about string) {
	most := 0.0
	for _, g := range r.in.Glass {
		area += g.Area
		if g.Area > most && !g.Double || about == "" {
			most, about = g.Area, g.About
		}
	}
	if r.in.open() {
		area += cabGlass
	}
	return area, about
}

func (r *Result) glass() (finding.Finding, bool) {
	area, about := r.glassArea()
	n := r.usual()
	grams, smooth := 1000*n.Water[atGlass], 1000*(n.Water[atGlass]+n.Water[atBare])
	if area <= 0 || about == "" {
		return finding.Finding{}, false
	}
	each := grams / area
	out := finding.Finding{Code: "warmth.glass.runs", Severity: finding.Note, About: []string{about}, Title: "Glass is wet in the morning",
		Words: fmt.Sprintf("At %s some %.0f g of water lie on the glass%s on a usual night in %s, the most at once. Wipe it off and carry it out; what dries in the van comes back the next night.",
			n.WettestHour(), round(grams, 10), alsoBare(smooth-grams), months[n.Month-1]),
		Measured: &finding.Measure{Value: each, Unit: "g/m2"}, Limit: &finding.Measure{Value: runs, Unit: "g/m2"}, Source: runoff}
	much := smooth >= cupful && grams >= cupful/3
	if much && each < runs {
		out.Measured, out.Limit = &finding.Measure{Value: smooth, Unit: "g"}, &finding.Measure{Value: cupful, Unit: "g"}
	}
	switch {
	case each >= runs || much:
		out.Severity, out.Title = finding.Close, "Glass runs with water at night"
	case each < beads:
		return out, false
	}
	return out, true
}

func alsoBare(grams float64) string {
	if grams < 10 {
		return ""
	}
	return fmt.Sprintf(", and %.0f g on bare steel,", round(grams, 10))
}

// wetSurface looks at steel and linings that are colder than the dew point for long.
func (r *Result) wetSurface() (finding.Finding, bool) {
	n := r.usual()
	best := finding.Finding{}
	most := 0.0
	for _, k := range []int{atBare, atRibs} {
		area, l := r.coldestOf(k)
		if area <= 0 || l == nil || k == atBare && area < leastBare {
			continue
		}
		each := 1000 * n.Water[k] / area
		if each < beads || each <= most {
			continue
		}
		most = each
		what := "bare steel"
		if k == atRibs {
			what = "the lining over the ribs"
		}
		best = finding.Finding{Code: "warmth.surface.wet", Severity: finding.Note, About: []string{l.Field.About}, Source: runoff,
			Title: "Water settles on " + what,
			Words: fmt.Sprintf("It stays below the dew point at night, the temperature at which air lets go of its water: in %s about %.0f g/m² lie there at %s. Steel goes through the insulation; a strip over the ribs, or vents, keep it dry.",
				months[n.Month-1], round(each, 10), n.WettestHour()),
			Measured: &finding.Measure{Value: each, Unit: "g/m2"}, Limit: &finding.Measure{Value: runs, Unit: "g/m2"}}
		if each >= runs {
			best.Severity = finding.Close
		}
	}
	return best, most > 0
}

// coldestOf is the area of a lump and the field to blame: the coldest rib, the largest bare field.
func (r *Result) coldestOf(lump int) (area float64, worst *Lost) {
	for i := range r.Lost {
		l := &r.Lost[i]
		bare := len(l.Field.Courses) == 0
		switch {
		case l.Field.Group == Front || l.Field.Area <= 0 || bare != (lump == atBare):
		case bare:
			area += l.Field.Area
			if worst == nil || l.Field.Area > worst.Field.Area {
				worst = l
			}
		case l.Strip > 0:
			area += l.Strip
			if worst == nil || l.Factor < worst.Factor {
				worst = l
			}
		}
	}
	return area, worst
}

func (r *Result) gathering() (finding.Finding, bool) {
	w := r.worst()
	if w.Field < 0 || w.Most < nearGather && w.Left <= dry {
		return finding.Finding{}, false
	}
	f := &r.in.Fields[w.Field]
	out := finding.Finding{Code: "warmth.winter.water", About: []string{f.About}, Source: iso13788, Measured: &finding.Measure{Value: w.Most, Unit: "g/m2"},
		Limit: &finding.Measure{Value: gathers, Unit: "g/m2"}, Title: "Water gathers behind the lining over the winter",
		Words: fmt.Sprintf("Worst place: %s. There up to %.0f g/m² lie on the steel by the end of %s", build.BayWords(f.Bay), math.Max(1, round(w.Most, 10)), months[w.MostIn-1]) +
			map[bool]string{true: ", and the summer does not dry it all.", false: "; the summer dries it."}[w.Left > dry] +
			" Glued closed-cell sheet on the steel, or a membrane on the warm side with its edges taped, holds most of it back; airing the van while it is lived in helps as much. A gap at the edges defeats a membrane."}
	switch {
	case w.Left > dry:
		out.Severity = finding.Fault
	case w.Most > gathers:
		out.Severity = finding.Close
	}
	return out, true
}

func (r *Result) clothes() (finding.Finding, bool) {
	n := r.usual()
	if r.in.Wet <= 0 || n.Dried >= dryClothes*r.in.Wet {
		return finding.Finding{}, false
	}
	out := finding.Finding{Code: "warmth.clothes.wet", Severity: finding.Note, About: []string{r.in.WetAbout}, Title: "Wet clothes are not dry by morning",
		Words: fmt.Sprintf("Of %.0f g of water in them about %.0f g are gone by eight on a usual night in %s, and went into the air of the van. Warmth and air together dry; either alone does not.",
			1000*r.in.Wet, round(1000*n.Dried, 10), months[n.Month-1]), Measured: &finding.Measure{Value: 1000 * n.dried(), Unit: "g"}, Limit: &finding.Measure{Value: 1000 * r.in.Wet, Unit: "g"}, Source: balance}
	if grams := round(-1000*n.Dried, 10); grams >= 0 {
		out.Title = "Wet clothes get no drier overnight"
		out.Words = fmt.Sprintf("On a usual night in %s nothing of the %.0f g of water in them is gone by eight", months[n.Month-1], 1000*r.in.Wet)
		if grams > 0 {
			out.Words += fmt.Sprintf("; about %.0f g more settle on them, as they are colder than the damp air", grams)
		}
		out.Words += ". Warmth and air together dry; either alone does not."
	}
	return out, true
}
