package fit

import (
	"fmt"
	"slices"
	"strings"

	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

const waysWanted = 2

var exitSource = finding.Source{
	Text: "an emergency exit of about 450 × 450 mm that opens without tools, two ways out from every bed (from memory of EN 1646-1; check locally)", Sure: finding.Memory,
}

// place is a bed or a seat somebody has in a mode, and the ways out of it.
type place struct {
	at   int
	lies bool
	ways []string // openings one comes to and gets out by
}

// ways judges the ways out of every bed and seat in every mode but while driving.
func (w *worker) ways() {
	if !slices.ContainsFunc(w.in.Openings, func(o Opening) bool { return o.WayOut || o.Door }) {
		return // nothing is known of its doors
	}
	for m := range w.in.Modes {
		mode := &w.in.Modes[m]
		if places := w.places(mode); len(places) > 0 && mode.Name != "drive" {
			shut := w.shut(mode, false)
			w.count(mode, places, shut, false)
			w.reportWays(mode, places, shut)
		}
	}
	w.waysToday()
}

// places are the beds and seats of a mode, each once, in the order of the van. The cab's own seats have the cab's doors.
func (w *worker) places(mode *Mode) []place {
	var out []place
	for _, pose := range mode.Poses {
		i, ok := w.index[pose.At]
		if !ok || pose.Does != "lies" && pose.Does != "sits" || len(mode.Standings[i].Solid) == 0 || w.in.Fittings[i].isOutside() || mode.Standings[i].Box.MaxX <= w.in.Room.Front() {
			continue
		}
		if k := slices.IndexFunc(out, func(p place) bool { return p.at == i }); k >= 0 {
			out[k].lies = out[k].lies || pose.Does == "lies"
			continue
		}
		out = append(out, place{at: i, lies: pose.Does == "lies"})
	}
	slices.SortStableFunc(out, func(a, b place) int { return nearer(mode.Standings[a.at].Box, mode.Standings[b.at].Box) })
	return out
}

// shut are the ways out that something stands before in a mode, and which fitting does.
func (w *worker) shut(mode *Mode, today bool) map[string]int {
	shut := map[string]int{}
	for _, o := range w.in.Openings {
		if !o.WayOut {
			continue
		}
		if in := w.standsBefore(mode, o, today); in.shut {
			shut[o.ID] = in.by
		}
	}
	return shut
}

// count fills in by which openings one gets out of each place.
func (w *worker) count(mode *Mode, places []place, shut map[string]int, today bool) {
	on := w.crossing(mode, today)
	for k := range places {
		parts := w.besides(mode, on, places[k].at, today)
		for _, o := range w.in.Openings {
			if _, blocked := shut[o.ID]; o.WayOut && !blocked && !(today && !o.Made) && on.comes(w.ground(), parts, o) {
				places[k].ways = append(places[k].ways, o.ID)
			}
		}
	}
}

// fewest is the place with fewest ways out.
func fewest(places []place) place {
	return slices.MinFunc(places, func(a, b place) int { return len(a.ways) - len(b.ways) })
}

func (w *worker) reportWays(mode *Mode, places []place, shut map[string]int) {
	worst := fewest(places)
	free := float64(len(worst.ways))
	wanted := float64(waysWanted)
	w.show(working.Figure{
		Code: "fit.ways-out." + mode.Name, Value: free, Unit: "1", Label: "Ways out, " + mode.Name, Limit: &wanted, Least: true,
		Words: "from " + w.name(worst.at),
	}, w.waysWorking(worst, shut, free))
	sleeps := slices.ContainsFunc(places, func(p place) bool { return p.lies })
	for _, o := range w.in.Openings {
		if by, ok := shut[o.ID]; ok && sleeps {
			w.reportBlocked(mode, o, by)
		}
	}
	if free < waysWanted {
		out := w.tooFew("fit.way-out", mode, places, "")
		var attempts []attempt
		for _, o := range w.in.Openings {
			if by, ok := shut[o.ID]; ok && by >= 0 {
				attempts = append(attempts, w.unblock(o, by)...)
			}
		}
		if out.Proposals = w.tried(out, (*worker).ways, attempts...); len(shut) == 0 && free > 0 {
			out.Words += " Nothing stands before what opens: let another door or a window be opened from inside, or move what one cannot crawl past."
		}
		w.find(out)
	}
}

func (w *worker) waysWorking(worst place, shut map[string]int, free float64) working.Working {
	how := working.Working{
		Formula: "number of ways out with a free square of 450 mm before them that one comes to from the bed or seat", Source: exitSource,
		Notes: []string{"Openings marked way-out, looked at 300 mm deep; soft things and light steps do not block, nor a table that is folded first.",
			"One comes to them on foot, or crawling over floor, beds and seats with 500 mm above and 375 mm beside: common practice, no source."},
	}
	for _, o := range w.in.Openings {
		label := "by " + o.called()
		switch _, blocked := shut[o.ID]; {
		case !o.WayOut:
			continue
		case blocked:
			label = "something stands before " + o.called()
		case !slices.Contains(worst.ways, o.ID):
			label = "nobody comes to " + o.called() + " from " + w.name(worst.at)
		}
		value := 0.0
		if slices.Contains(worst.ways, o.ID) {
			value = 1
		}
		how.Lines = append(how.Lines, working.Line{Label: label, Value: value, Unit: "1", From: working.Origin{Pointer: o.pointer()}})
	}
	how.Lines = append(how.Lines, working.Line{Symbol: "n", Label: "free", Value: free, Unit: "1", From: working.Origin{Here: true}})
	return how
}

// tooFew is the finding about all places of a mode that have fewer ways out than wanted.
func (w *worker) tooFew(code string, mode *Mode, places []place, when string) finding.Finding {
	out := finding.Finding{
		Code: code, Severity: finding.Close, Mode: mode.Name,
		Words:   "If it is barred by fire or by another car nobody gets out. Two different ways are wanted.",
		Limit:   &finding.Measure{Value: waysWanted, Unit: "1"},
		Source:  exitSource,
		Caution: "Keep two ways out of every bed, each to be opened from inside without tools.",
	}
	var names []string
	least := fewest(places)
	for _, p := range places {
		if len(p.ways) >= waysWanted {
			continue
		}
		names = append(names, w.name(p.at))
		out.About = append(out.About, pointer("fittings", w.in.Fittings[p.at].ID))
		if p.lies {
			out.Severity = finding.Fault
		}
	}
	out.Measured = &finding.Measure{Value: float64(len(least.ways)), Unit: "1"}
	out.Title = fmt.Sprintf("There is only one way out from %s%s", listed(names), when)
	if len(least.ways) == 0 {
		out.Severity, out.Title = finding.Danger, fmt.Sprintf("There is no way out from %s%s", w.name(least.at), when)
		out.Words = "Nobody gets out there in a fire. Two different ways are wanted."
		if !slices.ContainsFunc(w.in.Openings, func(o Opening) bool { return o.WayOut }) {
			out.Words = "No door, window or hatch is said to open from inside without a tool. Try each of them from inside, locked as at night, and write down which open."
		}
	}
	return out
}

// listed joins names as one says them.
func listed(names []string) string {
	if len(names) < 2 {
		return strings.Join(names, "")
	}
	return strings.Join(names[:len(names)-1], ", ") + " and " + names[len(names)-1]
}

func (w *worker) reportBlocked(mode *Mode, o Opening, by int) {
	out := finding.Finding{
		Code: "fit.way-out.blocked", Severity: finding.Note, About: []string{o.pointer()}, Mode: mode.Name,
		Title: fmt.Sprintf("The way out by %s is blocked in the mode %q", o.called(), mode.Name),
		Words: fmt.Sprintf("No square of %d mm is left free in front of it.", exitSquare), Source: exitSource,
	}
	if by >= 0 {
		out.About = append([]string{pointer("fittings", w.in.Fittings[by].ID)}, out.About...)
		out.Title = fmt.Sprintf("%s blocks the way out by %s in the mode %q", w.name(by), o.called(), mode.Name)
		out.Proposals = w.tried(out, (*worker).ways, w.unblock(o, by)...)
		if w.in.Fittings[by].isOutside() {
			out.Words = "It stands outside before it, so that it does not open."
		}
	}
	w.find(out)
}
