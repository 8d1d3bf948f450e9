package web

import (
	"cmp"
	"fmt"
	"strings"

	"tumblehome/build/begin"
	"tumblehome/quantity"
)

// mostSleepers is how many rows the question about people has.
const mostSleepers = 4

// sleepers reads the rows that hold anything. A stature without a name gets one.
func (f typed) sleepers() []begin.Sleeper {
	var all []begin.Sleeper
	for i := 1; i <= mostSleepers; i++ {
		name, field := f.text(fmt.Sprintf("name-%d", i)), fmt.Sprintf("stature-%d", i)
		stature := f.length(field)
		switch {
		case stature == nil && name != "" && f.wrong[field] == "":
			f.wrong[field] = "How tall is " + name + "? Roughly is enough."
		case stature != nil:
			all = append(all, f.sleeper(name, i, *stature, all))
		}
	}
	return all
}

// sleeper is one row, with an id that nobody else has yet. Names that differ only by accents get a number.
func (f typed) sleeper(name string, row int, stature quantity.Length, taken []begin.Sleeper) begin.Sleeper {
	id := cmp.Or(begin.ID(name), fmt.Sprintf("sleeper-%d", row))
	for _, other := range taken {
		if name != "" && strings.EqualFold(other.Called(), name) {
			f.wrong[fmt.Sprintf("name-%d", row)] = "Two have this name; the second needs another, so that they can be told apart."
		} else if other.ID == id {
			id += fmt.Sprintf("-%d", row)
		}
	}
	if name == id { // then the id says it
		name = ""
	}
	return begin.Sleeper{ID: id, Name: name, Stature: stature}
}
