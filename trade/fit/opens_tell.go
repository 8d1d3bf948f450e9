package fit

import (
	"fmt"
	"strings"

	"tumblehome/trade/finding"
)

func (w *worker) partName(p *Part) string {
	kind := p.Kind
	if kind == "drawer" && w.in.Fittings[p.Fitting].Make == "drawer" { // it is one itself
		if name := w.name(p.Fitting); strings.HasSuffix(name, "drawer") {
			return "the " + name
		}
		return "the drawer " + w.name(p.Fitting)
	}
	if kind == "drawer" {
		kind = "drawers"
	}
	return "the " + kind + " of " + w.name(p.Fitting)
}

func percent(share float64) string { return fmt.Sprintf("%.0f %%", share*100) }

func (w *worker) reportOpens(p *Part, best, day opened) {
	f := w.in.Fittings[p.Fitting]
	name := w.partName(p)
	out := finding.Finding{
		Code: "fit.opens", Severity: finding.Close, Mode: "day", About: []string{pointer("fittings", f.ID)}, Source: opensSource,
		Measured: &finding.Measure{Value: day.share * 100, Unit: "%"}, Limit: &finding.Measure{Value: opensWell * 100, Unit: "%"},
		Title: strings.ToUpper(name[:1]) + name[1:] + " cannot be opened far",
	}
	meets := w.meetingWords(day.meets)
	switch {
	case day.meets.way.Depth == 0:
		out.Title = fmt.Sprintf("%s stands on %s", w.name(day.meets.fitting), name)
		out.Severity = finding.Note
		out.Words = "It must be lifted off each time before the lid opens."
	case best.share >= opensWell:
		out.Severity = finding.Note
		out.Words = fmt.Sprintf("By day it meets %s after %s of its way; in the mode %q it opens.", meets, percent(day.share), best.mode)
	default:
		out.Words = fmt.Sprintf("It meets %s after %s of its way.", meets, percent(day.share))
		if best.share < opensHalf {
			out.Severity = finding.Fault
		}
	}
	if by := day.meets; by.fitting >= 0 && day.share < 1 {
		out.About = append(out.About, pointer("fittings", w.in.Fittings[by.fitting].ID))
		out.Proposals = w.tried(out, func(after *worker) {
			if after.opensLittle(p, by.fitting) {
				after.find(out)
			}
		}, outOfTheWay(day.bars)...)
	}
	w.find(out)
}

// opensLittle says whether a part does not open far by day, or another part of the same fitting meets the same thing.
func (w *worker) opensLittle(p *Part, by int) bool {
	for i := range w.in.Parts {
		other := &w.in.Parts[i]
		if other.Fitting != p.Fitting {
			continue
		}
		if _, day := w.bestOpening(other); day.share < opensWell && (other.Key == p.Key || day.meets.fitting == by) {
			return true
		}
	}
	return false
}

// outOfTheWay is the attempt to move what is met by the shortest way out.
func outOfTheWay(m meeting) []attempt {
	d := m.way.Depth
	if d == 0 || m.fitting < 0 {
		return nil
	}
	return []attempt{{thing: m.fitting, by: [3]float64{away(m.way.X * d), away(m.way.Y * d), away(m.way.Z * d)}}}
}

// clear proposes to move what is met out of the way.
func (w *worker) clear(m meeting) []finding.Proposal {
	d := m.way.Depth
	if d == 0 || m.fitting < 0 {
		return nil
	}
	return w.nudge(m.fitting, m.way.X*d, m.way.Y*d, m.way.Z*d, "")
}

func (w *worker) meetingWords(m meeting) string {
	if m.fitting < 0 {
		return "the " + sideWords[m.side]
	}
	return w.name(m.fitting)
}
