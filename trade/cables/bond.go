package cables

// bonds joins each bank's negative to the body once.
func (r *Result) bonds() {
	for _, s := range r.Supplies {
		i := r.trunkOf(s.ID)
		if i < 0 {
			continue
		}
		trunk := r.Cables[i]
		c := Cable{About: s.About, Bank: s.ID, Role: Bond, said: s.BondNumber, Title: "negative to the body", Length: s.BondLength, Volts: s.Volts,
			From: End{Words: "the negative busbar", Symbol: SymbolBoard}, To: End{Words: "clean bare metal of the body", Symbol: SymbolBody}}
		if c.Length.MM == 0 {
			c.Length = Length{MM: usualTrunk, Known: Assumed}
		}
		need := max(leastBond, trunk.Section.MM2)
		c.Section = Section{MM2: need, Need: need, Rule: RuleShort, Steps: []Demand{{Rule: RuleShort, MM2: need, Words: "no thinner than the battery's own cable, and at least 10 mm²", Source: bondSource}}}
		if s.Bond > 0 {
			c.Section.MM2, c.Section.Said = s.Bond, true
		}
		c.Rating = c.way.rating(c.Section.MM2)
		r.Cables = append(r.Cables, c)
	}
}
