package cables

import (
	"fmt"
	"slices"

	"tumblehome/quantity"
	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

type (
	line   = working.Line
	origin = working.Origin
)

var here = origin{Here: true}

func (r *Result) workingOfDrop(c *Cable) working.Working {
	w := working.Working{Formula: "ΔU = 2·l·r·I + ΔUshared;  u = ΔU/U", Source: copperSource}
	w.Lines = append(w.Lines, c.lengthLine(), c.sectionLine(),
		line{Symbol: "r", Label: "resistance of one core, copper at 30 °C", Value: perMetre(c.Section.MM2, warmCopper) * 1000, Unit: "mΩ/m", From: origin{Assumption: "IEC 60228 class 5, the largest that is allowed"}},
		c.currentLine(),
		line{Symbol: "ΔU", Label: c.coresWords(), Value: c.Drop.Own, Unit: "V", Sum: fmt.Sprintf("2 × %.2f × %s × %s", c.Length.MM/1000, digits(perMetre(c.Section.MM2, warmCopper), 4), digits(c.Drop.Own/c.ohms(), 4)), From: here},
		line{Symbol: "ΔUshared", Label: "lost in the cables that feed it, with everything on", Value: c.Drop.Shared, Unit: "V", From: here},
		line{Symbol: "ΔUf", Label: "besides, in fuses and joints (not counted here: limits are for cables)", Value: c.Drop.Joints, Unit: "V", From: origin{Assumption: "cold fuses as makers give them, and 1 mΩ of joints"}},
		line{Symbol: "U", Label: "the voltage that shares are of", Value: c.Volts, Unit: "V", From: origin{Assumption: c.voltsWords()}},
		line{Symbol: "u", Label: "lost in the cables", Value: c.lost(), Unit: "%", Sum: fmt.Sprintf("100 × %.3f / %.1f", c.Drop.Cables(), c.Volts), From: here})
	for _, d := range c.Section.Steps {
		w.Notes = append(w.Notes, d.told())
	}
	w.Notes = append(w.Notes, c.Rating.told(c.Section.MM2), fmt.Sprintf("More than %s %% is found fault with; where the program chooses, it aims for %s %% in the cable itself.", digits(100*c.Drop.Limit, 3), digits(100*c.Drop.Aim, 3)))
	if p := c.Fuse; p.Backed && p.Breaking < p.Meets {
		main := r.Cables[r.trunkOf(c.Bank)].Fuse
		w.Notes = append(w.Notes, fmt.Sprintf("Into a short just behind it about %s A flow, and its fuse breaks %s A. That is borne since the main fuse (%s) breaks %s A and goes with it; from memory of how fuses back each other up, ask its maker.", whole(p.Meets), quantity.Parted(p.Breaking), main.Words(), quantity.Parted(main.Breaking)))
	}
	return w
}

// coresWords says in what it loses. A body is no worse than a second core of the same copper, but for its joints, which nobody knows: it is taken for one.
func (c *Cable) coresWords() string {
	if c.Body {
		return "lost in its own core, and in the body, which is taken for a second core"
	}
	return "lost in its own two cores"
}

// told is how a rating comes about.
func (r Rating) told(mm2 float64) string {
	return fmt.Sprintf("%s mm² carry %.0f A %s: %.0f A by the table (%s), times %.2f for the air (%s), %.2f for %d loaded cores side by side (%s) and %.2f for insulation about it (BS 7671 regulation 523.9, from memory).", digits(mm2, 4), r.Amps, r.Words(), r.Table, r.From.Text, r.Ambient, ambientSource.Text, r.Bundle, r.Cores, bundleSource.Text, r.Wrapped)
}

func (d Demand) told() string {
	if d.MM2 == 0 {
		return fmt.Sprintf("No cable that is sold is thick enough that %s. Source: %s.", d.Words, d.Source.Text)
	}
	return fmt.Sprintf("From %s mm² on %s. Source: %s.", digits(d.MM2, 4), d.Words, d.Source.Text)
}

func (c *Cable) lengthLine() line {
	l := line{Symbol: "l", Label: "length one way", Value: c.Length.MM / 1000, Unit: "m"}
	switch c.Length.Known {
	case Measured:
		l.From = origin{Pointer: c.Length.About}
	case Laid:
		l.From = origin{Assumption: "along its ways, and the surfaces between them, from where things stand; nobody has measured it yet"}
	case Straight:
		l.From = origin{Assumption: "along the van, across it and up between the two places, a fifth added; nobody has measured it yet"}
	default:
		l.From = origin{Assumption: "as such cables usually are; nobody has measured it yet"}
	}
	return l
}

func (c *Cable) sectionLine() line {
	l := line{Symbol: "A", Label: "copper of one core", Value: c.Section.MM2, Unit: "mm2", From: origin{Assumption: "chosen: " + c.Section.decided().Words}}
	if c.Section.Said {
		l.From = origin{Pointer: c.sectionAbout()}
	}
	return l
}

func (c *Cable) currentLine() line {
	l := line{Symbol: "I", Label: "current in it, with everything on", Value: c.Drop.Own / c.ohms(), Unit: "A", From: here}
	switch {
	case c.Role == Charge:
		l.Label = "greatest current in it; what a converter takes may be a fifth more than what it gives"
	case c.Role == Lead && c.Source == Sun:
		l.Label = "greatest current in it: the panels' power at the voltage of a low battery, no more than the controller is made for"
	case c.Role == Lead:
		l.Label = "greatest current in it: what is made for it, no more than its line carries"
	}
	return l
}

func (c *Cable) voltsWords() string {
	switch {
	case !c.charges():
		return "a resting battery"
	case c.Role == Lead:
		return "a battery that is charged"
	case c.Source == Sun:
		return "the panel at work"
	case c.Source == Shore:
		return "a charger on the mains"
	}
	return "an engine that charges"
}

func (r *Result) workingOfWorst() working.Working {
	w := working.Working{Formula: "the greatest u / ulimit", Source: dropSource}
	worst := r.worst()
	for i := range r.Cables {
		c := &r.Cables[i]
		if c.code() != "" && r.known(c) && c != worst {
			w.Lines = append(w.Lines, line{Symbol: "u", Label: fmt.Sprintf("%s, which may lose %s %%", c.Title, digits(100*c.Drop.Limit, 3)), Value: c.lost(), Unit: "%", From: origin{Figure: c.code()}})
		}
	}
	w.Lines = append(w.Lines, line{Symbol: "u", Label: fmt.Sprintf("%s, which may lose %s %%", worst.Title, digits(100*worst.Drop.Limit, 3)), Value: worst.lost(), Unit: "%", From: origin{Figure: worst.code()}})
	return w
}

func (r *Result) workingOfFault() working.Working {
	s := r.strongest()
	w := working.Working{Formula: "I = E/R", Source: innerSource, Notes: []string{"Good to a third either way. What the battery's label or sheet gives for a short wins: write it as shorted."}}
	w.Lines = append(w.Lines, line{Symbol: "E", Label: "voltage that drives a short when it is full", Value: s.Drive, Unit: "V", From: origin{Assumption: "lead 12.8, lithium 13.6 for each 12 V"}})
	if s.FaultSaid > 0 {
		w.Lines = append(w.Lines, line{Symbol: "I", Label: "into a short", Value: s.Fault, Unit: "A", From: origin{Pointer: s.About + "/shorted"}})
		return w
	}
	for _, b := range s.Batteries {
		w.Lines = append(w.Lines, line{Symbol: "R", Label: "inside " + b.Name, Value: 1000 * b.ohms(), Unit: "mΩ", From: origin{Pointer: b.About}})
	}
	w.Lines = append(w.Lines, line{Symbol: "R", Label: "all of them side by side", Value: 1000 * s.Resistance, Unit: "mΩ", From: here},
		line{Symbol: "I", Label: "into a short at its posts", Value: s.Fault, Unit: "A", Sum: fmt.Sprintf("%.1f / %.5f", s.Drive, s.Resistance), From: here})
	return w
}

func (r *Result) workingOfTogether() working.Working {
	s := r.strongest()
	w := working.Working{Formula: "Σ I = 0 at each joint, U = E − R·I along each way", Source: together}
	for i := range r.Cables {
		if c := &r.Cables[i]; c.Bank == s.ID && c.Role == Feed && c.Starved == nil {
			from := here
			switch {
			case r.said(c):
				from = origin{Pointer: c.About + "/current"}
			case c.own > 0:
				from = origin{Assumption: "what its loads draw, as their rows give it, or 5 A where nobody knows"}
			}
			w.Lines = append(w.Lines, line{Symbol: "I", Label: fmt.Sprintf("%s, at %.1f V", c.Title, c.Volts), Value: c.own, Unit: "A", From: from})
		}
	}
	w.Lines = append(w.Lines, line{Symbol: "I", Label: "out of the battery: what converts draws more as its voltage falls, motors less", Value: s.Together, Unit: "A", From: here})
	return w
}

// said reports whether a circuit is reckoned with the current that is written.
func (r *Result) said(c *Cable) bool {
	return slices.ContainsFunc(r.in.Circuits, func(f Circuit) bool { return f.ID == c.ID && f.Current > 0 && f.Current == c.own })
}

func (r *Result) workingOfLength() working.Working {
	w := working.Working{Formula: "L = Σ n·(1.1·(l + b) + 2·0.3 m), rounded up to 50 mm", Source: finding.Source{Text: "common practice: a tenth for bends, 300 mm left at each end", Sure: finding.Practice}}
	for i := range r.Cables {
		c := &r.Cables[i]
		w.Lines = append(w.Lines, line{Symbol: "n·L", Label: c.name(), Value: float64(c.Cores()) * c.Cut / 1000, Unit: "m", Sum: fmt.Sprintf("%d × (1.1 × (%.2f + %.2f) + 0.60)", c.Cores(), c.Length.MM/1000, c.way.Branches/1000), From: here})
	}
	w.Lines = append(w.Lines, line{Symbol: "L", Label: "in all", Value: r.metres(), Unit: "m", From: here})
	w.Notes = append(w.Notes, "l is the way to the farthest thing that it feeds, b what branches off to the others; what is lost is reckoned along l.")
	return w
}
