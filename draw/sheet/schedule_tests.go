package sheet

import (
	"fmt"
	"slices"

	"tumblehome/draw"
	"tumblehome/reckon"
	"tumblehome/trade/cables"
)

var testHeads = []head{{"", 7, false}, {"Cable", 13, false}, {"What to do", 70, false}, {"It should show", 65, false}, {toWrite, 20, false}, {"", 5, true}, {toTick, 9, false}}

// testHigh is how high a line of the test sheet is at least, so that one can write in it [mm of the paper].
const testHigh = 7.5

// Tests is the sheet to take into the van when the wiring is tried: what to do, what it should show, what to do if it is not so, and room to
// write what it shows.
func Tests(r *reckon.Reckoning, revision string) []draw.Scene {
	title := r.Document.Build.Title
	frame := draw.Frame{Size: upright, Heading: "Is it safe to switch on?", Subheading: title, Cells: cellsOf(r, "test sheet", revision)}
	if len(r.Cables.Tests) == 0 {
		return []draw.Scene{bare("Test sheet of "+title, "This build has no cables yet.")}
	}
	rows := append(mendFirst(r), cautioned()...)
	signs := map[string]draw.Severity{}
	for i := range r.Cables.Cables {
		signs[r.Cables.Cables[i].Number] = signOf(r, &r.Cables.Cables[i])
	}
	var kind cables.TestKind
	for i, t := range r.Cables.Tests {
		if t.Kind != kind {
			kind = t.Kind
			rows = append(rows, partRow(t.Kind.Part()))
		}
		expect := t.Expect
		if other := t.IfNot(); other != "" {
			expect += ".\n" + other
		}
		rows = append(rows, row{high: testHigh, sign: signs[t.Cable], cells: []string{fmt.Sprint(i + 1), t.Cable, t.How, expect, "", t.Unit, ""}})
	}
	return tabled(frame, "tests", "Test sheet of "+title, testHeads, append(rows, testsKey(r)))
}

func partRow(p cables.TestPart) row {
	return row{title: p.Title, says: []string{p.How, p.IfNot()}}
}

// testsKey says where the readings are from, and how to make sure of those that follow from a length nobody has measured.
func testsKey(r *reckon.Reckoning) row {
	out := readingsFrom
	for i := range r.Cables.Cables {
		if c := &r.Cables.Cables[i]; c.Role != cables.Bond && c.Length.Known != cables.Measured {
			out.says = append(slices.Clone(out.says), aboutKey)
			break
		}
	}
	return out
}

var readingsFrom = row{title: "Where the readings are from", says: []string{
	"Volts of a battery at rest: lead from tables printed in vehicles' manuals, the other kinds from memory. Volts while charging: makers' sheets and memory. The sheet of your own battery, charger or controller wins.",
	"Ω of a cable: from its length and copper, with the largest resistance that IEC 60228 allows. An ordinary meter is right to some hundredths."}}
