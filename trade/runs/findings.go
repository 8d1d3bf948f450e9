package runs

import (
	"encoding/json"
	"fmt"
	"math"

	"tumblehome/trade/finding"
)

// Findings lists what the builder should know.
func (r Result) Findings() []finding.Finding { return r.found }

// judge gathers the findings of all ways and routes.
func (w *worker) judge(r *Result) []finding.Finding {
	var out []finding.Finding
	for i := range r.Ways {
		l := &r.Ways[i]
		if len(l.At) < 2 {
			out = append(out, l.unknown())
		}
		if f, ok := w.farOutside(l); ok {
			out = append(out, f)
		}
		for _, f := range l.Fouls {
			out = append(out, w.tellFoul(l, f))
		}
		out = append(out, l.tightBends()...)
		if f, ok := l.overfull(); ok {
			out = append(out, f)
		}
	}
	for i := range r.Routes {
		if f, ok := r.Routes[i].otherwise(); ok {
			out = append(out, f)
		}
	}
	return out
}

func (l *Led) unknown() finding.Finding {
	return finding.Finding{Code: "runs.unknown", Severity: finding.Note, About: []string{l.pointer()},
		Title:  "Nobody knows yet where the way " + l.ID + " runs",
		Words:  "One of its corners is at a fitting that has no place, or it has fewer than two corners. Its length is not known until that is settled.",
		Source: finding.Source{Text: "the places of this build", Sure: finding.Computed}}
}

// tightBends are corners without room for the bend that the thickest cable takes, and a way that turns too often.
func (l *Led) tightBends() []finding.Finding {
	var out []finding.Finding
	turns, least := 0.0, tightest*l.thickest()
	var worst *Bend
	for i := range l.Bends {
		b := &l.Bends[i]
		turns += b.Turn
		if b.Radius < least && (worst == nil || b.Radius < worst.Radius) {
			worst = b
		}
	}
	if worst != nil {
		out = append(out, finding.Finding{Code: "runs.bend", Severity: finding.Close, About: []string{l.pointer()},
			Title:    fmt.Sprintf("The way %s turns too sharply for its cable at corner %d", l.ID, worst.Corner+1),
			Words:    fmt.Sprintf("It turns by %.0f° where its legs have room for a bend of %.0f mm radius. The thickest cable in it wants %.0f mm: bent closer, its insulation and strands suffer. Make the legs beside that corner longer.", worst.Turn, worst.Radius, least),
			Measured: mm(worst.Radius), Limit: mm(least),
			Source: finding.Source{Text: "bend radius of fixed cable at least four times its outer diameter", Sure: finding.Memory}})
	}
	if turns > mostTurns+0.5 && l.Bore > 0 {
		out = append(out, finding.Finding{Code: "runs.turns", Severity: finding.Note, About: []string{l.pointer()},
			Title:    fmt.Sprintf("The way %s turns by %.0f° in all", l.ID, turns),
			Words:    "Cable can hardly be pulled through a conduit that turns by more than four right angles. Leave a place in between where one gets at it, or lay the cable in as the conduit goes up.",
			Measured: &finding.Measure{Value: turns, Unit: "°"}, Limit: &finding.Measure{Value: mostTurns, Unit: "°"},
			Source: finding.Source{Text: "NFPA 70, 358.26: no more than 360° between places to pull from", Sure: finding.Memory}})
	}
	return out
}

// overfull is a conduit with more cable in it than it should have.
func (l *Led) overfull() (finding.Finding, bool) {
	if l.Fill <= mostFull+1e-9 {
		return finding.Finding{}, false
	}
	f := finding.Finding{Code: "runs.fill", Severity: finding.Close, About: []string{l.pointer()},
		Title:    fmt.Sprintf("The conduit %s is %.0f %% full", l.ID, 100*l.Fill),
		Words:    fmt.Sprintf("Cables are to take 40 %% of a conduit, so that they can be pulled and give off their warmth. For these it would have to be %.0f mm wide inside.", math.Ceil(BoreFor(l.conductors(), mostFull))),
		Measured: &finding.Measure{Value: 100 * l.Fill, Unit: "%"}, Limit: &finding.Measure{Value: 100 * mostFull, Unit: "%"}, Source: filling}
	if l.Fill > 1 {
		f.Severity, f.Title = finding.Fault, fmt.Sprintf("The cables do not go into the conduit %s", l.ID)
	}
	if l.Least > 0 {
		f.Proposals = []finding.Proposal{{Words: fmt.Sprintf("take a conduit of %g mm inside", l.Least), Patch: patch("runs", l.ID, "bore", l.Least)}}
	}
	return f, true
}

// A measured route is held against the drawing only where ways are written for most of it, and where more than a loop of cable is at stake:
// practice.
const (
	farOff     = 0.20 // share
	loop       = 500  // mm
	mostlyLaid = 0.5  // share of the route on ways
)

// otherwise is a route that was measured and lies far from what the drawing gives, or is shorter than any cable could be.
func (r *Route) otherwise() (finding.Finding, bool) {
	c := r.Circuit
	if c.Written == nil || !r.Known || *c.Written <= 0 {
		return finding.Finding{}, false
	}
	f := finding.Finding{About: []string{c.Pointer() + "/route"}, Measured: mm(*c.Written), Source: practice, Proposals: []finding.Proposal{r.followDrawing()}}
	off := math.Abs(r.Reckoned - *c.Written)
	switch {
	case *c.Written < r.Straight-loop/10:
		f.Code, f.Severity, f.Limit = "runs.short", finding.Close, mm(r.Straight)
		f.Title = fmt.Sprintf("%s is written as %.1f m of cable, and its ends are %.1f m apart", c.name(), *c.Written/1000, r.Straight/1000)
		f.Words = "No cable so short reaches. What is lost in it and the fuse that it needs are reckoned from this length: measure it again."
		f.Source = finding.Source{Text: "the places of this build", Sure: finding.Computed}
	case off > farOff**c.Written && off > loop && r.laid() >= mostlyLaid*r.Reckoned:
		f.Code, f.Severity, f.Limit = "runs.route", finding.Note, mm(r.Reckoned)
		f.Title = fmt.Sprintf("%s is written as %.1f m of cable; along its ways it is %.1f m", c.name(), *c.Written/1000, r.Reckoned/1000)
		f.Words = "What was measured counts. If something was moved since, measure again; else correct the way."
	default:
		return finding.Finding{}, false
	}
	return f, true
}

// laid is what of a route lies on written ways.
func (r *Route) laid() float64 {
	sum := 0.0
	for _, s := range r.Steps {
		if s.Way != "" {
			sum += s.Length
		}
	}
	return sum
}

func (r *Route) followDrawing() finding.Proposal {
	key, route := "circuits", map[string]any{"route": nil}
	if r.Circuit.Source {
		key = "sources"
	}
	if r.Circuit.Lead {
		route = map[string]any{"lead": route}
	}
	value, _ := json.Marshal(map[string]any{"power": map[string]any{key: map[string]any{r.Circuit.ID: route}}})
	return finding.Proposal{Words: "let the length follow the drawing", Patch: value}
}

func mm(v float64) *finding.Measure { return &finding.Measure{Value: v, Unit: "mm"} }

// patch sets one value of the document.
func patch(section, id, key string, value any) json.RawMessage {
	text, _ := json.Marshal(map[string]any{section: map[string]any{id: map[string]any{key: value}}})
	return text
}
