package reckon

import (
	"cmp"
	"slices"

	"tumblehome/catalogue"
	"tumblehome/trade/lining"
	"tumblehome/trade/warmth"
)

func materialsOf(laid map[string][]lining.Layer, rows *catalogue.Catalogue) []warmth.Material {
	var ids []string
	add := func(l lining.Layer) {
		ids = append(ids, l.Of.ID)
		if l.Between != nil {
			ids = append(ids, l.Between.Of.ID)
		}
	}
	for _, all := range laid {
		for _, l := range all {
			add(l)
			for _, instead := range l.Bays {
				add(instead)
			}
		}
	}
	slices.Sort(ids)
	var out []warmth.Material
	for _, id := range slices.Compact(ids) {
		out = append(out, heatOf(id, rows))
	}
	return out
}

// heatOf is how a material passes heat and vapour; what the catalogue does not know is taken from similar things, and marked so.
func heatOf(id string, rows *catalogue.Catalogue) warmth.Material {
	m, _ := rows.Material(id)
	out := warmth.Material{ID: id, Name: cmp.Or(m.Title, id), Conducts: m.Conducts, Vapour: m.Vapour, Density: m.Density.Float(), Capacity: m.HeatCapacity}
	like := [3]float64{0.17, 50, 1500} // of board
	if m.Group == "insulation" {
		like = [3]float64{0.04, 5, 1400}
	}
	if out.Conducts <= 0 {
		out.Conducts, out.Assumed = like[0], true
	}
	if out.Vapour <= 0 {
		out.Vapour = like[1]
	}
	if out.Capacity <= 0 {
		out.Capacity = like[2]
	}
	if out.Density <= 0 && m.Thick > 0 {
		out.Density = float64(m.PerArea) / (m.Thick.Float() / 1000)
	}
	return out
}
