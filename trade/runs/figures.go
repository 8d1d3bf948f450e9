package runs

import (
	"strings"

	"tumblehome/trade/working"
)

// Figures lists every figure, by code; a build without ways and circuits has none.
func (r Result) Figures() []working.Figure {
	var out []working.Figure
	for i := range r.Ways {
		out = append(out, r.Ways[i].figures()...)
	}
	for i := range r.Routes {
		if f, ok := r.Routes[i].figure(); ok {
			out = append(out, f)
		}
	}
	if total, n := r.total(); n > 0 {
		out = append(out, working.Figure{Code: "runs.length", Value: total, Unit: "mm", Label: "All ways together", State: working.Current})
	}
	return out
}

func (l *Led) figures() []working.Figure {
	if len(l.At) < 2 {
		return nil
	}
	code := "runs.way." + l.ID
	out := []working.Figure{
		{Code: code + ".length", Value: l.Length, Unit: "mm", Label: "The way " + l.ID + ", along it", State: working.Current},
		{Code: code + ".supports", Value: float64(l.Supports), Unit: "1", Label: "Fixings that hold the way " + l.ID, State: working.Current},
	}
	if l.Least > 0 {
		out = append(out, working.Figure{Code: code + ".bore", Value: l.Least, Unit: "mm", Label: "Smallest conduit for the way " + l.ID, State: working.Current})
	}
	if l.Fill > 0 {
		limit := 100 * mostFull
		out = append(out, working.Figure{Code: code + ".fill", Value: 100 * l.Fill, Unit: "%", Label: "How full the way " + l.ID + " is", Limit: &limit, State: working.Current})
	}
	return out
}

// Code of the figure of a route.
func (c *Circuit) code() string {
	switch {
	case c.Lead:
		return "runs.lead." + c.ID + ".route"
	case c.Source:
		return "runs.source." + c.ID + ".route"
	}
	return "runs.circuit." + c.ID + ".route"
}

func (r *Route) label() string {
	if r.Circuit.Lead {
		return "Lead of " + r.Circuit.ID + " to the fuse board, one way"
	}
	return "Cable of " + r.Circuit.ID + ", one way to the farthest end"
}

func (r *Route) figure() (working.Figure, bool) {
	long, ok := r.Length()
	f := working.Figure{Code: r.Circuit.code(), Value: long, Unit: "mm", Label: r.label(), State: working.Current}
	if r.Circuit.Written == nil {
		f.State = working.Assumed
	}
	return f, ok
}

func (r *Result) total() (sum float64, n int) {
	for i := range r.Ways {
		if len(r.Ways[i].At) > 1 {
			sum, n = sum+r.Ways[i].Length, n+1
		}
	}
	return sum, n
}

// Working shows how a figure came about; false if there is no figure of that code.
func (r Result) Working(code string) (working.Working, bool) {
	if code == "runs.length" {
		return r.lengthWorking()
	}
	if rest, ok := strings.CutPrefix(code, "runs.way."); ok {
		id, what, _ := strings.Cut(rest, ".")
		if l := r.Way(id); l != nil {
			return l.working(code, what)
		}
	}
	for i := range r.Routes {
		if _, ok := r.Routes[i].Length(); ok && r.Routes[i].Circuit.code() == code {
			return r.Routes[i].working(), true
		}
	}
	return working.Working{}, false
}
