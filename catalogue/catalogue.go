package catalogue

import (
	"slices"
	"sort"
	"sync"
)

// Catalogue is the built-in rows, or these under a document's own. It never
// changes once made, so it may be used from many goroutines.
type Catalogue struct {
	base      *Catalogue // the rows beneath; nil for the built-in catalogue
	rows      map[string]Row
	ids       []string            // of rows, sorted
	under     map[string][]string // ids that answer to a name, sorted
	materials map[string]Material // by name
	prices    map[string]rough
}

type rough struct{ gbp, eur float64 }

// Builtin is the catalogue that is part of the program.
func Builtin() *Catalogue { return builtin() }

var builtin = sync.OnceValue(func() *Catalogue {
	c, err := load()
	if err != nil {
		panic(err) // the table is part of the program; a test reads it
	}
	return c
})

func load() (*Catalogue, error) {
	table, err := readRows(rowsCSV)
	if err != nil {
		return nil, err
	}
	c := &Catalogue{rows: make(map[string]Row, len(table)), prices: make(map[string]rough, len(table))}
	for _, l := range table {
		c.rows[l.id] = l.row
		c.prices[l.id] = rough{l.gbp, l.eur}
	}
	c.index()
	return c, nil
}

// Overlay is this catalogue under the document's own rows, which win field by
// field.
func (c *Catalogue) Overlay(own map[string]Row) *Catalogue {
	if len(own) == 0 {
		return c
	}
	o := &Catalogue{base: c, rows: make(map[string]Row, len(own))}
	for id, row := range own {
		if beneath, ok := c.Row(id); ok {
			row = row.over(beneath)
		}
		o.rows[id] = row
	}
	o.index()
	return o
}

// Row is the row of this id.
func (c *Catalogue) Row(id string) (Row, bool) {
	row, ok := c.rows[id]
	if !ok && c.base != nil {
		return c.base.Row(id)
	}
	return row, ok
}

// HasRow says whether there is a row of this id.
func (c *Catalogue) HasRow(id string) bool {
	_, ok := c.Row(id)
	return ok
}

// IsOwn says whether the row is the document's own, or changed by it.
func (c *Catalogue) IsOwn(id string) bool {
	_, ok := c.rows[id]
	return ok && c.base != nil
}

// RowIDs are the ids of all rows, sorted.
func (c *Catalogue) RowIDs() []string {
	if c.base == nil {
		return slices.Clone(c.ids)
	}
	all := append(c.base.RowIDs(), c.ids...)
	sort.Strings(all)
	return slices.Compact(all)
}
