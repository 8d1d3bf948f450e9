package reckon

import (
	"cmp"
	"strings"

	"tumblehome/build"
	"tumblehome/quantity"
	"tumblehome/trade/cables"
)

// workCables says of every cable whether it is safe.
func (m *Machine) workCables(w *stages) (cables.Result, Digest) {
	return work(m, "cables", 1, cables.Work, w.cableInputs())
}

func (w *stages) cableInputs() cables.Inputs {
	in := cables.Inputs{Rules: w.doc.Build.Rules}
	p := w.doc.Power
	if p == nil {
		return in
	}
	in.Counted, in.Rows = p.CountedIn, w.cableRows()
	shared := loadedCores(p)
	for _, id := range build.SortedKeys(p.Batteries) {
		in.Banks = append(in.Banks, w.bank(id, p.Batteries[id]))
	}
	for _, id := range build.SortedKeys(p.Circuits) {
		in.Circuits = append(in.Circuits, w.circuit(id, p.Circuits[id], shared))
	}
	for _, id := range build.SortedKeys(p.Sources) {
		in.Sources = append(in.Sources, w.source(id, p.Sources[id], shared))
	}
	in.Mains, in.Unfed = w.mainsBlock(p.Mains), w.unfed()
	return in
}

// bank is a bank of batteries with what the van has between them and the circuits: there the only thing of its kind that is its own counts.
func (w *stages) bank(id string, b build.Bank) cables.Bank {
	about := "/power/batteries/" + id
	out := cables.Bank{ID: id, About: about, Bond: valueOf(b.Bond).Float(), FaultSaid: valueOf(b.Shorted).Float(), Number: b.Number, BondNumber: b.BondNumber,
		MainFuse: fuseOf(b.MainFuse, b.FuseKind, b.Breaking, b.FuseAway, about, "main-fuse"),
		Isolator: w.only("isolator-", id), Shunt: w.only("shunt-", id), Busbar: w.only("busbar-", id), FuseBoard: w.only("fusebox-", id)}
	for _, one := range b.Is {
		t := w.things[one]
		battery := cables.Battery{ID: one, Name: named(one, t.Called), Row: t.Buy, About: "/fittings/" + one, Chemistry: chemistry(t)}
		if t.row != nil {
			battery.AmpHours, battery.Volts = valueOf(t.row.AmpHours).Float(), valueOf(t.row.Volts).Float()
		}
		out.Batteries = append(out.Batteries, battery)
	}
	return out
}

func (w *stages) part(id string) *cables.Part {
	t := w.things[id]
	p := &cables.Part{ID: id, Name: named(id, t.Called), About: "/fittings/" + id, Row: t.Buy}
	if t.row != nil {
		p.Amps = valueOf(t.row.Amps).Float()
	}
	if costs := w.things[id].Costs; costs != nil {
		p.Price = costs.Price.Mean().Float()
	}
	return p
}

// unfed are the things that draw low voltage and are named by no circuit and no source.
func (w *stages) unfed() []cables.Load {
	named := map[string]bool{}
	for _, c := range w.doc.Power.Circuits {
		for _, id := range c.Loads {
			named[id] = true
		}
	}
	for _, s := range w.doc.Power.Sources {
		for _, id := range append([]string{s.By}, s.Is...) {
			named[id] = true
		}
	}
	var out []cables.Load
	for _, id := range w.ids() {
		t := w.things[id]
		if t.row == nil || t.later() || named[id] || len(w.doc.Power.Circuits) == 0 {
			continue
		}
		if volts := valueOf(t.row.Volts).Float(); volts > 0 && volts < lowVoltage && valueOf(t.row.Watts).Float() > 0 {
			out = append(out, w.load(id))
		}
	}
	return out
}

const lowVoltage = 16.0 // V: what works at more is a panel or is for the mains

// named is what a thing is called, or else its id as words.
func named(id, called string) string {
	return cmp.Or(called, strings.ReplaceAll(id, "-", " "))
}

func fuseOf(f *build.OrNone[quantity.Current], kind string, breaking *quantity.Current, away *quantity.Length, owner, key string) cables.Fuse {
	out := cables.Fuse{Kind: cables.Kind(kind), Breaking: valueOf(breaking).Float(), Away: -1, About: owner}
	if away != nil {
		out.Away = away.Float()
	}
	if f == nil || f.Undecided {
		return out
	}
	out.Said, out.None, out.Amps, out.About = true, f.None, f.Value.Float(), owner+"/"+key
	return out
}

// mainsBlock is what is planned at mains voltage, for its place and its cost.
func (w *stages) mainsBlock(m *build.OrNone[build.Mains]) cables.Mains {
	out := cables.Mains{About: "/power/mains"}
	switch {
	case m == nil:
		out.About = ""
		return out
	case m.None:
		out.State = "none"
	case m.Undecided:
		out.State = "undecided"
	default:
		out.State, out.By, out.Runs = "planned", m.Value.By, m.Value.Along
	}
	for _, id := range w.ids() {
		if t := w.things[id]; strings.HasPrefix(t.Buy, "mains-") && (out.State == "planned" || out.State == "undecided") {
			out.Parts = append(out.Parts, *w.part(id))
		}
	}
	return out
}
