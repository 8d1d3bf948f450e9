package sheet

import (
	"fmt"
	"strings"

	"tumblehome/draw"
	"tumblehome/reckon"
	"tumblehome/trade/cables"
)

var scheduleHeads = []head{
	{"No.", 7, false}, {"Label on both ends", 24, false}, {"From", 22, false}, {"To", 28, false}, {"Along", 24, false}, {"mm²", 8, true}, {"", 2, false}, {"Plus", 9, false}, {"Minus", 9, false},
	{"Route m", 10, true}, {"Cut m, each", 14, true}, {"Fuse A", 9, true}, {"", 2, false}, {"Kind", 10, false}, {"Ends to crimp", 46, false},
}

// Schedule is the list of cables to cut, label and crimp, on as many sheets as it takes.
func Schedule(r *reckon.Reckoning, revision string) []draw.Scene {
	title := r.Document.Build.Title
	frame := draw.Frame{Size: draw.A3, Heading: "What do we cut and crimp?", Subheading: title + ", cable schedule", Cells: cellsOf(r, "cable schedule", revision)}
	var rows [][]string
	for i := range r.Cables.Cables {
		rows = append(rows, scheduleRow(r, &r.Cables.Cables[i]))
	}
	if len(rows) == 0 {
		return []draw.Scene{bare("Cable schedule of "+title, "This build has no cables yet.")}
	}
	return tabled(frame, "schedule", "Cable schedule of "+title, scheduleHeads, rows)
}

func scheduleRow(r *reckon.Reckoning, c *cables.Cable) []string {
	along := ""
	if route := routeOf(r, c); route != nil {
		along = strings.Join(route.Circuit.Along, ", ")
	}
	minus := c.Negative
	if c.Body {
		minus = "body"
	}
	var ends []string
	for _, t := range c.Terminals {
		ends = append(ends, fmt.Sprintf("%d × %s, %s", t.Count, strings.ReplaceAll(t.Words, "mm2", "mm²"), t.At))
	}
	return []string{c.Number, c.Label(), c.From.Words, c.To.Words, along, some(c.Section.MM2, three(c.Section.MM2)), "", c.Positive, minus,
		some(c.Length.MM/1000, "%.1f"), some(c.Cut/1000, "%.2f"), some(c.Fuse.Amps, three(c.Fuse.Amps)), "", string(c.Fuse.Kind), strings.Join(ends, "; ")}
}

var testHeads = []head{{"", 7, false}, {"Cable", 13, false}, {"What to do", 78, false}, {"It should show", 52, false}, {toWrite, 28, false}}

// Tests is the sheet to take into the van when the wiring is tried: what to do, what it should show, and room to write what it shows.
func Tests(r *reckon.Reckoning, revision string) []draw.Scene {
	title := r.Document.Build.Title
	frame := draw.Frame{Size: upright, Heading: "Is it safe to switch on?", Subheading: title, Cells: cellsOf(r, "test sheet", revision)}
	var rows [][]string
	for i, t := range r.Cables.Tests {
		rows = append(rows, []string{fmt.Sprint(i + 1), t.Cable, t.How, t.Expect, ""})
	}
	if len(rows) == 0 {
		return []draw.Scene{bare("Test sheet of "+title, "This build has no cables yet.")}
	}
	return tabled(frame, "tests", "Test sheet of "+title, testHeads, rows)
}
