package web

import (
	"cmp"
	"math"
	"slices"
	"strconv"

	"tumblehome/internal/words"
	"tumblehome/trade/takeoff"
)

// heavyRow is one thing by its mass and place.
type heavyRow struct {
	Name, Address string
	Mass          float64
	Where         float64 // from the datum [mm]
	Rear          float64 // what of its mass the rear axle carries [kg]
	Guess, Fitted bool
}

const heaviestShown = 16

// heaviest are the things that weigh most, the heaviest first.
func heaviest(v view) []heavyRow {
	rows := map[string]*heavyRow{}
	var order []string
	for _, l := range v.Lines {
		key := thingPointer(l.Pointer)
		r, known := rows[key]
		if !known {
			r = &heavyRow{Name: capital(v.thingWords(key)), Address: addressOf(key), Fitted: true}
			rows[key], order = r, append(order, key)
		}
		r.add(l, v)
	}
	out := make([]heavyRow, 0, len(order))
	for _, key := range order {
		out = append(out, *rows[key])
	}
	slices.SortStableFunc(out, func(a, b heavyRow) int { return cmp.Compare(b.Mass, a.Mass) })
	return out[:min(len(out), heaviestShown)]
}

func (r *heavyRow) add(l takeoff.Line, v view) {
	if sum := r.Mass + l.Mass; sum != 0 {
		r.Where = (r.Where*r.Mass + l.At[0]*l.Mass) / sum
	}
	r.Mass += l.Mass
	if base := v.Doc.Vehicle.Wheelbase.Float(); base > 0 {
		r.Rear += l.Mass * (l.At[0] + v.Doc.Vehicle.Datum.Float()) / base
	}
	r.Guess = r.Guess || l.Guess
	r.Fitted = r.Fitted && l.Fitted
}

// thingPointer is what a line belongs to as a reader sees it: a fitting, or a whole surface.
func thingPointer(pointer string) string {
	steps := splitPointer(pointer)
	return "/" + joinSteps(steps[:min(2, len(steps))])
}

// thingWords is what a reader calls it.
func (v view) thingWords(pointer string) string {
	if id, ok := fittingOf(pointer); ok {
		return v.name(id)
	}
	steps := splitPointer(pointer)
	if steps[0] == "lining" && len(steps) > 1 {
		return "lining, " + steps[1]
	}
	return pathWords(pointerPath(pointer))
}

// kilograms writes a mass to the kilogram, small ones to a tenth.
func kilograms(v float64) string {
	if math.Abs(v) < 9.95 {
		return words.Fine(math.Round(v*10)/10, "kg")
	}
	return strconv.FormatFloat(math.Round(v), 'f', 0, 64) + " kg"
}
