package web

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/quantity"
	"tumblehome/reckon"
)

// How panels are joined is chosen, not typed: nobody knows that "yes" is the word.
func TestHowPanelsAreJoinedIsChosen(t *testing.T) {
	text, err := os.ReadFile(filepath.Join("..", "..", "examples", "godwit.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	doc, _, err := build.Decode("godwit.yaml", text, catalogue.Builtin())
	if err != nil {
		t.Fatal(err)
	}
	v := view{state: &state{Doc: doc, Rows: catalogue.Builtin(), Reckoning: reckon.NewMachine().Reckon(doc, quantity.Date{})}}
	found := false
	for id := range doc.Power.Sources {
		for _, e := range cableEntries(v, "/power/sources/"+id) {
			if !strings.HasSuffix(e.Path, "/in-row") {
				continue
			}
			found = true
			var values []string
			for _, c := range e.offered("") {
				values = append(values, c.Value)
			}
			if strings.Join(values, ",") != ",yes" {
				t.Errorf("%s offers %q", e.Path, values)
			}
		}
	}
	if !found {
		t.Error("no source of the build has several panels")
	}
}
