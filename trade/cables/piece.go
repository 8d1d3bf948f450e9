package cables

import "fmt"

// Piece is a small thing that belongs to a cable and has no number of its own: the fuses of panels, what joins them, the links between batteries.
type Piece struct {
	Title              string
	Where              string  // between what or in what it sits
	MM2                float64 // of a link; 0 for what is no cable
	Amps               float64 // of each fuse; 0 for what is none
	Count              int
	Positive, Negative string // colours
	Words              string // all of it in a sentence
}

// Pieces are those of a cable. The bill has them too.
func (r *Result) Pieces(c *Cable) []Piece {
	var out []Piece
	if s, ok := r.sourceOf(c); ok {
		n := s.strings().count
		if n > 1 && s.String.Amps > 0 {
			out = append(out, Piece{Title: "fuse of a panel", Where: "in the plus of each panel", Amps: s.String.Amps, Count: n, Positive: c.Positive,
				Words: fmt.Sprintf("Each of the %d panels has its fuse of %s A in its plus, in a holder with plugs.", n, digits(s.String.Amps, 3))})
		}
		if n := c.branches(); n > 0 {
			out = append(out, Piece{Title: "pair of branch plugs", Where: "between the panels", Count: n,
				Words: fmt.Sprintf("%s of branch plugs, plus and minus, to join the %d panels side by side.", capital(pairs(n)), n+1)})
		}
	}
	if c.Role == Trunk {
		if n := len(r.Supplies[r.supplyOf(c.Bank)].Batteries) - 1; n > 0 {
			out = append(out, Piece{Title: "link of the batteries", Where: "from battery to battery", MM2: c.Section.MM2, Count: n, Positive: c.Positive, Negative: c.Negative,
				Words: fmt.Sprintf("From battery to battery plus to plus and minus to minus, %s mm² as this cable: %d × %s, %d × %s.", digits(c.Section.MM2, 4), n, c.Positive, n, c.Negative)})
		}
	}
	return out
}

// branches are the pairs of plugs that bring so many panels side by side to one cable.
func (c *Cable) branches() int {
	if c.Role != Charge || c.Source != Sun || c.row {
		return 0
	}
	return max(0, len(c.Loads)-1)
}

func pairs(n int) string {
	if n == 1 {
		return "one pair"
	}
	return fmt.Sprintf("%d pairs", n)
}

// seen are looked at with all other ends, each fuse still out.
func (r *Result) seen() []Test {
	var out []Test
	for i := range r.Cables {
		c := &r.Cables[i]
		s, ok := r.sourceOf(c)
		if n := s.strings().count; ok && n > 1 && s.String.Amps > 0 {
			out = append(out, Test{Cable: c.Number, Kind: TestEye, How: fmt.Sprintf("Look at each of the %d panels: there is a holder in its plus, before the branch plugs, and the fuse for it lies ready.", n),
				Expect: fmt.Sprintf("%d holders and %d fuses of %s A, none in its minus", n, n, digits(s.String.Amps, 3))})
		}
	}
	return out
}
