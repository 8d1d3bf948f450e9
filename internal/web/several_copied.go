package web

import (
	"math"
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/reckon"
	"tumblehome/trade/arrangement"
)

// withCarried are fittings and all that stands in or upon them, at any depth.
func (s *state) withCarried(ids []string) []string {
	all := slices.Clone(ids)
	for i := 0; i < len(all); i++ {
		for _, id := range build.SortedKeys(s.Doc.Fittings) {
			if f := s.Doc.Fittings[id]; (f.In == all[i] || f.Upon == all[i]) && !slices.Contains(all, id) {
				all = append(all, id)
			}
		}
	}
	slices.Sort(all)
	return all
}

// copyNames are free ids for copies, in the order of the originals.
func (s *state) copyNames(ids []string) []string {
	taken := make(map[string]bool, len(s.Doc.Fittings)+len(ids))
	for id := range s.Doc.Fittings {
		taken[id] = true
	}
	names := make([]string, len(ids))
	for i, id := range ids {
		names[i] = free(shortID(id), taken)
		taken[names[i]] = true
	}
	return names
}

// beside is the patch that puts copies behind, before, to the right or to the left of the originals, where they are in nobody's way and not
// in the cab. Where there is no such place, one alone waits for one, as new things do; several stay together, in the way of something.
func (s *Server) beside(then *state, ids, names []string, alone bool) (patch tree.Patch, found bool, err error) {
	inPlace := copied(then.Node, ids, names)
	doc, err := build.DecodeTree(inPlace, s.desk.rows)
	if err != nil {
		return tree.Patch{}, false, err
	}
	there := s.desk.reckon(doc, then.Day)
	box, placed := boxAbout(there, names)
	if !placed {
		return tree.Difference(then.Node, inPlace), true, nil
	}
	long, wide := math.Ceil(box.MaxX-box.MinX), math.Ceil(box.MaxY-box.MinY)
	var first tree.Patch
	for _, way := range [][2]float64{{long, 0}, {-long, 0}, {0, wide}, {0, -wide}} {
		var moves []reckon.Move
		for _, name := range names {
			if one := there.Places.Find(name); one != nil && one.Placed() {
				moves = append(moves, reckon.Move{Fitting: name, DX: way[0], DY: way[1]})
			}
		}
		moved, ok := there.MovePatch(moves...)
		if !ok {
			return tree.Difference(then.Node, inPlace), true, nil
		}
		patch := tree.Difference(then.Node, tree.Merge(inPlace, moved))
		if leavesRoom(there, box, way[0]) {
			continue
		}
		if first.Empty() {
			first = patch
		}
		if s.isFree(then, patch, "", names...) {
			return patch, true, nil
		}
	}
	if waits := waiting(inPlace, names); alone && !tree.Equal(waits, inPlace) {
		return tree.Difference(then.Node, waits), false, nil
	}
	return first, true, nil // what stands in another thing stays in it
}

// leavesRoom reports whether a move along the van takes what stands in the living space out of it, into the cab for one.
func leavesRoom(r *reckon.Reckoning, box arrangement.Box, along float64) bool {
	room := r.Lining.Room
	inside := func(by float64) bool { return box.MinX+by >= room.Front()-1 && box.MaxX+by <= room.Rear()+1 }
	return room != nil && inside(0) && !inside(along)
}

// waiting is a document in which those copies that nothing carries have no place yet.
func waiting(doc *tree.Node, names []string) *tree.Node {
	for _, name := range names {
		at := tree.PointerTo("fittings", name)
		if one := doc.At(at); one.Get("in") == nil && one.Get("upon") == nil {
			doc = tree.Merge(doc, tree.Setting(at.Then("at"), tree.Plain(undecidedPlace)))
		}
	}
	return doc
}

// copied is a document with copies of some fittings: planned, free to move, and standing on one another as the originals do.
func copied(doc *tree.Node, ids, names []string) *tree.Node {
	out := doc
	for i, id := range ids {
		at := tree.PointerTo("fittings", id)
		one := tree.Remove(tree.Remove(doc, at.Then("fitted")), at.Then("locked")).At(at)
		if called := valueText(one, "/called"); called != "" {
			one = set(one, []string{"called"}, called+" "+numberOf(names[i]))
		}
		out = tree.Merge(out, tree.Setting(tree.PointerTo("fittings", names[i]), renamed(one, ids, names)))
	}
	return out
}

// numberOf is the number that tells a copy's id from that of its original, for its name to be told apart by as well.
func numberOf(id string) string { return id[strings.LastIndexByte(id, '-')+1:] }

// renamed is a fitting that stands on the copies instead of the originals.
func renamed(one *tree.Node, ids, names []string) *tree.Node {
	for i, id := range ids {
		for _, host := range []string{"in", "upon"} {
			if valueText(one, tree.Pointer("/"+host)) == id {
				one = set(one, []string{host}, names[i])
			}
		}
		for _, axis := range []string{"x", "y", "z"} {
			if text := valueText(one, tree.Pointer("/at/"+axis)); namesFace(text, id) {
				one = set(one, []string{"at", axis}, withFaceOf(text, id, names[i]))
			}
		}
	}
	return one
}

func namesFace(rule, id string) bool { return withFaceOf(rule, id, "") != rule }

// withFaceOf is a rule with the faces of another fitting in place of those of one.
func withFaceOf(rule, id, other string) string {
	parsed, err := build.ParseAxisRule(rule)
	if err != nil {
		return rule
	}
	for _, p := range []*build.Point{&parsed.A, &parsed.B} {
		if p.Of == id {
			p.Of = other
		}
	}
	return parsed.String()
}

// boxAbout is the box about those fittings that have a place.
func boxAbout(r *reckon.Reckoning, ids []string) (box arrangement.Box, placed bool) {
	for _, id := range ids {
		one := r.Places.Find(id)
		switch {
		case one == nil || !one.Placed():
		case !placed:
			box, placed = one.Box, true
		default:
			box = box.Join(one.Box)
		}
	}
	return box, placed
}
