package cables

import (
	"fmt"
	"math"
)

// What an ordinary meter can tell; common practice.
const (
	meterShows = 0.1  // Ω: less no cheap meter can tell from its own leads
	meterStep  = 0.05 // Ω
	wholeCore  = 1.0  // Ω that a core of a van never reaches
	noWay      = 1e6  // Ω from which there is no way through
	bondMost   = 0.2  // Ω of a bond with clean ends
)

// continuity goes along plus and along minus.
func (r *Result) continuity(c Cable) (Test, bool) {
	if c.Role == Bond {
		return Test{}, false
	}
	how := fmt.Sprintf("From %s to %s: plus (%s).", c.From.Words, c.To.Words, c.Positive)
	expect := "below 1 Ω"
	if c.Negative != "" {
		how = fmt.Sprintf("From %s to %s: first plus (%s), then minus (%s).", c.From.Words, c.To.Words, c.Positive, c.Negative)
		expect = "below 1 Ω, each of the two"
	}
	return Test{Kind: TestContinuity, How: how, Expect: expect, High: wholeCore, Unit: "Ω"}, true
}

// apart is that the negative meets the body nowhere but at its bond.
func (r *Result) apart() []Test {
	var out []Test
	for _, c := range r.Cables {
		if c.Role == Bond {
			out = append(out, Test{Cable: c.Number, Kind: TestInsulation, How: fmt.Sprintf("Take %s off the body. From the negative busbar to bare metal of the body.", c.Number),
				Expect: "no way through (more than 1 MΩ)", Low: noWay, Unit: "Ω",
				Otherwise: "Minus meets the body somewhere else as well: at a chafed cable, or at a thing whose housing is its minus. Find where."})
		}
	}
	return out
}

func insulation(c Cable) (Test, bool) {
	switch {
	case c.Role == Bond:
		return Test{}, false
	case c.Body:
		return Test{Kind: TestInsulation, How: fmt.Sprintf("At %s: from plus to bare metal of the body.", c.To.Words), Expect: "no way through (more than 1 MΩ)", Low: noWay, Unit: "Ω"}, true
	}
	return Test{Kind: TestInsulation, How: fmt.Sprintf("At %s: from plus to minus, then from plus to bare metal of the body.", c.To.Words),
		Expect: "no way through (more than 1 MΩ), both times", Low: noWay, Unit: "Ω"}, true
}

// resistance is measured there and back, with the cores joined at the far end. A hand-held meter shows no less than some tenths. Sold copper,
// cooler than it is reckoned, may have three tenths less.
func resistance(c Cable) (Test, bool) {
	want := c.ohms() + joints
	if c.Role == Bond || c.Body || want < meterShows {
		return Test{}, false
	}
	low, high := math.Max(0, 0.7*want-meterStep), 1.5*want+meterStep
	return Test{Kind: TestResistance, How: fmt.Sprintf("Clip at %s, measure at %s.", c.To.Words, c.From.Words), Expect: fmt.Sprintf("about %.2f Ω (%.2f to %.2f)", want, low, high) + c.unmeasured(), Low: low, High: high, Unit: "Ω"}, true
}

// unmeasured says of a reading that it follows from a length which nobody has measured.
func (c Cable) unmeasured() string {
	if c.Length.Known == Measured {
		return ""
	}
	return fmt.Sprintf("; by a way of about %.1f m, which nobody has measured", c.Length.MM/1000)
}

// bonded is the one place where the negative meets the body.
func bonded(c Cable) (Test, bool) {
	if c.Role != Bond {
		return Test{}, false
	}
	return Test{Kind: TestBond, How: fmt.Sprintf("Put %s back on. From the negative busbar to bare metal of the body, not on the bolt itself.", c.Number),
		Expect: fmt.Sprintf("at most %.1f Ω", bondMost), High: bondMost, Unit: "Ω"}, true
}
