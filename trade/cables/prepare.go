package cables

import (
	"fmt"
	"math"
	"slices"
)

const (
	slack   = 1.1   // of the route, for bends and mistakes; common practice
	endLeft = 300.0 // mm left at each end; common practice
)

// prepare says what is cut, crimped, bought and tested.
func (r *Result) prepare() {
	for i := range r.Cables {
		c := &r.Cables[i]
		c.Cut = math.Ceil(((c.Length.MM+c.way.Branches)*slack+2*endLeft)/50-1e-9) * 50
		c.Terminals = c.terminals(r.Supplies[r.supplyOf(c.Bank)])
	}
	r.Bill = r.bill()
	r.Tests = r.tests()
	r.Assumed = r.assumed()
}

// Row is the catalogue row of its copper, if there is one.
func (c Cable) Row() string { return "cable-" + dashed(c.Section.MM2) + "mm2" }

// Cores are how many of its length are cut.
func (c Cable) Cores() int {
	if c.Body || c.Role == Bond {
		return 1
	}
	return 2
}

// bill gathers what to buy: cable by colour and cross-section, fuses by kind and rating, crimps by kind.
func (r *Result) bill() []Item {
	var out []Item
	add := func(row, words, unit string, count float64, cable string) {
		i := slices.IndexFunc(out, func(it Item) bool { return it.Words == words })
		if i < 0 {
			i, out = len(out), append(out, Item{Row: row, Words: words, Unit: unit, Once: len(r.in.Counted) > 0})
		}
		out[i].Count += count
		if !slices.Contains(out[i].Cables, cable) {
			out[i].Cables = append(out[i].Cables, cable)
		}
	}
	for _, c := range r.Cables {
		row := c.Row()
		for _, colour := range []string{c.Positive, c.Negative} {
			if colour != "" {
				add(row, fmt.Sprintf("%s cable %s mm²", colour, digits(c.Section.MM2, 4)), "m", c.Cut/1000, c.Number)
			}
		}
	}
	for _, c := range r.Cables {
		if c.Fuse.Amps > 0 {
			add(fuseRow(c.Fuse), c.Fuse.Words(), "piece", 1, c.Number)
		}
		for _, t := range c.Terminals {
			add(t.Row, t.Words, "piece", float64(t.Count), c.Number)
		}
	}
	for _, it := range slices.Concat(r.links(), r.joints(), r.stringFuses()) {
		add(it.Row, it.Words, it.Unit, it.Count, it.Cables[0])
	}
	for i := range out {
		r.priced(&out[i])
	}
	return out
}

// priced rounds up to what is sold and looks its price up; sets of crimps and blade fuses are priced by nobody here, since one set serves many.
func (r *Result) priced(it *Item) {
	if it.Unit == "m" {
		it.Count = math.Ceil(it.Count - 1e-9)
	}
	row, known := r.in.Rows[it.Row]
	if !known {
		it.Row = ""
		return
	}
	if it.Unit == "m" || row.Unit == "piece" && it.Row != "lug-crimp-set" && it.Row != "terminal-crimp-set" && it.Row != "fuse-blade-set" {
		it.Price = math.Round(100*it.Count*row.Price) / 100
	}
}

func fuseRow(p Protection) string {
	switch {
	case p.Kind == Blade:
		return "fuse-blade-set"
	case p.Kind == SF30 && p.Amps == 60:
		return "fuse-strip-sf30-60"
	case p.Kind == SF51 && p.Amps == 150:
		return "fuse-strip-sf51-150"
	case p.Kind == ClassT && p.Amps == 200:
		return "fuse-classt-200"
	}
	return ""
}

// dashed writes a cross-section as catalogue rows do: 1-5.
func dashed(area float64) string {
	text := []byte(digits(area, 4))
	for i, b := range text {
		if b == '.' {
			text[i] = '-'
		}
	}
	return string(text)
}
