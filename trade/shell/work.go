package shell

import (
	"cmp"
	"errors"
	"fmt"
	"slices"

	"tumblehome/solve/offsets"
	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

// Result is what the bare van is.
type Result struct {
	Body     *Body
	Figures  []working.Figure
	Findings []finding.Finding
}

// Work lofts the body through the readings and looks for readings that
// contradict one another. It never fails: a table that can not be lofted is a
// finding, and a typical body stands in.
func Work(in Inputs) Result {
	var found []finding.Finding
	table, assumed := in.table()
	surface, err := offsets.New(table)
	if err != nil {
		found = append(found, unusable(in, err))
		table, assumed = quickTable(in.quick()), true
		surface, _ = offsets.New(table) // the typical bodies are sound: a test lofts all nine
	}
	b := &Body{surface: surface, Assumed: assumed, ribs: slices.Clone(in.Ribs), openings: slices.Clone(in.Openings)}
	b.fill(in)
	slices.SortStableFunc(b.ribs, func(p, q Rib) int { return cmp.Compare(p.X, q.X) })
	slices.SortStableFunc(b.openings, func(p, q Opening) int { return cmp.Compare(p.ID, q.ID) })
	found = append(found, b.check(in, table)...)
	finding.Sort(found)
	b.shown = b.figures()
	return Result{Body: b, Figures: b.shown, Findings: found}
}

// table is the table of offsets of the inputs, and whether a typical body lies behind it.
func (in Inputs) table() (offsets.Table, bool) {
	if in.Table == nil {
		return quickTable(in.quick()), true
	}
	t := offsets.Table{Reading: max(0, float64(in.Table.Error))}
	for _, z := range in.Table.Heights {
		t.Heights = append(t.Heights, float64(z))
	}
	for _, s := range in.Table.sorted() {
		row := offsets.Station{X: float64(s.X), Crown: float64(s.Crown)}
		for _, y := range s.Half {
			row.Half = append(row.Half, float64(y))
		}
		t.Stations = append(t.Stations, row)
	}
	return t, false
}

// sorted are the stations from the front.
func (t *Table) sorted() []Station {
	s := slices.Clone(t.Stations)
	slices.SortStableFunc(s, func(p, q Station) int { return cmp.Compare(p.X, q.X) })
	return s
}

// quick are the quick readings, or none on the middle body.
func (in Inputs) quick() Quick {
	if in.Quick == nil {
		return Quick{}
	}
	return *in.Quick
}

// fill adds what goes with a typical body where nothing was read, and
// stands the arches against the skin.
func (b *Body) fill(in Inputs) {
	arches := in.Arches
	if b.Assumed {
		q := in.quick()
		if len(b.ribs) == 0 {
			b.ribs = typicalRibs(q, b.End())
		}
		if len(arches) == 0 {
			arches = []Arch{typicalArch(q, b.surface)}
		}
		if !slices.ContainsFunc(b.openings, func(o Opening) bool { return o.Door != "" }) { // a window or a vent does not take the doors away
			b.openings = append(b.openings, typicalDoors(q, b.surface)...)
		}
	}
	for _, side := range []string{Left, Right} {
		for _, a := range arches {
			if slices.Contains(a.On, side) {
				from, to := max(float64(a.From), b.Start()), min(float64(a.To), b.End())
				face := b.Half((from+to)/2, b.Floor()) - float64(a.Inward)
				if to > from {
					b.arches = append(b.arches, Box{ID: a.ID, Side: side, From: from, To: to, Face: max(0, face), Up: float64(a.Up)})
				}
			}
		}
	}
	slices.SortStableFunc(b.arches, func(p, q Box) int {
		return cmp.Or(cmp.Compare(p.Side, q.Side), cmp.Compare(p.From, q.From))
	})
}

// unusable says in the builder's words why a table can not be lofted.
func unusable(in Inputs, err error) finding.Finding {
	about := []string{"/shell/offsets"}
	var fault *offsets.TableError
	if errors.As(err, &fault) && in.Table != nil && fault.Station >= 0 {
		s, i := in.Table.sorted(), fault.Station
		about[0] += "/stations/" + s[i].ID
		if i > 0 && s[i].X == s[i-1].X {
			about = append(about, "/shell/offsets/stations/"+s[i-1].ID)
		}
	}
	return finding.Finding{Code: "shell.table-unusable", Severity: finding.Fault, About: about,
		Title:  "No body can be drawn through the half widths that were measured",
		Words:  "What is wrong with them: " + whyNot(in.Table, fault) + ". An invented body stands in until that is put right.",
		Source: computed}
}

// whyNot says in the builder's words what keeps a body from being drawn.
func whyNot(t *Table, fault *offsets.TableError) string {
	switch {
	case t != nil && len(t.Heights) < 2:
		return "half widths are wanted at two heights or more"
	case t != nil && len(t.Stations) < 2:
		return "they are wanted at two places along the van or more"
	case t == nil || fault == nil || fault.Station < 0:
		return "heights and half widths must be numbers, the heights rising"
	}
	s := t.sorted()
	here := s[fault.Station]
	switch {
	case fault.Station > 0 && here.X <= s[fault.Station-1].X:
		return fmt.Sprintf("%s and %s are read at the same place, x %s", s[fault.Station-1].ID, here.ID, mm(float64(here.X)))
	case len(here.Half) != len(t.Heights):
		return fmt.Sprintf("%s has %d half widths for %d heights", here.ID, len(here.Half), len(t.Heights))
	case here.Crown < t.Heights[len(t.Heights)-1]:
		return fmt.Sprintf("the crown of %s lies below the last height", here.ID)
	}
	return fmt.Sprintf("a reading of %s is no usable number", here.ID)
}
