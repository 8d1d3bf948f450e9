package sheet_test

import (
	"strings"
	"testing"

	"tumblehome/draw/sheet"
)

func TestEveryBankHasItsCircuitDiagram(t *testing.T) {
	r := changed(t, "dipper", secondBank)
	if got := len(sheet.Circuits(r, "")); got != 2 {
		t.Errorf("%d diagrams of two batteries", got)
	}
	if got := len(sheet.Circuits(demo(t, "dipper"), "")); got != 1 {
		t.Errorf("%d diagrams of one battery", got)
	}
}

// Dipper has one isolator, one shunt, one busbar and one fuse board: they belong to the bank that feeds its circuits, and stand in its diagram only.
func TestWhatThereIsOnceStandsInOneDiagram(t *testing.T) {
	for name, patch := range map[string]string{
		"the second feeds nothing": secondBank,
		"the second feeds a lamp":  `{"fittings": {"battery-2": {"buy": "battery-lfp-100ah", "at": {"x": 1900, "y": 0}}}, "power": {"batteries": {"another": {"is": ["battery-2"], "main-fuse": 100}}, "circuits": {"lights": {"from": "another"}}}}`,
	} {
		r := changed(t, "dipper", patch)
		text := ""
		for _, s := range sheet.Circuits(r, "") {
			flawless(t, s)
			text += letters(s)
		}
		if !strings.Contains(text, "battery bank house") {
			t.Errorf("%s: the diagrams do not say of which battery they are", name)
		}
		for _, one := range r.Cables.Supplies {
			if has := one.Isolator != nil && one.Shunt != nil && one.FuseBoard != nil; has != (one.ID == "house") {
				t.Errorf("%s: %s has isolator, shunt and fuse board: %v", name, one.ID, has)
			}
		}
	}
}

func TestAFuseBoardBelongsToTheBankWhoseCircuitNamesIt(t *testing.T) {
	r := changed(t, "dipper", `{"fittings": {"battery-2": {"buy": "battery-lfp-100ah", "at": {"x": 1900, "y": 0}}}, "power": {"batteries": {"another": {"is": ["battery-2"], "main-fuse": 100}}, "circuits": {"feeder": {"from": "another", "loads": ["fuse-box"]}}}}`)
	for _, one := range r.Cables.Supplies {
		if has := one.FuseBoard != nil; has != (one.ID == "another") {
			t.Errorf("%s has the fuse board: %v", one.ID, has)
		}
	}
}

func TestABatteryOfSixVoltsIsCalledSo(t *testing.T) {
	text := ""
	for _, s := range sheet.Circuits(changed(t, "dipper", `{"catalogue": {"battery-lfp-100ah": {"kind": "appliance", "volts": 6}}}`), "") {
		text += letters(s)
	}
	if !strings.Contains(text, "\n6 V  100 Ah\n") {
		t.Error("a battery of 6 V is called by other volts")
	}
}

const secondBank = `{"fittings": {"battery-2": {"buy": "battery-lfp-100ah", "at": {"x": 1900, "y": 0}}}, "power": {"batteries": {"spare": {"is": ["battery-2"], "main-fuse": 100}}}}`
