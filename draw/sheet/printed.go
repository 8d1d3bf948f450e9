package sheet

import (
	"cmp"
	"maps"
	"slices"
	"strings"

	"tumblehome/draw"
	"tumblehome/reckon"
	"tumblehome/trade/cables"
	"tumblehome/trade/runs"
)

// Printed are sheets for a file, which has no letters but those of our faces. What is called something in other letters goes by its id there, in
// words; of any other text the letters that are missing are left out. The first sheet says so.
func Printed(r *reckon.Reckoning, sheets func(*reckon.Reckoning) []draw.Scene) []draw.Scene {
	plain, said := printable(r)
	out := sheets(plain)
	for i := range out {
		marks, cut := settable(out[i].Marks)
		out[i].Marks = marks
		said = said || cut
	}
	if said && len(out) > 0 {
		inner := draw.Frame{Size: out[0].Size}.Inner()
		out[0] = out[0].With(draw.Lettering{Text: printedNote, At: draw.Pt(inner.Min.X, out[0].Size.Height-5.3), Ink: draw.InkQuiet, Size: plainSize})
	}
	return out
}

const printedNote = "Names in letters that this print lacks stand as their ids; other such letters are left out (…). The workspace shows them."

// settable are marks whose texts have no letters but those there are, and whether any had.
func settable(marks []draw.Mark) ([]draw.Mark, bool) {
	out, any := slices.Clone(marks), false
	for i, m := range out {
		switch m := m.(type) {
		case draw.Group:
			inside, cut := settable(m.Marks)
			m.Marks = inside
			out[i], any = m, any || cut
		case draw.Lettering:
			if draw.Unknown(m.Text) {
				m.Text = draw.Known(m.Text)
				out[i], any = m, true
			}
		}
	}
	return out, any
}

// printable is a reckoning in which nothing has a name that cannot be printed, and whether something had.
func printable(r *reckon.Reckoning) (*reckon.Reckoning, bool) {
	names := map[string]string{}
	if draw.Unknown(r.Document.Build.Title) {
		names[r.Document.Build.Title] = "this build"
	}
	for id, f := range r.Document.Fittings {
		if f.Called != "" && draw.Unknown(f.Called) {
			names[f.Called] = strings.ReplaceAll(id, "-", " ")
		}
	}
	if len(names) == 0 {
		return r, false
	}
	renamed := renaming(names)
	out, doc := *r, *r.Document
	doc.Build.Title = renamed(doc.Build.Title)
	doc.Fittings = maps.Clone(doc.Fittings)
	for id, f := range doc.Fittings {
		f.Called = renamed(f.Called)
		doc.Fittings[id] = f
	}
	out.Document, out.Cables, out.Runs.Routes = &doc, renamedCables(r.Cables, renamed), renamedRoutes(r.Runs.Routes, renamed)
	out.Findings = slices.Clone(r.Findings)
	for i := range out.Findings {
		out.Findings[i].Title = renamed(out.Findings[i].Title)
	}
	return &out, true
}

// renaming puts words in place of names, longer names first: one may be the beginning of another.
func renaming(names map[string]string) func(string) string {
	all := slices.SortedFunc(maps.Keys(names), func(a, b string) int { return cmp.Or(len(b)-len(a), strings.Compare(a, b)) })
	var pairs []string
	for _, name := range all {
		pairs = append(pairs, name, names[name])
	}
	return strings.NewReplacer(pairs...).Replace
}

func renamedCables(r cables.Result, renamed func(string) string) cables.Result {
	r.Cables, r.Tests, r.Supplies = slices.Clone(r.Cables), slices.Clone(r.Tests), slices.Clone(r.Supplies)
	for i := range r.Cables {
		c := &r.Cables[i]
		c.Title, c.From.Words, c.To.Words = renamed(c.Title), renamed(c.From.Words), renamed(c.To.Words)
		c.Loads, c.Terminals = slices.Clone(c.Loads), slices.Clone(c.Terminals)
		for k := range c.Loads {
			c.Loads[k].Name = renamed(c.Loads[k].Name)
		}
		for k := range c.Terminals {
			c.Terminals[k].At = renamed(c.Terminals[k].At)
		}
	}
	for i := range r.Tests {
		r.Tests[i].How = renamed(r.Tests[i].How)
	}
	for i := range r.Supplies {
		s := &r.Supplies[i]
		s.Batteries = slices.Clone(s.Batteries)
		for k := range s.Batteries {
			s.Batteries[k].Name = renamed(s.Batteries[k].Name)
		}
	}
	return r
}

func renamedRoutes(routes []runs.Route, renamed func(string) string) []runs.Route {
	routes = slices.Clone(routes)
	for i := range routes {
		c := *routes[i].Circuit
		routes[i].Circuit = &c
		if c.Start != nil {
			start := *c.Start
			start.Name = renamed(start.Name)
			c.Start = &start
		}
		c.Ends = slices.Clone(c.Ends)
		for k := range c.Ends {
			c.Ends[k].Name = renamed(c.Ends[k].Name)
		}
	}
	return routes
}
