package fit

import (
	"slices"

	"tumblehome/catalogue/people"
	"tumblehome/catalogue/settings"
)

// anybody is the stature for which a bed is measured at the height of the shoulders when nobody is said to lie there [mm].
const anybody = 1700

// suitUnused are the rows of beds and seats on which nobody is said to lie or sit: a bed by night, a seat by day.
func (w *worker) suitUnused(bodies []people.Body, row adder) {
	from := len(w.result.Suits.Rows)
	for i := range w.in.Fittings {
		if mode := w.mode("night"); w.isBed(i) && w.stands(mode, i) && !w.used("lies", i) {
			box := mode.Standings[i].Box
			w.suitBed(berth{mode: mode, pose: Pose{Does: "lies", At: w.in.Fittings[i].ID}, person: Person{Stature: anybody}, bed: i, axis: lainAlong(box, "")}, row)
		}
		if mode := w.mode("day"); w.isSeat(i) && w.stands(mode, i) && !w.used("sits", i) {
			w.suitSitting(mode, i, bodies, row)
		}
	}
	for k := from; k < len(w.result.Suits.Rows); k++ {
		w.result.Suits.Rows[k].Nobody = true
	}
}

func (w *worker) stands(mode *Mode, i int) bool {
	return mode != nil && len(mode.Standings[i].Solid) > 0
}

// isBed says whether a thing is made to lie on before all else; a mattress or a flap is a part of a bed.
func (w *worker) isBed(i int) bool {
	s, ok := settings.Get(w.in.Fittings[i].Make)
	return ok && s.Does(settings.Lies) && s.Used[0] == settings.Lies && s.ID != "flap"
}

// isSeat says whether a thing is made to sit on before all else; a box to keep things in is none, and cushions are a part of a seat.
func (w *worker) isSeat(i int) bool {
	f := w.in.Fittings[i]
	s, ok := settings.Get(f.Make)
	return f.Belted || ok && s.Does(settings.Sits) && s.Used[0] == settings.Sits && !slices.Contains([]string{"box", "arch-box", "cushions"}, s.ID)
}

// used says whether somebody does that on a thing, on what it carries or on what carries it, in any mode.
func (w *worker) used(does string, i int) bool {
	for m := range w.in.Modes {
		for _, pose := range w.in.Modes[m].Poses {
			at, ok := w.index[pose.At]
			if ok && pose.Does == does && (at == i || w.carries(at, i) || w.carries(i, at)) {
				return true
			}
		}
	}
	return false
}
