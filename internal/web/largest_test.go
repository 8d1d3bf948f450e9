package web_test

import (
	"strings"
	"testing"
)

func TestTheListBeginsWithWhatIsLargest(t *testing.T) {
	page := open(t, dipper).answer(get("/region/fittings?mode=day")).Body.String()
	at := func(id string) int { return strings.Index(page, `<li id="fitting-`+id+`"`) }
	if at("settle") < 0 || at("galley") < 0 || at("table") < 0 || at("table") < at("galley") || at("table") < at("settle") {
		t.Errorf("the table at %d stands before the settle at %d or the galley at %d", at("table"), at("settle"), at("galley"))
	}
	if fold := strings.Index(page, `<details class="carries">`); fold < 0 {
		t.Error("nothing is folded under what carries it")
	}
	_, doc := open(t, dipper).store.Head()
	if got := strings.Count(page, "<li id=\"fitting-"); got != len(doc.Fittings) {
		t.Errorf("%d things are listed, want %d", got, len(doc.Fittings))
	}
}
