package warmth

import (
	"fmt"
	"slices"
)

// Films and sheets that are proposed: closed-cell foam as the catalogue has it, and a polyethylene membrane of sd 50 m (ISO 10456, from memory).
var (
	sheet = Material{ID: "sheet", Conducts: 0.04, Vapour: 1500, Density: 30, Capacity: 2300}
	film  = Material{ID: "membrane", Conducts: 0.33, Vapour: 250000, Density: 600, Capacity: 2200}
)

const filmThick = 0.2 // mm

// glue lays a closed-cell sheet on the steel beneath all else, the thinner that keeps water from gathering.
func (r *Result) glue(pointer string) []Remedy {
	const laid = "/new"
	for _, thick := range []float64{10, 20} {
		in := r.withLayer(pointer, Course{Pointer: laid, Of: sheet}, func(*Field, int) int { return 0 }).regrown(laid, thick, 0)
		if !r.again(in, "warmth.winter.water").still("warmth.winter.water") {
			return []Remedy{{Kind: Glue, About: pointer, By: thick, Words: fmt.Sprintf("glue %.0f mm of closed-cell foam to the steel first, all over the bays", thick)}}
		}
	}
	return nil
}

// membrane lays a film of a great resistance to vapour on the warm side of a layer.
func (r *Result) membrane(pointer string) []Remedy {
	const laid = "/new"
	in := r.withLayer(pointer, Course{Pointer: laid, Of: film, Share: 1}, func(_ *Field, at int) int { return at + 1 }).regrown(laid, filmThick, filmThick)
	if r.again(in, "warmth.winter.water").still("warmth.winter.water") {
		return nil
	}
	return []Remedy{{Kind: Membrane, About: pointer, Words: "lay a vapour membrane on the warm side of the insulation, its edges taped"}}
}

// withLayer puts a layer of no thickness yet into every field that has another, at a place counted from that.
func (r *Result) withLayer(pointer string, c Course, place func(f *Field, at int) int) Inputs {
	in := r.in
	in.Fields = slices.Clone(in.Fields)
	for i := range in.Fields {
		f := &in.Fields[i]
		at := slices.IndexFunc(f.Courses, func(o Course) bool { return o.Pointer == pointer })
		if at < 0 {
			continue
		}
		k, next := place(f, at), c
		if next.InBay, next.OnRib = [2]float64{}, [2]float64{f.deepest(), f.deepest()}; k > 0 {
			under := f.Courses[k-1]
			next.InBay, next.OnRib = [2]float64{under.InBay[1], under.InBay[1]}, [2]float64{under.OnRib[1], under.OnRib[1]}
		}
		f.Courses = slices.Insert(slices.Clone(f.Courses), k, next)
	}
	return in
}
