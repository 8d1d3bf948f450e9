package warmth

import (
	"tumblehome/build"
	"tumblehome/trade/working"
)

func (r *Result) workingOfWinter() working.Working {
	w := working.Working{Formula: "g = δ0·(pi − psat(θ))/Σ μ·d + q·(vi − vsat(θ)), month by month from October", Source: iso13788}
	worst := r.worst()
	if worst.Field < 0 {
		w.Lines = []line{{Symbol: "m", Label: "nothing is lined", Value: 0, Unit: "g/m2", From: here}}
		return w
	}
	f := &r.in.Fields[worst.Field]
	w.Lines = []line{{Symbol: "Σ μ·d", Label: "what keeps vapour from the steel " + build.BayWords(f.Bay) + ", as still air", Value: worst.Sd, Unit: "m", From: origin{Pointer: f.About}},
		{Symbol: "q", Label: "room air behind each m2 of lining", Value: leakPast, Unit: "m3/h", From: origin{Assumption: "edges and cable holes leak; our own extension of the standard"}}}
	for i, m := range worst.Months {
		w.Lines = append(w.Lines, line{Symbol: "m", Label: "at the end of " + months[m-1], Value: worst.Water[i], Unit: "g/m2", From: here})
	}
	w.Lines = append(w.Lines,
		line{Label: "brought by leaking air over the year", Value: worst.ByAir, Unit: "g/m2", From: here},
		line{Label: "so much never dries", Value: worst.Left, Unit: "g/m2", From: here},
		line{Symbol: "max m", Label: "most, where most gathers", Value: worst.Most, Unit: "g/m2", From: here})
	w.Notes = []string{"The nights in the van are those of the trips; between them the van stands empty and shut.", "A gap at the edges defeats any membrane."}
	return w
}
