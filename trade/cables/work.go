package cables

import (
	"slices"

	"tumblehome/trade/finding"
)

const (
	houseVolts = 12.8 // V that shares of a house circuit are of; twice that in a system of 24 V
	lineVolts  = 14.0 // V of an engine that charges; common practice, 13.8 to 14.4
	shoreVolts = 14.4 // V of a charger on the mains
	panelVolts = 18.0 // V of a panel of 36 cells at work
)

// Work says of every cable whether it is safe.
func Work(in Inputs) Result {
	r := Result{Mains: in.Mains, in: in, nets: map[string]net{}}
	for _, b := range in.Banks {
		r.bank(b)
	}
	r.charges()
	r.bonds()
	r.number()
	r.link()
	r.shorts()
	r.tried()
	r.prepare()
	r.found = r.judge()
	finding.Sort(r.found)
	return r
}

// bank lays out a battery's cables and finds their voltages. Cross-sections that the program chooses grow until the losses are within their limits.
func (r *Result) bank(b Bank) {
	feeds := r.in.feeds(b.ID)
	if len(feeds) == 0 {
		r.Supplies = append(r.Supplies, b.supply())
		return
	}
	supply := b.supply()
	first := len(r.Cables)
	r.Cables = append(r.Cables, r.trunk(b, feeds))
	for _, c := range feeds {
		if c.ID != r.Cables[first].ID && (len(c.Loads) > 0 || c.Current > 0 || b.feedsOthers(c, feeds)) {
			r.Cables = append(r.Cables, r.feed(b, c))
		}
	}
	own := r.Cables[first:]
	main := &own[0]
	main.protectMain(r.behind(b, own[1:]), supply.Fault)
	n := r.solve(supply, own)
	if n.tipped != nil && starve(own, n) {
		n = r.solve(supply, own)
	}
	for range len(own) * len(standard) {
		if n.tipped != nil || !thicken(own, n) {
			break
		}
		n = r.solve(supply, own)
	}
	r.nets[b.ID] = n
	supply.settle(n, own)
	r.Supplies = append(r.Supplies, supply)
}

// behind is the greatest rating of the fuses behind a main fuse [A]: of circuits, and of what charges at the board.
func (r *Result) behind(b Bank, own []Cable) float64 {
	most := 0.0
	for _, c := range own {
		most = max(most, c.Fuse.Amps)
	}
	for _, s := range r.in.Sources {
		if s.Kind == Split || r.bankOf(s) != b.ID {
			continue
		}
		if said := s.leadFuse(); said.Said {
			most = max(most, said.Amps)
		} else {
			most = max(most, leastFuse(s.gives(b.supply())))
		}
	}
	return most
}

// thicken takes the next cross-section for the first cable that was not written and loses too much; false where there is none.
func thicken(all []Cable, n net) bool {
	for i := range all {
		c := &all[i]
		c.losses(n)
		next := slices.Index(standard, c.Section.MM2) + 1
		if c.Section.Said || next == 0 || next == len(standard) || c.Drop.Cables()/c.Volts <= c.Drop.Limit {
			continue
		}
		c.Section.MM2, c.Section.Need, c.Section.Rule = standard[next], standard[next], RuleDrop
		c.Rating = c.way.rating(c.Section.MM2)
		return true
	}
	return false
}

// feeds are the circuits of a bank, each after the one that feeds it. Nothing begins at a circuit that is called as a bank is: the bank is meant.
func (in Inputs) feeds(bank string) []Circuit {
	var out []Circuit
	known := map[string]bool{bank: true}
	for added := true; added; {
		added = false
		for _, c := range in.Circuits {
			if known[c.From] && !known[" "+c.ID] {
				out, added = append(out, c), true
				known[c.ID], known[" "+c.ID] = known[c.ID] || !in.hasBank(c.ID), true
			}
		}
	}
	return out
}

func (in Inputs) hasBank(id string) bool {
	return slices.ContainsFunc(in.Banks, func(b Bank) bool { return b.ID == id })
}

// solve finds the voltages of a bank's cables, the trunk first.
func (r *Result) solve(s Supply, all []Cable) net {
	t := tree{volts: s.Volts, inside: s.Resistance, mainFuse: fuseOhms(all[0].Fuse.Amps), isolator: mainJoints, trunk: all[0].ohms()}
	for _, c := range all[1:] {
		t.legs = append(t.legs, c.leg())
	}
	return t.solve()
}

// leg is a cable with its fuse and its load; without the load where that cannot be fed.
func (c Cable) leg() leg {
	l := leg{id: c.ID, from: c.fed, fuse: fuseOhms(c.Fuse.Amps) + joints, cable: c.ohms()}
	switch {
	case c.Starved != nil || c.own == 0:
	case motors(c.Loads):
		l.ohms = c.Volts / c.own
	default:
		l.watts = c.Volts * c.own
	}
	return l
}

// starve marks the circuits that could not be fed even alone, and says whether there are any.
func starve(all []Cable, n net) bool {
	any := false
	for i := range all[1:] {
		c := &all[i+1]
		if c.own > 0 {
			c.Starved = n.lone(c.ID).tipped
			any = any || c.Starved != nil
		}
	}
	return any
}

// Joints that no meter finds bad, common practice.
const (
	mainJoints = 0.0005 // Ω: isolator, shunt and lugs
	joints     = 0.001  // Ω: four crimps and a fuse holder
)

func (c Cable) ohms() float64 { return pair(c.Length.MM, c.Section.MM2, warmCopper) }

func motors(loads []Load) bool {
	return len(loads) > 0 && !slices.ContainsFunc(loads, func(l Load) bool { return l.Kind != Pump && l.Kind != Fan })
}
