package sheet_test

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/draw"
	"tumblehome/draw/paper"
	"tumblehome/draw/sheet"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/trade/cables"
)

func TestTheSheetsOfTheWiringAreFitToBeSeen(t *testing.T) {
	for _, name := range demos {
		r := demo(t, name)
		t.Run(name+", in its place", func(t *testing.T) { flawless(t, sheet.WiringPlan(r, "drive", "214, 25 November")) })
		for i, s := range append(sheet.Schedule(r, ""), sheet.Tests(r, "")...) {
			t.Run(fmt.Sprintf("%s, sheet %d", name, i+1), func(t *testing.T) { flawless(t, s) })
		}
	}
}

func TestEveryCableIsOnTheScheduleAndEveryTestOnItsSheet(t *testing.T) {
	for _, name := range demos {
		r := demo(t, name)
		text := ""
		for _, s := range append(sheet.Schedule(r, ""), sheet.Tests(r, "")...) {
			text += s.Description
		}
		for _, c := range r.Cables.Cables {
			if !strings.Contains(text, " "+c.Label()+";") {
				t.Errorf("%s: %s is not on the schedule", name, c.Label())
			}
		}
		for _, one := range r.Cables.Tests {
			if !strings.Contains(text, " "+one.How+";") {
				t.Errorf("%s: nobody is told to %q", name, one.How)
			}
		}
	}
}

// sheetsOf are the sheets of the schedule and of the tests, and all that is lettered on each kind.
func sheetsOf(t *testing.T, r *reckon.Reckoning) map[string]string {
	t.Helper()
	out := map[string]string{}
	for name, scenes := range map[string][]draw.Scene{"schedule": sheet.Schedule(r, ""), "tests": sheet.Tests(r, "")} {
		for _, s := range scenes {
			flawless(t, s)
			out[name] += s.Description + "\n" + letters(s)
		}
	}
	return out
}

func TestCautionsStandOnTheSheetsThatAreTakenIntoTheVan(t *testing.T) {
	for _, name := range demos {
		for what, text := range sheetsOf(t, demo(t, name)) {
			for _, said := range cables.Cautions {
				if !strings.Contains(text, said) {
					t.Errorf("%s, %s: nobody is told %q", name, what, said)
				}
			}
			if !strings.Contains(text, "licensed electrician") {
				t.Errorf("%s, %s: the mains are not left to an electrician", name, what)
			}
		}
	}
}

func TestADangerousCableBearsItsSignOnPaper(t *testing.T) {
	for what, text := range sheetsOf(t, changed(t, "dipper", `{"power": {"circuits": {"lights": {"fuse": "none"}}}}`)) {
		for _, piece := range []string{"W5, danger: ", "\ndanger\n", "see margin notes", "octagon"} {
			if !strings.Contains(text, piece) {
				t.Errorf("%s lacks %q", what, piece)
			}
		}
	}
	for what, text := range sheetsOf(t, demo(t, "dipper")) {
		if strings.Contains(text, "see margin notes") || strings.Contains(text, "\ndanger\n") {
			t.Errorf("%s of a sound van speaks of dangers", what)
		}
	}
}

func TestWhatNobodyMeasuredOrWroteIsMarkedAsSuchOnTheSchedule(t *testing.T) {
	text := sheetsOf(t, changed(t, "dipper", `{"power": {"circuits": {"fan": {"route": null, "cable": null}, "lights": {"route": null, "fuse": null}}}}`))["schedule"]
	for _, piece := range []string{"about: nobody has measured this way. Lay a string", "about 0.5", "*: chosen by this program"} {
		if !strings.Contains(text, piece) {
			t.Errorf("the schedule lacks %q", piece)
		}
	}
	if strings.Count(text, "\nabout ") != 2*3 {
		t.Errorf("%d lengths are about, the ways of two circuits and of the bond are not measured", strings.Count(text, "\nabout "))
	}
}

func TestATestSheetHasRoomToWriteAndToTick(t *testing.T) {
	r := demo(t, "dipper")
	boxes := 0
	for _, s := range sheet.Tests(r, "") {
		boxes += strings.Count(found(s)["tests"].String(), "edge M") // a closed line among the ruled ones
	}
	if boxes < len(r.Cables.Tests) {
		t.Errorf("%d boxes for %d tests", boxes, len(r.Cables.Tests))
	}
}

func TestTheWiringPrints(t *testing.T) {
	r := demo(t, "godwit")
	scenes := append(append(sheet.Circuit(r, "", ""), sheet.WiringPlan(r, "drive", "")), sheet.Schedule(r, "")...)
	var pdf bytes.Buffer
	if err := paper.Write(&pdf, append(scenes, sheet.Tests(r, "")...), paper.Options{Title: "wiring"}); err != nil || pdf.Len() < 20000 {
		t.Errorf("%d bytes, %v", pdf.Len(), err)
	}
}

// changed is an example build with a patch.
func changed(t *testing.T, name, patch string) *reckon.Reckoning {
	t.Helper()
	parsed, err := tree.ParsePatch([]byte(patch))
	if err != nil {
		t.Fatal(err)
	}
	doc, err := build.Apply(demo(t, name).Document, parsed, catalogue.Builtin())
	if err != nil {
		t.Fatal(err)
	}
	return reckon.NewMachine().Reckon(doc, quantity.Date{Year: 2026, Month: 9, Day: 19})
}

// The fuse of the engine's line is written once for line and lead; only the lead is too thin for it.
func TestTheSignIsOnTheLeadThatIsTooThinAndNotOnItsLine(t *testing.T) {
	r := changed(t, "twite", `{"power": {"sources": {"engine": {"lead": {"cable": "2.5 mm2"}}}}}`)
	line, lead := "", ""
	for _, c := range r.Cables.Cables {
		switch c.Role {
		case cables.Charge:
			line = c.Number
		case cables.Lead:
			lead = c.Number
		}
	}
	for what, text := range sheetsOf(t, r) {
		if !strings.Contains(text, lead+", fault: ") || strings.Contains(text, line+", fault: ") {
			t.Errorf("%s: the sign of %s is on %s", what, lead, line)
		}
	}
}

// Twite does not say how its main fuse is made: the sheet must not print it as if it did, nor in the words of the document.
func TestAKindOfFuseThatNobodyWroteIsMarkedAndInWords(t *testing.T) {
	text := sheetsOf(t, demo(t, "twite"))["schedule"]
	if !strings.Contains(text, "post block*") || !strings.Contains(text, "*: chosen by this program") {
		t.Error("the kind of the main fuse is not marked as chosen")
	}
	for _, code := range []string{"sf30", "sf51", "class-t", "maxi"} {
		for _, name := range demos {
			if strings.Contains(sheetsOf(t, demo(t, name))["schedule"], code) {
				t.Errorf("%s: %s stands on the schedule", name, code)
			}
		}
	}
}

const fourPanels = `{"fittings": {"panel-3": {"buy": "solar-rigid-180w", "at": "undecided"}, "panel-4": {"buy": "solar-rigid-180w", "at": "undecided"}},
	"power": {"sources": {"sun": {"is": ["panel-left", "panel-right", "panel-3", "panel-4"], "string-fuse": 20, "string-most": 20, "most": 50}}}}`

// Godwit has two batteries; its panels are made four here. What belongs to a cable without a number stands on the diagram too.
func TestFusesOfPanelsAndLinksOfBatteriesAreOnDiagramAndSheets(t *testing.T) {
	r := changed(t, "godwit", fourPanels)
	all := sheetsOf(t, r)
	for _, s := range sheet.Circuit(r, "", "") {
		flawless(t, s)
		all["diagram"] += s.Description + "\n" + letters(s)
	}
	for what, text := range all {
		wanted := []string{"Each of the 4 panels has its fuse of 20 A in its plus", "3 pairs of branch plugs", "From battery to battery plus to plus"}
		if what == "tests" {
			wanted = []string{"Look at each of the 4 panels", "Put the 4 fuses of 20 A in"}
		}
		for _, piece := range wanted {
			if !strings.Contains(text, piece) {
				t.Errorf("%s lacks %q", what, piece)
			}
		}
	}
	if !strings.Contains(all["diagram"], "\n4 × 20 A\n") {
		t.Error("no fuse is drawn at the panels")
	}
}

func TestTheStarterBatteryOf24VoltsIsCalledSo(t *testing.T) {
	for patch, want := range map[string]bool{`{"vehicle": {"volts": 24}}`: true, `{"vehicle": {"volts": 12}}`: false} {
		text := ""
		for _, s := range sheet.Circuit(changed(t, "dipper", patch), "", "") {
			flawless(t, s)
			text += letters(s)
		}
		if strings.Contains(text, "starter battery  24 V") != want {
			t.Errorf("%s: called so: %v", patch, !want)
		}
	}
}
