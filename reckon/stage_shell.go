package reckon

import (
	"tumblehome/build"
	"tumblehome/quantity"
	"tumblehome/trade/shell"
)

// workShell lofts the bare body through the readings.
func (m *Machine) workShell(doc *build.Document) (shell.Result, Digest) {
	return work(m, "shell", 1, shell.Work, shellInputs(doc.Shell))
}

func shellInputs(s build.Shell) shell.Inputs {
	in := shell.Inputs{Table: offsetTable(s.Offsets), Quick: quickReadings(s.Quick)}
	if s.Pressings != nil {
		in.Pressings = s.Pressings.Depth
	}
	for _, id := range build.SortedKeys(s.Ribs) {
		r := s.Ribs[id]
		in.Ribs = append(in.Ribs, shell.Rib{ID: id, X: r.X, On: r.On, Depth: r.Depth, Flange: valueOf(r.Flange)})
	}
	for _, id := range build.SortedKeys(s.Arches) {
		a := s.Arches[id]
		in.Arches = append(in.Arches, shell.Arch{ID: id, On: a.On, From: a.X.From, To: a.X.To, Inward: a.Inward, Up: a.Up})
	}
	for _, id := range build.SortedKeys(s.Openings) {
		in.Openings = append(in.Openings, opening(id, s.Openings[id]))
	}
	return in
}

func offsetTable(o *build.Offsets) *shell.Table {
	if o == nil {
		return nil
	}
	t := &shell.Table{Heights: o.Heights, Error: valueOf(o.ReadingError)}
	for _, id := range build.SortedKeys(o.Stations) {
		s := o.Stations[id]
		t.Stations = append(t.Stations, shell.Station{ID: id, X: s.X, Half: s.Half, Crown: s.Crown})
	}
	return t
}

func quickReadings(q *build.QuickReadings) *shell.Quick {
	if q == nil {
		return nil
	}
	return &shell.Quick{Body: q.Body, Length: q.Length, Knee: q.WidthAtKnee, BetweenArches: q.BetweenArches,
		Height: q.Height, DoorWidth: q.DoorWidth, DoorHeight: q.DoorHeight, DoorSide: q.DoorSide}
}

func opening(id string, o build.Opening) shell.Opening {
	return shell.Opening{ID: id, Through: o.Through, X: span(o.X), Y: span(o.Y), Z: span(o.Z), Door: o.Door,
		Glazed: valueOf(o.Glazed), FreeArea: valueOf(o.FreeArea), WayOut: bool(valueOf(o.WayOut)), Made: o.Door != "" || o.Made != nil, In: o.In}
}

func span(e *build.Extent) *shell.Span {
	if e == nil {
		return nil
	}
	return &shell.Span{From: e.From, To: e.To}
}

// valueOf is the value of an optional field, or the zero value, which every trade reads as "not known".
func valueOf[T any](p *T) T {
	var zero T
	if p == nil {
		return zero
	}
	return *p
}

// readingError is how well the body is known: what the builder said, else what a tape gives [mm].
func readingError(o *build.Offsets) quantity.Length {
	if o == nil {
		return quickReadingError
	}
	if o.ReadingError == nil {
		return tapeReadingError
	}
	return *o.ReadingError
}

// Reading errors taken where the builder gave none: common practice, no source.
const (
	tapeReadingError  quantity.Length = 5
	quickReadingError quantity.Length = 20
)
