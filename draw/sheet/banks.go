package sheet

import (
	"tumblehome/draw"
	"tumblehome/reckon"
)

// Circuits are the circuit diagrams of all banks of batteries, in their order.
func Circuits(r *reckon.Reckoning, revision string) []draw.Scene {
	if len(r.Cables.Supplies) == 0 {
		return Circuit(r, "", revision)
	}
	var out []draw.Scene
	for i := range r.Cables.Supplies {
		out = append(out, Circuit(r, r.Cables.Supplies[i].ID, revision)...)
	}
	return out
}
