package lining

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"tumblehome/trade/working"
)

// stack is the working of the thickest place of a group of surfaces.
func (r *Result) stack(group string) (string, []working.Line) {
	var where *field
	var thick *band
	for _, g := range groups {
		for _, s := range g.surfaces {
			for _, f := range r.laid.fields[s] {
				for i := range f.bands {
					if g.code == group && (thick == nil || f.bands[i].thick > thick.thick) {
						where, thick = f, &f.bands[i]
					}
				}
			}
		}
	}
	if where == nil {
		return "t = 0", nil
	}
	lines := []working.Line{{Symbol: "d", Label: "rib at " + where.bay.ID, Value: where.bay.Depth, Unit: "mm", From: r.ribsFrom(where.bay)}}
	bay, rib := 0.0, where.bay.Depth
	for _, c := range thick.courses {
		lines = append(lines, working.Line{Symbol: "t", Label: c.where(), Value: c.InBay[1] - c.InBay[0], Unit: "mm", From: working.Origin{Pointer: c.Pointer}})
		if !c.over {
			bay, rib = c.InBay[1], c.OnRib[1]
		}
	}
	return "t = max(d + strips, Σ t in the bay) + Σ t over the ribs", append(lines,
		working.Line{Label: "carried by the ribs or by what lies between them", Value: math.Max(bay, rib), Unit: "mm",
			Sum: fmt.Sprintf("max(%.4g, %.4g)", rib, bay), From: here})
}

// ribsFrom is where the ribs of a bay stand, if it has any that were measured.
func (r *Result) ribsFrom(b Bay) working.Origin {
	switch {
	case b.Depth == 0:
		return working.Origin{Assumption: "no rib stands there"}
	case r.laid.in.Assumed:
		return working.Origin{Assumption: "those of a typical body, unless ribs are written down"}
	}
	return working.Origin{Pointer: "/shell/ribs"}
}

// where says in words where a course lies.
func (c Course) where() string {
	switch {
	case c.over:
		return c.Material + ", over the ribs"
	case c.OnRib[1] > c.OnRib[0]:
		return fmt.Sprintf("%s, in the bay; a strip of %.4g over the ribs", c.Material, c.OnRib[1]-c.OnRib[0])
	}
	return c.Material + ", in the bay"
}

// materials are the lines of the working of a mass: each material once.
func (r *Result) materials(code string) []working.Line {
	var surfaces []string
	for _, g := range groups {
		if code == "lining.mass-"+g.code {
			surfaces = g.surfaces
		}
	}
	type sum struct{ net, mass float64 }
	sums := map[string]sum{}
	var order []string
	for _, l := range r.Lines {
		if !slices.Contains(surfaces, l.Surface) {
			continue
		}
		key := l.Of + "\x00" + l.Unit
		if _, ok := sums[key]; !ok {
			order = append(order, key)
		}
		sums[key] = sum{sums[key].net + l.Net, sums[key].mass + l.Mass}
	}
	slices.Sort(order)
	var lines []working.Line
	for _, key := range order {
		of, unit, _ := strings.Cut(key, "\x00")
		lines = append(lines, working.Line{Symbol: "m", Label: fmt.Sprintf("%s, %.2f %s", of, sums[key].net, unit), Value: sums[key].mass, Unit: "kg",
			From: working.Origin{Row: of}})
	}
	return lines
}
