package sheet_test

import (
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

const secondBank = `{"fittings": {"battery-2": {"buy": "battery-lfp-100ah", "at": {"x": 1900, "y": 0}}}, "power": {"batteries": {"spare": {"is": ["battery-2"], "main-fuse": 100}}}}`
