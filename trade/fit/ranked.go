package fit

import (
	"cmp"
	"slices"
)

// ranked is one of a list, by a number that puts it in order. Such numbers are sorted sooner than what they are of.
type ranked struct {
	by float64
	at int
}

// rank puts the least first; of equals the one that stands first in the list.
func rank(order []ranked) {
	slices.SortFunc(order, func(a, b ranked) int { return cmp.Or(cmp.Compare(a.by, b.by), cmp.Compare(a.at, b.at)) })
}
