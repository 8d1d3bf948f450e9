package weight

import (
	"fmt"

	"tumblehome/quantity"
	"tumblehome/trade/finding"
)

var (
	tyreSource = finding.Source{Text: "load index of the tyre; never below that of the maker", Sure: finding.Read}
	ageSource  = finding.Source{Text: "inspect yearly past six years, replace by about ten", Sure: finding.Memory}
)

// axleTyres are the two tyres of one axle and what they carry.
type axleTyres struct {
	name, pointer, head, caseName string
	tyre                          Tyre
	load, plate                   float64 // kg on the axle, and what its plate allows; 0 if not known
}

// tyres lists the axles whose tyres are described, front first.
func (r *Result) tyres() []axleTyres {
	a := axes(r.in.Plate)
	var out []axleTyres
	if t := r.in.Front; t != nil {
		g := r.governing(onFront)
		out = append(out, axleTyres{"front", "/vehicle/tyres/front", a[onFront].head, g.name(), *t, g.Front.Mean, a[onFront].plated()})
	}
	if t := r.in.Rear; t != nil {
		g := r.governing(onRear)
		out = append(out, axleTyres{"rear", "/vehicle/tyres/rear", a[onRear].head, g.name(), *t, g.Rear.Mean, a[onRear].plated()})
	}
	return out
}

func (r *Result) tyreFindings() []finding.Finding {
	var out []finding.Finding
	for _, t := range r.tyres() {
		out = append(out, t.loadFindings()...)
		out = append(out, t.age(r.in.Today)...)
	}
	return out
}

// loadFindings compares the two tyres with what stands on them, and with the plate.
func (t axleTyres) loadFindings() []finding.Finding {
	both := 2 * t.tyre.Carries.Float()
	if both == 0 {
		return nil
	}
	if t.load > both {
		return []finding.Finding{{
			Code: "weight.tyre.load", Severity: finding.Fault, About: []string{t.pointer},
			Title:    fmt.Sprintf("the %s tyres carry %s kg more than they may: %s", t.name, kg(t.load-both), t.caseName),
			Words:    fmt.Sprintf("%s kg on the axle; two tyres of load index %d carry %s.", kg(t.load), t.tyre.LoadIndex, kg(both)),
			Measured: &finding.Measure{Value: t.load, Unit: "kg"}, Limit: &finding.Measure{Value: both, Unit: "kg"},
			Source: tyreSource, Caution: "Overloaded tyres run hot and may burst.",
		}}
	}
	if t.plate > both {
		return []finding.Finding{{
			Code: "weight.tyre.plate", Severity: finding.Close, About: []string{t.pointer, "/vehicle/plate/" + t.name},
			Title:    fmt.Sprintf("the %s tyres carry less than the plate allows the axle", t.name),
			Words:    fmt.Sprintf("Two tyres of load index %d carry %s kg, the axle may carry %s. The tyres are then the limit, and may not be those the maker asks for.", t.tyre.LoadIndex, kg(both), kg(t.plate)),
			Measured: &finding.Measure{Value: both, Unit: "kg"}, Limit: &finding.Measure{Value: t.plate, Unit: "kg"},
			Source: tyreSource,
		}}
	}
	return nil
}

const (
	inspectYears = 6
	oldYears     = 9
)

var yearWords = map[int]string{6: "six", 7: "seven", 8: "eight", 9: "nine", 10: "ten", 11: "eleven", 12: "twelve"}

// age counts whole years since the tyres were made; they age standing as well as rolling.
func (t axleTyres) age(today quantity.Date) []finding.Finding {
	if today.IsZero() || t.tyre.Made.IsZero() {
		return nil
	}
	years := wholeYears(t.tyre.Made, today)
	if years < inspectYears {
		return nil
	}
	word, known := yearWords[years]
	if !known {
		word = fmt.Sprint(years)
	}
	f := finding.Finding{
		Code: "weight.tyre.age", Severity: finding.Note, About: []string{t.pointer},
		Title:    fmt.Sprintf("two tyres past %s years: %s axle", word, t.name),
		Words:    fmt.Sprintf("Made about %s. From six years on have them looked at every year.", t.tyre.Made),
		Measured: &finding.Measure{Value: float64(years), Unit: "years"}, Limit: &finding.Measure{Value: inspectYears, Unit: "years"},
		Source: ageSource,
	}
	if years >= oldYears {
		f.Severity, f.Limit = finding.Close, &finding.Measure{Value: 10, Unit: "years"}
		f.Words = fmt.Sprintf("Made about %s. Rubber hardens with age whatever the tread: replace them by ten years, and before a laden summer trip.", t.tyre.Made)
	}
	return []finding.Finding{f}
}

func wholeYears(from, to quantity.Date) int {
	years := to.Year - from.Year
	if to.Month < from.Month || to.Month == from.Month && to.Day < from.Day {
		years--
	}
	return years
}
