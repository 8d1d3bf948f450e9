package reckon

import (
	"strings"

	"tumblehome/build"
	"tumblehome/trade/cables"
	"tumblehome/trade/runs"
)

// beforeTheVan is what a cable takes down and across from a starter battery [mm]: practice, no source.
const beforeTheVan = 1000

// cableRoutes are the circuits and sources with the places they lead to.
func (w *stages) cableRoutes() []runs.Circuit {
	if w.doc.Power == nil {
		return nil
	}
	var out []runs.Circuit
	for _, id := range build.SortedKeys(w.doc.Power.Circuits) {
		out = append(out, w.circuitRoute(id, w.doc.Power.Circuits[id]))
	}
	for _, id := range build.SortedKeys(w.doc.Power.Sources) {
		s := w.doc.Power.Sources[id]
		out = append(out, w.sourceRoute(id, s))
		if lead, ok := w.leadRoute(id, s); ok {
			out = append(out, lead)
		}
	}
	return out
}

// circuitRoute leads from the fuse board to the loads; a circuit without loads is the main cable, from the battery to the board.
func (w *stages) circuitRoute(id string, c build.Circuit) runs.Circuit {
	out := runs.Circuit{ID: id, Along: c.Along, Section: valueOf(c.Cable).Float()}
	if c.Route != nil {
		route := c.Route.Float()
		out.Written = &route
	}
	battery, board := w.battery(c.From), w.board(c.From)
	if len(c.Loads) > 0 {
		out.Start = w.beginsAt(c.From)
		out.Ends, out.Unknown = w.endsAt(c.Loads)
		return out
	}
	out.Battery, out.Start = true, battery
	if board != nil {
		out.Ends = []runs.End{*board}
	}
	return out
}

// beginsAt is where a circuit begins: at the fuse board, else the battery; one fed by another circuit at its first load.
func (w *stages) beginsAt(from string) *runs.End {
	if fed, ok := w.doc.Power.Circuits[from]; ok {
		if ends, _ := w.endsAt(fed.Loads); len(ends) > 0 {
			return &ends[0]
		}
	}
	if board := w.board(from); board != nil {
		return board
	}
	return w.battery(from)
}

// sourceRoute leads from what controls the panels to them, or from the engine, or a charger, to the battery.
func (w *stages) sourceRoute(id string, s build.Source) runs.Circuit {
	out := runs.Circuit{ID: id, Source: true, Along: s.Along, Section: valueOf(s.Cable).Float()}
	if s.Route != nil {
		route := s.Route.Float()
		out.Written = &route
	}
	out.Start = w.battery(s.To)
	if by := w.places.Find(s.By); by != nil && by.Undecided == "" {
		end := endAt(by, w.things[s.By].Fitting)
		out.Start = &end
	}
	out.Ends, out.Unknown = w.endsAt(s.Is)
	if w.fromEngine(s) {
		out.Battery, out.Extra = true, beforeTheVan
		out.Start = &runs.End{Name: "the starter battery", At: runs.Point{-w.doc.Vehicle.Datum.Float(), 0, w.room.Floor()}}
	}
	return out
}

// leadRoute leads from what controls or converts a source to the fuse board, from a relay to the battery; none from a charger on the mains, whose own
// cable that is.
func (w *stages) leadRoute(id string, s build.Source) (runs.Circuit, bool) {
	out := runs.Circuit{ID: id, Source: true, Lead: true}
	if l := s.Lead; l != nil {
		out.Section = valueOf(l.Cable).Float()
		if l.Route != nil {
			route := l.Route.Float()
			out.Written = &route
		}
	}
	if from, _ := w.endsAt([]string{w.converterOf(s)}); len(from) > 0 {
		out.Start = &from[0]
	}
	kind := w.kindOf(s)
	end := w.board(s.To)
	if end == nil || kind == cables.Split {
		end = w.battery(s.To)
	}
	if end != nil {
		out.Ends = []runs.End{*end}
	}
	return out, kind != cables.Shore
}

// fromEngine says whether a source is the engine: through a charger that converts, or a relay.
func (w *stages) fromEngine(s build.Source) bool {
	kind := w.kindOf(s)
	return kind == cables.Engine || kind == cables.Split
}

// battery is the first of a bank that has a place, or nil.
func (w *stages) battery(bank string) *runs.End {
	for _, id := range w.doc.Power.Batteries[bank].Is {
		if s := w.places.Find(id); s != nil && s.Undecided == "" {
			end := endAt(s, w.things[id].Fitting)
			return &end
		}
	}
	return nil
}

// board is the fuse box nearest to a bank's battery, or nil.
func (w *stages) board(bank string) *runs.End {
	battery := w.battery(bank)
	var best *runs.End
	least := 0.0
	for i := range w.places.Rest {
		s := &w.places.Rest[i]
		if t := w.things[s.ID]; !strings.HasPrefix(t.Buy, "fusebox-") || s.Undecided != "" || t.later() {
			continue
		}
		end, d := endAt(s, w.things[s.ID].Fitting), 0.0
		if battery != nil {
			for axis := range end.At {
				d += (end.At[axis] - battery.At[axis]) * (end.At[axis] - battery.At[axis])
			}
		}
		if best == nil || d < least {
			best, least = &end, d
		}
	}
	return best
}

// endsAt are the fittings that have a place, and those that have none.
func (w *stages) endsAt(ids []string) (known []runs.End, unknown []string) {
	for _, id := range ids {
		if s := w.places.Find(id); s != nil && s.Undecided == "" {
			known = append(known, endAt(s, w.things[id].Fitting))
		} else {
			unknown = append(unknown, id)
		}
	}
	return known, unknown
}
