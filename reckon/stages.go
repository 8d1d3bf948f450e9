package reckon

import (
	"sync"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/quantity"
	"tumblehome/trade/arrangement"
	"tumblehome/trade/cables"
	"tumblehome/trade/climate"
	"tumblehome/trade/cost"
	"tumblehome/trade/fit"
	"tumblehome/trade/lining"
	"tumblehome/trade/power"
	"tumblehome/trade/runs"
	"tumblehome/trade/shell"
	"tumblehome/trade/stock"
	"tumblehome/trade/takeoff"
	"tumblehome/trade/trips"
	"tumblehome/trade/warmth"
	"tumblehome/trade/weight"
	"tumblehome/trade/working"
)

// Results are what the trades found, for those who draw and show them.
type Results struct {
	Body    *shell.Body
	Lining  lining.Result
	Places  arrangement.Result
	Lines   []takeoff.Line // of all that will be in the van, without people, fuel, water and gear
	Trips   trips.Result
	Climate climate.Result
	Weight  weight.Result
	Fit     fit.Result
	Runs    runs.Result
	Warmth  warmth.Result
	Cables  cables.Result
	Power   power.Result
	Stock   stock.Result
	Cost    cost.Result
}

// stages holds one reckoning while it is being worked out.
type stages struct {
	doc   *build.Document
	rows  *catalogue.Catalogue
	today quantity.Date

	body      digestedBody
	room      digestedRoom
	skin      outerSkin
	lining    lining.Result
	things    map[string]thing
	sorted    []string // their ids
	places    arrangement.Result
	placesKey Digest
	runs      runs.Result
	linings   []takeoff.Line
	fittings  []takeoff.Line
	wiring    []takeoff.Line
	gear      []takeoff.Line
}

// ids are those of the fittings in the order in which they are written, put in order once.
func (w *stages) ids() []string {
	if w.sorted == nil {
		w.sorted = build.SortedKeys(w.things)
	}
	return w.sorted
}

// Reckon works out everything that follows from a document on a day. The document's own day, if it names one, wins.
func (m *Machine) Reckon(doc *build.Document, today quantity.Date) *Reckoning {
	return m.reckon(doc, today, nil)
}

// AtHand is Reckon for a glance at what is not yet settled, such as a thing being dragged away from how it was before. What takes longer than a
// blink (warmth, power) is worked out only if it follows from the same inputs as something remembered; else it stays as it was before, its figures in
// the state older.
func (m *Machine) AtHand(doc *build.Document, today quantity.Date, before *Reckoning) *Reckoning {
	return m.reckon(doc, today, before)
}

func (m *Machine) reckon(doc *build.Document, today quantity.Date, before *Reckoning) *Reckoning {
	if doc.Build.Today != nil {
		today = *doc.Build.Today
	}
	w := &stages{doc: doc, rows: catalogue.Builtin().Overlay(doc.Catalogue), today: today}
	r := &Reckoning{Document: doc, Today: today, written: sync.OnceValue(func() *tree.Node { return build.Encode(doc) })}

	bare, bodyKey := m.workShell(doc)
	w.body = digestedBody{bare.Body, bodyKey}
	w.skin = outer(doc, w.body)
	lined, roomKey := m.workLining(doc, w.rows, w.body, today)
	w.lining, w.room = lined, digestedRoom{lined.Room, roomKey}
	w.things = completed(doc, w.rows)
	w.places, w.placesKey = m.workArrangement(doc, w.room, w.skin, w.things)
	w.linings = lined.TakeOff()
	w.fittings = fittingLines(w.things, &w.places, w.rows, today)
	r.Runs, _ = m.workRuns(w)
	w.runs = r.Runs
	r.Cables, _ = m.workCables(w)
	w.wiring = w.cableLines(&r.Cables)
	w.gear = massesAt("/use/gear", "gear", doc.Use.Gear, w.room, false)

	r.Results = Results{Body: bare.Body, Lining: lined, Places: w.places, Runs: r.Runs, Cables: r.Cables, Lines: takeoff.Gather(w.linings, w.fittings, w.wiring)}
	r.Trips, _ = m.workTrips(doc)
	r.Climate, _ = m.workClimate(doc, r.Trips)
	r.Weight, _ = m.workWeight(w)
	r.Fit, _ = m.workFit(w)
	r.Stock, _ = m.workStock(w)
	r.Cost, _ = m.workCost(w, r.Stock)
	warm, older := m.workWarmth(w, r.Trips, r.Climate, before)
	r.Warmth = warm
	electric, olderPower := m.workPower(w, r, before)
	r.Power, olderPower = electric, olderPower || older // it rests on the warmth of the cabin

	r.take(found{bare.Figures, bare.Findings, bare.Body})
	r.take(found{lined.Figures, lined.Findings, lined})
	r.take(r.Trips)
	r.take(r.Climate)
	r.take(r.Weight)
	r.take(found{r.Fit.Figures, r.Fit.Findings, &r.Fit})
	r.take(r.Runs)
	r.take(r.Cables)
	r.take(r.Stock)
	r.take(r.Cost)
	if older {
		r.take(found{inState(warm.Figures(), working.Older), warm.Findings(), warm})
	} else {
		r.take(found{warm.Figures(), r.withRemedies(warm), warm})
	}
	if olderPower {
		r.take(found{inState(electric.Figures(), working.Older), electric.Findings(), electric})
	} else {
		r.take(electric)
	}
	r.settle()
	return r
}

// found lets a result whose figures and findings are fields speak like one where they are methods.
type found struct {
	figures  []figure
	findings []note
	explainer
}

func (f found) Figures() []figure { return f.figures }
func (f found) Findings() []note  { return f.findings }

func inState(all []figure, state working.State) []figure {
	for i := range all {
		all[i].State = state
	}
	return all
}
