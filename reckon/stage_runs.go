package reckon

import (
	"strings"

	"tumblehome/build"
	"tumblehome/quantity"
	"tumblehome/solve/solid"
	"tumblehome/trade/runs"
)

// workRuns says where ways run and how long the cables are. All that it asks follows from where everything stands, what is laid on the
// steel, and what the document says of ways, power, gas and openings.
func (m *Machine) workRuns(w *stages) (runs.Result, Digest) {
	key := struct {
		Places, Room, Body Digest
		Runs               map[string]build.Run
		Power              *build.Power
		Gas                *build.OrNone[build.Gas]
		Openings           map[string]build.Opening
		Ribs               map[string]build.Rib
		Datum              quantity.Length
	}{w.placesKey, w.room.key, w.body.key, w.doc.Runs, w.doc.Power, w.doc.Gas, w.doc.Shell.Openings, w.doc.Shell.Ribs, w.doc.Vehicle.Datum}
	return workBy(m, "runs", 1, key, func() runs.Result { return runs.Work(w.runsInputs()) })
}

func (w *stages) runsInputs() runs.Inputs {
	in := runs.Inputs{Room: w.room, Skin: w.skin, Nose: -w.doc.Vehicle.Datum.Float(), Laid: w.laidOver()}
	for _, id := range build.SortedKeys(w.doc.Runs) {
		in.Ways = append(in.Ways, w.way(id, w.doc.Runs[id]))
	}
	in.Circuits = w.cableRoutes()
	in.Things, in.Sleepers = w.runThings(), w.sleepingPlaces()
	in.Ribs, in.Arches, in.Openings = w.runRibs(), w.runArches(), w.runOpenings()
	return in
}

// way is a run with its corners where they are; one that is not known leaves all of them out.
func (w *stages) way(id string, r build.Run) runs.Way {
	way := runs.Way{ID: id, Corners: r.Points, Bore: valueOf(r.Bore).Float()}
	for _, p := range r.Points {
		at, ok := w.places.PointAt(p, w.room)
		if !ok {
			way.At = nil
			return way
		}
		way.At = append(way.At, at)
	}
	return way
}

// runThings are the fittings inside the van that a way could meet. A bundle of cable drawn for its mass is none.
func (w *stages) runThings() []runs.Thing {
	var out []runs.Thing
	gas := w.gasFittings()
	for i := range w.places.Rest {
		s := &w.places.Rest[i]
		t := w.things[s.ID]
		if !s.Placed() || s.Where != "" || s.For != "" || strings.HasPrefix(t.Buy, "conduit-") || strings.HasPrefix(t.Buy, "cable-") {
			continue
		}
		out = append(out, runs.Thing{ID: s.ID, Name: nameOf(s.ID, t.Fitting), Solid: s.Solid, Box: s.Box, Hollow: t.hollow(), Gas: gas[s.ID]})
	}
	return out
}

// hollow says whether a cable may be led through a thing: a made one of panels all round that does not slide out.
func (t thing) hollow() bool {
	if t.setting == nil {
		return false
	}
	p := t.setting.Panels
	return p.Flat > 0 && p.Along > 0 && p.Across > 0 && t.Make != "drawer" && t.Make != "slide-out" && t.Make != "blackout"
}

// gasFittings are the gas bottles and the lockers that they stand in.
func (w *stages) gasFittings() map[string]bool {
	out := map[string]bool{}
	if w.doc.Gas == nil {
		return out
	}
	for _, id := range w.doc.Gas.Value.Bottles {
		out[id] = true
		if s := w.places.Find(id); s != nil && s.In {
			out[s.Carrier] = true
		}
	}
	return out
}

// lyingHigh is how much room over a bed somebody takes who lies on it, and at its edges does not [mm]: practice.
const (
	lyingHigh = 350
	bedEdge   = 50
)

// sleepingPlaces are those over the beds on which somebody lies, mode by mode.
func (w *stages) sleepingPlaces() []runs.Sleeper {
	var out []runs.Sleeper
	for i := range w.places.Modes {
		mode, seen := &w.places.Modes[i], map[string]bool{}
		poses := w.doc.Modes[mode.Name].People
		for _, who := range build.SortedKeys(poses) {
			bed := poses[who].Lies
			s := mode.Find(bed)
			if bed == "" || s == nil || !s.Placed() || seen[bed] {
				continue
			}
			seen[bed] = true
			b := s.Box
			out = append(out, runs.Sleeper{On: bed, Name: nameOf(bed, w.things[bed].Fitting), Mode: mode.Name, Box: solid.Bounds{
				MinX: b.MinX + bedEdge, MaxX: b.MaxX - bedEdge, MinY: b.MinY + bedEdge, MaxY: b.MaxY - bedEdge, MinZ: b.MaxZ, MaxZ: b.MaxZ + lyingHigh}})
		}
	}
	return out
}
