package web_test

import (
	"strings"
	"testing"
	"time"
)

// Whoever asks for the chart of batteries and panels sees how far it is, and then the chart; asked twice, it is worked out once.
func TestTheChartOfKitsIsWorkedOutWhenAsked(t *testing.T) {
	w := open(t, dipper)
	for range 2 {
		if got := w.answer(post("/power/kit")); got.Code != 303 || got.Header().Get("Location") != "/power#kit" {
			t.Fatalf("asking for it: %d, to %q", got.Code, got.Header().Get("Location"))
		}
	}
	text, end := "", time.Now().Add(time.Minute)
	for !strings.Contains(text, `id="power-kit-wide"`) {
		if time.Now().After(end) {
			t.Fatalf("no chart within a minute; the page ends %.300q", text)
		}
		text = w.answer(get("/region/power?page=power")).Body.String()
		time.Sleep(20 * time.Millisecond)
	}
	for _, piece := range []string{"of a hundred nights flat; you want 5 at most", "flat nights of 100"} {
		if !strings.Contains(text, piece) {
			t.Errorf("the chart lacks %q", piece)
		}
	}
	if strings.Contains(text, "work it out") {
		t.Error("it offers to work out again what is the newest")
	}
	if got := w.answer(post("/edit", "path", "/use/habits", "value", "cosy", "base", "1")); got.Code != 303 {
		t.Fatalf("another way of living: %d", got.Code)
	}
	text = w.answer(get("/region/power?page=power")).Body.String()
	for _, piece := range []string{"Worked out for revision 1", "work it out again"} {
		if !strings.Contains(text, piece) {
			t.Errorf("after an edit the chart lacks %q", piece)
		}
	}
}
