package fit

import (
	"fmt"
	"strings"

	"tumblehome/trade/finding"
)

func (w *worker) partName(p *Part) string {
	kind := p.Kind
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
		out.Proposals = w.clear(day.bars)
	}
	w.find(out)
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
