package web

import (
	"errors"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/internal/store"
)

var (
	// decimalComma is a number with a comma as many people write it: 1,95 m. Three digits behind it may as well be thousands, so those are asked about.
	decimalComma = regexp.MustCompile(`^(-?[0-9]+),([0-9]{1,2}|[0-9]{4,})([^0-9,.][^,]*)?$`)
	// twoWays is a bare number of millimetres of which many countries part the thousands by a point.
	twoWays = regexp.MustCompile(`^-?[1-9][0-9]{0,2}\.[0-9]{3}$`)
	// feetAndInches is a length with the marks of feet and inches, straight or curled: 5' 4", 37 1/2″.
	feetAndInches = regexp.MustCompile(`^-?[0-9][0-9 .,/]*(['’′] *([0-9][0-9 .,/]*(["”″]|''|’’|′′))?|["”″]|''|’’|′′)$`)
	tonnes        = regexp.MustCompile(`^(-?[0-9]+(?:\.[0-9]+)?) *(?:t|tonnes?)$`)
)

var asUnits = strings.NewReplacer("''", " in", "’’", " in", "′′", " in", `"`, " in", "”", " in", "″", " in", "'", " ft ", "’", " ft ", "′", " ft ")

// asWritten writes a number that people write otherwise as the document does, and leaves all else as it is.
func asWritten(text string) string {
	if feetAndInches.MatchString(text) {
		text = strings.Join(strings.Fields(asUnits.Replace(text)), " ")
	}
	text = decimalComma.ReplaceAllString(text, "$1.$2$3")
	if found := tonnes.FindStringSubmatch(text); found != nil {
		if v, err := strconv.ParseFloat(found[1]+"e3", 64); err == nil {
			return strconv.FormatFloat(v, 'f', -1, 64) + " kg"
		}
	}
	return text
}

// rewritten are the changes as the document writes them where a quantity was refused for how it is written; false where there is none such. A
// name keeps its commas and marks: nobody refuses it for them.
func rewritten(refused error, changes []change) ([]change, bool) {
	var faults build.Faults
	var conflict *store.Conflict
	if errors.As(refused, &conflict) || !errors.As(refused, &faults) {
		return nil, false
	}
	out, mended := slices.Clone(changes), false
	for i, c := range out {
		text := strings.TrimSpace(c.Value)
		refused := slices.ContainsFunc(faults, func(f build.Fault) bool { return f.Kind == build.Values && strings.HasPrefix(f.Wrong, "`"+text+"`") })
		if as := asWritten(text); refused && as != text {
			out[i].Value, mended = as, true
		}
	}
	return out, mended
}

// askWhich refuses bare numbers of millimetres that can be read in two ways: nobody's table is 1.2 mm long.
func (s *Server) askWhich(doc *tree.Node, changes []change) error {
	var out build.Faults
	for _, c := range changes {
		text := strings.TrimSpace(c.Value)
		if !twoWays.MatchString(text) || text == valueText(doc, c.Path) || !s.isLength(doc, c.Path, text) {
			continue
		}
		wrong, near := whichOf(text)
		out = append(out, build.Fault{Kind: build.Values, Path: c.Path.Path(), Wrong: wrong, Near: near})
	}
	if len(out) == 0 {
		return nil
	}
	return out
}

// whichOf asks which of its two readings a number means, and says how each is written.
func whichOf(text string) (wrong string, near []string) {
	whole, small := strings.Replace(text, ".", "", 1), strings.TrimRight(strings.TrimRight(text, "0"), ".")
	return "`" + text + "` can be " + small + " mm or " + whole + " mm", []string{whole, small + " mm"}
}

// isLength reports whether a place of the document takes a number as millimetres: in mm it may stand there, in kg it may not.
func (s *Server) isLength(doc *tree.Node, place tree.Pointer, number string) bool {
	takes := func(unit string) bool {
		var faults build.Faults
		_, err := build.DecodeTree(set(doc, place.Steps(), number+unit), s.desk.rows)
		return !errors.As(err, &faults) || !slices.ContainsFunc(faults, func(f build.Fault) bool { return f.Kind == build.Values && strings.Contains(f.Wrong, number+unit) })
	}
	return takes(" mm") && !takes(" kg")
}
