package reckon

import (
	"encoding/json"
	"math"
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/quantity"
	"tumblehome/solve/solid"
	"tumblehome/trade/arrangement"
	"tumblehome/trade/fit"
	"tumblehome/trade/shell"
)

// workFit judges whether it all fits. Where everything stands, and the words it was placed with, are known by the key of the arrangement, so
// that its many solids need not be read again.
func (m *Machine) workFit(w *stages) (fit.Result, Digest) {
	key := struct {
		Places Digest
		Today  quantity.Date
		Masses []float64
		Rest   fit.Inputs
	}{w.placesKey, w.today, w.fullMasses(), fit.Inputs{
		Partition: len(w.doc.Lining.Front) > 0, Error: readingError(w.doc.Shell.Offsets).Float(), People: w.statures(),
		Van: w.vanBounds(), Underside: w.skin.Floor(), Wheels: w.wheels(),
		Openings: w.fitOpenings(), Ribs: fitRibs(w.doc), Seats: beltedSeats(w.doc), Arches: w.fitArches(), Height: valueOf(w.doc.Vehicle.Height).Float(), OuterRoof: w.skin.highest(),
	}}
	return workBy(m, "fit", 12, key, func() fit.Result {
		in := key.Rest
		in.Room, in.Nudge, in.Lengthen, in.Stretch, in.Slide, in.Turn, in.Ground = w.room, w.nudge, w.lengthen, w.stretch, w.slideLess, w.turn, m.ground(w.room)
		in.Fittings = make([]fit.Fitting, len(w.places.Rest))
		for i := range w.places.Rest {
			in.Fittings[i] = w.fitFitting(&w.places.Rest[i])
			in.Fittings[i].Mass = key.Masses[i]
			in.Fittings[i].Aside = w.isPassed(&w.places.Rest[i], key.Masses[i])
		}
		for i := range w.places.Modes {
			in.Modes = append(in.Modes, w.fitMode(&w.places.Modes[i], key.Masses))
		}
		in.Parts = fitParts(w.places.Parts)
		in.RoomKey, in.Before = string(w.room.key[:]), m.fitBefore()
		result := fit.Work(in)
		m.keepFit(result.Memory)
		return result
	})
}

// ground is the room's own part of the walkable floor, which no fitting changes.
func (m *Machine) ground(room digestedRoom) *fit.Ground {
	g, _ := workBy(m, "ground", 1, room, func() *fit.Ground { return fit.NewGround(room) })
	return g
}

// fullMasses are those of the fittings in the order of their places, with what they hold when full [kg].
func (w *stages) fullMasses() []float64 {
	masses := make([]float64, len(w.places.Rest))
	for i := range w.places.Rest {
		id := w.places.Rest[i].ID
		t := w.things[id]
		masses[i] = massOf(id, &t, t.ownSize(w.places.Rest[i].Box), w.rows).mean + t.holds().Float()*waterPerLitre
	}
	return masses
}

const waterPerLitre = 1 // kg

func (m *Machine) fitBefore() *fit.Memory {
	m.mu.Lock()
	defer m.mu.Unlock()
	return m.fitted
}

func (m *Machine) keepFit(memory *fit.Memory) {
	m.mu.Lock()
	defer m.mu.Unlock()
	m.fitted = memory
}

func (w *stages) statures() []fit.Person {
	var out []fit.Person
	for _, id := range build.SortedKeys(w.doc.People) {
		p := w.doc.People[id]
		one := fit.Person{ID: id, Name: p.Called, Stature: p.Stature.Float()}
		if p.Grows != nil {
			one.GrowsTo, one.Years = p.Grows.Stature.Float(), p.Grows.Years
		}
		out = append(out, one)
	}
	return out
}

// beltedSeats are the vehicle's own seats. The driver's is called so; where none is, it is the foremost on the driver's side.
func beltedSeats(doc *build.Document) []fit.Seat {
	var all []fit.Seat
	for _, s := range seats(doc) {
		all = append(all, fit.Seat{ID: s.ID, Middle: solid.Point{X: s.X.Float(), Y: s.Y.Float()}})
	}
	driver := slices.IndexFunc(all, func(s fit.Seat) bool { return s.ID == "driver" })
	if driver < 0 && len(all) > 0 {
		driver = 0
		for i := range all {
			if all[i].Middle.X < all[driver].Middle.X {
				driver = i
			}
		}
	}
	if driver >= 0 {
		all[driver].Driver = true
	}
	return all
}

func (w *stages) fitFitting(s *arrangement.Standing) fit.Fitting {
	t := w.things[s.ID]
	return fit.Fitting{ID: s.ID, Name: nameOf(s.ID, t.Fitting), Carrier: s.Carrier, In: s.In, Where: s.Where, For: s.For,
		Gives: t.softness(), Rests: t.rests(), Make: t.Make, Board: t.boardThickness(), Held: t.Held, Belted: strings.HasSuffix(t.Buy, "-belted"),
		Flame: t.row != nil && t.row.Flue == "none" && cooks(t) && w.cookedInside(s.ID), Burns: t.Make != "" && !coldMaterial(t.material()),
		Lid:     strings.HasPrefix(t.Buy, "fan-roof-") || strings.HasPrefix(t.Buy, "vent-roof-"),
		OnDoors: strings.HasPrefix(t.Buy, "carrier-rear-"), OnDoor: t.OnDoor,
		Today: isFitted(t.Fitted, w.today), Later: t.later()}
}

// coldMaterial says whether a material is metal or tiles, which a flame beside it does not scorch.
func coldMaterial(id string) bool {
	return slices.ContainsFunc([]string{"alu-", "steel-", "tile-ceramic"}, func(cold string) bool { return strings.HasPrefix(id, cold) })
}

func (w *stages) fitMode(mode *arrangement.Mode, masses []float64) fit.Mode {
	out := fit.Mode{Name: mode.Name, Open: w.doc.Modes[mode.Name].Open, Standings: make([]fit.Standing, len(mode.All))}
	for i := range mode.All {
		s := &mode.All[i]
		out.Standings[i] = fit.Standing{Solid: s.Solid, Box: s.Box, Moved: s.Moved, Scribed: s.Scribed, Aside: w.putAside(mode, i, masses[i])}
	}
	for _, m := range mode.Movers {
		out.Movers = append(out.Movers, fit.Mover(m))
	}
	poses := w.doc.Modes[mode.Name].People
	for _, id := range build.SortedKeys(poses) {
		does, at := poseOf(poses[id])
		out.Poses = append(out.Poses, fit.Pose{Person: id, Does: does, At: at, Head: poses[id].Head})
	}
	return out
}

func fitParts(parts []arrangement.Part) []fit.Part {
	out := make([]fit.Part, len(parts))
	for i := range parts {
		p := &parts[i]
		out[i] = fit.Part{Fitting: p.Fitting, Kind: string(p.Kind), Ways: p.Ways, Move: p.Move, Still: p.Travel == 0, Inward: p.Inward, Key: p.Key(), Swept: p.Swept, Opened: p.Opened}
	}
	return out
}

func poseOf(p build.Pose) (does, at string) {
	switch {
	case p.Lies != "":
		return "lies", p.Lies
	case p.Sits != "":
		return "sits", p.Sits
	case p.Cooks != "":
		return "cooks", p.Cooks
	}
	return "stands", p.Stands
}

// fitOpenings are those of the document, and the doors that stand in where it has none.
func (w *stages) fitOpenings() []fit.Opening {
	var out []fit.Opening
	for _, side := range []string{shell.Left, shell.Right, shell.Rear} {
		for _, o := range w.body.Openings(side) {
			if _, written := w.doc.Shell.Openings[o.ID]; !written {
				out = append(out, usualOpening(side, o))
			}
		}
	}
	for _, id := range build.SortedKeys(w.doc.Shell.Openings) {
		o := w.doc.Shell.Openings[id]
		out = append(out, fit.Opening{ID: id, Name: o.Title, Through: o.Through, X: ends(o.X), Y: ends(o.Y), Z: ends(o.Z), Door: o.Door != "", TwoLeaves: o.Door == twoLeaves, WayOut: bool(valueOf(o.WayOut)),
			Made: o.Door != "" || o.Through == "front" || isFitted(o.Made, w.today), In: o.In})
	}
	return out
}

// usualOpening is a door that nobody wrote down.
func usualOpening(side string, o shell.Opening) fit.Opening {
	name := "side"
	if side == shell.Rear {
		name = "rear"
	}
	return fit.Opening{ID: name, About: "/shell/quick", Through: side, X: spanned(o.X), Y: spanned(o.Y), Z: spanned(o.Z), Door: o.Door != "", TwoLeaves: o.Door == twoLeaves, WayOut: o.WayOut, Made: o.Made}
}

// twoLeaves is what a double door is called in the document.
const twoLeaves = "two leaves"

func spanned(s *shell.Span) [2]float64 {
	if s == nil {
		return [2]float64{}
	}
	return [2]float64{s.From.Float(), s.To.Float()}
}

// fitArches are the wheel arches, written down or usual.
func (w *stages) fitArches() []fit.Arch {
	var out []fit.Arch
	for _, a := range w.body.Arches() {
		side := solid.Left
		if a.Side == shell.Right {
			side = solid.Right
		}
		out = append(out, fit.Arch{Side: side, X: [2]float64{a.From, a.To}, Up: a.Up})
	}
	return out
}

// fitRibs are the ribs and bows, each on every surface it is on.
func fitRibs(doc *build.Document) []fit.Rib {
	var out []fit.Rib
	for _, id := range build.SortedKeys(doc.Shell.Ribs) {
		r := doc.Shell.Ribs[id]
		half := valueOf(r.Flange).Float() / 2
		for _, on := range r.On {
			out = append(out, fit.Rib{ID: id, On: on, Face: [2]float64{r.X.Float() - half, r.X.Float() + half}})
		}
	}
	return out
}

func ends(e *build.Extent) [2]float64 {
	if e == nil {
		return [2]float64{}
	}
	return [2]float64{e.From.Float(), e.To.Float()}
}

// nudge is the patch that moves a fitting and keeps the builder's words.
func (w *stages) nudge(id string, dx, dy, dz float64) (json.RawMessage, bool) {
	f, ok := w.doc.Fittings[id]
	if !ok || f.At != nil && f.At.Undecided {
		return nil, false
	}
	place := arrangement.Drag(f, w.places.Find(id).Box, dx, dy, dz)
	if f.At != nil && stopped(*f.At, place, dx, dy, dz) {
		return nil, false
	}
	return arrangement.PlacePatch(id, f.At, place), true
}

// stopped says whether a drag did not go as far as was asked, since what stands against a surface is not dragged through it.
func stopped(from, to build.Place, by ...float64) bool {
	was, is := [3]build.AxisRule{from.X, from.Y, from.Z}, [3]build.AxisRule{to.X, to.Y, to.Z}
	for axis, d := range by {
		said := was[axis].Form != build.LeftOut || is[axis].Form == build.Against
		if d != 0 && said && math.Abs((is[axis].A.Plus-was[axis].A.Plus).Float()-d) > 1 {
			return true
		}
	}
	return false
}

// lengthen is the patch that makes a fitting longer along one axis.
func (w *stages) lengthen(id string, axis int, by float64) (json.RawMessage, bool) {
	return arrangement.Lengthen(id, w.doc.Fittings[id], axis, by)
}

// slideLess is the patch that has the one sliding move of a fitting go less far.
func (w *stages) slideLess(id string, less float64) (json.RawMessage, bool) {
	found := ""
	for _, name := range build.SortedKeys(w.doc.Fittings[id].Moves) {
		m := w.doc.Fittings[id].Moves[name]
		if m.Slide.Axis == "" || m.By == nil || m.By.Form != build.Slid || found != "" {
			return nil, false
		}
		found = name
	}
	if found == "" {
		return nil, false
	}
	by := w.doc.Fittings[id].Moves[found].By.Length.Float() - less
	if by <= 0 {
		return nil, false
	}
	patch, err := json.Marshal(map[string]any{"fittings": map[string]any{id: map[string]any{"moves": map[string]any{found: map[string]float64{"by": math.Round(by)}}}}})
	return patch, err == nil
}
