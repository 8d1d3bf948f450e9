package warmth

import (
	"fmt"
	"math"

	"tumblehome/trade/finding"
)

// Limits, and where each is from.
const (
	staleCO2   = 2000.0 // ppm: beyond it air counts as stale (indoor-air guide values 1000 and 2000, from memory)
	badCO2     = 2600.0 // ppm: sleep disturbed, felt the next day (news item on a bedroom study)
	mostCO2    = 5000.0 // ppm: 8 h limit at work
	runs       = 200.0  // g/m2: water runs off smooth surfaces (ISO 13788, from memory)
	beads      = 50.0   // g/m2: beads that wet what touches them; common practice, no source
	cupful     = 120.0  // g on all glass and bare steel, a small cup: more than a cloth takes up; common practice, no source
	gathers    = 200.0  // g/m2 behind a lining, likewise
	nearGather = 150.0  // g/m2 that are near it
	leastBare  = 1.5    // m2 of bare steel of which nothing is said: wheel arches are seldom covered
	dry        = 20.0   // g/m2 left after a summer that count as dry, a film of a fiftieth of a millimetre
	tooBig     = 5.0    // times what the coldest night wants: a diesel heater soots when it seldom runs warm; common practice, no source
	nearKeep   = 0.5    // K below what is kept that nobody notices
	nearlyAll  = 0.9    // of a free area asked
	dryClothes = 0.9    // of the water gone by morning
)

var (
	en721     = finding.Source{Text: "EN 721 as quoted by an inspection body (leaflet 740, read in a forum); check the current standard", Sure: finding.Read}
	practice  = finding.Source{Text: "common practice, no source", Sure: finding.Practice}
	airGuides = finding.Source{Text: "guide values for indoor air: 2000 ppm stale, 2600 ppm disturbed sleep (press on a bedroom study), 5000 ppm the limit for a day's work", Sure: finding.Read}
	runoff    = finding.Source{Text: "ISO 13788: beyond 200 g/m2 water runs off smooth surfaces (from memory); below, common practice", Sure: finding.Memory}
)

const fumes = "Never sleep with a flame alight that has no flue. Fit a carbon monoxide alarm; it is no leave to do so."

// Findings are what the builder should know.
func (r Result) Findings() []finding.Finding {
	var out []finding.Finding
	put := func(f finding.Finding, ok bool) {
		if ok {
			out = append(out, f)
		}
	}
	put(r.unflued())
	put(r.air())
	if !r.in.PlaceAssumed { // of nights that nobody has planned yet nothing is said but what can hurt
		put(r.stale())
		put(r.cold())
		put(r.large())
		put(r.glass())
		put(r.wetSurface())
		put(r.gathering())
		put(r.clothes())
	}
	finding.Sort(out)
	return out
}

func (r *Result) unflued() (finding.Finding, bool) {
	h := r.in.Heater
	if h == nil || h.Flued {
		return finding.Finding{}, false
	}
	return finding.Finding{Code: "warmth.heater.unflued", Severity: finding.Danger, About: []string{h.About}, Title: "The heater has no flue",
		Words: "All its fumes and its water stay in the van: carbon monoxide kills sleepers without waking them. It is left out of the nights reckoned here.", Source: practice,
		Caution: fumes + " Have a heater with sealed combustion fitted, its intake and exhaust led through the floor, by the book of its maker."}, true
}

// air judges the openings that nobody can close.
func (r *Result) air() (finding.Finding, bool) {
	f, total := r.Fixed, r.in.total()
	about := []string{r.in.AirAbout}
	want := f.WantHigh + f.WantLow
	words := fmt.Sprintf("Fixed openings: %.0f cm2 high up and %.0f cm2 low down; %.0f and %.0f are asked%s.", f.High, f.Low, f.WantHigh, f.WantLow,
		map[bool]string{true: " where something burns in the room", false: ""}[f.Burner])
	out := finding.Finding{Code: "warmth.air.fixed", About: about, Source: en721, Measured: &finding.Measure{Value: total, Unit: "cm2"}, Limit: &finding.Measure{Value: want, Unit: "cm2"}}
	least := math.Min(f.High/f.WantHigh, f.Low/f.WantLow)
	switch {
	case len(r.in.Sleepers) == 0 && !f.Burner:
		return out, false
	case !r.in.AirSaid:
		return finding.Finding{Code: "warmth.air.unsaid", Severity: finding.Note, About: about, Title: "Nothing says yet how air gets in at night",
			Words:  fmt.Sprintf("Who sleeps in a van needs openings that nobody can close: here about %.0f cm2 in the roof and %.0f cm2 near the floor. Write down which stay open.", f.WantHigh, f.WantLow),
			Source: en721, Caution: burnerCaution(f.Burner)}, true
	case least >= 1:
		return out, false
	case total == 0:
		out.Severity, out.Title = finding.Fault, "No opening stays open at night"
		if f.Burner {
			out.Severity = finding.Danger
		}
	case f.Burner && least < nearlyAll:
		out.Severity, out.Title = finding.Fault, "Too little fixed air for a flame in the van"
	case f.Burner || total < nearlyAll*want:
		out.Severity, out.Title = finding.Close, "Fixed air is a little short"
	default:
		out.Severity, out.Title = finding.Note, "Fixed air is enough but ill placed"
		words += " Air changes by itself only between an opening low down and one high up."
	}
	out.Words, out.Caution = words, burnerCaution(f.Burner)
	return out, true
}

func burnerCaution(burner bool) string {
	if burner {
		return fumes
	}
	return ""
}

func (r *Result) stale() (finding.Finding, bool) {
	n := r.usual()
	out := finding.Finding{Code: "warmth.co2", About: []string{r.in.AirAbout}, Title: "The air grows stale at night", Source: airGuides,
		Words: fmt.Sprintf("Carbon dioxide rises to about %.0f ppm: %.0f m3 of fresh air an hour for %s. Heads ache from it, and windows run with water. Open more, low and high.",
			round(n.CO2, 100), n.Ventilate, sleepers(len(r.in.Sleepers))),
		Measured: &finding.Measure{Value: n.CO2, Unit: "ppm"}, Limit: &finding.Measure{Value: staleCO2, Unit: "ppm"},
		Caution: "This says nothing of carbon monoxide, which comes from flames and engines: that wants an alarm."}
	switch {
	case !r.in.AirSaid || n.CO2 <= staleCO2:
		return out, false
	case n.CO2 > mostCO2:
		out.Severity = finding.Fault
	case n.CO2 > badCO2:
		out.Severity = finding.Close
	}
	return out, true
}

func sleepers(n int) string {
	if n == 1 {
		return "one sleeper"
	}
	return fmt.Sprintf("%d sleepers", n)
}

func round(v, to float64) float64 { return math.Round(v/to) * to }

// cold judges whether what shall be kept can be kept.
func (r *Result) cold() (finding.Finding, bool) {
	n, worst := r.usual(), r.coldest()
	if r.in.Keep == nil || len(r.in.Sleepers) == 0 {
		return finding.Finding{}, false
	}
	keep := *r.in.Keep
	out := finding.Finding{Source: balance, Limit: &finding.Measure{Value: keep, Unit: "°C"}, Measured: &finding.Measure{Value: n.Low, Unit: "°C"}}
	month := months[n.Month-1]
	if r.in.burning() == nil {
		out.Code, out.Severity, out.About, out.Title = "warmth.heater.none", finding.Close, []string{r.in.KeepAbout}, "Nothing keeps the van as warm at night as is wanted"
		out.Words = fmt.Sprintf("On a usual night in %s it falls to %.0f °C inside; %.0f are wanted and no heater that may burn at night is fitted.", month, n.Low, keep)
		return out, n.Low < keep-nearKeep
	}
	out.Code, out.About, out.Title = "warmth.heater.small", []string{r.in.Heater.About, r.in.KeepAbout}, "The heater is too small"
	switch {
	case n.Low < keep-nearKeep:
		out.Severity = finding.Fault
		out.Words = fmt.Sprintf("On a usual night in %s it falls to %.0f °C inside, with the heater at full power.", month, n.Low)
	case worst.Low < keep-nearKeep:
		out.Severity, out.Title, out.Measured.Value = finding.Close, "On the coldest nights the heater is too small", worst.Low
		out.Words = fmt.Sprintf("On one night in ten in %s it falls to %.0f °C inside or lower, with the heater at full power.", months[worst.Month-1], worst.Low)
	default:
		return out, false
	}
	out.Caution = "A larger heater needs a flue as well, and enough battery to start."
	return out, true
}

// large says that a heater would seldom run warm. Its smallest step counts for nothing here: makers do not all tell it.
func (r *Result) large() (finding.Finding, bool) {
	h, n := r.in.burning(), r.coldest()
	if h == nil {
		return finding.Finding{}, false
	}
	wants := 0.0
	for _, hour := range n.Hours {
		if hour.Hour >= 22 || hour.Hour < 7 {
			wants = math.Max(wants, hour.Heater)
		}
	}
	if wants*tooBig >= h.Power {
		return finding.Finding{}, false
	}
	return finding.Finding{Code: "warmth.heater.large", Severity: finding.Note, About: []string{h.About}, Title: "The heater is far larger than the van needs",
		Words:    fmt.Sprintf("Even one of the coldest nights wants no more than about %.0f W of its %.0f W. A heater that burns fuel soots up when it seldom runs warm: let it run hard for a while now and then.", round(wants, 50), h.Power),
		Measured: &finding.Measure{Value: h.Power, Unit: "W"}, Limit: &finding.Measure{Value: math.Round(wants * tooBig), Unit: "W"}, Source: practice}, true
}

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
		Words: fmt.Sprintf("By morning about %.0f g of water lie on the glass%s on a usual night in %s. Wipe it off and carry it out; what dries in the van comes back the next night.", round(grams, 10),
			alsoBare(smooth-grams), months[n.Month-1]),
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
			Title:    "Water settles on " + what,
			Words:    fmt.Sprintf("It stays below the dew point at night: in %s about %.0f g/m2 settle there by morning. Steel goes through the insulation; a strip over the ribs, or vents, keep it dry.", months[n.Month-1], round(each, 10)),
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
		Words: fmt.Sprintf("At %s up to %.0f g/m2 lie on the steel by the end of %s", f.Bay, math.Max(1, round(w.Most, 10)), months[w.MostIn-1]) +
			map[bool]string{true: ", and the summer does not dry it all.", false: "; the summer dries it."}[w.Left > dry] +
			" Glued closed-cell sheet on the steel, or a membrane on the warm side with its edges taped, keeps it out. A gap at the edges defeats a membrane."}
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
	return finding.Finding{Code: "warmth.clothes.wet", Severity: finding.Note, About: []string{r.in.WetAbout}, Title: "Wet clothes are not dry by morning",
		Words: fmt.Sprintf("Of %.1f kg of water in them about %.1f kg is gone by eight on a usual night in %s, and it went into the air of the van. Warmth and air together dry; either alone does not.",
			r.in.Wet, n.Dried, months[n.Month-1]), Measured: &finding.Measure{Value: n.Dried, Unit: "kg"}, Limit: &finding.Measure{Value: r.in.Wet, Unit: "kg"}, Source: balance}, true
}
