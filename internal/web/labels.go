package web

import (
	"fmt"
	"slices"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/trade/cables"
)

// labelEntries are what the labels of the panels and batteries that are joined up say, where that is not what the catalogue has. A row stands for all that
// are bought as it.
func labelEntries(v view) []entry {
	if v.Doc.Power == nil {
		return nil
	}
	var out []entry
	put := func(row, key, unit, says string, listed float64) {
		path := "/catalogue/" + row + "/" + key
		if listed <= 0 || slices.ContainsFunc(out, func(e entry) bool { return e.Path == path }) {
			return
		}
		name := unhyphen(row)
		if r, ok := v.Rows.Row(row); ok && r.Name != "" {
			name = r.Name
		}
		out = append(out, fieldOf(path, fmt.Sprintf("%s %s %v %s so far; by its label", name, says, listed, unit), unit))
	}
	for _, c := range v.Cables.Cables {
		if c.Role != cables.Charge || c.Source != cables.Sun {
			continue
		}
		for _, l := range c.Loads {
			put(l.Row, "watts", "W", "gives in full light", l.Watts)
			put(l.Row, "volts", "V", "works at (Vmp)", l.Volts)
		}
	}
	for _, id := range build.SortedKeys(v.Doc.Power.Batteries) {
		for _, fitting := range v.Doc.Power.Batteries[id].Is {
			buy := v.Doc.Fittings[fitting].Buy
			if row, ok := v.Rows.Row(buy); ok {
				put(buy, "amp-hours", "Ah", "holds", valueOf(row.AmpHours).Float())
				put(buy, "volts", "V", "is made for", valueOf(row.Volts).Float())
			}
		}
	}
	return out
}

// withKinds adds their kind to what is first written of rows of the catalogue: no row stands in a document without.
func (s *Server) withKinds(doc *tree.Node, changes []change) []change {
	out := slices.Clone(changes)
	for _, c := range changes {
		steps := c.Path.Steps()
		if len(steps) != 3 || steps[0] != "catalogue" || steps[2] == "kind" || c.Value == "" || doc.At(tree.PointerTo(steps[:2]...)) != nil {
			continue
		}
		if row, ok := s.desk.rows.Row(steps[1]); ok {
			out = append(out, change{Path: tree.PointerTo("catalogue", steps[1], "kind"), Value: row.Kind})
		}
	}
	return out
}
