package weight

import (
	"fmt"
	"slices"
	"strings"

	"tumblehome/trade/takeoff"
	"tumblehome/trade/working"
)

// entry is a figure and how to show it.
type entry struct {
	figure working.Figure
	show   func() working.Working
}

// Figures lists every figure, by code.
func (r Result) Figures() []working.Figure {
	out := make([]working.Figure, len(r.entries))
	for i, e := range r.entries {
		out[i] = e.figure
	}
	return out
}

// Working shows how a figure came about; false if there is no figure of that code.
func (r Result) Working(code string) (working.Working, bool) {
	i, ok := slices.BinarySearchFunc(r.entries, code, func(e entry, code string) int {
		return strings.Compare(e.figure.Code, code)
	})
	if !ok {
		return working.Working{}, false
	}
	w := r.entries[i].show()
	w.Code, w.Label = code, r.entries[i].figure.Label
	return w, true
}

// enter makes all figures, sorted by code.
func (r *Result) enter() {
	for which, a := range axes(r.in.Plate) {
		r.enterAxis(which, a)
	}
	r.enterLeast()
	r.enterBalance()
	r.enterTyres()
	r.enterRoof()
	r.enterPayload()
	r.enterWeighings()
	slices.SortStableFunc(r.entries, func(a, b entry) int { return strings.Compare(a.figure.Code, b.figure.Code) })
}

func (r *Result) put(f working.Figure, show func() working.Working) {
	if f.State == "" {
		f.State = working.Current
		if r.base < 0 {
			f.State = working.Assumed
		}
	}
	r.entries = append(r.entries, entry{f, show})
}

// enterAxis gives the headline, the margin, every case, and the van as it stands.
func (r *Result) enterAxis(which int, a axis) {
	g := r.governing(which)
	r.putLoad(a.head, a.label, g.name(), a, g.On)
	if limit := a.plated(); limit > 0 {
		code := "weight.margin." + marginName(which)
		left := limit - a.pick(g.On).Mean
		r.put(working.Figure{Code: code, Value: left, Unit: "kg", Label: "To spare: " + a.noun, Words: g.name()},
			func() working.Working { return r.spare(a.plate, limit, a.head, a.pick(g.On).Mean) })
	}
	for _, c := range r.Cases {
		r.putLoad("weight.case."+c.ID+"."+a.code, a.label+", "+c.name(), c.name(), a, c.On)
	}
	r.putLoad("weight.today."+a.code, a.label+", as it stands today", "nobody aboard, fuel as last weighed", a, r.Today)
	r.putLoad("weight.finished."+a.code, a.label+", finished", "nobody aboard, fuel as last weighed", a, r.Finished)
	r.putLoad("weight.bare."+a.code, a.label+", bare", "nothing aboard, tank empty", a, r.Bare)
}

// enterLeast gives the smallest of the margins: the limit that gives out first. Without a plate there is none.
func (r *Result) enterLeast() {
	least, found := 0.0, false
	var first axis
	var in CaseLoad
	for which, a := range axes(r.in.Plate) {
		g := r.governing(which)
		if left := a.plated() - a.pick(g.On).Mean; a.plated() > 0 && (!found || left < least) {
			least, first, in, found = left, a, g, true
		}
	}
	if !found {
		return
	}
	r.put(working.Figure{Code: "weight.margin.least", Value: least, Unit: "kg", Label: "To spare on what gives out first", Words: first.noun + ": " + in.name()},
		func() working.Working {
			return r.spare(first.plate, first.plated(), first.head, first.pick(in.On).Mean)
		})
}

func marginName(which int) string {
	return [3]string{"total", "front-axle", "rear-axle"}[which]
}

func (r *Result) putLoad(code, label, words string, a axis, on On) {
	load := a.pick(on)
	p50, p80 := load.Mean, load.P80()
	f := working.Figure{Code: code, Value: load.Mean, Unit: "kg", Label: label, P50: &p50, P80: &p80, Words: words}
	if limit := a.plated(); limit > 0 {
		f.Limit = &limit
	}
	r.put(f, func() working.Working { return r.showLoad(a, on) })
}

// enterBalance says where the middle of the mass lies and how level the van sits.
func (r *Result) enterBalance() {
	heaviest := r.governing(whole)
	x, y := r.centre(heaviest.On)
	r.put(working.Figure{Code: "weight.centre.x", Value: x, Unit: "mm", Label: "Middle of the mass, from the front edge of the load space", Words: heaviest.name()},
		func() working.Working { return r.showCentreX(heaviest, x) })
	r.put(working.Figure{Code: "weight.centre.y", Value: y, Unit: "mm", Label: "Middle of the mass, right of the van's middle", Words: heaviest.name()},
		func() working.Working { return r.showSum(heaviest, 1, heaviest.Side, heaviest.Total.Mean, y) })
	if heaviest.of > 0 {
		z := heaviest.up / heaviest.of
		r.put(working.Figure{Code: "weight.centre.z", Value: z, Unit: "mm", Label: "Middle of what was added, above the load floor", Words: heaviest.name()},
			func() working.Working { return r.showSum(heaviest, 2, heaviest.up, heaviest.of, z) })
	}
	if r.track() > 0 {
		worst := r.Cases[r.governs.side]
		share := r.sideShare(worst.On)
		f := working.Figure{Code: "weight.side", Value: share, Unit: "%", Label: "Right side heavier than left", Words: worst.name()}
		if r.in.Track == 0 {
			f.State = working.Assumed
		}
		r.put(f, func() working.Working { return r.showSide(worst, share) })
	}
	lightest := r.Cases[r.governs.light]
	share, least := lightest.frontShare(), leastFrontShare
	r.put(working.Figure{Code: "weight.front-share", Value: share, Unit: "%", Label: "Part of the mass on the front axle", Limit: &least, Least: true, Words: lightest.name()},
		func() working.Working { return r.showFrontShare(lightest, share) })
}

// enterTyres gives the load of each axle as part of what its two tyres carry.
func (r *Result) enterTyres() {
	for _, t := range r.tyres() {
		if !(t.tyre.Carries > 0) {
			continue
		}
		share, full := 100*t.load/(2*t.tyre.Carries.Float()), 100.0
		r.put(working.Figure{Code: "weight.tyre." + t.name, Value: share, Unit: "%", Label: "Load on the " + t.name + " tyres", Limit: &full, Words: t.caseName},
			func() working.Working { return r.showTyre(t, share) })
	}
}

func (r *Result) enterRoof() {
	mass, lines := r.roof()
	if len(lines) == 0 {
		return
	}
	f := working.Figure{Code: "weight.roof", Value: mass, Unit: "kg", Label: "On the roof", State: working.Current}
	if limit := r.in.RoofLimit.Float(); limit > 0 {
		f.Limit = &limit
	}
	r.put(f, func() working.Working { return showRoof(lines, mass) })
}

// roof is what lies on the roof [kg].
func (r *Result) roof() (mass float64, lines []takeoff.Line) {
	for _, l := range r.in.Lines {
		if slices.ContainsFunc(r.in.OnRoof, l.IsAbout) {
			mass += l.Mass
			lines = append(lines, l)
		}
	}
	return mass, lines
}

// enterPayload says what is left for people, water and gear, and what for a trailer.
func (r *Result) enterPayload() {
	if g := r.in.Plate.Gross; g != nil {
		left := g.Float() - r.runningOrder()
		r.put(working.Figure{Code: "weight.payload-left", Value: left, Unit: "kg", Label: "Left for people, water and gear", Words: "finished, a driver of 75 kg and fuel counted"},
			func() working.Working { return r.showPayload(left) })
	}
	if t := r.in.Plate.Train; t != nil {
		g := r.governing(whole)
		left := t.Float() - g.Total.Mean
		r.put(working.Figure{Code: "weight.margin.train", Value: left, Unit: "kg", Label: "Left for a trailer", Words: g.name()},
			func() working.Working {
				return r.spare("/vehicle/plate/train", t.Float(), "weight.total", g.Total.Mean)
			})
	}
}

const standardDriver = 75 // kg, Regulation (EU) 1230/2012 article 2(4)

// runningOrder is the finished van with 90 % of its fuel and a driver [kg].
func (r *Result) runningOrder() float64 {
	mass := r.Finished.Total.Mean + standardDriver
	for _, l := range r.Finished.cargo.extra {
		mass -= l.Mass
	}
	for _, l := range r.in.fuel(defaultFuel) {
		mass += l.Mass
	}
	return mass
}

// enterWeighings says how far each further weighing was from the estimate and what that changed.
func (r *Result) enterWeighings() {
	if len(r.offs) == 0 {
		return
	}
	for _, o := range r.offs {
		w := r.in.Weighings[o.weighing]
		r.put(working.Figure{Code: "weight.weighing." + w.ID + ".off", Value: o.by, Unit: "kg", Label: "Scale above estimate, " + w.Date.String(),
			Words: fmt.Sprintf("expected %s kg, read %s", kg(o.estimate.mean), kg(o.estimate.mean+o.by))},
			func() working.Working { return r.showOff(o) })
	}
	moved := r.Finished.Total.moved
	r.put(working.Figure{Code: "weight.correction", Value: moved, Unit: "kg", Label: "Added to the estimates after weighing", Words: "finished van"},
		func() working.Working { return r.showCorrection(moved) })
}
