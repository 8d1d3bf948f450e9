package weight

import (
	"fmt"
	"slices"
	"strings"

	"tumblehome/quantity"
	"tumblehome/trade/finding"
)

const (
	closeShare      = 0.95 // of a limit, from which a load is close to it; common practice
	leastFrontShare = 30.0 // % of the mass on the front axle
	mostSideShare   = 4.0  // % of the mass, right against left
	licenceNear     = 25.0 // kg below the licence limit
)

var (
	plateSource   = finding.Source{Text: "the maker's plate; all its limits bind separately", Sure: finding.Read}
	frontSource   = finding.Source{Text: "type approval of light vehicles: front axle not under 30 % of the laden mass", Sure: finding.Memory}
	sideSource    = finding.Source{Text: "a bodywork guide: 3 % between the wheels of an axle for trucks; 4 % for light vans", Sure: finding.Memory}
	licenceSource = finding.Source{Text: "driving licence category B: plated mass up to 3 500 kg", Sure: finding.Read}
	roofSource    = finding.Source{Text: "roof load of the vehicle's handbook", Sure: finding.Practice}
)

// Findings lists what the builder should know, gravest first.
func (r Result) Findings() []finding.Finding {
	var out []finding.Finding
	for which, a := range axes(r.in.Plate) {
		out = append(out, r.axisFindings(which, a)...)
	}
	out = append(out, r.licence()...)
	out = append(out, r.lightFront()...)
	out = append(out, r.lopsided()...)
	out = append(out, r.overRoof()...)
	out = append(out, r.tyreFindings()...)
	out = append(out, r.neverWeighed()...)
	out = append(out, r.weighingFindings()...)
	out = append(out, r.weightless()...)
	finding.Sort(out)
	return out
}

// axisFindings tells the cases over a limit and those close to it, one finding for each kind.
func (r *Result) axisFindings(which int, a axis) []finding.Finding {
	limit := a.plated()
	if limit == 0 {
		return nil
	}
	var over, near []CaseLoad
	for _, c := range r.Cases {
		switch load := a.pick(c.On).Mean; {
		case load > limit:
			over = append(over, c)
		case load >= closeShare*limit:
			near = append(near, c)
		}
	}
	var out []finding.Finding
	if len(over) > 0 {
		out = append(out, r.overFinding(a, limit, r.governing(which), over))
	}
	if len(near) > 0 && !(which == whole && r.licenceTells()) {
		out = append(out, r.nearFinding(a, limit, near))
	}
	return out
}

func (r *Result) overFinding(a axis, limit float64, worst CaseLoad, cases []CaseLoad) finding.Finding {
	load := a.pick(worst.On)
	f := finding.Finding{
		Code: a.head + ".over", Severity: finding.Fault, About: casePointers(a, worst, cases),
		Title:     fmt.Sprintf("%s %s %s kg too much: %s", capital(a.noun), verb(a), kg(load.Mean-limit), worst.name()),
		Words:     fmt.Sprintf("%s kg of the %s kg the plate allows; one in five it passes %s.", kg(load.Mean), kg(limit), kg(load.P80())),
		Measured:  &finding.Measure{Value: load.Mean, Unit: "kg"},
		Limit:     &finding.Measure{Value: limit, Unit: "kg"},
		Source:    plateSource,
		Caution:   "Overloaded axles lengthen braking and tyres may burst; an overloaded van may be stopped and is not insured as it should be.",
		Proposals: r.proposals(a, worst, load.Mean-limit),
	}
	if tail := r.tail(a, worst); tail != "" {
		f.Words += " " + tail
	}
	if len(cases) > 1 {
		f.Words += " Over as well: " + names(cases, worst) + "."
	}
	return f
}

func (r *Result) nearFinding(a axis, limit float64, cases []CaseLoad) finding.Finding {
	worst := cases[0]
	for _, c := range cases {
		if a.pick(c.On).Mean > a.pick(worst.On).Mean {
			worst = c
		}
	}
	load := a.pick(worst.On)
	words := fmt.Sprintf("%s of %s kg, %.0f %%; one in five it passes %s kg.", kg(load.Mean), kg(limit), 100*load.Mean/limit, kg(load.P80()))
	if tail := r.tail(a, worst); tail != "" {
		words += " " + tail
	}
	if len(cases) > 1 {
		words += " Close as well: " + names(cases, worst) + "."
	}
	return finding.Finding{
		Code: a.head + ".close", Severity: finding.Close, About: casePointers(a, worst, cases),
		Title:    fmt.Sprintf("%s kg to spare on %s: %s", kg(limit-load.Mean), a.noun, worst.name()),
		Words:    words,
		Measured: &finding.Measure{Value: load.Mean, Unit: "kg"},
		Limit:    &finding.Measure{Value: limit, Unit: "kg"},
		Source:   plateSource,
	}
}

// tail names what stands behind the rear axle and so counts more than once there.
func (r *Result) tail(a axis, c CaseLoad) string {
	if a.code != "rear" {
		return ""
	}
	behind := r.behind(c)
	if len(behind) == 0 {
		return ""
	}
	most := behind[0]
	return fmt.Sprintf("Behind the rear axle a thing counts more than once: %s, %s kg, bears on this axle with %s kg and lifts the front by %s.",
		most.name(), kg(most.mass), kg(most.rear), kg(most.rear-most.mass))
}

// casePointers names the worst case first, then the others, then the plate.
func casePointers(a axis, worst CaseLoad, cases []CaseLoad) []string {
	out := []string{worst.pointer()}
	for _, c := range cases {
		if p := c.pointer(); !slices.Contains(out, p) {
			out = append(out, p)
		}
	}
	return append(out, a.plate)
}

func (c CaseLoad) pointer() string {
	if c.assumed {
		return "/vehicle/cases"
	}
	return "/vehicle/cases/" + c.ID
}

func names(cases []CaseLoad, but CaseLoad) string {
	var out []string
	for _, c := range cases {
		if c.ID != but.ID {
			out = append(out, c.name())
		}
	}
	return strings.Join(out, "; ")
}

func verb(a axis) string {
	if a.code == "total" {
		return "weighs"
	}
	return "carries"
}

func capital(s string) string { return strings.ToUpper(s[:1]) + s[1:] }

// kg writes a mass in whole kilograms, thousands apart.
func kg(v float64) string { return quantity.Parted(v) }
