package sheet

import (
	"fmt"
	"strings"

	"tumblehome/draw"
	"tumblehome/reckon"
	"tumblehome/trade/cables"
)

// Circuit draws the circuit diagram of a bank of batteries, the first where none is named: sources on the left, then the battery with its
// main fuse, then the circuits, all between the positive busbar above and the negative one below; under it the table of cables.
// It takes as many sheets of A3 lying on its side as it needs, the busbars going on from one to the next. Only circuits that feed so many others
// that they go on no sheet make one wider or higher.
func Circuit(r *reckon.Reckoning, bank, revision string) []draw.Scene {
	c := newCircuitry(&r.Cables, bank, func(id string) string {
		if f, ok := r.Document.Fittings[id]; ok {
			return nameOf(id, f)
		}
		return ""
	})
	title := r.Document.Build.Title
	if c == nil {
		return []draw.Scene{bare("Circuit diagram of "+title, "This build has no battery yet: there is nothing to draw.")}
	}
	c.sign = func(one *cables.Cable) draw.Severity { return signOf(r, one) }
	if len(r.Cables.Supplies) > 1 {
		title += ", battery bank " + strings.ReplaceAll(c.supply.ID, "-", " ")
	}
	var out []draw.Scene
	for _, page := range c.pages() {
		out = append(out, page.sheet(title, cellsOf(r, "circuit diagram", revision)))
	}
	return out
}

// sheet is the diagram with its table on a sheet large enough.
func (c *circuitry) sheet(title string, cells []draw.Cell) draw.Scene {
	frame := draw.Frame{Size: draw.A3, Heading: "How is it wired?", Subheading: title + ", circuit diagram", Cells: cells}
	rows, field := c.rows(), frame.Field()
	low := tableHeight(len(rows)) + 6
	c.spread(c.room(draw.Rect{Min: field.Min.Add(draw.Pt(0, 2)), Max: draw.Pt(field.Max.X, field.Max.Y-low)}))
	frame.Size.Width = max(draw.A3.Width, c.right+draw.A3.Width-field.Max.X)
	frame.Size.Height = max(draw.A3.Height, c.bottom+low+draw.A3.Height-field.Max.Y)
	field = frame.Field()
	table := draw.Pt(field.Min.X, field.Max.Y-low+6)
	return draw.Scene{Size: frame.Size, Title: "Circuit diagram of " + title, Description: c.words()}.With(frame.Group(),
		draw.Group{ID: "circuit", Class: "circuit", Marks: c.marks}, circuitTable(rows, table, field.Width()), c.tableSigns(table),
		c.foot(draw.Pt(field.Min.X, frame.Inner().Max.Y-4)))
}

// bare is a sheet on which there is nothing but a sentence.
func bare(title, says string) draw.Scene {
	size := draw.A4
	return draw.Scene{Size: size, Title: title, Description: says}.With(draw.Frame{Size: size, Heading: title}.Group(),
		draw.Lettering{Text: says, At: draw.Pt(20, 40), Size: nameSize})
}

// cellsOf are the cells of a title block.
func cellsOf(r *reckon.Reckoning, what, revision string) []draw.Cell {
	cells := []draw.Cell{{Label: "build", Value: r.Document.Build.Title, Strong: true}, {Label: "sheet", Value: what}}
	if revision != "" {
		return append(cells, draw.Cell{Label: "revision", Value: revision})
	}
	if !r.Today.IsZero() {
		cells = append(cells, draw.Cell{Label: "day", Value: dateWords(r.Today)})
	}
	return cells
}

// circuitry is the work on one circuit diagram.
type circuitry struct {
	easel
	all    []cables.Cable // of the bank
	supply *cables.Supply
	names  func(id string) string
	sign   func(*cables.Cable) draw.Severity // of its gravest note, "" for none
	pieces func(*cables.Cable) []cables.Piece
	bank   bool // the battery is on this sheet
	page   int  // which sheet this is, of how many
	sheets int

	plus, loads, minus float64 // heights of the busbars and of the loads on the paper
	first, level       float64 // where the first circuits end, and how much lower those end that they feed
	x, gap             float64 // where the next column may begin, and how far behind the one before
	bottom             float64

	turned []post       // leads on their way to the battery
	posts  []draw.Point // where they come down beside it
}

func newCircuitry(res *cables.Result, bank string, names func(string) string) *circuitry {
	for i := range res.Supplies {
		if s := &res.Supplies[i]; s.ID == bank || bank == "" {
			c := &circuitry{supply: s, names: names, sign: unsigned, pieces: res.Pieces, bank: true, page: 1, sheets: 1}
			for _, one := range res.Cables {
				if one.Bank == s.ID {
					c.all = append(c.all, one)
				}
			}
			return c
		}
	}
	return nil
}

// unsigned is the sign of cables of which no notes are known.
func unsigned(*cables.Cable) draw.Severity { return "" }

// named is what a fitting is called, or else the words for it.
func (c *circuitry) named(id, words string) string {
	if name := c.names(id); name != "" {
		return name
	}
	return words
}

// of are the cables of a role, those fed by a cable if its number is given.
func (c *circuitry) of(role cables.Role, fedBy string) []*cables.Cable {
	var out []*cables.Cable
	for i := range c.all {
		if one := &c.all[i]; one.Role == role && (role != cables.Feed || c.fedBy(one) == fedBy) {
			out = append(out, one)
		}
	}
	return out
}

// fedBy is the number of the circuit that feeds one; none for one that begins at the fuse board.
func (c *circuitry) fedBy(one *cables.Cable) string {
	for i := range c.all {
		if f := &c.all[i]; f.Number == one.FedBy && f.Role == cables.Feed {
			return f.Number
		}
	}
	return ""
}

// deepest is how many circuits hang on one another below a cable.
func (c *circuitry) deepest(fedBy string) int {
	deep := 0
	for _, one := range c.of(cables.Feed, fedBy) {
		deep = max(deep, 1+c.deepest(one.Number))
	}
	return deep
}

// words tell the diagram.
func (c *circuitry) words() string {
	var b strings.Builder
	fmt.Fprintf(&b, "Circuit diagram in the symbols of IEC 60617, drawn from memory. The battery feeds the positive busbar through its main fuse.")
	for i := range c.all {
		one := &c.all[i]
		fmt.Fprintf(&b, " %s %s: from %s to %s, %s, %s.", one.Number, one.Title, one.From.Words, one.To.Words, sectionWords(one), lengthWords(one))
		for _, p := range c.pieces(one) {
			b.WriteString(" " + p.Words)
		}
	}
	return b.String()
}
