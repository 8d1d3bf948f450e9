package cables

import (
	"fmt"
	"strings"
)

// tests are done in the order in which a new installation is woken: nothing is fed before it was looked at and measured, and nothing is
// plugged in before plus and minus were found to be right at its plug.
func (r *Result) tests() []Test {
	if len(r.Cables) == 0 {
		return nil
	}
	out := append(r.off(), Test{Kind: TestEye, How: "Look at every end and tug it: covers are on, no edge touches a cable, batteries are strapped down, both ends bear the cable's number, every fuse holder is empty.",
		Expect: "nothing moves, nothing is bare"})
	out = append(out, r.seen()...)
	out = append(out, r.each(studs, r.continuity)...)
	out = append(out, r.apart()...)
	out = append(out, r.each(insulation, resistance, bonded)...)
	out = append(out, r.wake()...)
	out = append(out, r.each(r.polarity, plugged, voltage)...)
	out = append(out, r.chargeTests()...)
	out = append(out, r.each(pull, warmth)...)
	return append(out, Test{Kind: TestAgain, How: "Tighten every stud and fuse holder, tug every crimp, look for chafed cables and brown plastic; measure the bond to the body once more.",
		Expect: "nothing turns, nothing moves, nothing is brown"})
}

// each asks one question after the other of every cable.
func (r *Result) each(questions ...func(Cable) (Test, bool)) []Test {
	var out []Test
	for _, ask := range questions {
		for _, c := range r.Cables {
			if t, ok := ask(c); ok {
				t.Cable = c.Number
				out = append(out, t)
			}
		}
	}
	return out
}

// off takes away all that gives current: first what is unplugged without touching a bare end, the panels before the battery.
func (r *Result) off() []Test {
	out := []Test{{Kind: TestOff, How: "Engine off and the key out of the van. Mains lead out, if there is an inlet. Inverter off.", Expect: "the key is in your pocket, no mains lead is near the van"}}
	engine := ""
	for _, s := range r.in.Sources {
		switch s.Kind {
		case Sun:
			out = append(out, Test{Cable: r.numberOf(s), Kind: TestOff, How: fmt.Sprintf("Cover %s with a board or a thick blanket and tie it down. Then pull both plugs of the panels apart at the solar controller and cap them.", s.name()),
				Expect: "covered, unplugged, both plugs capped"})
		case Engine, Split:
			engine = " Then the negative of the starter battery, as the vehicle's manual says, and the fuse of " + r.numberOf(s) + " beside it."
		}
	}
	for _, s := range r.Supplies {
		out = append(out, Test{Kind: TestOff, How: capital(r.bankWords(s)) + ": negative off first, then plus; tape over both lugs. Main fuse out, every other fuse out." + engine, Expect: "no lug can spring back to a post"})
		engine = ""
	}
	return append(out,
		Test{Kind: TestOff, How: "Meter on V: between plus and minus at the fuse board, and on both sides of every charger, controller and inverter.",
			Expect: "below 0.5 V everywhere; a charger or inverter may hold more for some minutes", High: 0.5, Unit: "V"})
}

// bankWords are what a bank is called: by its name where there are several.
func (r *Result) bankWords(s Supply) string {
	if len(r.Supplies) == 1 {
		return "house battery"
	}
	return "battery bank " + strings.ReplaceAll(s.ID, "-", " ")
}

// name is what a source is called: its panels or chargers, else what it is for.
func (s Source) name() string {
	if len(s.Is) > 0 {
		return toLoads(s.Is).Words
	}
	return s.Title
}

// numberOf is the number of a source's cable.
func (r *Result) numberOf(s Source) string {
	for _, c := range r.Cables {
		if c.Role == Charge && c.ID == s.ID {
			return c.Number
		}
	}
	return ""
}

// studs is looked at before anything is fed: a minus on a stud of the relay shorts both batteries.
func studs(c Cable) (Test, bool) {
	if c.Role != Lead || c.Source != Split {
		return Test{}, false
	}
	return Test{Kind: TestEye, How: fmt.Sprintf("At the relay: on its two thick studs sit plus cables only, %s and %s. Its minus is one thin wire, to the body.", c.FedBy, c.Number),
		Expect: "no black cable on a thick stud", Otherwise: "Take it off: minus on a stud is a dead short of a battery. The body leads the minus of both batteries back."}, true
}

func pull(c Cable) (Test, bool) {
	if c.Role != Feed || c.Fuse.Amps == 0 {
		return Test{}, false
	}
	return Test{Kind: TestPull, How: fmt.Sprintf("Pull the fuse of %s (%s A).", c.Title, digits(c.Fuse.Amps, 4)), Expect: "this goes out, and nothing else"}, true
}
