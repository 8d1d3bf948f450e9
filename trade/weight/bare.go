package weight

import (
	"math"
	"strings"

	"tumblehome/quantity"
	"tumblehome/trade/takeoff"
)

const (
	usualStep   = 20.0 // kg, of public weighbridges, from memory
	unknownFuel = 0.5  // share of the tank taken where nobody wrote it down
	unknownDev  = 0.25 // standard deviation of that share
)

// bare is the van with an empty fuel tank and nothing in it.
type bare struct {
	total, rear form
	base        int // which weighing it rests on; −1: none, a guess
}

// chooseBase picks the weighing that the bare van rests on: the latest with no linings and no fittings aboard and nothing
// since removed; else the one with least aboard, the later of equals; −1 if there is none.
func chooseBase(all []Weighing) int {
	best := -1
	for i, w := range all {
		if best < 0 || better(w, all[best]) {
			best = i
		}
	}
	return best
}

func better(w, than Weighing) bool {
	a, b := mattersAboard(w), mattersAboard(than)
	if a != b {
		return a < b
	}
	if w.Date != than.Date {
		return than.Date.Before(w.Date)
	}
	return w.ID < than.ID
}

// mattersAboard is the mass of what makes a weighing a poor base: linings, fittings, things since removed [kg].
func mattersAboard(w Weighing) float64 {
	var mass float64
	for _, l := range w.Aboard {
		if strings.HasPrefix(l.Pointer, "/lining") || strings.HasPrefix(l.Pointer, "/fittings") || strings.HasPrefix(l.Pointer, "/removed") {
			mass += math.Abs(l.Mass)
		}
	}
	return mass
}

// aboard is all that stood in the van when it was weighed, with fuel and people. Things removed are written with a
// negative mass in the take-off; on the scale they weighed what they weigh.
func (in *Inputs) aboard(w Weighing) []takeoff.Line {
	lines := make([]takeoff.Line, 0, len(w.Aboard)+4)
	for _, l := range w.Aboard {
		l.Mass = math.Abs(l.Mass)
		lines = append(lines, l)
	}
	lines = append(lines, in.seated(w.People)...)
	if w.Fuel != nil {
		return append(lines, in.fuel(*w.Fuel)...)
	}
	for _, l := range in.fuel(unknownFuel) {
		l.Dev = unknownDev / unknownFuel * l.Mass
		l.Error = "fuel at weighing " + w.ID
		l.Guess = true
		lines = append(lines, l)
	}
	return lines
}

func (w Weighing) step() float64 {
	if w.Step != nil {
		return w.Step.Float()
	}
	return usualStep
}

func (w Weighing) noise() float64 { return scaleDev(w.step(), w.Times) }

func (w Weighing) pointer() string { return "/vehicle/weighed/" + w.ID }

// weighed is the bare van from its base weighing: what was read less what was aboard.
func (m *model) weighed(base int) bare {
	w := m.in.Weighings[base]
	load := m.load(m.in.aboard(w))
	front, rear := m.newForm(), m.newForm()
	front.add(w.Front.Float(), m.keys.take("scale front "+w.ID), w.noise())
	rear.add(w.Rear.Float(), m.keys.take("scale rear "+w.ID), w.noise())
	return bare{total: front.plus(rear, 1).plus(load.total, -1), rear: rear.plus(load.rear, -1), base: base}
}

// The guess for a van that was never weighed, made to fit stripped vans of three sizes, from memory: a mass that grows
// with the volume of its box, 60 % of it on the front axle.
const (
	guessFixed    = 750.0 // kg
	guessPerM3    = 42.0  // kg for each m3 of length × width × height
	guessDev      = 0.10  // standard deviation, part of the mass
	guessFront    = 0.60  // part of the mass on the front axle
	guessFrontDev = 0.03  // standard deviation of that part
)

func (m *model) guessed() bare {
	mass := guessFixed + guessPerM3*m.in.Body.volume(m.in.Wheelbase)
	total, rear := m.newForm(), m.newForm()
	all, split := m.keys.take("bare mass"), m.keys.take("bare split")
	total.add(mass, all, mass*guessDev)
	rear.add(mass*(1-guessFront), all, mass*guessDev*(1-guessFront))
	rear.add(0, split, mass*guessFrontDev)
	return bare{total: total, rear: rear, base: -1}
}

// volume of the box round the body [m3]; sizes not known are taken from the wheelbase or from a middling van.
func (b Body) volume(wheelbase quantity.Length) float64 {
	or := func(a quantity.Length, b float64) float64 {
		if a > 0 {
			return a.Float()
		}
		return b
	}
	return or(b.Length, 1.59*wheelbase.Float()) * or(b.Width, 1950) * or(b.Height, 2300) / 1e9
}
