package web

import (
	"cmp"

	"tumblehome/internal/words"
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

func valueOf[T any](p *T) (v T) {
	if p != nil {
		v = *p
	}
	return v
}
