package web

import (
	"errors"
	"regexp"
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/internal/store"
)

// decimalComma is a number with a comma as many people write it: 1,95 m. Three digits behind it may as well be thousands, so those are asked about.
var decimalComma = regexp.MustCompile(`^(-?[0-9]+),([0-9]{1,2}|[0-9]{4,})([^0-9,.][^,]*)?$`)

// withPoint writes a number with a decimal comma as the document does, and leaves all else as it is.
func withPoint(text string) string { return decimalComma.ReplaceAllString(text, "$1.$2$3") }

// withPoints are the changes with points where a quantity was refused for its comma; false where there is none such. A name keeps its commas:
// nobody refuses it for them.
func withPoints(refused error, changes []change) ([]change, bool) {
	var faults build.Faults
	var conflict *store.Conflict
	if errors.As(refused, &conflict) || !errors.As(refused, &faults) {
		return nil, false
	}
	out, mended := slices.Clone(changes), false
	for i, c := range out {
		text := strings.TrimSpace(c.Value)
		comma := slices.ContainsFunc(faults, func(f build.Fault) bool { return strings.HasPrefix(f.Wrong, "`"+text+"` has a comma") })
		if pointed := withPoint(text); comma && pointed != text {
			out[i].Value, mended = pointed, true
		}
	}
	return out, mended
}
