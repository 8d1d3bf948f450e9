package weight

import (
	"fmt"
	"strings"

	"tumblehome/trade/finding"
)

// licenceTells says whether the licence limit speaks for the gross limit: both are one figure and the van is near it.
func (r *Result) licenceTells() bool {
	left := r.in.Licence.Float() - r.governing(whole).Total.Mean
	g := r.in.Plate.Gross
	return r.in.Licence > 0 && left >= 0 && left <= licenceNear && g != nil && *g >= r.in.Licence
}

// licence minds the mass that the usual driving licence ends at.
func (r *Result) licence() []finding.Finding {
	worst := r.governing(whole)
	left := r.in.Licence.Float() - worst.Total.Mean
	if r.in.Licence == 0 || left < 0 || left > licenceNear {
		return nil
	}
	return []finding.Finding{{
		Code: "weight.licence", Severity: finding.Close, About: []string{worst.pointer(), "/vehicle/plate/gross"},
		Title: fmt.Sprintf("%s kg from the licence limit: %s", kg(left), worst.name()),
		Words: fmt.Sprintf("%s of %s kg; one in five it passes %s. Scales read to 10 or 20 kg, so this is as good as at the limit.",
			kg(worst.Total.Mean), kg(r.in.Licence.Float()), kg(worst.Total.P80())),
		Measured: &finding.Measure{Value: worst.Total.Mean, Unit: "kg"},
		Limit:    &finding.Measure{Value: r.in.Licence.Float(), Unit: "kg"},
		Source:   licenceSource,
	}}
}

func (r *Result) lightFront() []finding.Finding {
	c := r.Cases[r.governs.light]
	share := c.frontShare()
	if share >= leastFrontShare || !(c.Total.Mean > 0) {
		return nil
	}
	return []finding.Finding{{
		Code: "weight.front-axle.light", Severity: finding.Close, About: []string{c.pointer(), "/vehicle/plate/front"},
		Title:    fmt.Sprintf("only %.0f %% of the van stands on its front axle: %s", share, c.name()),
		Words:    fmt.Sprintf("%s of %s kg. A light front axle steers and brakes badly, above all uphill and in the wet.", kg(c.Front.Mean), kg(c.Total.Mean)),
		Measured: &finding.Measure{Value: share, Unit: "%"},
		Limit:    &finding.Measure{Value: leastFrontShare, Unit: "%"},
		Source:   frontSource,
	}}
}

func (r *Result) lopsided() []finding.Finding {
	c := r.Cases[r.governs.side]
	share := r.sideShare(c.On)
	if abs(share) <= mostSideShare {
		return nil
	}
	side := "right"
	if share < 0 {
		side = "left"
	}
	return []finding.Finding{{
		Code: "weight.side", Severity: finding.Note, About: []string{c.pointer(), "/fittings"},
		Title: fmt.Sprintf("the %s side carries %s kg more than the other: %s", side, kg(abs(share)*c.Total.Mean/100), c.name()),
		Words: fmt.Sprintf("%.1f %% of the van's mass; up to %.0f %% nobody notices. It leans, and the springs and tyres of that side wear first. The bare van is taken to be even: weigh each wheel to know.",
			abs(share), mostSideShare),
		Measured: &finding.Measure{Value: abs(share), Unit: "%"},
		Limit:    &finding.Measure{Value: mostSideShare, Unit: "%"},
		Source:   sideSource,
	}}
}

func (r *Result) overRoof() []finding.Finding {
	mass, lines := r.roof()
	limit := r.in.RoofLimit.Float()
	if limit == 0 || mass <= limit {
		return nil
	}
	about := []string{}
	for _, l := range lines {
		about = append(about, l.Pointer)
	}
	return []finding.Finding{{
		Code: "weight.roof", Severity: finding.Fault, About: append(about, "/vehicle/roof-limit"),
		Title:    fmt.Sprintf("the roof carries %s kg too much", kg(mass-limit)),
		Words:    fmt.Sprintf("%s of %s kg. It makes the van lean in bends, and the roof's bows may work loose.", kg(mass), kg(limit)),
		Measured: &finding.Measure{Value: mass, Unit: "kg"},
		Limit:    &finding.Measure{Value: limit, Unit: "kg"},
		Source:   roofSource,
	}}
}

// weightless names what stands in the van and weighs nothing in the sums, since nobody said how heavy it is.
func (r *Result) weightless() []finding.Finding {
	var about, names []string
	for _, l := range r.in.Lines {
		if l.Group == "fitting" && l.Guess && l.Mass == 0 {
			about = append(about, l.Pointer)
			names = append(names, thingName(l.Pointer))
		}
	}
	if len(about) == 0 {
		return nil
	}
	title := fmt.Sprintf("nobody knows how heavy the %s is", names[0])
	if len(names) > 1 {
		title = fmt.Sprintf("nobody knows how heavy %d things are", len(names))
	}
	return []finding.Finding{{
		Code: "weight.mass-unknown", Severity: finding.Note, About: about, Title: title,
		Words:    fmt.Sprintf("Nothing is counted for it until its mass is written down: %s. A guess with a spread is better than nothing.", strings.Join(names, ", ")),
		Measured: &finding.Measure{Value: float64(len(about)), Unit: "1"},
		Source:   finding.Source{Text: "habit of weight lists: no line without a mass", Sure: finding.Practice},
	}}
}

// neverWeighed says how far off every load may be while the bare van is only a guess.
func (r *Result) neverWeighed() []finding.Finding {
	if r.base >= 0 {
		return nil
	}
	worst := r.governing(whole)
	more := worst.Total.P80() - worst.Total.Mean
	return []finding.Finding{{
		Code: "weight.never-weighed", Severity: finding.Note, About: []string{"/vehicle"},
		Title: fmt.Sprintf("nobody has weighed this van: the total may be %s kg more", kg(more)),
		Words: fmt.Sprintf("The bare van is guessed from its size: %s kg. Laden it is likely %s kg, and one in five it passes %s: %s. Every load on an axle is as unsure.",
			kg(r.Bare.Total.Mean), kg(worst.Total.Mean), kg(worst.Total.P80()), worst.name()),
		Measured: &finding.Measure{Value: more, Unit: "kg"},
		Source:   finding.Source{Text: "bare masses of stripped vans by the volume of their box", Sure: finding.Memory},
	}}
}

// surprise is from how many standard deviations on a weighing contradicts the stated spreads. At three, the usual limit of control
// charts, one honest ticket in 370 would be called wrong; at two it would be one in twenty.
const surprise = 3

func (r *Result) weighingFindings() []finding.Finding {
	var out []finding.Finding
	for _, o := range r.offs {
		if abs(o.by) <= surprise*o.dev {
			continue
		}
		w := r.in.Weighings[o.weighing]
		word := "more"
		if o.by < 0 {
			word = "less"
		}
		read := w.Front.Float() + w.Rear.Float()
		out = append(out, finding.Finding{
			Code: "weight.weighing.off", Severity: finding.Close, About: []string{w.pointer(), r.in.Weighings[max(r.base, 0)].pointer()},
			Title: fmt.Sprintf("the scale read %s kg %s than the guesses allow", kg(abs(o.by)), word),
			Words: fmt.Sprintf("Expected %s kg, give or take %s; read %s on %s. Something that was aboard is missing from the list, or a guess is far off. The estimates have been moved as far as their spreads allow.",
				kg(o.estimate.mean), kg(o.dev), kg(read), w.Date),
			Measured: &finding.Measure{Value: read, Unit: "kg"},
			Limit:    &finding.Measure{Value: o.estimate.mean, Unit: "kg"},
			Source:   conditioned,
		})
	}
	return out
}
