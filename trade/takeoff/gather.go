package takeoff

import (
	"cmp"
	"slices"
	"strings"
)

// Gather lays the lines of several suppliers end to end, in the order given.
func Gather(suppliers ...[]Line) []Line { return slices.Concat(suppliers...) }

// About picks the lines for one thing of the document or for what is within it: about /fittings/galley are the lines of
// /fittings/galley and /fittings/galley/of, not those of /fittings/galley-top.
func About(lines []Line, pointer string) []Line {
	var out []Line
	for _, l := range lines {
		if l.IsAbout(pointer) {
			out = append(out, l)
		}
	}
	return out
}

// IsAbout tells whether a line is for one thing of the document, or for what is within it.
func (l Line) IsAbout(pointer string) bool {
	rest, ok := strings.CutPrefix(l.Pointer, pointer)
	return ok && (rest == "" || rest[0] == '/')
}

// Today picks what is in the van today.
func Today(lines []Line) []Line {
	var out []Line
	for _, l := range lines {
		if l.Fitted {
			out = append(out, l)
		}
	}
	return out
}

// Centre is the mass of lines [kg] and where its middle lies [mm, document coordinates]; without mass it is the origin.
func Centre(lines []Line) (mass float64, at [3]float64) {
	var moment [3]float64
	for _, l := range lines {
		mass += l.Mass
		for i, p := range l.At {
			moment[i] += l.Mass * p
		}
	}
	if mass == 0 {
		return 0, at
	}
	for i, m := range moment {
		at[i] = m / mass
	}
	return mass, at
}

// Sum is what the lines of one group, or of one material, come to.
type Sum struct {
	Name string  // the group or material
	Unit string  // of Net; "" where units differ
	Net  float64 // in Unit; 0 where units differ
	Mass float64 // [kg]
	Of   []Line  // the lines themselves
}

// ByGroup sums lines by group, in the order of the groups' names.
func ByGroup(lines []Line) []Sum { return sums(lines, func(l Line) string { return l.Group }) }

// ByMaterial sums lines by catalogue row or material, in the order of their names; lines of none are left out.
func ByMaterial(lines []Line) []Sum {
	return slices.DeleteFunc(sums(lines, func(l Line) string { return l.Of }), func(s Sum) bool { return s.Name == "" })
}

func sums(lines []Line, name func(Line) string) []Sum {
	place := make(map[string]int)
	var out []Sum
	for _, l := range lines {
		n := name(l)
		i, known := place[n]
		if !known {
			i = len(out)
			place[n] = i
			out = append(out, Sum{Name: n, Unit: l.Unit})
		}
		s := &out[i]
		s.Mass += l.Mass
		s.Net += l.Net
		if s.Unit != l.Unit {
			s.Unit = ""
		}
		s.Of = append(s.Of, l)
	}
	for i := range out {
		if out[i].Unit == "" {
			out[i].Net = 0
		}
	}
	slices.SortFunc(out, func(a, b Sum) int { return cmp.Compare(a.Name, b.Name) })
	return out
}
