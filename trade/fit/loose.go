package fit

import (
	"encoding/json"
	"fmt"
	"math"
	"slices"

	"tumblehome/trade/finding"
)

// Limits for what flies forward when braking: our own, common practice, no source.
const (
	looseFault = 5.0  // kg: breaks bones
	looseClose = 1.0  // kg
	unsaid     = 10.0 // kg: from here on it is asked how a thing that is only planned will be held
	gravity    = 9.81 // m/s²
)

var looseSource = finding.Source{
	Text: "0.8 g forward for vans of 2.0 to 3.5 t (VDI 2700 sheet 16), 1.0 g with pitching (an insurers' study); from 1 and 5 kg on is our own limit, common practice", Sure: finding.Practice,
}

// loose finds what nothing holds while driving: each thing that is said to be loose, and together all in the van today of which nothing is
// said. Of what is only planned and heavy it is asked once how it will be held.
func (w *worker) loose() {
	drive := w.named("drive")
	if drive == nil {
		return
	}
	var asked, silent []int
	for i := range w.in.Fittings {
		f := &w.in.Fittings[i]
		if len(drive.Standings[i].Solid) == 0 || f.Later || w.held(i) || f.Mass < looseClose {
			continue
		}
		switch {
		case f.Belted && f.Held == "":
			w.askMounting(i)
		case f.Held == "loose":
			w.reportLoose(i)
		case f.Today:
			silent = append(silent, i)
		case f.Mass >= unsaid:
			asked = append(asked, i)
		}
	}
	if len(silent) > 0 {
		w.reportSilent(silent)
	}
	if len(asked) > 0 {
		w.askHeld(asked)
	}
}

// held says whether a fitting stays where it is: the builder said by what, it is built in, it belongs to an opening, it is a curtain, or it
// stands inside something closed that is held itself: a shelf is open. Made things that stand against the van are taken as screwed; boxes and
// cushions are moved about, drawers and shelves that slide out roll out in a bend or on a hill: these need a word.
func (w *worker) held(i int) bool {
	for range len(w.in.Fittings) {
		f := &w.in.Fittings[i]
		switch {
		case f.Held != "":
			return f.Held != "loose"
		case f.For != "" || f.Gives >= 1:
			return true
		case w.slidesOut(i):
			return false
		case f.Make != "" && f.Make != "box" && f.Make != "cushions":
			return true
		case !f.In || w.carriers[i] < 0 || w.in.Fittings[w.carriers[i]].Make == "shelf":
			return false
		}
		i = w.carriers[i]
	}
	return false
}

// slidesOut says whether a thing is made to run on runners.
func (w *worker) slidesOut(i int) bool {
	return w.in.Fittings[i].Make == "drawer" || w.in.Fittings[i].Make == "slide-out"
}

func (w *worker) reportLoose(i int) {
	f := &w.in.Fittings[i]
	out := finding.Finding{
		Code: "fit.loose", Severity: finding.Close, Mode: "drive", About: []string{pointer("fittings", f.ID)},
		Title:    fmt.Sprintf("Nothing holds %s while driving", w.name(i)),
		Words:    fmt.Sprintf("It has %s. In sudden braking it pushes forward with %s to %s; in a crash with many times that.", kilos(f.Mass), newtons(0.8*f.Mass), newtons(f.Mass)),
		Measured: &finding.Measure{Value: f.Mass, Unit: "kg"}, Limit: &finding.Measure{Value: looseClose, Unit: "kg"}, Source: looseSource,
		Caution: "Whatever is loose flies forward when you brake hard. Screw, bolt, strap or latch it before driving.",
	}
	if f.Mass >= looseFault {
		out.Severity, out.Limit.Value = finding.Fault, looseFault
	}
	out.Proposals = w.strapped([]int{i})
	w.find(out)
}

// reportSilent tells of all in the van of which nobody says how it is held; the heaviest counts.
func (w *worker) reportSilent(silent []int) {
	if len(silent) == 1 {
		w.reportLoose(silent[0])
		return
	}
	heavy, names, about := w.inOrder(silent)
	most := w.in.Fittings[heavy].Mass
	out := finding.Finding{
		Code: "fit.loose", Severity: finding.Close, Mode: "drive", About: about,
		Title:    fmt.Sprintf("Nobody says what holds %d things in the van while driving", len(silent)),
		Words:    fmt.Sprintf("They are %s. In sudden braking %s alone pushes forward with %s to %s. Say of each how it is held.", listed(names), w.name(heavy), newtons(0.8*most), newtons(most)),
		Measured: &finding.Measure{Value: most, Unit: "kg"}, Limit: &finding.Measure{Value: looseClose, Unit: "kg"}, Source: looseSource,
		Caution: "Whatever is loose flies forward when you brake hard. Screw, bolt, strap or latch it before driving.",
	}
	if most >= looseFault {
		out.Severity, out.Limit.Value = finding.Fault, looseFault
	}
	out.Proposals = w.strapped(silent)
	w.find(out)
}

// strapped is to strap some things down while driving, all together; what slides out is latched.
func (w *worker) strapped(some []int) []finding.Proposal {
	all := map[string]any{}
	for _, i := range some {
		all[w.in.Fittings[i].ID] = map[string]string{"held": "strapped"}
		if w.slidesOut(i) {
			all[w.in.Fittings[i].ID] = map[string]string{"held": "latched"}
		}
	}
	patch, err := json.Marshal(map[string]any{"fittings": all})
	if err != nil {
		return nil
	}
	words := "strap all of them down"
	if len(some) == 1 {
		words = "strap " + w.name(some[0]) + " down"
		if w.slidesOut(some[0]) {
			words = "put a latch on " + w.name(some[0])
		}
	}
	return []finding.Proposal{{Words: words, Patch: patch}}
}

// inOrder are some fittings as they stand from the front, the heaviest of them, their names and pointers.
func (w *worker) inOrder(some []int) (heavy int, names, about []string) {
	slices.SortStableFunc(some, func(a, b int) int { return nearer(w.standingIn("drive", a), w.standingIn("drive", b)) })
	heavy = some[0]
	for _, i := range some {
		names = append(names, w.name(i))
		about = append(about, pointer("fittings", w.in.Fittings[i].ID))
		if w.in.Fittings[i].Mass > w.in.Fittings[heavy].Mass {
			heavy = i
		}
	}
	return heavy, names, about
}

// askHeld asks about all planned things together.
func (w *worker) askHeld(asked []int) {
	_, names, about := w.inOrder(asked)
	out := finding.Finding{Code: "fit.held", Severity: finding.Note, Mode: "drive", Source: looseSource, About: about}
	out.Title = "Nobody has said how these heavy things will be held while driving"
	if len(asked) == 1 {
		out.Title = fmt.Sprintf("Nobody has said how %s will be held while driving", names[0])
	}
	out.Words = "Asked of " + listed(names) + ". Say whether it will be screwed, bolted, strapped, latched, wedged or bonded, or put it inside something closed."
	out.Proposals = w.strapped(asked)
	w.find(out)
}

func kilos(m float64) string {
	if m < 10 {
		return fmt.Sprintf("%.1f kg", m)
	}
	return fmt.Sprintf("%.0f kg", m)
}

// newtons is the force of so many kilograms at 1 g, to two figures.
func newtons(m float64) string {
	n := m * gravity
	step := math.Pow(10, math.Floor(math.Log10(n))-1)
	return fmt.Sprintf("%.0f N", math.Round(n/step)*step)
}
