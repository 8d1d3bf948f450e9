package build

import (
	"strconv"
	"strings"
)

// Names are what some fittings are called, by id: the builder's name for it, else its id in words. Of several of one name all but the
// first, by id, bear a number: "tall open locker (2)".
func Names(fittings map[string]Fitting) map[string]string {
	names, bearers := make(map[string]string, len(fittings)), map[string]int{}
	for _, id := range SortedKeys(fittings) {
		name := fittings[id].Called
		if name == "" {
			name = strings.ReplaceAll(id, "-", " ")
		}
		if bearers[name]++; bearers[name] > 1 {
			name += " (" + strconv.Itoa(bearers[name]) + ")"
		}
		names[id] = name
	}
	return names
}
