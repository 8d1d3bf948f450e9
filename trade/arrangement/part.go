package arrangement

import (
	"maps"
	"math"
	"slices"

	"tumblehome/catalogue/settings"
	"tumblehome/solve/solid"
)

// Part is what of a fitting opens: a lid, a door, or its drawers. Where several drawers are, they count as one as large as the
// front they share, since how high each is says only the joinery.
type Part struct {
	Fitting int    // in Result.Rest
	Move    string // id of its move
	Kind    PartKind
	Ways    int     // in how many ways it may be hung: a door at its left or at its right
	Travel  float64 // how far it opens [mm], or [degree] if it turns
	Inward  bool    // it is said to turn the other way, into its own fitting

	shut  Box // where it is, shut, before its fitting was turned askew
	slide move
	hangs []edgeOf

	askew float64
	about solid.Point
}

// PartKind says what a part is called.
type PartKind string

// The kinds of parts.
const (
	Lid    PartKind = "lid"
	Door   PartKind = "door"
	Flap   PartKind = "flap" // a door hung at its top or bottom
	Drawer PartKind = "drawer"
)

// edgeOf is where two faces of a part meet, about which it turns.
type edgeOf struct{ at, along side }

// Swept is what the part passes through outside its fitting, hung in one of its ways, opened by a share of its travel.
func (p *Part) Swept(way int, share float64) solid.Solid {
	if len(p.hangs) == 0 {
		return p.placed(p.slide.slide(share, p.shut, hollowed).through)
	}
	return p.placed(p.turn(way, share).swept(solid.Solid{solid.Box(p.shut)}))
}

// Opened is where the part is then.
func (p *Part) Opened(way int, share float64) solid.Solid {
	if len(p.hangs) == 0 {
		return p.placed(p.slide.slide(share, p.shut, hollowed).adds)
	}
	return p.placed(p.turn(way, share).apply(solid.Solid{solid.Box(p.shut)}))
}

// placed turns what was worked out for a fitting that stands straight to where it is.
func (p *Part) placed(s solid.Solid) solid.Solid {
	if p.askew == 0 {
		return s
	}
	return s.Turned(p.about, p.askew)
}

// Key is comparable and says all that the part is; parts of one fitting with equal keys are the same.
func (p *Part) Key() any {
	type key struct {
		shut   Box
		travel float64
		axis   int
		sign   float64
		hangs  [2]edgeOf
		ways   int
		inward bool
		askew  float64
	}
	k := key{shut: p.shut, travel: p.Travel, axis: p.slide.axis, sign: p.slide.sign, ways: p.Ways, inward: p.Inward, askew: p.askew}
	copy(k.hangs[:], p.hangs)
	return k
}

// turn about its edge.
func (p *Part) turn(way int, share float64) motion {
	hang := p.hangs[way]
	return hingeStep(p.shut, hang.at, hang.along, share*p.Travel*math.Pi/180, outward(hang.along))
}

// parts are what opens of everything that has a place.
func (w *worker) parts() []Part {
	var all []Part
	for i := range w.rest {
		if s := &w.rest[i]; s.Placed() {
			all = append(all, w.partsOf(i, s, w.in.Things[s.ID])...)
		}
	}
	return all
}

// partsOf are those that the document says and, of other kinds, those that the setting-out brings.
func (w *worker) partsOf(i int, s *Standing, thing *Thing) []Part {
	var parts []Part
	var moves []string
	if len(thing.Moves) > 0 { // most things have none, and to put none in order takes time as well
		moves = slices.Sorted(maps.Keys(thing.Moves))
	}
	own := map[PartKind]bool{}
	for _, id := range moves {
		if p, opens := w.ownPart(s, thing, moveOf(thing.Moves[id])); opens {
			p.Move = id
			own[p.Kind] = true
			parts = append(parts, p)
		}
	}
	setting, _ := settings.Get(thing.Make)
	for _, m := range setting.Moves {
		for _, p := range w.settingParts(s, thing, m) {
			if !own[p.Kind] {
				parts = append(parts, p)
			}
		}
	}
	for j := range parts {
		parts[j].Fitting = i
		parts[j].askew, parts[j].about = s.askew, middleOf(s.own)
		parts[j].Ways = max(1, len(parts[j].hangs))
	}
	return parts
}

// settingParts are the parts that a setting-out brings: as many doors as the document counts, one if it does not say.
func (w *worker) settingParts(s *Standing, thing *Thing, m settings.Move) []Part {
	back := w.back(s, thing)
	real := settingMove(m, back, s.own)
	drawers, doors := frontsOf(thing)
	columns := doors + min(1, drawers)
	switch {
	case m.ID == "drawer" && (drawers > 0 || thing.Make == "drawer" && len(thing.Moves) == 0):
		return []Part{drawerPart(m.ID, column(s.own, back, 0, max(1, columns)), real)}
	case m.ID == "door" && m.Hinge == "front left":
		var parts []Part
		for c := columns - doors; c < columns; c++ {
			leaf := column(s.own, back, c, columns)
			parts = append(parts, doorPart(m, panelIn(leaf, back^1, max(thing.Board, 1)), back))
		}
		return parts
	case bodies[thing.Make] == hollowed && m.Hinge != "":
		return []Part{turningPart(m.ID, s.own, real, back, thing.Board)}
	}
	return nil
}

// frontsOf is how many drawers and doors a made thing has. What is known by its door has one if nothing is said.
func frontsOf(thing *Thing) (drawers, doors int) {
	if f := thing.Fronts; f != nil {
		if f.Drawers != nil {
			drawers = *f.Drawers
		}
		if f.Doors != nil {
			doors = *f.Doors
		}
		return drawers, doors
	}
	if thing.Make == "locker" || thing.Make == "wardrobe" {
		return 0, 1
	}
	return 0, 0
}

// column of a front that is shared evenly, counted from the left hand of who stands before it.
func column(b Box, back side, c, columns int) Box {
	leftHand := realFace("left", back)
	from, till := &b.MinX, &b.MaxX
	if axisOf(leftHand) == 1 {
		from, till = &b.MinY, &b.MaxY
	}
	if high(leftHand) {
		c = columns - 1 - c
	}
	wide := (*till - *from) / float64(columns)
	*from, *till = *from+float64(c)*wide, *from+float64(c+1)*wide
	return b
}

func drawerPart(id string, shut Box, m move) Part {
	return Part{Move: id, Kind: Drawer, Travel: math.Abs(m.by), shut: shut, slide: m}
}

// doorPart may be hung at either side.
func doorPart(m settings.Move, leaf Box, back side) Part {
	leftHand := realFace("left", back)
	return Part{Move: m.ID, Kind: Door, Travel: m.Turn, shut: leaf, hangs: []edgeOf{{leftHand, back ^ 1}, {leftHand ^ 1, back ^ 1}}}
}

// turningPart is a lid or a flap, hung where its move says.
func turningPart(id string, b Box, m move, back side, board float64) Part {
	f := orderFaces(m.faces, hollowed, back)
	p := Part{Move: id, Kind: Flap, Travel: math.Abs(m.by), Inward: m.by < 0, shut: panelIn(b, f[1], max(board, 1)), hangs: []edgeOf{{f[0], f[1]}}}
	switch {
	case f[1] == roof:
		p.Kind = Lid
		p.shut = rimmed(p.shut, 3-axisOf(f[0])-axisOf(f[1]))
	case axisOf(f[0]) != 2:
		p.Kind = Door
	}
	return p
}

// rim is what a lid leaves at each end of what it closes [mm]: common practice, no source.
const rim = 20

// rimmed is a lid without the rims at its ends along an axis.
func rimmed(b Box, axis int) Box {
	if axis == 0 {
		b.MinX, b.MaxX = b.MinX+rim, b.MaxX-rim
	} else {
		b.MinY, b.MaxY = b.MinY+rim, b.MaxY-rim
	}
	return b
}

// ownPart is a part that the document itself says: a lid, door or drawer of a hollow thing.
func (w *worker) ownPart(s *Standing, thing *Thing, m move) (Part, bool) {
	still := m.kind == slides && m.by == 0
	if bodies[thing.Make] != hollowed && !(thing.Make == "drawer" && still) {
		return Part{}, false
	}
	switch m.kind {
	case slides:
		return drawerPart("", s.own, m), true
	case hinges:
		return turningPart("", s.own, m, w.back(s, thing), thing.Board), axisOf(m.faces[0]) != axisOf(m.faces[1])
	}
	return Part{}, false
}
