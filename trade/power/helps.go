package power

import (
	"cmp"
	"slices"
)

// tryHelps finds what half as much again of each thing would do; a van without a panel is tried with one of 100 W.
func (r *Result) tryHelps(sky *Sky) {
	few := *sky
	few.Years = min(helpYears, sky.Years)
	try := func(of string, change func(k *kit)) {
		w := r.walk(&few)
		w.k = r.in.kitOf(r.in.Battery)
		change(&w.k)
		t := w.through()
		r.Helps = append(r.Helps, Help{Of: of, Share: t.share()})
	}
	try(LimitBattery, func(k *kit) { k.enlarge(1.5) })
	half, shade := 0.0, (*float64)(nil)
	for _, s := range r.in.Sources {
		half += s.Watts / 2
		if s.Kind == Sun { // more of it would stand in the same shade
			shade = s.Shade
		}
	}
	try(LimitPanel, func(k *kit) {
		k.addPanel(panelOf(&Source{Kind: Sun, Watts: max(100, half), Panels: 1, Shade: shade}, k.takes))
	})
	if r.run.engine != [12]float64{} {
		try(LimitEngine, func(k *kit) { k.engine *= 1.5 })
	}
	best := slices.MinFunc(r.Helps, func(a, b Help) int { return cmp.Compare(a.Share, b.Share) })
	r.Limits = best.Of
}

// enlarge makes a battery larger, of the same kind.
func (k *kit) enlarge(by float64) {
	k.holds, k.depth, k.rated = k.holds*by, k.depth*by, k.rated*by
	k.fill = fillingOf(k.holds, k.nature)
}
