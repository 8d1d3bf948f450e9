package reckon

import (
	"math"
	"strings"

	"tumblehome/catalogue"
	"tumblehome/trade/lining"
	"tumblehome/trade/warmth"
)

// More of a layer is about a centimetre more [mm].
const (
	aboutMore = 10.0
	leastMore = 5.0
	mostMore  = 15.0
)

// thicker is how there could be more of a planned layer of insulation: the same laid once more where it is thin, so that it still bends over wheel
// arches, else the row of its kind that is about a centimetre thicker. What lies already stays as it is, and what was pressed to a thickness has no room.
func thicker(l lining.Layer, rows *catalogue.Catalogue) warmth.Thicker {
	m, _ := rows.Material(l.Of.ID)
	if !m.Insulates || l.Fitted || l.Thick > 0 || m.Thick <= 0 {
		return warmth.Thicker{}
	}
	if once := m.Thick.Float(); once >= leastMore && once <= mostMore && l.Times <= 1 {
		return warmth.Thicker{By: once}
	}
	best := warmth.Thicker{}
	for _, name := range rows.MaterialNames() {
		o, _ := rows.Material(name)
		more := (o.Thick - m.Thick).Float()
		if l.Times > 1 || !ofAKind(m, o) || more < leastMore || more > mostMore {
			continue
		}
		if closer := math.Abs(more-aboutMore) - math.Abs(best.By-aboutMore); best.Lay == "" || closer < 0 || closer == 0 && len(name) < len(best.Lay) {
			best = warmth.Thicker{By: more, Lay: name}
		}
	}
	return best
}

// ofAKind says whether two materials differ in nothing but thickness and size.
func ofAKind(a, b catalogue.Material) bool {
	first, _, _ := strings.Cut(a.ID, "-")
	return strings.HasPrefix(b.ID, first+"-") && a.Kind == b.Kind && a.Conducts == b.Conducts && a.Vapour == b.Vapour && a.Density == b.Density && b.Insulates
}
