package web

import (
	"maps"
	"math"
	"net/http"
	"slices"

	"tumblehome/build"
	"tumblehome/build/begin"
	"tumblehome/build/tree"
	"tumblehome/catalogue/settings"
	"tumblehome/internal/store"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/trade/arrangement"
	"tumblehome/trade/finding"
)

// spot is where in the van a thing without a place may be put, in a builder's words.
type spot struct {
	ID, Words string
	mode      string // the only way of standing that it must be free in; "" for all of them
}

// everywhere are the spots in the order in which they are tried. The aisle is walked in by day and often slept over by night.
var everywhere = []spot{
	{"right", "at the right side", ""}, {"left", "at the left side", ""}, {"rear", "at the rear", ""}, {"middle", "on the floor in the middle", "day"},
}

// spotsOf are the spots at which a thing is tried: what lies from side to side goes to the rear.
func spotsOf(t arrangement.Thing) []spot {
	if spans(t.Make) || fills(t) {
		return everywhere[2:3]
	}
	return everywhere
}

// spotOffered is a spot as it is offered for one thing.
type spotOffered struct {
	spot
	taken bool // something is in the way wherever it is put there
}

// spotsFor are the spots for a thing, those first where it is not plain to see that something is in the way.
func (v view) spotsFor(id string) []spotOffered {
	var free, taken []spotOffered
	for _, one := range spotsOf(v.Thing(id)) {
		places := v.placesAt(id, one.ID)
		if len(places) > 0 && !slices.ContainsFunc(places, func(p build.Place) bool { return !v.crowded(id, p) }) {
			taken = append(taken, spotOffered{one, true})
		} else {
			free = append(free, spotOffered{one, false})
		}
	}
	return append(free, taken...)
}

// searchStep is how far apart the places are that are tried along a side [mm].
const searchStep = 100

// freePlace is the first place at one of some spots where a thing of the build is in nobody's way, once it is turned over by another patch.
func (s *Server) freePlace(now *state, id string, over tree.Patch, spots []spot) (build.Place, bool) {
	for _, where := range spots {
		for _, place := range now.placesAt(id, where.ID) {
			if now.crowded(id, place) {
				continue
			}
			if s.isFree(now, now.placing(id, over, place), where.mode, id) {
				return place, true
			}
		}
	}
	return build.Place{}, false
}

// turnedOver is the patch that turns a thing over, left to right, with all in it and upon it, if it is cut to the other side of the van than the one
// it is put at; else it is empty.
func (s *state) turnedOver(id, side string) tree.Patch {
	other := map[string]string{"left": "right", "right": "left"}[side]
	scribed := s.Doc.Fittings[id].Scribe
	if !slices.Contains(scribed, other) || slices.Contains(scribed, side) {
		return tree.Patch{}
	}
	doc := *s.Doc
	doc.Fittings = maps.Clone(doc.Fittings)
	for _, one := range s.withCarried([]string{id}) {
		doc.Fittings[one] = begin.Mirrored(doc.Fittings[one])
	}
	return tree.Difference(build.Encode(s.Doc), build.Encode(&doc))
}

// placesAt are the places at one spot, from the front rearwards.
func (s *state) placesAt(id, where string) []build.Place {
	room, thing := s.Lining.Room, s.Thing(id)
	if room == nil {
		return nil
	}
	if spans(thing.Make) {
		return s.acrossRear(id)
	}
	up := heightFor(thing.Make)
	if where == "rear" {
		var out []build.Place
		for _, y := range []build.AxisRule{{Form: build.Mid}, against("right"), against("left")} {
			out = append(out, build.Place{X: against("rear"), Y: y, Z: up})
		}
		return out
	}
	across := build.AxisRule{Form: build.Mid}
	if thing.Where == "" && where != "middle" {
		across = against(where)
	}
	var out []build.Place
	for x := math.Ceil(room.Front()); x+thing.Size[0] <= room.Rear(); x += searchStep {
		out = append(out, build.Place{X: build.AxisRule{Form: build.LowAt, A: build.Point{Plus: quantity.Length(x)}}, Y: across, Z: up})
	}
	return out
}

func against(face string) build.AxisRule {
	return build.AxisRule{Form: build.Against, A: build.Point{Face: face}}
}

// heightFor is how high something made usually hangs; what stands on the floor needs no word.
func heightFor(make string) build.AxisRule {
	setting, ok := settings.Get(make)
	if !ok || setting.Carried != settings.Side && setting.Carried != settings.Roof {
		return build.AxisRule{}
	}
	return against("roof")
}

// tooDeep is how deep in something else a place is not worth being reckoned [mm].
const tooDeep = 60

// crowded says of a place on the floor, by boxes alone, that it is deep in something that stands there by day: a reckoning would say the
// same, later.
func (s *state) crowded(id string, place build.Place) bool {
	room, thing, day := s.Lining.Room, s.Thing(id), s.Places.Mode("day")
	if day == nil || thing.Where != "" || place.X.Form != build.LowAt || place.Z.Form != build.LeftOut {
		return false
	}
	x, wide := place.X.A.Plus.Float(), thing.Size[1]
	low := -wide / 2
	switch z := room.Floor() + 300; place.Y.A.Face {
	case "right":
		low = room.Right(x+thing.Size[0]/2, z) - wide
	case "left":
		low = room.Left(x+thing.Size[0]/2, z)
	}
	box := arrangement.Box{
		MinX: x + tooDeep, MaxX: x + thing.Size[0] - tooDeep, MinY: low + tooDeep, MaxY: low + wide - tooDeep,
		MinZ: room.Floor() + tooDeep, MaxZ: room.Floor() + thing.Size[2] - tooDeep,
	}
	return !box.Empty() && slices.ContainsFunc(day.All, func(other arrangement.Standing) bool {
		return other.ID != id && other.Placed() && other.Where == "" && other.Solid.Bounds().Meets(box)
	})
}

// isFree reports whether a patch brings no fault about some fittings, in one mode or in any.
func (s *Server) isFree(now *state, patch tree.Patch, mode string, ids ...string) bool {
	doc, err := build.DecodeTree(tree.Merge(now.Node, patch), s.desk.rows)
	if err != nil {
		return false
	}
	for _, f := range reckon.Compare(now.Reckoning, s.desk.reckon(doc, now.Day)).Appeared {
		if f.Severity < finding.Close || !startsWith(f.Code, "fit") || mode != "" && f.Mode != "" && f.Mode != mode {
			continue
		}
		for _, id := range ids {
			if aboutThing(f, string(tree.PointerTo("fittings", id))) {
				return false
			}
		}
	}
	return true
}

// putFitting puts what waits without a place at a spot, where it is in nobody's way there, else at the spot's first place.
func (s *Server) putFitting(w http.ResponseWriter, r *http.Request) {
	base, err := baseOf(r)
	if err == nil {
		err = s.savePlace(r, base)
	}
	if err != nil {
		s.refuse(w, r, err, nil)
		return
	}
	s.done(w, r, r.PathValue("id"))
}

func (s *Server) savePlace(r *http.Request, base int) error {
	then, err := s.desk.at(r.Context(), base)
	if err != nil {
		return err
	}
	id := r.PathValue("id")
	i := slices.IndexFunc(everywhere, func(one spot) bool { return one.ID == r.PostFormValue("at") })
	if _, known := then.Doc.Fittings[id]; !known || i < 0 {
		return errUnreadable("there is no such thing, or no such place in the van")
	}
	words := then.name(id) + " put " + everywhere[i].Words
	over := then.turnedOver(id, everywhere[i].ID)
	if !over.Empty() {
		words += ", turned over to that side"
	}
	place, ok := s.freePlace(then, id, over, everywhere[i:i+1])
	if all := then.placesAt(id, everywhere[i].ID); !ok && len(all) > 0 {
		place, words = all[0], words+", where it is in the way of something"
	} else if !ok {
		return errUnreadable(capital(then.name(id)) + " is longer than the van; make it shorter first.")
	}
	words += then.cutWords(id, place)
	_, err = s.desk.save(r.Context(), store.Edit{Base: base, Patch: then.placing(id, over, place), Words: words})
	return err
}
