package reckon

import (
	"cmp"
	"slices"

	"tumblehome/build"
	"tumblehome/catalogue/tyres"
	"tumblehome/quantity"
	"tumblehome/trade/arrangement"
	"tumblehome/trade/takeoff"
	"tumblehome/trade/weight"
)

// licenceB is the greatest mass a category B driving licence covers [kg]: Directive 2006/126/EC article 4(4)(b); the same in Great Britain.
const licenceB quantity.Mass = 3500

// workWeight puts everything on the axles.
func (m *Machine) workWeight(w *stages) (weight.Result, Digest) {
	v := w.doc.Vehicle
	in := weight.Inputs{
		Wheelbase: v.Wheelbase, Datum: v.Datum, Track: valueOf(v.Track),
		Body:      weight.Body{Width: valueOf(v.Width), Height: valueOf(v.Height)},
		Plate:     weight.Plate{Gross: v.Plate.Gross, Front: v.Plate.Front, Rear: v.Plate.Rear, Train: v.Plate.Train},
		RoofLimit: valueOf(v.RoofLimit), Today: w.today,
		Lines: takeoff.Gather(w.linings, w.fittings, w.wiring), OnRoof: w.onRoof(),
		Seats: seats(w.doc), People: people(w.doc), Tanks: w.tanks(), Gear: w.gear, Cases: cases(v),
		Front: tyre(v, "front"), Rear: tyre(v, "rear"),
		Weighings: w.weighings(), Movable: w.movable(),
	}
	if w.doc.Build.Rules != "us" {
		in.Licence = licenceB
	}
	if v.Overhang != nil {
		in.Body.Length = v.Overhang.Front + v.Wheelbase + v.Overhang.Rear
	}
	if v.Tank != nil {
		in.FuelTank = &weight.FuelTank{Holds: v.Tank.Holds, X: v.Tank.X, Fuel: v.Tank.Fuel}
	}
	return work(m, "weight", 1, weight.Work, in)
}

// onRoof are what is fixed through the roof and what stands outside over it, on feet or a rack that nobody wrote down.
func (w *stages) onRoof() []string {
	var out []string
	for _, id := range build.SortedKeys(w.doc.Fittings) {
		f := w.doc.Fittings[id]
		if f.For != "" && throughRoof(w.doc, f.For) || f.Where == "outside" && f.At != nil && (f.At.Z.Form == build.LeftOut || w.overRoof(w.places.Find(id).Box)) {
			out = append(out, "/fittings/"+id)
		}
	}
	return out
}

// overRoof says whether a box is over the outer roof; it may have been read some millimetres too low.
func (w *stages) overRoof(b arrangement.Box) bool {
	const readTooLow = 20
	return b.MinZ >= w.skin.Roof((b.MinX+b.MaxX)/2, (b.MinY+b.MaxY)/2)-readTooLow
}

func throughRoof(doc *build.Document, path string) bool {
	const openings = "shell.openings."
	return len(path) > len(openings) && doc.Shell.Openings[path[len(openings):]].Through == "roof"
}

// seats are in the order in which they are taken where none is further forward: the driver's side first, right in Great Britain.
func seats(doc *build.Document) []weight.Seat {
	var out []weight.Seat
	all := doc.Vehicle.Seats
	for _, id := range build.SortedKeys(all) {
		out = append(out, weight.Seat{ID: id, X: all[id].X, Y: all[id].Y})
	}
	slices.SortStableFunc(out, func(a, b weight.Seat) int {
		if doc.Build.Rules == "gb" {
			a, b = b, a
		}
		return cmp.Compare(a.Y, b.Y)
	})
	return out
}

func people(doc *build.Document) []weight.Person {
	var out []weight.Person
	for _, id := range build.SortedKeys(doc.People) {
		g := spreadOf(doc.People[id].Mass)
		out = append(out, weight.Person{ID: id, Mass: g.mean, Dev: g.dev})
	}
	return out
}

func cases(v build.Vehicle) []weight.Case {
	var out []weight.Case
	for _, id := range build.SortedKeys(v.Cases) {
		c := v.Cases[id]
		out = append(out, weight.Case{ID: id, Title: c.Title, People: c.People, Fuel: c.Fuel, Fill: c.Fill,
			Gear: bool(valueOf(c.Gear)), Without: c.Without})
	}
	return out
}

func tyre(v build.Vehicle, axle string) *weight.Tyre {
	t, ok := v.Tyres[axle]
	if !ok {
		return nil
	}
	carries, _ := tyres.Load(t.LoadIndex)
	return &weight.Tyre{LoadIndex: t.LoadIndex, Carries: carries, Made: valueOf(t.Made)}
}

// tanks are the fittings that hold water, where they are while driving.
func (w *stages) tanks() []weight.Tank {
	var waste []string
	if w.doc.Water != nil {
		waste = w.doc.Water.Waste
	}
	drive := w.places.Mode("drive")
	var out []weight.Tank
	for _, id := range w.ids() {
		t := w.things[id]
		if holds := t.holds(); holds > 0 {
			out = append(out, weight.Tank{ID: id, Holds: holds, At: drive.Find(id).Middle, Waste: slices.Contains(waste, id)})
		}
	}
	return out
}

// weighings say what was aboard at each visit, with the masses those things have in the van.
func (w *stages) weighings() []weight.Weighing {
	var out []weight.Weighing
	for _, id := range build.SortedKeys(w.doc.Vehicle.Weighed) {
		v := w.doc.Vehicle.Weighed[id]
		next := weight.Weighing{ID: id, Date: v.Date, Front: v.Front, Rear: v.Rear, Step: v.Step, Times: valueOf(v.Times),
			Fuel: v.Aboard.Fuel, People: v.Aboard.People}
		if valueOf(v.Aboard.Linings) {
			next.Aboard = pastLayers(w.linings)
		}
		for _, fitting := range v.Aboard.Fittings {
			next.Aboard = append(next.Aboard, takeoff.About(w.fittings, "/fittings/"+fitting)...)
		}
		for _, removed := range v.Aboard.Removed {
			next.Aboard = append(next.Aboard, massAt("/removed/"+removed, "removed", w.doc.Removed[removed], w.room, true))
		}
		next.Aboard = append(next.Aboard, massesAt("/vehicle/weighed/"+id+"/aboard/besides", "besides", v.Aboard.Besides, w.room, true)...)
		out = append(out, next)
	}
	return out
}

// movable are the fittings whose place along the van is a bare number, and the room they could take.
func (w *stages) movable() []weight.Movable {
	var out []weight.Movable
	for _, id := range w.ids() {
		t := w.things[id]
		if t.At == nil || t.At.X.Form != build.LowAt || t.In != "" || t.Upon != "" || t.Where != "" || t.For != "" {
			continue
		}
		low := t.At.X.A.Plus
		length := quantity.Length(sides(w.places.Find(id).Box)[0])
		out = append(out, weight.Movable{ID: id, Name: nameOf(id, t.Fitting), Low: low, Least: quantity.Length(w.room.Front()), Most: quantity.Length(w.room.Rear()) - length})
	}
	return out
}
