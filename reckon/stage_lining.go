package reckon

import (
	"math"
	"strconv"

	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/quantity"
	"tumblehome/trade/lining"
	"tumblehome/trade/shell"
)

// digestedBody and digestedRoom pass on what an earlier stage made, under the key of that stage.
type digestedBody struct {
	*shell.Body
	key Digest
}

func (b digestedBody) ContentDigest() Digest { return b.key }

type digestedRoom struct {
	*lining.Room
	key Digest
}

func (r digestedRoom) ContentDigest() Digest { return r.key }

// workLining lays the layers on the body.
func (m *Machine) workLining(doc *build.Document, rows *catalogue.Catalogue, body digestedBody, today quantity.Date) (lining.Result, Digest) {
	in := lining.Inputs{Body: body, Assumed: body.Assumed, Layers: layers(doc.Lining, rows, today)}
	if doc.Shell.Pressings != nil {
		in.Pressings = doc.Shell.Pressings.Depth
	}
	for _, surface := range []string{shell.Left, shell.Right, shell.Roof} {
		for _, b := range body.Bays(surface) {
			in.Bays = append(in.Bays, lining.Bay{ID: b.ID, Surface: b.Surface, From: b.From, To: b.To, Depth: b.Depth, Steel: b.Steel})
		}
	}
	for _, a := range body.Arches() {
		m2, centre := body.ArchArea(a)
		in.Arches = append(in.Arches, lining.Arch{ID: a.ID, Side: a.Side, From: a.From, To: a.To, Face: a.Face, Up: a.Up, Area: m2, Centre: centre})
	}
	for _, d := range body.Doors() {
		in.Doors = append(in.Doors, lining.Door(d))
	}
	return work(m, "lining", 1, lining.Work, in)
}

// layers reads what is laid on each surface; left and right win over sides.
func layers(l build.Lining, rows *catalogue.Catalogue, today quantity.Date) map[string][]lining.Layer {
	out := map[string][]lining.Layer{}
	put := func(surface, key string, laid []build.Choice[build.Layer]) {
		if len(laid) == 0 {
			return
		}
		out[surface] = nil
		for i, choice := range laid {
			if choice.Known() {
				pointer := "/lining/" + key + "/" + strconv.Itoa(i)
				out[surface] = append(out[surface], layer(pointer, choice.Value, rows, today))
			}
		}
	}
	put(lining.Floor, "floor", l.Floor)
	put(lining.Left, "sides", l.Sides)
	put(lining.Right, "sides", l.Sides)
	put(lining.Left, "left", l.Left)
	put(lining.Right, "right", l.Right)
	put(lining.Roof, "roof", l.Roof)
	put(lining.Doors, "doors", l.Doors)
	put(lining.Front, "front", l.Front)
	return out
}

func layer(pointer string, l build.Layer, rows *catalogue.Catalogue, today quantity.Date) lining.Layer {
	out := lining.Layer{Pointer: pointer, Of: material(l.Lay, rows), Thick: valueOf(l.Thick), Cover: valueOf(l.Cover), Times: valueOf(l.Times),
		Ribs: lining.Meets(l.Ribs), Weighed: l.Mass, Fitted: isFitted(l.Fitted, today)}
	out.From, out.To = heights(l.Z)
	if l.Between != nil {
		out.Between = &lining.Battens{Of: material(l.Between.Batten, rows), Every: l.Between.Every}
	}
	if len(l.Bays) > 0 {
		out.Bays = map[string]lining.Layer{}
		for bay, instead := range l.Bays {
			out.Bays[bay] = layer(pointer+"/bays/"+bay, instead, rows, today)
		}
	}
	return out
}

// heights reads `floor..1000`: a face is the edge of the surface, which the lining knows.
func heights(rule *build.AxisRule) (from, to *quantity.Length) {
	if rule == nil || rule.Form != build.Between {
		return nil, nil
	}
	if rule.A.Face == "" {
		from = &rule.A.Plus
	}
	if rule.B.Face == "" {
		to = &rule.B.Plus
	}
	return from, to
}

// material is what the lining needs to know of one.
func material(name string, rows *catalogue.Catalogue) lining.Material {
	m, _ := rows.Material(name)
	return lining.Material{ID: name, Name: m.Title, Kind: layerKind(m), Thick: m.Thick, Wide: m.Wide, PerArea: m.PerArea, PerLength: m.PerLength,
		Spread: quantity.Share(m.Spread / math.Sqrt(7))} // the standard deviation of an even PERT guess
}

// thickestSlat parts slats and cladding, which cover a surface, from battens, which carry what does: common practice, no source.
const thickestSlat quantity.Length = 12

// layerKind says how a material behaves in a build-up.
func layerKind(m catalogue.Material) lining.Kind {
	switch {
	case m.Insulates:
		return lining.Fill
	case m.Group == "insulation":
		return lining.Patch
	case m.Group == "timber" && m.Kind == "length" && m.Thick > thickestSlat:
		return lining.Batten
	case m.Group == "floor" || m.Group == "lining" || m.Group == "soft":
		return lining.Cover
	}
	return lining.Board
}

// isFitted reports whether something is in the van today.
func isFitted(date *quantity.Date, today quantity.Date) bool {
	return date != nil && (today.IsZero() || !today.Before(*date))
}
