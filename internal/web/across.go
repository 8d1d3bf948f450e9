package web

import (
	"math"
	"slices"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue/settings"
	"tumblehome/quantity"
	"tumblehome/trade/arrangement"
)

// Heights of a bed that lies across the van from side to side [mm above the finished floor]: common practice, no source.
const (
	lowestBunk  = 350.0 // from there up its height is looked for
	highestBunk = 700.0 // the sides of a van stand farthest apart below this
	overBunk    = 640.0 // from one bunk up to the next
	bunkStep    = 10.0
	bunkLoose   = 10.0 // what it is shorter than the way between the linings, so that it goes in
	aboutWidest = 30.0 // a height counts as clear of the wheel arches where this little is lost of the greatest width
)

// spans says of a made thing that it is a bed carried by both sides of the van, which lies across.
func spans(make string) bool {
	s, ok := settings.Get(make)
	return ok && s.Carried == settings.Side && s.Does(settings.Lies) && s.Y.Likely > s.X.Likely
}

// fills says of a bed that it stands on the floor and is cut to both sides of the van.
func fills(t arrangement.Thing) bool {
	s, ok := settings.Get(t.Make)
	return ok && s.Carried == settings.Floor && s.Does(settings.Lies) && slices.Contains(t.Scribe, "left") && slices.Contains(t.Scribe, "right")
}

// acrossRear are the places of such a bed at the rear: the lowest clear of the wheel arches, then one above it.
func (s *state) acrossRear(id string) []build.Place {
	deep, thick := s.Thing(id).Size[0], s.Thing(id).Size[2]
	from := s.Lining.Room.Rear() - deep
	widest := 0.0
	for z := lowestBunk; z <= highestBunk; z += bunkStep {
		widest = max(widest, s.between(from, z, thick))
	}
	low := lowestBunk
	for low < highestBunk && s.between(from, low, thick) < widest-aboutWidest {
		low += bunkStep
	}
	low = math.Ceil((s.Lining.Room.Floor()+low)/bunkStep) * bunkStep
	var out []build.Place
	for _, z := range []float64{low, low + overBunk} {
		out = append(out, build.Place{X: against("rear"), Y: build.AxisRule{Form: build.Mid}, Z: build.AxisRule{Form: build.LowAt, A: build.Point{Plus: quantity.Length(z)}}})
	}
	return out
}

// between is the least way between the linings of both sides, the same on both sides of the middle, from some place to the rear and for
// a thickness from a height above the floor [mm].
func (s *state) between(from, up, thick float64) float64 {
	room := s.Lining.Room
	least := math.Inf(1)
	for x := max(from, room.Front()); x <= room.Rear(); x += 2 * bunkStep {
		for _, z := range []float64{room.Floor() + up, room.Floor() + up + thick} {
			least = min(least, 2*room.Right(x, z), -2*room.Left(x, z))
		}
	}
	return least
}

// placing is the patch that puts a thing somewhere, turned over by another patch. What lies from side to side is cut to the width that there is.
func (s *state) placing(id string, over tree.Patch, place build.Place) tree.Patch {
	put := tree.Merge(tree.Merge(s.Node, over), tree.Setting(tree.PointerTo("fittings", id, "at"), withPlace(nil, place).At("/at")))
	if long := s.longAt(id, place); long > 0 {
		put = tree.Merge(put, tree.Setting(tree.PointerTo("fittings", id, "size", "y"), &tree.Node{Kind: tree.Scalar, Text: long.String()}))
	}
	return tree.Difference(s.Node, put)
}

// longAt is how long a thing is cut that lies from side to side and is longer than the way between them; 0 where nothing is cut.
func (s *state) longAt(id string, place build.Place) quantity.Length {
	t := s.Thing(id)
	from, there := s.Lining.Room.Rear()-t.Size[0], 0.0
	switch {
	case spans(t.Make):
		there = s.between(from, place.Z.A.Plus.Float()-s.Lining.Room.Floor(), t.Size[2]) - bunkLoose
	case fills(t): // one lies on its top
		there = s.between(from, t.Size[2], 0)
	default:
		return 0
	}
	if there = math.Floor(there/bunkStep) * bunkStep; there <= 0 || there >= t.Size[1] {
		return 0
	}
	return quantity.Length(there)
}

// cutWords say that a thing is cut to the width there is where it is put.
func (s *state) cutWords(id string, place build.Place) string {
	if long := s.longAt(id, place); long > 0 {
		return ", cut to the " + long.String() + " mm that there are between the linings"
	}
	return ""
}
