package catalogue

import (
	"maps"
	"slices"
)

// index enters the rows of c, and of c alone, under all the material names
// they answer to, and works out the material of each such name.
func (c *Catalogue) index() {
	c.ids = slices.Sorted(maps.Keys(c.rows))
	seen := make(map[string]Material, len(c.ids))
	c.under = make(map[string][]string, 2*len(c.ids))
	for _, id := range c.ids {
		m, ok := materialOf(id, c.rows[id])
		if !ok {
			continue
		}
		seen[id] = m
		for _, name := range names(id, m) {
			c.under[name] = append(c.under[name], id)
		}
	}
	c.materials = make(map[string]Material, len(c.under))
	for name, ids := range c.under {
		if m, ok := c.gathered(name, ids, seen); ok {
			c.materials[name] = m
		}
	}
}

// gathered is the material of one name: the row of that very id leads, or else
// the first; the others join it. Beneath own rows lie those of the base. In the
// built-in catalogue a name without a row of that id, whose rows are different
// things, is no material; own rows never take a name away.
func (c *Catalogue) gathered(name string, ids []string, seen map[string]Material) (Material, bool) {
	lead := seen[ids[0]]
	if m, ok := seen[name]; ok {
		lead = m
	}
	beneath, known := Material{}, false
	if c.base != nil {
		beneath, known = c.base.Material(name)
	}
	if known && lead.Stock[0] != name && !lead.sameAs(beneath) {
		return beneath, true
	}
	first := lead.Stock[0]
	m := lead
	m.ID, m.Stock = name, append(make([]string, 0, len(ids)), first)
	for _, id := range ids {
		if id == first {
			continue
		}
		if c.base == nil && first != name && !lead.sameAs(seen[id]) {
			return Material{}, false
		}
		m = m.with(seen[id])
	}
	if known {
		m = m.with(beneath)
	}
	slices.Sort(m.Stock)
	m.Stock = slices.Compact(m.Stock)
	return m, true
}

// Material is the material of this name: a row's id, or the beginning that
// rows of one material and thickness share.
func (c *Catalogue) Material(name string) (Material, bool) {
	m, ok := c.materials[name]
	if !ok && c.base != nil {
		return c.base.Material(name)
	}
	return m, ok
}

// MaterialNames are the names of all materials, sorted.
func (c *Catalogue) MaterialNames() []string {
	all := slices.Collect(maps.Keys(c.materials))
	if c.base != nil {
		all = append(all, c.base.MaterialNames()...)
	}
	slices.Sort(all)
	return slices.Compact(all)
}
