package offsets

import (
	"fmt"
	"math"
)

// A Table of offsets is what was measured.
type Table struct {
	Heights  []float64 // ascending, the lowest is the base; at least two
	Stations []Station // of ascending X; at least two
	Reading  float64   // a reading lies within this of the truth, every place in the range alike likely
	Form     float64   // the same for the whole form, where it was taken from a typical body instead of read
}

// A Station is one row of the table: a cut across the body.
type Station struct {
	X     float64
	Half  []float64 // half-breadths, one for each height, not below zero
	Crown float64   // height of the top in the middle, not below the last height
}

// A TableError says what is wrong with a table and where: Station and Height
// are indices, -1 where the whole row, column or table is meant.
type TableError struct {
	Station, Height int
	What            string
}

func (e *TableError) Error() string {
	where := "table of offsets"
	if e.Station >= 0 {
		where += fmt.Sprintf(", station %d", e.Station+1)
	}
	if e.Height >= 0 {
		where += fmt.Sprintf(", height %d", e.Height+1)
	}
	return where + ": " + e.What
}

// check returns the first fault of the table, or nil.
func (t Table) check() error {
	switch {
	case len(t.Heights) < 2:
		return &TableError{-1, -1, "needs at least two heights"}
	case len(t.Stations) < 2:
		return &TableError{-1, -1, "needs at least two stations"}
	case !(t.Reading >= 0) || !(t.Form >= 0) || !finite(t.Reading+t.Form):
		return &TableError{-1, -1, "the errors stated must not be below zero"}
	}
	for j, z := range t.Heights {
		if !finite(z) || j > 0 && z <= t.Heights[j-1] {
			return &TableError{-1, j, "heights must be numbers in ascending order"}
		}
	}
	for i := range t.Stations {
		if err := t.checkStation(i); err != nil {
			return err
		}
	}
	return nil
}

func (t Table) checkStation(i int) error {
	s := t.Stations[i]
	switch {
	case !finite(s.X) || i > 0 && s.X <= t.Stations[i-1].X:
		return &TableError{i, -1, "stations must stand at numbers in ascending order"}
	case len(s.Half) != len(t.Heights):
		return &TableError{i, -1, fmt.Sprintf("has %d half-breadths for %d heights", len(s.Half), len(t.Heights))}
	case !finite(s.Crown) || s.Crown < t.Heights[len(t.Heights)-1]:
		return &TableError{i, -1, "the crown must not lie below the last height"}
	}
	for j, y := range s.Half {
		if !finite(y) || y < 0 {
			return &TableError{i, j, "a half-breadth must be a number not below zero"}
		}
	}
	return nil
}

func finite(v float64) bool { return !math.IsNaN(v) && !math.IsInf(v, 0) }
