package reckon

import (
	"sync"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/trade/arrangement"
	"tumblehome/trade/fit"
)

// turn is the van with a fitting turned by a quarter and moved, as the page turns it, and where everything stands then.
func (w *stages) turn(id string, dx, dy float64) (fit.Turned, bool) {
	r := &Reckoning{Document: w.doc, written: sync.OnceValue(func() *tree.Node { return build.Encode(w.doc) })}
	r.Places = w.places
	quarter := Move{Fitting: id, Turn: 90, DX: dx, DY: dy}
	patch, ok := r.MovePatch(quarter)
	if !ok || r.WhyNot(quarter) != "" {
		return fit.Turned{}, false
	}
	doc, err := build.Apply(w.doc, patch, w.rows)
	if err != nil {
		return fit.Turned{}, false
	}
	after := *w
	after.doc, after.things, after.sorted = doc, completed(doc, w.rows), nil
	things := make(map[string]*arrangement.Thing, len(after.things))
	for name, t := range after.things {
		one := t.placeable()
		things[name] = &one
	}
	after.places = arrangement.Work(arrangement.Inputs{
		Room: w.room, Outside: w.skin, Ground: ground(doc, w.skin), Openings: doc.Shell.Openings, Modes: doc.Modes, Things: things,
	})
	masses := after.fullMasses()
	out := fit.Turned{Patch: patch.JSON(), Parts: fitParts(after.places.Parts)}
	for i := range after.places.Modes {
		out.Modes = append(out.Modes, after.fitMode(&after.places.Modes[i], masses))
	}
	return out, true
}
