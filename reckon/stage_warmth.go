package reckon

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/trade/climate"
	"tumblehome/trade/trips"
	"tumblehome/trade/warmth"
)

// workWarmth finds out how warm and dry the van is. Nothing in its inputs tells where a fitting stands, so that moving one finds the last result.
// With a reckoning from before it works out nothing new: what is not remembered stays as it was there, and is older.
func (m *Machine) workWarmth(w *stages, journeys trips.Result, weather climate.Result, before *Reckoning) (result warmth.Result, older bool) {
	in := w.warmthInputs(m, journeys, weather)
	if before != nil {
		if result, ok := known[warmth.Result](m, "warmth", digestOf("warmth", warmthVersion, in)); ok {
			return result, false
		}
		return before.Warmth, true
	}
	result, _ = work(m, "warmth", warmthVersion, warmth.Work, in)
	return result, false
}

const warmthVersion = 1

func (w *stages) warmthInputs(m *Machine, journeys trips.Result, weather climate.Result) warmth.Inputs {
	in := warmth.Inputs{Skin: valueOf(w.doc.Shell.Skin).Float(), Furniture: w.builtIn(), Solve: details.solve}
	walls := m.walls(w)
	in.Fields, in.Volume, in.Plan, in.Top = walls.Fields, walls.Volume, walls.Plan, walls.Top
	in.Glass, in.Cab = w.glass(), w.cab()
	in.Vents, in.AirSaid, in.AirAbout = w.vents(), w.doc.Air != nil, w.airAbout()
	in.Sleepers = w.sleepers()
	in.Heater, in.Burners = w.flames()
	w.wanted(&in)
	nights(&in, journeys)
	weatherOf(&in, weather)
	return in
}

// builtIn is the mass of what stands in the van, rounded: a kilogram more changes no night.
func (w *stages) builtIn() float64 {
	sum := 0.0
	for _, l := range w.fittings {
		sum += l.Mass
	}
	return math.Round(sum/5) * 5
}

// glass are the windows and the glass of doors, each with what it is of and whether a blind hangs before it.
func (w *stages) glass() []warmth.Glass {
	var out []warmth.Glass
	for _, id := range build.SortedKeys(w.doc.Shell.Openings) {
		o := w.doc.Shell.Openings[id]
		g := warmth.Glass{About: "/shell/openings/" + id, Area: valueOf(o.Glazed).Float()}
		for _, f := range w.fittedTo(id) {
			if strings.HasPrefix(f.Buy, "window-acrylic") {
				g.Double = true
			}
			if f.Make == "blackout" || f.Make == "curtains" {
				g.Blind = true
			}
		}
		if g.Area > 0 {
			out = append(out, g)
		}
	}
	return out
}

// fittedTo are the fittings that belong to an opening.
func (w *stages) fittedTo(opening string) []thing {
	var out []thing
	for _, id := range build.SortedKeys(w.things) {
		if t := w.things[id]; t.For == "shell.openings."+opening {
			out = append(out, t)
		}
	}
	return out
}

// cab is what closes it off: a lined partition, else a curtain, else nothing. Where no way into it is drawn the seats stand open to the room.
func (w *stages) cab() warmth.Cab {
	c := warmth.Cab{Partition: len(w.doc.Lining.Front) > 0, Opening: w.body.Areas("front").Openings}
	if c.Opening == 0 || !c.Partition {
		c.Opening = w.body.Areas("front").Gross
	}
	for _, t := range w.things {
		c.Curtain = c.Curtain || t.Make == "curtains"
	}
	return c
}

// mesh is the free share of an opening of which no free area was read: 0.3 to 0.5 of a grille with mesh (from memory).
const mesh = 0.3

// vents are the openings as they are set at night, but for those of a gas locker, which is shut off from the room.
func (w *stages) vents() []warmth.Vent {
	if w.doc.Air == nil {
		return nil
	}
	var out []warmth.Vent
	for _, id := range w.doc.Air.AlwaysOpen {
		if v, ok := w.vent(id, 1); ok && !w.ofGas(id) {
			v.Fixed = true
			out = append(out, v)
		}
	}
	for _, id := range build.SortedKeys(w.doc.Air.Asleep) {
		if v, ok := w.vent(id, w.doc.Air.Asleep[id].Float()); ok && !slices.Contains(w.doc.Air.AlwaysOpen, id) {
			v.About = "/air/asleep/" + id
			out = append(out, v)
		}
	}
	slices.SortStableFunc(out, func(a, b warmth.Vent) int { return cmp.Or(cmp.Compare(a.Z, b.Z), cmp.Compare(a.Free, b.Free)) })
	return out
}

func (w *stages) vent(id string, share float64) (warmth.Vent, bool) {
	o, ok := w.doc.Shell.Openings[id]
	if !ok {
		return warmth.Vent{}, false
	}
	x, y, z := ends(o.X), ends(o.Y), ends(o.Z)
	v := warmth.Vent{ID: id, About: "/shell/openings/" + id, Z: (z[0] + z[1]) / 2, Roof: o.Through == "roof"}
	sides := [2][2]float64{x, z}
	switch o.Through {
	case "roof":
		v.Z, sides[1] = w.body.Roof((x[0]+x[1])/2, (y[0]+y[1])/2), y
	case "floor":
		v.Z, sides[1] = 0, y
	case "front", "rear":
		sides[0] = y
	}
	v.Free = mesh * (sides[0][1] - sides[0][0]) * (sides[1][1] - sides[1][0]) / 1e6
	if o.FreeArea != nil {
		v.Free = o.FreeArea.Float()
	}
	v.Free *= share
	return v, v.Free > 0
}

// ofGas says whether an opening in the floor lies under what a gas bottle stands in.
func (w *stages) ofGas(id string) bool {
	o := w.doc.Shell.Openings[id]
	if w.doc.Gas == nil || !w.doc.Gas.Known() || o.Through != "floor" {
		return false
	}
	x, y := ends(o.X), ends(o.Y)
	midX, midY := (x[0]+x[1])/2, (y[0]+y[1])/2
	for _, bottle := range w.doc.Gas.Value.Bottles {
		s := w.places.Find(bottle)
		if s == nil || s.Carrier == "" {
			continue
		}
		if c := w.places.Find(s.Carrier); c != nil && c.Box.MinX <= midX && midX <= c.Box.MaxX && c.Box.MinY <= midY && midY <= c.Box.MaxY {
			return true
		}
	}
	return false
}

// airAbout is what says how the van is aired, or what should.
func (w *stages) airAbout() string {
	switch {
	case w.doc.Air != nil && (len(w.doc.Air.AlwaysOpen) > 0 || len(w.doc.Air.Asleep) > 0):
		return "/air"
	case len(w.doc.Shell.Openings) > 0:
		return "/shell/openings"
	case len(w.doc.People) > 0:
		return "/people"
	}
	return "/vehicle"
}

// sleepers are who lies down at night, else who comes along on the trip with most aboard, else everybody.
func (w *stages) sleepers() []warmth.Sleeper {
	var ids []string
	for id, pose := range w.doc.Modes["night"].People {
		if pose.Lies != "" {
			ids = append(ids, id)
		}
	}
	for _, id := range build.SortedKeys(w.doc.Use.Trips) {
		if t := w.doc.Use.Trips[id]; len(w.doc.Modes["night"].People) == 0 && len(t.Aboard) > len(ids) {
			ids = slices.Clone(t.Aboard)
		}
	}
	if len(ids) == 0 {
		ids = build.SortedKeys(w.doc.People)
	}
	var out []warmth.Sleeper
	for _, id := range ids {
		if p, ok := w.doc.People[id]; ok {
			out = append(out, warmth.Sleeper{Mass: spreadOf(p.Mass).mean})
		}
	}
	slices.SortFunc(out, func(a, b warmth.Sleeper) int { return cmp.Compare(a.Mass, b.Mass) })
	return out
}

// flames are the heater, the strongest if there are several, and what else burns in the room without a flue.
func (w *stages) flames() (*warmth.Heater, []warmth.Burner) {
	var heater *warmth.Heater
	var burners []warmth.Burner
	for _, id := range build.SortedKeys(w.things) {
		t := w.things[id]
		if t.row == nil || valueOf(t.row.Heat) <= 0 || t.Where != "" || t.later() {
			continue
		}
		about, power := "/fittings/"+id, valueOf(t.row.Heat).Float()
		if !cooks(t) {
			if heater == nil || power > heater.Power {
				heater = &warmth.Heater{About: about, Row: t.Buy, Power: power, Flued: t.row.Flue != "none"}
			}
			continue
		}
		if t.row.Flue == "none" {
			spirit := strings.Contains(t.Buy+" "+t.row.Name, "alcohol") || strings.Contains(t.row.Name, "spirit")
			burners = append(burners, warmth.Burner{About: about, Power: power, Spirit: spirit, Inside: w.cookedInside(id)})
		}
	}
	slices.SortStableFunc(burners, func(a, b warmth.Burner) int { return cmp.Compare(b.Power, a.Power) })
	return heater, burners
}

// cooks tells a cooker from a heater by its row.
func cooks(t thing) bool { return !strings.Contains(t.Buy+" "+strings.ToLower(t.row.Name), "heater") }

// cookedInside says whether a burner is used in the van: where somebody cooks at it or at what carries it while it is there, or, where nobody
// is said to cook at it, unless a mode takes it out.
func (w *stages) cookedInside(id string) bool {
	said, taken := false, false
	for i := range w.places.Modes {
		mode := &w.places.Modes[i]
		s := mode.Find(id)
		if s == nil {
			continue
		}
		taken = taken || s.Off
		for _, pose := range w.doc.Modes[mode.Name].People {
			if pose.Cooks == "" || pose.Cooks != id && !w.carries(mode.Find(pose.Cooks) != nil, pose.Cooks, id) {
				continue
			}
			said = true
			if !s.Off {
				return true
			}
		}
	}
	return !said && !taken
}

// carries follows what a fitting stands on down to another.
func (w *stages) carries(known bool, below, above string) bool {
	for range w.things {
		s := w.places.Find(above)
		if !known || s == nil || s.Carrier == "" {
			return false
		}
		if s.Carrier == below {
			return true
		}
		above = s.Carrier
	}
	return false
}

// wanted is what the trips ask of a night: how warm, and how wet one comes home.
func (w *stages) wanted(in *warmth.Inputs) {
	for _, id := range build.SortedKeys(w.doc.Use.Trips) {
		t := w.doc.Use.Trips[id]
		about := "/use/trips/" + id
		if t.Keep != nil && (in.Keep == nil || t.Keep.Float() > *in.Keep) {
			keep := t.Keep.Float()
			in.Keep, in.KeepAbout = &keep, about+"/keep"
		}
		if t.Wet != nil && t.Wet.Float() > in.Wet {
			in.Wet, in.WetAbout = t.Wet.Float(), about+"/wet"
		}
	}
}

// nights are those of the trips, or else four in each month from April to October, as most first builders have them: common practice, no source.
func nights(in *warmth.Inputs, journeys trips.Result) {
	in.TripsAssumed = true
	for i, n := range journeys.Nights {
		in.Months[i].Nights = math.Min(n, 30)
		in.TripsAssumed = in.TripsAssumed && n <= 0
	}
	for month := 4; in.TripsAssumed && month <= 10; month++ {
		in.Months[month-1].Nights = 4
	}
}

// weatherOf is the usual and the cold day of each month.
func weatherOf(in *warmth.Inputs, weather climate.Result) {
	in.Place, in.PlaceAssumed = weather.Place.Name, weather.StandIn
	if !weather.StandIn {
		in.PlaceAbout = "/use/climate"
	}
	for i := range in.Months {
		in.Months[i].Usual, in.Months[i].Cold = dayOf(weather.Usual(i+1)), dayOf(weather.Cold(i+1))
		in.Months[i].Mean = weather.Months[i].Mean.Float()
	}
}

func dayOf(d climate.Day) warmth.Day {
	out := warmth.Day{Vapour: d.Vapour}
	for h, t := range d.Course() {
		out.Outside[h] = t.Float()
	}
	return out
}

// heatOf is how a material passes heat and vapour; what the catalogue does not know is taken from similar things, and marked so.
func heatOf(id string, rows *catalogue.Catalogue) warmth.Material {
	m, _ := rows.Material(id)
	out := warmth.Material{ID: id, Name: cmp.Or(m.Title, id), Conducts: m.Conducts, Vapour: m.Vapour, Density: m.Density.Float(), Capacity: m.HeatCapacity}
	like := [3]float64{0.17, 50, 1500} // of board
	if m.Group == "insulation" {
		like = [3]float64{0.04, 5, 1400}
	}
	if out.Conducts <= 0 {
		out.Conducts, out.Assumed = like[0], true
	}
	if out.Vapour <= 0 {
		out.Vapour = like[1]
	}
	if out.Capacity <= 0 {
		out.Capacity = like[2]
	}
	if out.Density <= 0 && m.Thick > 0 {
		out.Density = float64(m.PerArea) / (m.Thick.Float() / 1000)
	}
	return out
}
