package cables

import (
	"fmt"
	"slices"
)

// tests are done in the order in which a new installation is woken: nothing is switched on before it was looked at and measured.
func (r *Result) tests() []Test {
	if len(r.Cables) == 0 {
		return nil
	}
	out := []Test{{Kind: TestEye, How: "All fuses out, both batteries disconnected. Look at every end: tug it, see that covers are on, that no edge touches a cable and that both ends bear the cable's number.",
		Expect: "nothing moves, nothing is bare"}}
	for _, each := range []func(Cable) (Test, bool){polarity, insulation, resistance} {
		for _, c := range r.Cables {
			if t, ok := each(c); ok {
				out = append(out, t)
			}
		}
	}
	out = append(out, Test{Kind: TestFirst, How: "Connect the battery, negative last. Put in the main fuse, then one fuse after the other, each with its circuit switched off and then on.",
		Expect: "no spark, no smell, no fuse that blows"})
	for _, each := range []func(Cable) (Test, bool){r.voltage, pull, warmth} {
		for _, c := range r.Cables {
			if t, ok := each(c); ok {
				out = append(out, t)
			}
		}
	}
	return out
}

func polarity(c Cable) (Test, bool) {
	if c.Role == Bond {
		return Test{}, false
	}
	return Test{Cable: c.Number, Kind: TestPolarity, How: fmt.Sprintf("Meter on Ω, one tip on the %s end at %s, the other on the %s end at %s.", c.Positive, c.From.Words, c.Positive, c.To.Words),
		Expect: "below 1 Ω: it is the same cable, and plus leads to plus", High: 1, Unit: "Ω"}, true
}

func insulation(c Cable) (Test, bool) {
	if c.Role == Bond || c.Body {
		return Test{}, false
	}
	return Test{Cable: c.Number, Kind: TestInsulation, How: "Appliance unplugged, meter on its highest Ω range: positive to negative, then positive to the bare body.",
		Expect: "the meter shows no way through (more than 1 MΩ)", Low: 1e6, Unit: "Ω"}, true
}

// resistance is measured there and back, with the cores joined at the far end. A hand-held meter shows no less than some tenths.
func resistance(c Cable) (Test, bool) {
	want := c.ohms() + joints
	if c.Body || want < meterShows {
		return Test{}, false
	}
	return Test{Cable: c.Number, Kind: TestResistance, How: "Join plus and minus at the far end with a clip, measure Ω between them at the near end, and take off what the meter shows with its own leads joined.",
		Expect: fmt.Sprintf("about %.2f Ω, at most %.2f", want, 1.5*want+meterStep), High: 1.5*want + meterStep, Unit: "Ω"}, true
}

const (
	meterShows = 0.1  // Ω: less no cheap meter can tell from its own leads
	meterStep  = 0.05 // Ω
)

// voltage compares the load with the battery's posts at the same moment, so that the state of charge does not count.
func (r *Result) voltage(c Cable) (Test, bool) {
	if c.Role != Feed || c.Drop.At == 0 {
		return Test{}, false
	}
	high := c.Drop.Alone
	posts := c.Volts
	return Test{Cable: c.Number, Kind: TestVoltage, How: fmt.Sprintf("Only this circuit on, all of it. Measure at the battery's posts, then at %s while it runs.", c.To.Words),
		Expect: fmt.Sprintf("no more than %.1f V less than at the battery: with %.1f V there about %.1f V here", roundUp(high, 0.1), posts, posts-high), Low: posts - roundUp(high, 0.1), High: posts, Unit: "V"}, true
}

func roundUp(v, step float64) float64 {
	n := float64(int(v/step + 1))
	return n * step
}

func pull(c Cable) (Test, bool) {
	if c.Role != Feed || c.Fuse.Amps == 0 {
		return Test{}, false
	}
	return Test{Cable: c.Number, Kind: TestPull, How: fmt.Sprintf("Everything on. Pull the fuse of %s (%s A).", c.Title, digits(c.Fuse.Amps, 4)), Expect: "this goes out, and nothing else"}, true
}

func warmth(c Cable) (Test, bool) {
	if c.Role == Bond || c.Current < warmFrom || runsDry(c.Loads) {
		return Test{}, false
	}
	return Test{Cable: c.Number, Kind: TestWarmth, How: c.atWork() + ", then feel its fuse, its ends and the cable with the back of the hand.",
		Expect: "hand-warm at most; an end that is hotter than its cable is crimped or tightened badly"}, true
}

// atWork is how a cable is loaded for half an hour.
func (c Cable) atWork() string {
	switch {
	case c.Role == Trunk:
		return "Everything on for half an hour"
	case c.Source == Sun:
		return "Half an hour of full sun on the panels"
	case c.Source == Shore:
		return "Half an hour on the mains"
	case c.charges():
		return "Let the engine charge for half an hour"
	}
	return fmt.Sprintf("Let all that hangs on %s run for half an hour", c.Title)
}

// runsDry says whether a pump is among the loads: it does not run for half an hour.
func runsDry(loads []Load) bool {
	return slices.ContainsFunc(loads, func(l Load) bool { return l.Kind == Pump })
}

const warmFrom = 5.0 // A below which nothing gets warm
