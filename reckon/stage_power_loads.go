package reckon

import (
	"tumblehome/build"
	"tumblehome/trade/power"
)

// electrics are the things that use electricity: fittings by their rows, then circuits that feed something no row tells of.
func (w *stages) electrics() (out []power.Thing) {
	fed := w.fed()
	for _, id := range w.ids() {
		if t := w.things[id]; !t.later() {
			if e := electric(id, t, fed[id]); e.Kind != power.Nothing {
				out = append(out, e)
			}
		}
	}
	return append(out, w.onlyCircuits()...)
}

// feed is the circuit of a fitting, and its current where it feeds nothing else.
type feed struct {
	circuit string
	amps    float64
}

func (w *stages) fed() map[string]feed {
	out := map[string]feed{}
	if w.doc.Power == nil {
		return out
	}
	for id, c := range w.doc.Power.Circuits {
		for _, load := range c.Loads {
			f := feed{circuit: id}
			if len(c.Loads) == 1 {
				f.amps = valueOf(c.Current).Float()
			}
			out[load] = f
		}
	}
	return out
}

func electric(id string, t thing, f feed) power.Thing {
	e := power.Thing{ID: id, Name: nameOf(id, t.Fitting), About: "/fittings/" + id, Row: t.Buy, Circuit: f.circuit, Amps: f.amps}
	if t.row != nil {
		e.Watts, e.Volts, e.Litres, e.Heats = valueOf(t.row.Watts).Float(), valueOf(t.row.Volts).Float(), valueOf(t.row.Holds).Float(), valueOf(t.row.Heat) > 0
	}
	if !uses(t) {
		return e
	}
	e.Kind = power.KindOf(t.text(), e.Watts, e.Volts, f.circuit != "")
	return e
}

// uses tells that a row says what a thing takes, or at least what kind of thing it is.
func uses(t thing) bool {
	if t.row == nil {
		return false
	}
	kind := power.KindOf(t.Buy+" "+t.row.Name, valueOf(t.row.Watts).Float(), 12, true)
	return kind != power.Nothing && (kind != power.Other || valueOf(t.row.Watts) > 0)
}

// onlyCircuits are circuits none of whose loads is known to use anything, though a current is said: what they feed is told by their words.
func (w *stages) onlyCircuits() (out []power.Thing) {
	if w.doc.Power == nil {
		return nil
	}
	for _, id := range build.SortedKeys(w.doc.Power.Circuits) {
		c := w.doc.Power.Circuits[id]
		amps := valueOf(c.Current).Float()
		words, unknown := c.Note, len(c.Loads) > 0 && amps > 0
		for _, load := range c.Loads {
			t := w.things[load]
			words += " " + t.Called
			unknown = unknown && !t.later() && !uses(t)
		}
		if unknown {
			out = append(out, power.Thing{ID: id, Name: spaced(id), About: "/power/circuits/" + id, Circuit: id, Amps: amps, Kind: power.KindOf(words, 12*amps, 12, true)})
		}
	}
	return out
}
