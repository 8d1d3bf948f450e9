package sheet

import (
	"fmt"
	"strings"

	"tumblehome/draw"
	"tumblehome/reckon"
	"tumblehome/trade/cables"
)

var scheduleHeads = []head{
	{"No.", 12, false}, {"Label on both ends", 26, false}, {"From", 20, false}, {"To", 26, false}, {"Along", 20, false}, {"mm²", 8, true}, {"", 2, false}, {"Plus", 8, false}, {"Minus", 8, false},
	{"Route m", 13, true}, {"Cut m, each", 14, true}, {"Fuse A", 9, true}, {"", 2, false}, {"Kind", 9, false}, {"Ends to crimp", 46, false},
}

// Schedule is the list of cables to cut, label and crimp, on as many sheets as it takes.
func Schedule(r *reckon.Reckoning, revision string) []draw.Scene {
	title := r.Document.Build.Title
	frame := draw.Frame{Size: draw.A3, Heading: "What do we cut and crimp?", Subheading: title + ", cable schedule", Cells: cellsOf(r, "cable schedule", revision)}
	if len(r.Cables.Cables) == 0 {
		return []draw.Scene{bare("Cable schedule of "+title, "This build has no cables yet.")}
	}
	rows := append(mendFirst(r), cautioned()...)
	for _, c := range r.Cables.InOrder() {
		rows = append(rows, scheduleRow(r, &c))
		for _, p := range r.Cables.Pieces(&c) {
			rows = append(rows, scheduledPiece(p))
		}
	}
	return tabled(frame, "schedule", "Cable schedule of "+title, scheduleHeads, append(rows, scheduleKey(r)))
}

func scheduleRow(r *reckon.Reckoning, c *cables.Cable) row {
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
		ends = append(ends, fmt.Sprintf("%d × %s, %s", t.Count, t.Words, t.At))
	}
	return row{sign: signOf(r, c), cells: []string{c.Number, c.Label(), c.From.Words, c.To.Words, along, chosen(some(c.Section.MM2, three(c.Section.MM2)), c.Section.Said), "",
		c.Positive, minus, about(some(c.Length.MM/1000, "%.1f"), c), about(some(c.Cut/1000, "%.2f"), c), chosen(some(c.Fuse.Amps, three(c.Fuse.Amps)), c.Fuse.Said), "", chosen(c.Fuse.Kind.Words(), c.Fuse.KindSaid), strings.Join(ends, "; ")}}
}

// scheduledPiece is a line for what belongs to the cable above it and has no number of its own.
func scheduledPiece(p cables.Piece) row {
	cells := make([]string, len(scheduleHeads))
	cells[1], cells[2], cells[5], cells[7], cells[8], cells[11], cells[14] = p.Title, p.Where, some(p.MM2, three(p.MM2)), p.Positive, p.Negative, some(p.Amps, three(p.Amps)), p.Words
	return row{cells: cells}
}

// about says of a length that nobody has measured it.
func about(text string, c *cables.Cable) string {
	if text == "" || c.Length.Known == cables.Measured {
		return text
	}
	return "about " + text
}

// chosen marks what nobody wrote.
func chosen(text string, said bool) string {
	if text == "" || said {
		return text
	}
	return text + chosenMark
}

const chosenMark = "*"

// scheduleKey says what the marks of a schedule mean and how to be rid of them; only of those that there are.
func scheduleKey(r *reckon.Reckoning) row {
	key := row{title: "What the marks mean"}
	for i := range r.Cables.Cables {
		if c := &r.Cables.Cables[i]; c.Length.Known != cables.Measured {
			key.says = append(key.says, aboutKey+" Cut only after you have measured.")
			break
		}
	}
	for i := range r.Cables.Cables {
		if c := &r.Cables.Cables[i]; !c.Section.Said || c.Fuse.Amps > 0 && !(c.Fuse.Said && c.Fuse.KindSaid) {
			key.says = append(key.says, chosenMark+": chosen by this program, because nothing is written. Write your own at the page Power, or what was chosen, and it stands.")
			break
		}
	}
	return row{title: key.title, says: append(key.says, "Cut: the way, a tenth more for bends, and 300 mm at each end. Copper in mm² is the cross-section of the metal, not the thickness over the insulation.")}
}

const aboutKey = "about: nobody has measured this way. Lay a string where the cable will lie, from end to end, and write its length as the route of the cable."
