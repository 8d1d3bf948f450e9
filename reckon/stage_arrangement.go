package reckon

import (
	"maps"
	"slices"

	"tumblehome/build"
	"tumblehome/quantity"
	"tumblehome/trade/arrangement"
)

// usualSkin is the thickness of the sheet where nobody measured it [mm]: common practice, no source.
const usualSkin quantity.Length = 0.8

// floorPan is how far the underside of the load floor lies below its crests [mm]: pressings and the sheet, typical, from memory.
const floorPan = 30

// outerSkin is the van from outside: what things on the roof lie on, and what things behind the doors hang from.
type outerSkin struct {
	digestedBody
	skin float64
}

func (o outerSkin) ContentDigest() Digest { return digestOf("skin", 1, [...]any{o.key, o.skin}) }

func (o outerSkin) Left(x, z float64) float64  { return -o.Right(x, z) }
func (o outerSkin) Right(x, z float64) float64 { return o.Half(x, z) + o.skin }
func (o outerSkin) Roof(x, y float64) float64  { return o.digestedBody.Roof(x, y) + o.skin }
func (o outerSkin) Floor() float64             { return o.digestedBody.Floor() - floorPan }
func (o outerSkin) Front() float64             { return o.Start() - o.skin }
func (o outerSkin) Rear() float64              { return o.End() + o.skin }

// highest is the top of the outer roof, looked for along the middle.
func (o outerSkin) highest() float64 {
	top := 0.0
	const steps = 20
	for i := range steps + 1 {
		top = max(top, o.Roof(o.Start()+(o.End()-o.Start())*float64(i)/steps, 0))
	}
	return top
}

func outer(doc *build.Document, body digestedBody) outerSkin {
	skin := usualSkin
	if doc.Shell.Skin != nil {
		skin = *doc.Shell.Skin
	}
	return outerSkin{body, skin.Float()}
}

// ground is the height of the road under the van [mm]: the bare van's height below its roof, else what is usual.
func ground(doc *build.Document, skin outerSkin) float64 {
	if doc.Vehicle.Height != nil {
		return skin.highest() - doc.Vehicle.Height.Float()
	}
	return skin.Floor() - usualFloorHeight
}

// usualFloorHeight is how high the underside of a load floor stands above the road [mm]: typical, from memory.
const usualFloorHeight = 520

// workArrangement says where every fitting is, in every mode. What it gave last time in the same room spares it most of the work and changes
// nothing in the answer, so it does not count among the inputs.
func (m *Machine) workArrangement(doc *build.Document, room digestedRoom, skin outerSkin, things map[string]thing) (arrangement.Result, Digest) {
	in := arrangement.Inputs{Room: room, Outside: skin, Ground: ground(doc, skin), Openings: doc.Shell.Openings, Modes: doc.Modes}
	key := struct {
		arrangement.Inputs
		Listed []listed
	}{in, list(things)}
	return workBy(m, "arrangement", 2, key, func() arrangement.Result {
		in.Things = make(map[string]*arrangement.Thing, len(key.Listed))
		for i := range key.Listed {
			in.Things[key.Listed[i].ID] = &key.Listed[i].Thing
		}
		in.RoomKey = string(room.key[:])
		in.Before = m.placesBefore()
		result := arrangement.Work(in)
		m.keepPlaces(&result)
		return result
	})
}

// listed is a thing as the arrangement wants it: many are digested sooner in a list than in a map.
type listed struct {
	ID string
	arrangement.Thing
}

func list(things map[string]thing) []listed {
	all := make([]listed, len(things))
	for i, id := range slices.Sorted(maps.Keys(things)) {
		t := things[id]
		all[i] = listed{id, t.placeable()}
	}
	return all
}

func (m *Machine) placesBefore() *arrangement.Result {
	m.mu.Lock()
	defer m.mu.Unlock()
	return m.places
}

func (m *Machine) keepPlaces(result *arrangement.Result) {
	m.mu.Lock()
	defer m.mu.Unlock()
	m.places = result
}
