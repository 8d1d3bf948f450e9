package reckon

import (
	"cmp"
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/trade/warmth"
)

// mesh is the free share of an opening of which no free area was read: 0.3 to 0.5 of a grille with mesh (from memory).
const mesh = 0.3

// vents are the openings as they are set at night, but for those of a gas locker, which is shut off from the room.
func (w *stages) vents() []warmth.Vent {
	if w.doc.Air == nil {
		return w.boughtVents()
	}
	var out []warmth.Vent
	for _, id := range w.doc.Air.AlwaysOpen {
		if v, ok := w.vent(id, 1); ok && !w.ofGas(id) {
			v.Fixed = true
			out = append(out, v)
		}
	}
	for _, id := range build.SortedKeys(w.doc.Air.Asleep) {
		if v, ok := w.vent(id, w.doc.Air.Asleep[id].Float()); ok && !slices.Contains(w.doc.Air.AlwaysOpen, id) {
			v.About = "/air/asleep/" + id
			out = append(out, v)
		}
	}
	slices.SortStableFunc(out, func(a, b warmth.Vent) int { return cmp.Or(cmp.Compare(a.Z, b.Z), cmp.Compare(a.Free, b.Free)) })
	return out
}

// bought are vents without a lid by the beginning of their rows, with what is free of them [m2]: a round hole of 100, and a grille of that size with
// its slats (typical trade figures, from memory).
var bought = []struct {
	row  string
	free float64
	roof bool
}{{"vent-mushroom-", 0.0078, true}, {"vent-grille-floor", 0.004, false}}

// boughtVents are the vents without a lid that stand in the van. They count as air where the document says nothing of it.
func (w *stages) boughtVents() (out []warmth.Vent) {
	for _, id := range build.SortedKeys(w.things) {
		for _, b := range bought {
			s := w.places.Find(id)
			if t := w.things[id]; !strings.HasPrefix(t.Buy, b.row) || t.later() || s == nil || !s.Placed() {
				continue
			}
			v := warmth.Vent{ID: id, About: "/fittings/" + id, Free: b.free, Share: 1, Roof: b.roof, Fixed: true}
			if b.roof {
				v.Z = w.body.Roof(s.Middle[0], s.Middle[1])
			}
			out = append(out, v)
		}
	}
	return out
}

func (w *stages) vent(id string, share float64) (warmth.Vent, bool) {
	o, ok := w.doc.Shell.Openings[id]
	if !ok {
		return warmth.Vent{}, false
	}
	x, y, z := ends(o.X), ends(o.Y), ends(o.Z)
	v := warmth.Vent{ID: id, About: "/shell/openings/" + id, Z: (z[0] + z[1]) / 2, Roof: o.Through == "roof"}
	sides := [2][2]float64{x, z}
	switch o.Through {
	case "roof":
		v.Z, sides[1] = w.body.Roof((x[0]+x[1])/2, (y[0]+y[1])/2), y
	case "floor":
		v.Z, sides[1] = 0, y
	case "front", "rear":
		sides[0] = y
	}
	v.Free = mesh * (sides[0][1] - sides[0][0]) * (sides[1][1] - sides[1][0]) / 1e6
	if o.FreeArea != nil {
		v.Free = o.FreeArea.Float()
	}
	v.Free, v.Share = v.Free*share, share
	return v, v.Free > 0
}

// ofGas says whether an opening in the floor lies under what a gas bottle stands in.
func (w *stages) ofGas(id string) bool {
	o := w.doc.Shell.Openings[id]
	if w.doc.Gas == nil || !w.doc.Gas.Known() || o.Through != "floor" {
		return false
	}
	x, y := ends(o.X), ends(o.Y)
	midX, midY := (x[0]+x[1])/2, (y[0]+y[1])/2
	for _, bottle := range w.doc.Gas.Value.Bottles {
		s := w.places.Find(bottle)
		if s == nil || s.Carrier == "" {
			continue
		}
		if c := w.places.Find(s.Carrier); c != nil && c.Box.MinX <= midX && midX <= c.Box.MaxX && c.Box.MinY <= midY && midY <= c.Box.MaxY {
			return true
		}
	}
	return false
}

// airAbout is what says how the van is aired, or what should.
func (w *stages) airAbout() string {
	if vents := w.vents(); w.doc.Air == nil && len(vents) > 0 {
		return vents[0].About
	}
	switch {
	case w.doc.Air != nil && (len(w.doc.Air.AlwaysOpen) > 0 || len(w.doc.Air.Asleep) > 0):
		return "/air"
	case len(w.doc.Shell.Openings) > 0:
		return "/shell/openings"
	case len(w.doc.People) > 0:
		return "/people"
	}
	return "/vehicle"
}
