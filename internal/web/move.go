package web

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"tumblehome/build/tree"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/trade/finding"
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
		for _, one := range m.Stretch {
			if bad(one.By) || !knownFace(one.Face) {
				return tree.Patch{}, "", errUnreadable("a face is moved farther than any van, or is none")
			}
		}
		if why := s.WhyNot(m); why != "" {
			return tree.Patch{}, "", errUnreadable(capital(s.name(m.Fitting)) + " stays as it is: " + why + ".")
		}
		told = append(told, s.moveWords(m))
	}
	patch, ok := s.MovePatch(moves...)
	if !ok {
		return tree.Patch{}, "", errUnreadable("it has no place yet, so it cannot be moved; give it one first")
	}
	return patch, togetherWords(moves, told) + keptWords(s.LengthsKept(moves...)), nil
}

// keptWords says whose length is written down since a turn would else change it.
func keptWords(kept []reckon.Kept) string {
	var told []string
	for _, k := range kept {
		told = append(told, unhyphen(k.Fitting)+" "+wholeMM(k.Length)+" "+[2]string{"long", "wide"}[k.Axis])
	}
	if len(told) == 0 {
		return ""
	}
	more := ""
	if len(told) > mostMoves {
		told, more = told[:mostMoves], " and others"
	}
	return "; kept as they were and written down: " + strings.Join(told, ", ") + more
}

// togetherWords says many moves in few words.
func togetherWords(moves []reckon.Move, told []string) string {
	if len(moves) <= mostMoves {
		return strings.Join(told, "; ")
	}
	return fmt.Sprintf("%d things moved together: %s and others", len(moves), strings.Join(told[:1], ""))
}

// mostMoves is how many moves one sentence names.
const mostMoves = 2

func knownFace(face string) bool {
	return slices.Contains([]string{"front", "rear", "left", "right", "bottom", "top"}, face)
}

// bad is a number that nobody means.
func bad(v float64) bool { return !(math.Abs(v) <= 20000) }

// moveWords says what a move does: "settle 100 mm rearwards".
func (s *state) moveWords(m reckon.Move) string {
	var parts []string
	say := func(by float64, more, less string) {
		switch {
		case by > 0:
			parts = append(parts, wholeMM(by)+" "+more)
		case by < 0:
			parts = append(parts, wholeMM(-by)+" "+less)
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
			parts = append(parts, s.snapWords(face))
		}
	}
	if len(m.Stretch) > 0 && len(parts) == 0 {
		parts = append(parts, "stretched")
	}
	for _, one := range m.Stretch {
		parts = append(parts, "its "+one.Face+" face "+stretchWords(one))
	}
	if len(parts) == 0 {
		parts = append(parts, "left where it was")
	}
	return finding.SetOff(s.name(m.Fitting)) + " " + strings.Join(parts, ", ")
}

// snapWords says what it was laid against or in line with.
func (s *state) snapWords(face string) string {
	words := face
	if of, side, found := strings.Cut(face, "."); found {
		how, id, flush := strings.Cut(of, " ")
		if !flush {
			how, id = "", of
		}
		words = strings.TrimSpace(how + " " + s.name(id) + " " + side)
	}
	switch how, of, flush := strings.Cut(words, " "); {
	case flush && (how == "from" || how == "to"):
		return "flush with " + of
	case how == "mid":
		return "in the middle"
	}
	return "against " + words
}

// stretchWords says where a face went.
func stretchWords(one reckon.Stretch) string {
	ways := map[string][2]string{"front": {"rearwards", "forwards"}, "left": {"to the right", "to the left"}, "bottom": {"up", "down"}}
	way := ways[map[string]string{"rear": "front", "right": "left", "top": "bottom"}[one.Face]]
	if own, ok := ways[one.Face]; ok {
		way = own
	}
	if one.By < 0 {
		return wholeMM(-one.By) + " " + way[1]
	}
	return wholeMM(one.By) + " " + way[0]
}

// wholeMM is a length as a tape has it.
func wholeMM(v float64) string { return quantity.Parted(v) + " mm" }

func plainNumber(v float64) string { return strconv.FormatFloat(math.Round(v*10)/10, 'f', -1, 64) }
