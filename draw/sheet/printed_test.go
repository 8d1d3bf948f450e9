package sheet_test

import (
	"strings"
	"testing"

	"tumblehome/draw"
	"tumblehome/draw/sheet"
	"tumblehome/reckon"
)

const (
	hebrew = "\u05de\u05e0\u05d5\u05e8\u05d4" // a lamp
	arabic = "\u0645\u0636\u062e\u0629"       // a pump
	snow   = "\U0001F976"                     // a cold face
)

func TestNamesThatThePrintHasNoLettersForStandAsIDs(t *testing.T) {
	r := changed(t, "dipper", `{"build": {"title": "`+hebrew+`"}, "fittings": {"strip-left": {"called": "`+hebrew+` 1"}, "pump": {"called": "`+arabic+`"}, "coolbox": {"called": "box `+snow+`"}}}`)
	for name, sheets := range map[string]func(*reckon.Reckoning) []draw.Scene{
		"schedule": func(r *reckon.Reckoning) []draw.Scene { return sheet.Schedule(r, "") },
		"tests":    func(r *reckon.Reckoning) []draw.Scene { return sheet.Tests(r, "") },
		"circuit":  func(r *reckon.Reckoning) []draw.Scene { return sheet.Circuits(r, "") },
		"wiring":   func(r *reckon.Reckoning) []draw.Scene { return []draw.Scene{sheet.WiringPlan(r, "drive", "")} },
		"arrangement": func(r *reckon.Reckoning) []draw.Scene {
			return []draw.Scene{sheet.Arrangement(r, sheet.View{Mode: "day", Size: draw.A3})}
		},
	} {
		text := ""
		for _, s := range sheet.Printed(r, sheets) {
			flawless(t, s)
			text += letters(s)
		}
		if draw.Unknown(strings.ReplaceAll(text, "\n", " ")) {
			t.Errorf("%s: boxes are printed", name)
		}
		if n := strings.Count(text, "stand as their ids"); n != 1 {
			t.Errorf("%s: it is said %d times that names are replaced", name, n)
		}
		for _, id := range []string{"this build", "strip left", "coolbox"} {
			if !strings.Contains(strings.ToLower(text), id) {
				t.Errorf("%s: %s cannot be known again", name, id)
			}
		}
	}
	if r.Document.Fittings["pump"].Called != arabic {
		t.Error("the build itself was renamed")
	}
	plain := sheet.Printed(demo(t, "dipper"), func(r *reckon.Reckoning) []draw.Scene { return sheet.Schedule(r, "") })
	if strings.Contains(letters(plain[0]), "stand as their ids") {
		t.Error("something is said of letters where none are missing")
	}
}
