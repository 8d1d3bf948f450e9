package web_test

import (
	"net/http"
	"strings"
	"testing"
)

func TestTheMeasuringSheetIsAPDFToPrint(t *testing.T) {
	answer := open(t, dipper).answer(get("/measuring.pdf"))
	if answer.Code != http.StatusOK || !strings.HasPrefix(answer.Body.String(), "%PDF-") {
		t.Errorf("status %d, begins %.8q", answer.Code, answer.Body)
	}
}
