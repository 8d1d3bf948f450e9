package sheet_test

import (
	"testing"

	"tumblehome/build/begin"
	"tumblehome/draw/sheet"
	"tumblehome/quantity"
	"tumblehome/reckon"
)

func TestLettersOnAMeasuringSheetDoNotCollideWhateverTheVan(t *testing.T) {
	machine := reckon.NewMachine()
	for _, b := range begin.Bodies() {
		for _, a := range append([]begin.Arrangement{{}}, begin.Offers(begin.Answers{Body: b.ID})...) {
			doc, _, err := begin.Document(begin.Answers{Body: b.ID, Arrangement: a.ID, Sleepers: []begin.Sleeper{{ID: "one", Stature: 1750}}})
			if err != nil {
				t.Fatal(err)
			}
			for _, flaw := range sheet.Measuring(machine.Reckon(doc, quantity.Date{})).Check() {
				t.Errorf("%s, %s: %v", b.ID, a.ID, flaw)
			}
		}
	}
}
