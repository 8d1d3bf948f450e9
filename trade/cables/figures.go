package cables

import (
	"fmt"

	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

// code is that of what a cable loses; "" for one that nobody wrote, and for a bond.
func (c *Cable) code() string {
	switch {
	case c.ID == "" || c.Role == Bond:
		return ""
	case c.Role == Charge:
		return "power.drop.from." + c.ID
	case c.Role == Lead:
		return "power.drop.lead." + c.ID
	}
	return "power.drop.to." + c.ID
}

// lost is the share of its voltage that stays in the cables on the way, in %.
func (c *Cable) lost() float64 { return 100 * c.Drop.Cables() / c.Volts }

// Figures are the numbers of cables.
func (r Result) Figures() []working.Figure {
	var out []working.Figure
	for i := range r.Cables {
		c := &r.Cables[i]
		if c.code() == "" || !r.known(c) {
			continue
		}
		limit := 100 * c.Drop.Limit
		out = append(out, working.Figure{Code: c.code(), Label: "Voltage lost in the cables: " + c.Title, Value: c.lost(), Unit: "%", Limit: &limit, State: c.state(),
			Words: fmt.Sprintf("%s, %.1f m of %s mm²", c.Number, c.Length.MM/1000, digits(c.Section.MM2, 4))})
	}
	if w := r.worst(); w != nil {
		limit := 100 * w.Drop.Limit
		out = append(out, working.Figure{Code: "power.drop.worst", Label: "Most voltage lost in cables, beside what it may", Value: w.lost(), Unit: "%", Limit: &limit, State: w.state(), Words: "on the way to " + w.To.Words})
	}
	if s := r.strongest(); s != nil {
		state := working.Assumed
		if s.FaultSaid > 0 {
			state = working.Current
		}
		out = append(out, working.Figure{Code: "power.fault-current", Label: "What the battery gives into a short", Value: s.Fault, Unit: "A", State: state, Words: "the main fuse must break it"})
		if s.Collapsed == nil {
			out = append(out, working.Figure{Code: "power.together", Label: "Out of the battery with everything on", Value: s.Together, Unit: "A", State: working.Current})
		}
	}
	if total := r.metres(); total > 0 {
		out = append(out, working.Figure{Code: "power.cable.length", Label: "Cable to cut", Value: total, Unit: "m", State: r.lengthState(), Words: "plus and minus, with what is left at the ends"})
	}
	return out
}

// known says whether a cable's losses were found: not where the voltage breaks down.
func (r *Result) known(c *Cable) bool {
	return c.charges() || r.nets[c.Bank].tipped == nil && c.Starved == nil
}

func (c *Cable) state() working.State {
	if c.Length.Known != Measured || !c.Section.Said {
		return working.Assumed
	}
	return working.Current
}

// worst is the cable that comes nearest its limit, or goes furthest beyond.
func (r *Result) worst() *Cable {
	var out *Cable
	for i := range r.Cables {
		c := &r.Cables[i]
		if c.code() != "" && r.known(c) && (out == nil || c.lost()/c.Drop.Limit > out.lost()/out.Drop.Limit) {
			out = c
		}
	}
	return out
}

// strongest is the battery with cables that gives most into a short.
func (r *Result) strongest() *Supply {
	var out *Supply
	for i := range r.Supplies {
		s := &r.Supplies[i]
		if s.Trunk != "" && (out == nil || s.Fault > out.Fault) {
			out = s
		}
	}
	return out
}

func (r *Result) metres() float64 {
	sum := 0.0
	for _, c := range r.Cables {
		sum += float64(c.Cores()) * c.Cut / 1000
	}
	return sum
}

func (r *Result) lengthState() working.State {
	for i := range r.Cables {
		if c := &r.Cables[i]; c.Role != Bond && c.Length.Known != Measured {
			return working.Assumed
		}
	}
	return working.Current
}

// Working shows how a figure came about.
func (r Result) Working(code string) (working.Working, bool) {
	return working.Of(code, "power", r.Figures, func(string) working.Working { return r.workingOf(code) })
}

func (r *Result) workingOf(code string) working.Working {
	switch code {
	case "power.drop.worst":
		return r.workingOfWorst()
	case "power.fault-current":
		return r.workingOfFault()
	case "power.together":
		return r.workingOfTogether()
	case "power.cable.length":
		return r.workingOfLength()
	}
	for i := range r.Cables {
		if c := &r.Cables[i]; c.code() == code {
			return r.workingOfDrop(c)
		}
	}
	return working.Working{}
}

var together = finding.Source{Text: "Kirchhoff's laws on the network of battery, cables, fuses and loads; resistances of IEC 60228 class 5", Sure: finding.Computed}
