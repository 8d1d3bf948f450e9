package reckon

import (
	"cmp"
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/quantity"
	"tumblehome/trade/cables"
	"tumblehome/trade/power"
)

// secondBanks are those beside the one that feeds the van, each with what is said to charge it.
func (w *stages) secondBanks(house *power.Battery) (out []power.Second) {
	if w.doc.Power == nil || house == nil {
		return nil
	}
	for _, id := range build.SortedKeys(w.doc.Power.Batteries) {
		if id == house.ID {
			continue
		}
		if b := w.joined(id, w.doc.Power.Batteries[id]); b != nil {
			out = append(out, power.Second{ID: spaced(id), About: b.About, Battery: b, Sources: w.chargersOf(func(to string) bool { return to == id })})
		}
	}
	return out
}

// houseBattery is the bank that feeds the van: the largest that is named, or, where nothing is said of power, all batteries there are.
func (w *stages) houseBattery() *power.Battery {
	if w.doc.Power == nil {
		return w.joined("", build.Bank{Is: w.having(func(r *catalogue.Row) bool { return valueOf(r.AmpHours) > 0 })})
	}
	var best *power.Battery
	for _, id := range build.SortedKeys(w.doc.Power.Batteries) {
		if b := w.joined(id, w.doc.Power.Batteries[id]); b != nil && (best == nil || b.Rated > best.Rated) {
			best = b
		}
	}
	return best
}

// having are the fittings whose rows have something.
func (w *stages) having(what func(*catalogue.Row) bool) (ids []string) {
	for _, id := range w.ids() {
		if t := w.things[id]; t.row != nil && !t.later() && what(t.row) {
			ids = append(ids, id)
		}
	}
	return ids
}

func (w *stages) joined(id string, bank build.Bank) *power.Battery {
	b := &power.Battery{ID: id, About: "/power/batteries/" + id, Tested: valueOf(bank.Tested).Float(), Heated: bool(valueOf(bank.Heated)), CutOff: true}
	for _, f := range bank.Is {
		t := w.things[f]
		if t.row == nil || t.later() || valueOf(t.row.AmpHours) <= 0 {
			continue
		}
		b.Fittings = append(b.Fittings, "/fittings/"+f)
		b.Rated += valueOf(t.row.AmpHours).Float()
		b.CutOff = b.CutOff && bool(valueOf(t.row.CutOff)) // one without is enough to be spoilt
		if b.Count++; b.Count == 1 {
			b.Row, b.Usable, b.Volts = t.Buy, valueOf(t.row.Usable).Float(), valueOf(t.row.Volts).Float()
			b.Chemistry, b.Assumed = chemistryTold(t)
			b.Outside = t.Where == "under" || t.Where == "outside"
		}
	}
	if b.Count == 0 {
		return nil
	}
	if b.Fitting = b.Fittings[0]; id == "" {
		b.About = b.Fitting
	}
	if bank.CutOff != nil {
		b.CutOff = bool(*bank.CutOff)
	}
	return b
}

func chemistryTold(t thing) (is power.Chemistry, assumed bool) {
	is, told := power.ChemistryOf(t.Buy, t.row.Name+" "+t.Called)
	return is, !told
}

// chargers are the sources that are named for the bank, or for none, or, where nothing is said of power, those there are.
func (w *stages) chargers(house *power.Battery) (out []power.Source) {
	if w.doc.Power == nil {
		for _, id := range w.having(func(*catalogue.Row) bool { return true }) {
			if s, ok := w.charging("/fittings/"+id, build.Source{Is: []string{id}}); ok {
				out = append(out, s)
			}
		}
		return out
	}
	return w.chargersOf(func(to string) bool { return to == "" || house == nil || to == house.ID })
}

func (w *stages) chargersOf(bank func(to string) bool) (out []power.Source) {
	for _, id := range build.SortedKeys(w.doc.Power.Sources) {
		said := w.doc.Power.Sources[id]
		if s, ok := w.charging("/power/sources/"+id, said); ok && bank(said.To) {
			s.Bare = s.Kind == power.Sun && !w.controlled(said)
			out = append(out, s)
		}
	}
	return out
}

// controlled says whether a controller of charge is among what a source is or is controlled by.
func (w *stages) controlled(said build.Source) bool {
	t, there := w.things[w.controllerOf(said)]
	return there && !t.later() && isController(t)
}

// unknownSources are things named as sources that charge nothing as far as their rows tell.
func (w *stages) unknownSources() (out []power.Unknown) {
	if w.doc.Power == nil {
		return nil
	}
	for _, id := range build.SortedKeys(w.doc.Power.Sources) {
		for _, fitting := range w.doc.Power.Sources[id].Is {
			t, there := w.things[fitting]
			if !there || t.later() || isController(t) {
				continue
			}
			if s := (power.Source{}); t.row != nil {
				if w.addSource(&s, t); s.Kind != "" {
					continue
				}
			}
			out = append(out, power.Unknown{About: "/power/sources/" + id, Fitting: "/fittings/" + fitting, Name: nameOf(fitting, t.Fitting)})
		}
	}
	return out
}

func (w *stages) charging(about string, said build.Source) (power.Source, bool) {
	s := power.Source{ID: about, About: about, Most: valueOf(said.Most).Float(), InRow: bool(valueOf(said.InRow))}
	if said.Shade != nil {
		shade := said.Shade.Float()
		s.Shade = &shade
	}
	for _, id := range said.Is {
		if t := w.things[id]; t.row != nil && !t.later() {
			w.addSource(&s, t)
		}
	}
	if len(said.Is) == 1 {
		s.Fitting = "/fittings/" + said.Is[0]
		if t := w.things[said.Is[0]]; t.row != nil {
			s.Row, s.RowKind = t.Buy, t.row.Kind
		}
	}
	if s.Relay {
		s.Loop = loop(said)
	}
	if by := w.things[said.By]; by.row != nil && s.Kind == power.Sun {
		s.Controller, s.Amps = by.Buy, valueOf(by.row.Amps).Float()
		s.PWM = isPlain(by)
	}
	return s, s.Kind != ""
}

func (w *stages) addSource(s *power.Source, t thing) {
	switch kind := t.charges(); {
	case kind == cables.Sun && valueOf(t.row.Watts) > 0:
		s.Kind = power.Sun
		s.Watts += valueOf(t.row.Watts).Float()
		volts := valueOf(t.row.Volts).Float()
		switch {
		case s.InRow:
			s.PanelVolts += cmp.Or(volts, usualPanel)
		case s.PanelVolts == 0 || volts > 0 && volts < s.PanelVolts: // side by side they stand at the volts of the weakest
			s.PanelVolts = volts
		}
		s.Panels++
		s.Bonded = s.Bonded || t.Held == "bonded" || strings.Contains(t.text(), "flex")
	case kind == cables.Engine, kind == cables.Split:
		s.Kind = power.Engine
		s.Amps += valueOf(t.row.Amps).Float()
		s.Relay = s.Relay || kind == cables.Split
	case kind == cables.Shore:
		s.Kind = power.Shore
		s.Amps += valueOf(t.row.Amps).Float()
	}
}

// copper is the resistance of a metre of 1 mm2, warm [ohm]; joints that of fuses, contacts and the battery itself: common practice, no source.
const (
	copper = 0.0185
	joints = 0.015
)

func loop(said build.Source) float64 {
	if said.Route == nil || said.Cable == nil || *said.Cable <= 0 {
		return 0
	}
	return 2*said.Route.Float()/1000*copper/said.Cable.Float() + joints
}

func (w *stages) inlet() power.Mains {
	m := power.Mains{About: "/power/mains"}
	if p := w.doc.Power; p != nil && p.Mains != nil {
		m.Inlet, m.Undecided, m.Without = p.Mains.Known(), p.Mains.Undecided, p.Mains.None
	}
	return m
}

// metered are the builder's own readings, as Wh a day.
func metered(read map[string]build.Metered, b *power.Battery) (out []power.Reading) {
	for _, id := range build.SortedKeys(read) {
		r := read[id]
		wh := r.Took.Amount
		if r.Took.Unit == "Ah" {
			wh *= b.MeanVolts()
		} else if r.Took.Unit != "Wh" {
			continue
		}
		switch r.Took.Per {
		case quantity.Hourly:
			wh *= 24
		case quantity.Daily, quantity.Nightly:
		default:
			continue
		}
		if month := r.Date.Month; wh > 0 && month >= 1 && month <= 12 {
			out = append(out, power.Reading{About: "/power/read/" + id, Month: int(month), Wh: wh})
		}
	}
	slices.SortStableFunc(out, func(a, b power.Reading) int { return cmp.Or(cmp.Compare(a.Month, b.Month), cmp.Compare(a.Wh, b.Wh)) })
	return out
}
