package sheet_test

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"tumblehome/draw/paper"
	"tumblehome/draw/sheet"
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

func TestTheWiringPrints(t *testing.T) {
	r := demo(t, "godwit")
	scenes := append(append(sheet.Circuit(r, "", ""), sheet.WiringPlan(r, "drive", "")), sheet.Schedule(r, "")...)
	var pdf bytes.Buffer
	if err := paper.Write(&pdf, append(scenes, sheet.Tests(r, "")...), paper.Options{Title: "wiring"}); err != nil || pdf.Len() < 20000 {
		t.Errorf("%d bytes, %v", pdf.Len(), err)
	}
}
