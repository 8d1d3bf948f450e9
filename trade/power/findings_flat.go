package power

import (
	"encoding/json"
	"fmt"
	"math"
	"strings"

	"tumblehome/trade/finding"
)

// tooOften is how many times the promise is a fault.
const tooOften = 3

var help = map[string]string{LimitBattery: "half as much battery again", LimitPanel: "half as much panel again, or 100 W where there is none", LimitEngine: "half as much charge from the engine again"}

// flat judges whether the lights stay on as often as is wanted.
func (r *Result) flat(b *Battery) (finding.Finding, bool) {
	share, promise := r.Flat.Share, r.in.Promise
	f := finding.Finding{Code: "power.flat", Severity: finding.Close, About: []string{b.About}, Title: fmt.Sprintf("The battery is flat in %s nights", oneIn(share)),
		Measured: &finding.Measure{Value: 100 * share, Unit: "%"}, Limit: &finding.Measure{Value: 100 * promise, Unit: "%"}, Source: bySimulation, Caution: careBattery}
	if share > tooOften*promise {
		f.Severity = finding.Fault
	}
	if r.Flat.In == 0 || share <= promise {
		return f, false
	}
	worst := 0
	for m := range r.Months {
		if r.Months[m].Flat.Share > r.Months[worst].Flat.Share {
			worst = m
		}
	}
	f.Words = fmt.Sprintf("That is %.0f ± %.0f in a hundred; in %s, the worst month, %.0f.", 100*share, math.Ceil(100*r.Flat.Error), monthNames[worst], 100*r.Months[worst].Flat.Share)
	for _, h := range r.Helps {
		if h.Of == r.Limits && h.Share < 0.8*share {
			f.Words += fmt.Sprintf(" With %s it would be %.0f.", help[h.Of], 100*h.Share)
		}
	}
	f.Proposals = r.larger(b)
	return f, true
}

func oneIn(share float64) string {
	if n := math.Round(1 / share); n >= 2 {
		return fmt.Sprintf("one of %.0f", n)
	}
	return "most"
}

// mostTried is how many other batteries are gone through the years.
const mostTried = 4

// larger proposes other batteries of the catalogue in the places of those there are, so far as they keep the promise.
func (r *Result) larger(b *Battery) (out []finding.Proposal) {
	tried := 0
	for _, o := range r.in.Shop {
		if o.AmpHours <= b.holds()/float64(max(1, b.Count)) || o.Row == b.Row || len(b.Fittings) == 0 || tried == mostTried || r.relay() && !o.Chemistry.Lead() {
			continue
		}
		tried++
		other := *b
		other.Row, other.Chemistry, other.Rated, other.Tested, other.Usable = o.Row, o.Chemistry, o.AmpHours*float64(b.Count), 0, o.Usable
		other.CutOff, other.Heated = false, false // what is true of one battery is not said of the next
		if r.with(&other) > r.in.Promise {
			continue
		}
		patch := map[string]any{}
		for _, f := range b.Fittings {
			set(patch, f+"/buy", o.Row)
		}
		if b.Tested > 0 {
			set(patch, b.About+"/tested", nil)
		}
		if b.ID != "" && b.CutOff {
			set(patch, b.About+"/cut-off", nil)
		}
		if b.ID != "" && b.Heated {
			set(patch, b.About+"/heated", nil)
		}
		text, err := json.Marshal(patch)
		if err == nil {
			out = append(out, finding.Proposal{Words: fmt.Sprintf("put a battery of %.0f Ah in its place (%s)", o.AmpHours, o.Chemistry), Patch: text})
		}
	}
	return out
}

func (r *Result) relay() bool {
	for _, s := range r.in.Sources {
		if s.Relay {
			return true
		}
	}
	return false
}

// with is the share of flat nights with another battery.
func (r *Result) with(b *Battery) float64 {
	sky, err := r.in.Sky(r.in.Climate, r.in.Years, r.in.Seed)
	if err != nil {
		return 1
	}
	w := r.walk(sky)
	w.k = r.in.kitOf(b)
	t := w.through()
	return t.share()
}

// patchAt is a merge patch that sets one place.
func patchAt(pointer string, value any) json.RawMessage {
	patch := map[string]any{}
	set(patch, pointer, value)
	text, err := json.Marshal(patch)
	if err != nil {
		return nil // a text or a number has a form as JSON
	}
	return text
}

func set(into map[string]any, pointer string, value any) {
	steps := strings.Split(strings.TrimPrefix(pointer, "/"), "/")
	for i, s := range steps {
		s = strings.NewReplacer("~1", "/", "~0", "~").Replace(s)
		if i == len(steps)-1 {
			into[s] = value
			return
		}
		next, ok := into[s].(map[string]any)
		if !ok {
			next = map[string]any{}
			into[s] = next
		}
		into = next
	}
}

func floor(amps float64) float64 { return math.Floor(amps) }
