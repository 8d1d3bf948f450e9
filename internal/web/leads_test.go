package web_test

import (
	"strings"
	"testing"
)

// The fuse of the panels stands at the board, on the lead of their controller: there it is changed. The lead is struck out without its source.
func TestALeadIsACableOfItsOwnOnThePage(t *testing.T) {
	w := open(t, dipper)
	text := w.answer(get(w.unfolded("power"))).Body.String()
	for _, piece := range []string{"Lead of the solar controller", "needs none", `value="/power/sources/sun/lead/cable"`, `value="/power/sources/sun/lead/route"`, `value="/power/sources/sun/fuse"`} {
		if !strings.Contains(text, piece) {
			t.Errorf("the page lacks %q", piece)
		}
	}
	if got := w.answer(post("/edit", "path", "/power/sources/sun/lead", "value", "", "base", "1")); got.Code != 303 {
		t.Fatalf("striking out the lead: %d", got.Code)
	}
	text = w.answer(get(w.unfolded("power"))).Body.String()
	if !strings.Contains(text, "Lead of the solar controller") || !strings.Contains(text, `value="/power/sources/sun/cable"`) {
		t.Error("without what is written of its lead the panels have no lead, or no line")
	}
	if strings.Contains(text, "take back what is written of W12") || strings.Contains(text, "strike out W12") || strings.Count(text, "strike out W11") != 1 {
		t.Error("a lead that nobody wrote can be struck out, or a line cannot")
	}
	if got := w.answer(post("/edit", "path", "/power/sources/sun/lead/cable", "value", "4 mm2", "base", "2")); got.Code != 303 {
		t.Fatalf("writing the copper of a lead: %d", got.Code)
	}
	if text = w.answer(get(w.unfolded("power"))).Body.String(); !strings.Contains(text, "take back what is written of W12") {
		t.Error("what was written of the lead is not there")
	}
}
