package power

import (
	"cmp"
	"slices"
)

// Of what may be bought: more would not find room.
const (
	mostBatteries = 3
	mostPanels    = 3
)

// cheapest goes through what can be bought, cheapest first, until the promise is kept.
func (d *drawing) cheapest(c *Chart) {
	kits := d.kits()
	d.mu.Lock()
	d.of = d.done + len(kits)
	d.mu.Unlock()
	for i := range kits {
		k := &kits[i]
		b := *d.r.in.Battery
		b.Chemistry, b.Rated, b.Tested, b.Usable = k.Battery.Chemistry, k.Battery.AmpHours*float64(k.Batteries), 0, k.Battery.Usable
		b.CutOff = true // what is bought can be bought with one
		watts := k.Panel.Watts * float64(k.Panels)
		if k.Share = 1; d.suits(&b, watts) {
			k.Share = d.share(&b, watts)
		}
		if k.Share <= c.Promise {
			c.Kit, d.of = k, d.done+1
			d.tell()
			return
		}
		d.tell()
	}
}

// suits tells that the van's chargers and the panels together do not charge a battery faster than is good for it.
func (d *drawing) suits(b *Battery, watts float64) bool {
	var engine, shore float64
	for i := range d.r.in.Sources {
		switch s := &d.r.in.Sources[i]; s.Kind {
		case Engine:
			engine += s.current(b)
		case Shore:
			shore += s.current(b)
		}
	}
	return watts/(12*b.series())+max(engine, shore) <= natures[b.Chemistry].most*b.Rated
}

// kits are all that can be bought, cheapest first; of two that cost the same the one with more in it.
func (d *drawing) kits() (out []Kit) {
	var batteries, panels []Offer
	for _, o := range d.r.in.Shop {
		if o.AmpHours > 0 {
			batteries = append(batteries, o)
		} else {
			panels = append(panels, o)
		}
	}
	for _, b := range batteries {
		for n := 1; n <= mostBatteries; n++ {
			out = append(out, Kit{Battery: b, Batteries: n, Price: float64(n) * b.Price})
			for _, p := range panels {
				for m := 1; m <= mostPanels; m++ {
					out = append(out, Kit{Battery: b, Batteries: n, Panel: p, Panels: m, Price: float64(n)*b.Price + float64(m)*p.Price})
				}
			}
		}
	}
	slices.SortStableFunc(out, func(a, b Kit) int {
		return cmp.Or(cmp.Compare(a.Price, b.Price), cmp.Compare(b.Battery.AmpHours*float64(b.Batteries), a.Battery.AmpHours*float64(a.Batteries)))
	})
	return out
}
