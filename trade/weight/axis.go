package weight

import (
	"tumblehome/quantity"
	"tumblehome/trade/takeoff"
)

// axis is one of the three things the plate limits.
type axis struct {
	code    string // end of its codes: total, front, rear
	head    string // code of the headline figure
	noun    string // within a sentence
	label   string
	plate   string // JSON Pointer of its limit
	formula string
	limit   *quantity.Mass
	pick    func(On) Load
	part    func(rearShare float64) float64 // of a mass whose rear share is this
}

const (
	whole = iota
	onFront
	onRear
)

// axes in the order whole, onFront, onRear.
func axes(p Plate) [3]axis {
	return [3]axis{
		{
			code: "total", head: "weight.total", noun: "the van", label: "The van in all",
			plate: "/vehicle/plate/gross", formula: "W = W₀ + Σ m", limit: p.Gross,
			pick: func(o On) Load { return o.Total }, part: func(float64) float64 { return 1 },
		}, {
			code: "front", head: "weight.front-axle", noun: "the front axle", label: "On the front axle",
			plate: "/vehicle/plate/front", formula: "F = F₀ + Σ (m − m·(x + d)/L)", limit: p.Front,
			pick: func(o On) Load { return o.Front }, part: func(share float64) float64 { return 1 - share },
		}, {
			code: "rear", head: "weight.rear-axle", noun: "the rear axle", label: "On the rear axle",
			plate: "/vehicle/plate/rear", formula: "R = R₀ + Σ m·(x + d)/L", limit: p.Rear,
			pick: func(o On) Load { return o.Rear }, part: func(share float64) float64 { return share },
		},
	}
}

// governing is the case that matters most for an axis.
func (r *Result) governing(which int) CaseLoad {
	return r.Cases[[3]int{r.governs.total, r.governs.front, r.governs.rear}[which]]
}

// carries is what one line puts on an axis [kg].
func (a axis) carries(v lever, l takeoff.Line) float64 { return l.Mass * a.part(v.share(l.At[0])) }

func (r *Result) lever() lever { return lever{r.in.Wheelbase.Float(), r.in.Datum.Float()} }

// plated is the limit of an axis, 0 if the plate cannot be read.
func (a axis) plated() float64 {
	if a.limit == nil {
		return 0
	}
	return a.limit.Float()
}
