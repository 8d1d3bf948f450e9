package cables

import "fmt"

// links are the short cables between batteries that stand side by side: what the main cable carries goes through them too.
func (r *Result) links() []Item {
	var out []Item
	for _, s := range r.Supplies {
		i := r.trunkOf(s.ID)
		if n := len(s.Batteries) - 1; i >= 0 && n > 0 {
			main := r.Cables[i]
			for _, core := range []string{main.Positive, main.Negative} {
				out = append(out, Item{Words: fmt.Sprintf("%s link between two batteries, %s mm² as the main cable, a ring lug at each end", core, digits(main.Section.MM2, 4)), Unit: "piece", Count: float64(n), Cables: []string{main.Number}, Row: "battery-link"})
			}
		}
	}
	return out
}

// joints are what brings several panels to one cable.
func (r *Result) joints() []Item {
	var out []Item
	for i := range r.Cables {
		c := &r.Cables[i]
		if n := c.branches(); n > 0 {
			out = append(out, Item{Words: "pair of branch plugs that joins one more panel side by side (none where panels stand in a row: then write in-row: yes; the controller's sheet says which it bears)", Unit: "piece", Count: float64(n), Cables: []string{c.Number}, Row: "connector-solar-branch"})
		}
	}
	return out
}

// apartFirst compares batteries before they are linked: one that stands higher empties itself into the other.
func (r *Result) apartFirst(s Supply, main Cable) []Test {
	if len(s.Batteries) < 2 {
		return nil
	}
	return []Test{{Cable: main.Number, Kind: TestFirst, How: "Links between the batteries still off. Measure each battery by itself, at its own posts.",
		Expect: "no more than 0.1 V between any two", Otherwise: "Charge each by itself until they stand alike, then link them: the higher one would send the lower all that the link lets through.", High: 0.1, Unit: "V"},
		{Cable: main.Number, Kind: TestFirst, How: "Link plus to plus and minus to minus. The main cable's plus goes to the first battery, its minus to the last.", Expect: "both links are tight, no spark"}}
}
