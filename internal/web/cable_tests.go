package web

import (
	"tumblehome/trade/cables"
)

// testPart is a part of the test sheet with its lines.
type testPart struct {
	cables.TestPart
	Lines []testLine
}

// testLine is a line with its number, which is that on paper.
type testLine struct {
	cables.Test
	N int
}

func testParts(v view) []testPart {
	var out []testPart
	for i, t := range v.Cables.Tests {
		if len(out) == 0 || out[len(out)-1].Kind != t.Kind {
			out = append(out, testPart{TestPart: t.Kind.Part()})
		}
		last := &out[len(out)-1]
		last.Lines = append(last.Lines, testLine{t, i + 1})
	}
	return out
}

func testedCable(t cables.Test) string {
	if t.Cable == "" {
		return "all"
	}
	return t.Cable
}
