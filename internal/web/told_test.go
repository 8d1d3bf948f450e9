package web

import (
	"strings"
	"testing"

	"tumblehome/reckon"
	"tumblehome/trade/arrangement"
	"tumblehome/trade/finding"
)

func TestOneNoteIsNotBothNewAndCleared(t *testing.T) {
	note := func(s finding.Severity, about string) finding.Finding {
		return finding.Finding{Code: "warmth.air.night", Severity: s, Title: "Nothing says how air gets in", About: []string{about}}
	}
	for _, c := range []struct {
		name            string
		was, is         finding.Finding
		holds, lacksAll string
	}{
		{"a note that weighs more is graver", note(finding.Note, "/a"), note(finding.Close, "/a"), "Graver now: Nothing says", "New"},
		{"a note that weighs less is less grave", note(finding.Fault, "/a"), note(finding.Close, "/a"), "Less grave now: Nothing says", "New"},
		{"a note that reads the same is not told again", note(finding.Note, "/a"), note(finding.Note, "/b"), "nothing else moves", "New"},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := sentence("bed picked", "", reckon.Difference{Cleared: []finding.Finding{c.was}, Appeared: []finding.Finding{c.is}})
			if !strings.Contains(got, c.holds) || strings.Contains(got, c.lacksAll) || strings.Contains(got, "Cleared") {
				t.Error(got)
			}
		})
	}
}

func TestWhatIsTiedToAThingIsNamed(t *testing.T) {
	box := func(x0, x1, y0 float64) arrangement.Box {
		return arrangement.Box{MinX: x0, MaxX: x1, MinY: y0, MaxY: y0 + 400, MaxZ: 880}
	}
	for _, c := range []struct {
		name    string
		a, b    arrangement.Box
		carried bool
		want    string
	}{
		{"what is stretched says from what to what", box(0, 865, 0), box(0, 1585, 0), false, "865\u202fmm → 1\u202f585\u202fmm long"},
		{"what is shifted says where it went", box(0, 865, 0), box(100, 965, -50), false, "100 mm rearwards and 50 mm to the left"},
		{"what is carried along goes without saying", box(0, 865, 0), box(100, 965, 0), true, ""},
		{"a hair is not told", box(0, 865, 0), box(3, 869, 0), false, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := changedWords(c.a, c.b, c.carried); got != c.want {
				t.Errorf("%q, not %q", got, c.want)
			}
		})
	}
}

func TestPlacesInTheHistoryReadPlainly(t *testing.T) {
	for path, want := range map[string]string{
		"modes.night.people.me.head": "night, me, head towards", "fittings.settle.at.x": "settle, place along the van", "modes.night": "night",
	} {
		if got := pathWords(path); got != want {
			t.Errorf("%s reads %q, not %q", path, got, want)
		}
	}
}
