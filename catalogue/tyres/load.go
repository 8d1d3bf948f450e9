package tyres

import (
	_ "embed"
	"strconv"
	"strings"

	"tumblehome/quantity"
)

//go:embed load_index.csv
var loadIndexCSV string

// First and Last are the lowest and the highest load index of the table.
const (
	First = 60
	Last  = 126
)

// An Entry is one row of the table of load indices.
type Entry struct {
	Index  int           // the number on the tyre
	Mass   quantity.Mass // what one tyre may carry [kg]
	Source string        // how the figure is known
}

var table = read(loadIndexCSV)

// read takes the table as it is embedded: a heading, then one row an index in
// rising order without gaps. The text is part of the program, so a row that
// cannot be read is a mistake of ours; the test of the table finds it.
func read(text string) []Entry {
	var entries []Entry
	for line := range strings.Lines(text) {
		index, rest, _ := strings.Cut(strings.TrimSpace(line), ",")
		kg, source, _ := strings.Cut(rest, ",")
		n, err := strconv.Atoi(index)
		if err != nil {
			continue
		}
		mass, _ := strconv.ParseFloat(kg, 64)
		entries = append(entries, Entry{Index: n, Mass: quantity.Mass(mass), Source: strings.Trim(source, `"`)})
	}
	return entries
}

// Table is the whole table in rising order.
func Table() []Entry { return append([]Entry(nil), table...) }

// Load is the mass one tyre of this load index may carry [kg]. It is false for
// an index outside First to Last.
func Load(index int) (quantity.Mass, bool) {
	if index < First || index > Last {
		return 0, false
	}
	return table[index-First].Mass, true
}

// Needed is the lowest load index of a tyre that may carry this mass [kg]. It
// is false when the table has none.
func Needed(one quantity.Mass) (int, bool) {
	for _, e := range table {
		if e.Mass >= one {
			return e.Index, true
		}
	}
	return 0, false
}
