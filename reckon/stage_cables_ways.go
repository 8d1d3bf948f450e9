package reckon

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/quantity"
	"tumblehome/trade/cables"
	"tumblehome/trade/runs"
)

// cores are the loaded cores in each way.
type cores map[string]int

// loadedCores counts two for each cable that takes a way.
func loadedCores(p *build.Power) cores {
	out := cores{}
	for _, c := range p.Circuits {
		for _, run := range c.Along {
			out[run] += 2
		}
	}
	for _, s := range p.Sources {
		for _, run := range s.Along {
			out[run] += 2
		}
	}
	return out
}

func (c cores) most(along []string) int {
	most := 0
	for _, run := range along {
		most = max(most, c[run])
	}
	return most
}

func (w *stages) circuit(id string, c build.Circuit, shared cores) cables.Circuit {
	about := "/power/circuits/" + id
	out := cables.Circuit{From: c.From, Current: valueOf(c.Current).Float(), Wanted: valueOf(c.DropWanted).Float()}
	out.Way = cables.Way{ID: id, About: about, Title: named(id, c.Called), Section: valueOf(c.Cable).Float(), Insulation: valueOf(c.Insulation).Float(), Runs: c.Along,
		Bundled: c.Bundled, Surrounded: bool(valueOf(c.Wrapped)), Hot: bool(valueOf(c.Hot)), Body: c.Return == "body", Colour: c.Colour, Number: c.Number,
		Fuse: fuseOf(c.Fuse, c.FuseKind, c.Breaking, c.FuseAway, about, "fuse")}
	if out.Bundled == 0 {
		out.Bundled = shared.most(c.Along)
	}
	for _, l := range c.Loads {
		if !w.things[l].distributes() {
			out.Loads = append(out.Loads, w.load(l))
		}
	}
	route := w.runs.Route(id, false)
	if route != nil {
		out.Branches = route.Branches()
	}
	out.Length = w.followed(route, w.length(c.Route, about, w.near(c.From), c.Loads))
	return out
}

// near is the fitting at which a circuit of a bank begins: the fuse board, else the battery. One that begins at another circuit begins at its load.
func (w *stages) near(from string) string {
	if b, ok := w.doc.Power.Batteries[from]; ok {
		if board := w.only("fusebox-", from); board != nil {
			return board.ID
		}
		if len(b.Is) > 0 {
			return b.Is[0]
		}
	}
	if c := w.doc.Power.Circuits[from]; len(c.Loads) > 0 {
		return c.Loads[0]
	}
	return ""
}

// followed is a length as it lies along the ways, where it was not measured and the runs know it.
func (w *stages) followed(r *runs.Route, otherwise cables.Length) cables.Length {
	if r != nil && r.Known && otherwise.Known != cables.Measured {
		return cables.Length{MM: r.Reckoned, Known: cables.Laid, About: r.Circuit.Pointer()}
	}
	return otherwise
}

// length is what is written, else that along x, y and z to the furthest of the loads with a fifth for the way round things, else unknown.
func (w *stages) length(route *quantity.Length, about, from string, to []string) cables.Length {
	if route != nil {
		return cables.Length{MM: route.Float(), Known: cables.Measured, About: about + "/route"}
	}
	start := w.places.Find(from)
	if start == nil || !start.Placed() {
		return cables.Length{}
	}
	most := 0.0
	for _, id := range to {
		end := w.places.Find(id)
		if end == nil || !end.Placed() {
			continue
		}
		sum := 0.0
		for axis := range 3 {
			sum += math.Abs(end.Middle[axis] - start.Middle[axis])
		}
		most = math.Max(most, sum)
	}
	if most == 0 {
		return cables.Length{}
	}
	return cables.Length{MM: roundAbout * most, Known: cables.Straight}
}

const roundAbout = 1.2 // of the way along x, y and z; common practice

// distributes says whether a thing only passes current on to circuits: as the load of one it is where that one ends.
func (t thing) distributes() bool {
	if t.row == nil || valueOf(t.row.Watts).Float() > 0 {
		return false
	}
	return slices.ContainsFunc([]string{"fusebox-", "busbar-", "isolator-", "shunt-"}, func(kind string) bool { return strings.HasPrefix(t.Buy, kind) })
}

func (w *stages) load(id string) cables.Load {
	t := w.things[id]
	l := cables.Load{ID: id, Name: named(id, t.Called), About: "/fittings/" + id, Row: t.Buy, Kind: appliance(t)}
	if t.row != nil {
		if valueOf(t.row.AmpHours).Float() > 0 {
			l.Kind = cables.Store
		}
		l.Watts, l.Amps, l.Volts = valueOf(t.row.Watts).Float(), valueOf(t.row.Amps).Float(), valueOf(t.row.Volts).Float()
	}
	return l
}

func (w *stages) source(id string, s build.Source, shared cores) cables.Source {
	about := "/power/sources/" + id
	out := cables.Source{To: s.To, Most: valueOf(s.Most).Float(), Both: s.Fused, InRow: bool(valueOf(s.InRow)), Starter: valueOf(w.doc.Vehicle.Volts).Float(), Kind: cmp.Or(w.kindOf(s), cables.Engine)}
	for _, one := range s.Is {
		t := w.things[one]
		if isController(t) {
			continue
		}
		out.Is = append(out.Is, w.load(one))
		if t.row == nil {
			continue
		}
		volts := valueOf(t.row.Volts).Float()
		switch {
		case out.InRow:
			out.Volts += cmp.Or(volts, usualPanel)
		case out.Volts == 0 || volts > 0 && volts < out.Volts: // side by side they stand at the volts of the weakest
			out.Volts = volts
		}
	}
	out.Way = cables.Way{ID: id, About: about, Title: chargeTitles[out.Kind], Section: valueOf(s.Cable).Float(), Insulation: valueOf(s.Insulation).Float(), Runs: s.Along,
		Bundled: shared.most(s.Along), Surrounded: bool(valueOf(s.Wrapped)), Hot: bool(valueOf(s.Hot)), Colour: s.Colour, Number: s.Number,
		Fuse: fuseOf(s.Fuse, s.FuseKind, s.Breaking, s.FuseAway, about, "fuse")}
	out.Length = w.followed(w.runs.Route(id, true), w.length(s.Route, about, w.controllerOf(s), s.Is))
	if by := w.controllerOf(s); by != "" && out.Kind == cables.Sun {
		out.By, out.Plain = *w.part(by), isPlain(w.things[by])
	}
	out.String, out.StringMost = fuseOf(s.StringFuse, "", nil, nil, about, "string-fuse"), valueOf(s.StringMost).Float()
	out.Lead = w.lead(id, s)
	return out
}

const usualPanel = 18.0 // V of a panel of which nobody says; 36 cells, common practice

// lead is the way from what controls or converts a source to the fuse board, in the copper and the colour of the builder's choice.
func (w *stages) lead(id string, s build.Source) cables.Way {
	about := "/power/sources/" + id + "/lead"
	var said build.Lead
	if s.Lead != nil {
		said = *s.Lead
	}
	out := cables.Way{ID: id, About: about, Section: valueOf(said.Cable).Float(), Insulation: valueOf(s.Insulation).Float(), Colour: s.Colour, Number: said.Number,
		Fuse: fuseOf(said.Fuse, said.FuseKind, nil, nil, "/power/sources/"+id, "lead/fuse")}
	out.Length = w.followed(w.runs.Lead(id), w.length(said.Route, about, w.converterOf(s), []string{w.near(s.To)}))
	return out
}

// converterOf is the fitting at which the lead of a source begins: the controller of panels, else the source itself.
func (w *stages) converterOf(s build.Source) string {
	if len(s.Is) == 0 || w.kindOf(s) == cables.Sun {
		return w.controllerOf(s)
	}
	return s.Is[0]
}

var chargeTitles = map[cables.SourceKind]string{cables.Engine: "charge from the engine", cables.Split: "charge from the engine", cables.Sun: "solar panels", cables.Shore: "mains charger"}

// billed are the catalogue rows that the bill may name besides cable.
var billed = []string{"fuse-blade-set", "fuse-strip-sf30-60", "fuse-strip-sf51-150", "fuse-classt-200", "lug-crimp-set", "terminal-crimp-set", "battery-link", "connector-solar-branch", "fuse-solar-inline",
	"cable-0-75mm2", "cable-1mm2", "cable-1-5mm2", "cable-2-5mm2", "cable-4mm2", "cable-6mm2", "cable-10mm2", "cable-16mm2", "cable-25mm2", "cable-35mm2", "cable-50mm2", "cable-70mm2"}

func (w *stages) cableRows() map[string]cables.Row {
	out := map[string]cables.Row{}
	for _, id := range billed {
		if row, ok := w.rows.Row(id); ok {
			out[id] = cables.Row{Name: row.Name, Unit: row.Each, Price: w.billPrice(id)}
		}
	}
	return out
}

// billPrice is the mean price of one of a row; 0 where nobody knows, or where it is in another currency.
func (w *stages) billPrice(row string) float64 {
	if p := w.price(row); p != nil && (p.Price.Likely.Currency == "" || p.Price.Likely.Currency == w.doc.Build.Currency) {
		return p.Price.Mean().Float()
	}
	return 0
}
