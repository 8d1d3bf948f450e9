package build

import (
	"maps"
	"slices"

	"tumblehome/build/tree"
)

// SortedKeys returns the ids of a collection in the order in which they are written: s2 before s10.
func SortedKeys[T any](collection map[string]T) []string {
	return slices.SortedFunc(maps.Keys(collection), tree.Compare)
}
