package cables

import "fmt"

// terminals are its crimps, and on the lead of a relay that of the thin wire from its coil.
func (c Cable) terminals(s Supply) []Terminal {
	out := c.crimps(s)
	if c.Role == Lead && c.Source == Split {
		out = append(out, Terminal{Words: "red ring crimp for the thin minus wire of the relay's coil (1 mm²)", Count: 1, At: "clean bare metal of the body beside the relay", Row: "terminal-crimp-set"})
	}
	return out
}

// crimps are what goes on its ends: lugs on studs for thick cable, insulated crimps by colour for thin.
func (c Cable) crimps(s Supply) []Terminal {
	plus, minus := c.pieces(s)
	if c.Section.MM2 >= 10 || c.Role == Trunk || c.Role == Bond {
		words := fmt.Sprintf("ring lug %s for %s mm², with heat-shrink", studFor(c.Section.MM2), digits(c.Section.MM2, 4))
		at := "both ends"
		if n := plus + minus; n > c.Cores() {
			at = fmt.Sprintf("both ends of its %d pieces", n)
		}
		return []Terminal{{Words: words, Count: 2*(plus+minus) + c.onward(), At: at, Row: "lug-crimp-set"}}
	}
	colour := crimpColour(c.Section.MM2)
	var out []Terminal
	for i, e := range []End{c.From, c.To} {
		t := Terminal{Words: colour + " crimp to suit the appliance", Count: c.Cores(), At: e.Words, Row: "terminal-crimp-set"}
		if e.Symbol == SymbolBoard || e.Symbol == SymbolBattery || e.Symbol == SymbolStarter {
			t.Words = colour + " ring or blade crimp"
		}
		if on := c.onward(); i == 1 && on > 0 {
			t.Count, t.At = t.Count+on, t.At+", in and out at all but the last"
		}
		out = append(out, t)
	}
	if cut := plus + minus - c.Cores(); cut > 0 {
		out = append(out, Terminal{Words: colour + " crimp to suit the fuse holder", Count: 2 * cut, At: "the fuse", Row: "terminal-crimp-set"})
	}
	return out
}

// onward are the crimps where a cable goes on from one load to the next: at all but the last each of its cores comes in and goes out again, and every end
// of a conductor has a crimp of its own. Common practice, no source.
func (c Cable) onward() int {
	if c.Role != Feed || len(c.Loads) < 2 {
		return 0
	}
	return 2 * c.Cores() * (len(c.Loads) - 1)
}

// pieces are into how many its positive and its negative are cut: a fuse in the line cuts the positive, and so does the isolator; the shunt cuts the
// negative. A fuse on the board cuts nothing, nor does a block that sits on the battery's post.
func (c Cable) pieces(s Supply) (plus, minus int) {
	plus = 1
	if c.Cores() > 1 {
		minus = 1
	}
	onBoard := c.Role == Feed && c.fed == "" || c.Fuse.End == "to" && c.To.Symbol == SymbolBoard
	if c.Fuse.Amps > 0 && !onBoard && c.Fuse.Kind != Block {
		plus++
	}
	if c.Role == Trunk && s.Isolator != nil {
		plus++
	}
	if c.Role == Trunk && s.Shunt != nil {
		minus++
	}
	return plus, minus
}

// crimpColour is that of insulated crimps by the copper they are for.
func crimpColour(area float64) string {
	switch {
	case area <= 1.5:
		return "red"
	case area <= 2.5:
		return "blue"
	}
	return "yellow"
}

// studFor is the bolt that usually carries a lug; the part's own sheet wins.
func studFor(area float64) string {
	switch {
	case area <= 4:
		return "M6"
	case area <= 50:
		return "M8"
	}
	return "M10"
}
