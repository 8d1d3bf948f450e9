package weight

import (
	"cmp"
	"encoding/json"
	"fmt"
	"math"
	"slices"
	"strings"

	"tumblehome/quantity"
	"tumblehome/trade/finding"
	"tumblehome/trade/takeoff"
)

// thing is one fitting or one piece of gear with all its lines, filling included.
type thing struct {
	pointer    string
	mass, rear float64 // kg, and what of it the rear axle carries
}

func (t thing) name() string { return thingName(t.pointer) }

// things gathers what is aboard in a case by what it is about, in order of pointer.
func (r *Result) things(c CaseLoad) []thing {
	place := make(map[string]int, len(c.cargo.fixed))
	out := make([]thing, 0, len(c.cargo.fixed))
	v := r.lever()
	c.cargo.each(func(l takeoff.Line) {
		i, known := place[l.Pointer]
		if !known {
			i = len(out)
			place[l.Pointer] = i
			out = append(out, thing{pointer: l.Pointer})
		}
		out[i].mass += l.Mass
		out[i].rear += l.Mass * v.share(l.At[0])
	})
	slices.SortFunc(out, func(a, b thing) int { return cmp.Compare(a.pointer, b.pointer) })
	return out
}

// behind lists what puts more than its own mass on the rear axle, that which lifts the front most standing first.
func (r *Result) behind(c CaseLoad) []thing {
	out := slices.DeleteFunc(r.things(c), func(t thing) bool { return t.rear-t.mass < 0.5 })
	slices.SortStableFunc(out, func(a, b thing) int { return cmp.Compare(b.rear-b.mass, a.rear-a.mass) })
	return out
}

// proposals are untried changes that would take excess off an axle, or off the whole.
func (r *Result) proposals(a axis, c CaseLoad, excess float64) []finding.Proposal {
	var out []finding.Proposal
	if p, ok := r.emptier(a, c, excess); ok {
		out = append(out, p)
	}
	if p, ok := r.moved(a, c, excess); ok {
		out = append(out, p)
	}
	if p, ok := r.leftAtHome(a, c, excess); ok {
		out = append(out, p)
	}
	return out
}

// leftAtHome leaves the lightest single piece of gear at home that takes the excess off.
func (r *Result) leftAtHome(a axis, c CaseLoad, excess float64) (finding.Proposal, bool) {
	best := -1
	for i, l := range r.in.Gear {
		enough := c.Gear && !c.cargo.leaves(l) && a.carries(r.lever(), l) > excess
		if enough && (best < 0 || l.Mass < r.in.Gear[best].Mass) {
			best = i
		}
	}
	if best < 0 || c.assumed {
		return finding.Proposal{}, false
	}
	l := r.in.Gear[best]
	id := strings.TrimPrefix(l.Pointer, "/use/gear/")
	return finding.Proposal{
		Words: "Leave at home: " + thingName(l.Pointer),
		Patch: patch(append(slices.Clone(c.Without), id), "vehicle", "cases", c.ID, "without"),
	}, true
}

// moved shifts the heaviest thing that can go far enough away from the axle: Δx = excess·L/m.
func (r *Result) moved(a axis, c CaseLoad, excess float64) (finding.Proposal, bool) {
	if a.code == "total" {
		return finding.Proposal{}, false
	}
	movable := map[string]Movable{} // by place in the document
	for _, m := range r.in.Movable {
		movable["/fittings/"+m.ID] = m
	}
	things := r.things(c)
	slices.SortStableFunc(things, func(a, b thing) int { return cmp.Compare(b.mass, a.mass) })
	for _, t := range things {
		m, ok := movable[t.pointer]
		if !ok || t.mass <= 0 {
			continue
		}
		by := 5 * math.Ceil((excess+1)*r.in.Wheelbase.Float()/t.mass/5)
		to, direction := m.Low.Float()-by, "forward"
		if a.code == "front" {
			to, direction = m.Low.Float()+by, "rearward"
		}
		if to < m.Least.Float() || to > m.Most.Float() {
			continue
		}
		return finding.Proposal{
			Words: fmt.Sprintf("Move the %s %s mm %s", finding.SetOff(cmp.Or(m.Name, t.name())), quantity.Parted(by), direction),
			Patch: patch(to, "fittings", m.ID, "at", "x"),
		}, true
	}
	return finding.Proposal{}, false
}

// emptier travels with less in the fullest tank that bears on the axle.
func (r *Result) emptier(a axis, c CaseLoad, excess float64) (finding.Proposal, bool) {
	best, bears := Tank{}, 0.0
	for _, t := range r.in.Tanks {
		if share := c.Fill[t.ID]; share > 0 {
			if on := a.carries(r.lever(), t.filled(share)); on > bears {
				best, bears = t, on
			}
		}
	}
	if bears <= excess || c.assumed {
		return finding.Proposal{}, false
	}
	share := c.Fill[best.ID].Float() * (1 - (excess+1)/bears)
	share = math.Floor(20*share) / 20
	if share < 0 {
		return finding.Proposal{}, false
	}
	return finding.Proposal{
		Words: fmt.Sprintf("Travel with %s %.0f %% full", best.ID, 100*share),
		Patch: patch(fmt.Sprintf("%.0f %%", 100*share), "vehicle", "cases", c.ID, "fill", best.ID),
	}, true
}

// patch is a merge patch that sets one value at a path.
func patch(value any, path ...string) json.RawMessage {
	for _, key := range slices.Backward(path) {
		value = map[string]any{key: value}
	}
	text, err := json.Marshal(value)
	if err != nil {
		return nil
	}
	return text
}
