package begin

import (
	"math"
	"strings"

	"tumblehome/quantity"
)

// A Body is one of the nine outlines, with what is typical of vans like it.
type Body struct {
	ID    string // as in shell.quick.body
	Name  string
	Known string // how to tell it, in plain words

	Length, Knee, Arches, Height quantity.Length // typical readings [mm]
	DoorWidth, DoorHeight        quantity.Length
	axle                         quantity.Length // middle of the rear arches behind x = 0
	datum                        quantity.Length // x = 0 behind the front axle
	front, rear                  quantity.Length // overhangs
	width, tall                  quantity.Length // of the van from outside
	gross                        quantity.Mass   // plate
	tank                         quantity.Volume
}

type lengthClass struct {
	id, name, known string
	length          quantity.Length
	axle            float64         // share of the length, the middle of the arches
	beyond          quantity.Length // from the end of the load floor to the end of the van
	mass            quantity.Mass   // what the plate has more than that of a short van
	door            quantity.Length // the widest side door there is room for before the wheel arch
}

type heightClass struct {
	id, name, known              string
	height, knee, arches         quantity.Length
	doorWidth, doorHeight        quantity.Length
	datum, front, width, outside quantity.Length
	gross                        quantity.Mass
	tank                         quantity.Volume
}

// Typical figures, from memory of vans of each class. The readings are those of the generic bodies, which a test holds.
var (
	lengths = []lengthClass{
		{id: "short", name: "short", known: "a bed lengthwise reaches the front seats", length: 1800, axle: 0.66, beyond: 140, mass: 0, door: 774},
		{id: "mid", name: "middling", known: "a bed lengthwise, and about a metre over", length: 2900, axle: 0.70, beyond: 180, mass: 600, door: 1508},
		{id: "long", name: "long", known: "a bed lengthwise, and as much again", length: 4000, axle: 0.665, beyond: 200, mass: 800, door: 2060},
	}
	heights = []heightClass{
		{id: "low", name: "low", known: "you sit or kneel in it", height: 1200, knee: 1530, arches: 1230, doorWidth: 660, doorHeight: 1060,
			datum: 1500, front: 850, width: 1800, outside: 1830, gross: 2000, tank: 55},
		{id: "mid", name: "middling", known: "you just stand in it while it is bare, with your head bent once it is lined", height: 1780, knee: 1865, arches: 1345, doorWidth: 1150, doorHeight: 1430,
			datum: 1290, front: 930, width: 1975, outside: 2390, gross: 2700, tank: 80},
		{id: "high", name: "high", known: "you stand upright in it", height: 2000, knee: 1950, arches: 1420, doorWidth: 1250, doorHeight: 1780,
			datum: 1330, front: 980, width: 2060, outside: 2650, gross: 2700, tank: 90},
	}
)

// Typical shares of the gross mass that the plate allows each axle.
const (
	frontShare = 0.54
	rearShare  = 0.58
)

// Bodies are the nine outlines, short to long and low to high.
func Bodies() []Body {
	var all []Body
	for _, l := range lengths {
		for _, h := range heights {
			all = append(all, bodyOf(l, h))
		}
	}
	return all
}

// BodyOf is the outline of this id; an unknown one is the middle one.
func BodyOf(id string) Body {
	for _, b := range Bodies() {
		if b.ID == id {
			return b
		}
	}
	return bodyOf(lengths[1], heights[1])
}

func bodyOf(l lengthClass, h heightClass) Body {
	b := Body{
		ID: l.id + "-" + h.id, Name: l.name + " and " + h.name, Known: h.known + "; " + l.known,
		Length: l.length, Knee: h.knee, Arches: h.arches, Height: h.height, DoorWidth: min(h.doorWidth, l.door), DoorHeight: h.doorHeight,
		axle: share(l.length, l.axle), datum: h.datum, front: h.front, width: h.width, tall: h.outside, tank: h.tank,
	}
	if l.name == h.name {
		b.Name = l.name
	}
	b.rear = l.length + l.beyond - b.axle
	b.gross = min(h.gross+l.mass, 3500)
	return b
}

// class is the length and the height of a body: "mid", "low".
func class(body string) (length, height string) {
	length, height, _ = strings.Cut(body, "-")
	return length, height
}

// axleAt is where the rear axle lies for a load floor of this length: under the middle of the arches.
func (b Body) axleAt(length quantity.Length) quantity.Length {
	return quantity.Length(math.Round(float64(b.axle) * float64(length) / float64(b.Length)))
}

func share(l quantity.Length, by float64) quantity.Length {
	return quantity.Length(math.Round(float64(l) * by))
}

// tens rounds to tens.
func tens[Q ~float64](q Q) Q { return Q(10 * math.Round(float64(q)/10)) }
