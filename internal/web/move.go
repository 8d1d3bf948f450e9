package web

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"tumblehome/build/tree"
	"tumblehome/reckon"
)

// patchOfMoves is the patch that makes some moves in a build, and its words. The builder's own way of saying where a thing stands is kept.
func (s *state) patchOfMoves(moves []reckon.Move) (tree.Patch, string, error) {
	var told []string
	for _, m := range moves {
		if bad(m.DX) || bad(m.DY) || bad(m.DZ) || bad(m.Turn) {
			return tree.Patch{}, "", errUnreadable("a move is longer than any van")
		}
		if _, known := s.Doc.Fittings[m.Fitting]; !known {
			return tree.Patch{}, "", errUnreadable("there is no " + unhyphen(strings.ToValidUTF8(m.Fitting, "?")) + " in this build")
		}
		told = append(told, moveWords(m))
	}
	patch, ok := s.MovePatch(moves...)
	if !ok {
		return tree.Patch{}, "", errUnreadable("it has no place yet, so it cannot be moved; give it one first")
	}
	return patch, strings.Join(told, "; "), nil
}

// bad is a number that nobody means.
func bad(v float64) bool { return !(math.Abs(v) <= 20000) }

// moveWords says what a move does: "settle 100 mm rearwards".
func moveWords(m reckon.Move) string {
	var parts []string
	say := func(by float64, more, less string) {
		switch {
		case by > 0:
			parts = append(parts, plainNumber(by)+" mm "+more)
		case by < 0:
			parts = append(parts, plainNumber(-by)+" mm "+less)
		}
	}
	say(m.DX, "rearwards", "forwards")
	say(m.DY, "to the right", "to the left")
	say(m.DZ, "up", "down")
	if m.Turn != 0 {
		parts = append(parts, "turned by "+plainNumber(m.Turn)+"°")
	}
	for _, face := range []string{m.Snap.X, m.Snap.Y, m.Snap.Z} {
		if face != "" {
			parts = append(parts, "against "+unhyphen(strings.Replace(face, ".", " ", 1)))
		}
	}
	if len(parts) == 0 {
		parts = append(parts, "left where it was")
	}
	return fmt.Sprintf("%s %s", unhyphen(m.Fitting), strings.Join(parts, ", "))
}

func plainNumber(v float64) string { return strconv.FormatFloat(math.Round(v*10)/10, 'f', -1, 64) }
