package working_test

import (
	"testing"

	"tumblehome/trade/working"
)

func TestAWorkingIsFoundByTheCodeOfItsFigure(t *testing.T) {
	figures := func() []working.Figure { return []working.Figure{{Code: "warmth.loss", Label: "Heat lost"}} }
	show := func(short string) working.Working { return working.Working{Formula: short} }
	for code, want := range map[string]string{"warmth.loss": "loss", "warmth.gain": "", "power.loss": "", "warmthloss": ""} {
		w, ok := working.Of(code, "warmth", figures, show)
		if ok != (want != "") || w.Formula != want || ok && (w.Code != code || w.Label != "Heat lost") {
			t.Errorf("%s: %v %+v", code, ok, w)
		}
	}
}
