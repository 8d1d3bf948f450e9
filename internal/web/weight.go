package web

import (
	"cmp"
	"math"
	"slices"
	"strconv"

	"tumblehome/internal/words"
	"tumblehome/trade/takeoff"
	"tumblehome/trade/weight"
)

// axleView is one of the three things that the plate limits, with its load in every case.
type axleView struct {
	Title, Path string // of the plate's limit
	Code        string // end of its codes
	Limit       float64
	Rows        []loadRow
}

// loadRow is the load of one case.
type loadRow struct {
	Name, Code     string
	Mean, Late     string // likely, and passed one time in five
	Spare          string
	Share          float64
	Word, Severity string
}

// axlesOf lays every load case against the plate.
func axlesOf(v view) []axleView {
	plate := v.Doc.Vehicle.Plate
	all := []axleView{
		{Title: "The van in all", Path: "/vehicle/plate/gross", Code: "total", Limit: valueOf(plate.Gross).Float()},
		{Title: "On the front axle", Path: "/vehicle/plate/front", Code: "front", Limit: valueOf(plate.Front).Float()},
		{Title: "On the rear axle", Path: "/vehicle/plate/rear", Code: "rear", Limit: valueOf(plate.Rear).Float()},
	}
	for i := range all {
		a := &all[i]
		for _, c := range v.Weight.Cases {
			a.Rows = append(a.Rows, a.row(capital(cmp.Or(c.Title, unhyphen(c.ID))), "weight.case."+c.ID+"."+a.Code, a.of(c.On)))
		}
		a.Rows = append(a.Rows,
			a.row("Finished, nobody aboard", "weight.finished."+a.Code, a.of(v.Weight.Finished)),
			a.row("As it stands today", "weight.today."+a.Code, a.of(v.Weight.Today)))
	}
	return all
}

func (a axleView) of(on weight.On) weight.Load {
	switch a.Code {
	case "front":
		return on.Front
	case "rear":
		return on.Rear
	}
	return on.Total
}

func (a axleView) row(name, code string, load weight.Load) loadRow {
	r := loadRow{Name: name, Code: code, Mean: words.Amount(load.Mean, "kg"), Late: words.Amount(load.P80(), "kg"), Share: -1}
	if a.Limit <= 0 {
		return r
	}
	r.Mean, r.Share = words.Near(load.Mean, a.Limit, "kg"), load.Mean/a.Limit
	r.Spare = words.Amount(a.Limit-load.Mean, "kg")
	switch {
	case r.Share > 1:
		r.Word, r.Severity = "too much", "fault"
	case r.Share >= closeShare:
		r.Word, r.Severity = "close", "close"
	case load.P80() > a.Limit:
		r.Word, r.Severity = "may pass", "close"
	default:
		r.Severity = "good"
	}
	return r
}

// heavyRow is one thing by its mass and place.
type heavyRow struct {
	Name, Address string
	Mass          float64
	Where         float64 // from the datum [mm]
	Rear          float64 // what of its mass the rear axle carries [kg]
	Guess, Fitted bool
}

const heaviestShown = 16

// heaviest are the things that weigh most, the heaviest first.
func heaviest(v view) []heavyRow {
	rows := map[string]*heavyRow{}
	var order []string
	for _, l := range v.Lines {
		key := thingPointer(l.Pointer)
		r, known := rows[key]
		if !known {
			r = &heavyRow{Name: capital(v.thingWords(key)), Address: addressOf(key), Fitted: true}
			rows[key], order = r, append(order, key)
		}
		r.add(l, v)
	}
	out := make([]heavyRow, 0, len(order))
	for _, key := range order {
		out = append(out, *rows[key])
	}
	slices.SortStableFunc(out, func(a, b heavyRow) int { return cmp.Compare(b.Mass, a.Mass) })
	return out[:min(len(out), heaviestShown)]
}

func (r *heavyRow) add(l takeoff.Line, v view) {
	if sum := r.Mass + l.Mass; sum != 0 {
		r.Where = (r.Where*r.Mass + l.At[0]*l.Mass) / sum
	}
	r.Mass += l.Mass
	if base := v.Doc.Vehicle.Wheelbase.Float(); base > 0 {
		r.Rear += l.Mass * (l.At[0] + v.Doc.Vehicle.Datum.Float()) / base
	}
	r.Guess = r.Guess || l.Guess
	r.Fitted = r.Fitted && l.Fitted
}

// thingPointer is what a line belongs to as a reader sees it: a fitting, or a whole surface.
func thingPointer(pointer string) string {
	steps := splitPointer(pointer)
	return "/" + joinSteps(steps[:min(2, len(steps))])
}

// thingWords is what a reader calls it.
func (v view) thingWords(pointer string) string {
	if id, ok := fittingOf(pointer); ok {
		return nameOf(id, v.Doc.Fittings[id])
	}
	steps := splitPointer(pointer)
	if steps[0] == "lining" && len(steps) > 1 {
		return "lining, " + steps[1]
	}
	return pathWords(pointerPath(pointer))
}

func valueOf[T any](p *T) (v T) {
	if p != nil {
		v = *p
	}
	return v
}

// kilograms writes a mass to the kilogram, small ones to a tenth.
func kilograms(v float64) string {
	if math.Abs(v) < 9.95 {
		return words.Fine(math.Round(v*10)/10, "kg")
	}
	return strconv.FormatFloat(math.Round(v), 'f', 0, 64) + " kg"
}
