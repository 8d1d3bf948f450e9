package build

import (
	"slices"
	"strings"

	"tumblehome/build/tree"
	"tumblehome/quantity"
)

// wholeDocument checks what only the document as a whole can tell.
func (r *reader) wholeDocument(doc *Document) {
	r.rings(doc)
	for _, id := range SortedKeys(doc.Fittings) {
		r.positions(id, doc.Fittings[id])
	}
	r.modes(doc)
	r.banks(doc)
	r.once(doc)
	r.leftAtHome(doc)
}

// about notes a fault at the place that the steps lead to.
func (r *reader) about(kind FaultKind, f *quantity.Fault, steps ...string) {
	n := r.root.At(tree.PointerTo(steps...))
	if n == nil {
		n = r.root
	}
	r.path = steps
	r.fault(kind, n, f)
	r.path = nil
}

// rings finds fittings that stand on one another in a ring, and prints each
// ring once, from its first id.
func (r *reader) rings(doc *Document) {
	seen := map[string]bool{}
	for _, id := range SortedKeys(doc.Fittings) {
		if ring := ringFrom(doc, id, nil, seen); ring != nil {
			r.about(References, &quantity.Fault{Wrong: "fittings stand on one another in a ring: " + strings.Join(ring, " → ")}, "fittings", ring[0])
		}
	}
}

// ringFrom follows what a fitting stands on until it meets the trail again.
func ringFrom(doc *Document, id string, trail []string, seen map[string]bool) []string {
	if i := slices.Index(trail, id); i >= 0 {
		return append(trail[i:len(trail):len(trail)], id)
	}
	if seen[id] {
		return nil
	}
	seen[id] = true
	trail = append(trail, id)
	for _, next := range standsOn(doc.Fittings[id]) {
		if ring := ringFrom(doc, next, trail, seen); ring != nil {
			return ring
		}
	}
	return nil
}

// standsOn are the fittings whose places fix the place of f.
func standsOn(f Fitting) []string {
	var on []string
	for _, host := range []string{f.In, f.Upon} {
		if host != "" {
			on = append(on, host)
		}
	}
	if f.At == nil {
		return on
	}
	for _, rule := range []AxisRule{f.At.X, f.At.Y, f.At.Z} {
		for _, p := range rule.Points() {
			if p.Of != "" {
				on = append(on, p.Of)
			}
		}
	}
	return on
}
