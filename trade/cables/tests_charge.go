package cables

import "fmt"

// chargeTests take each line that charges through its steps: plus and minus at the open plugs, plug in, then both sides before and while it charges.
func (r *Result) chargeTests() []Test {
	var out []Test
	for i, c := range r.Cables {
		if c.Role != Charge || c.Source == "" {
			continue
		}
		s := r.Supplies[r.supplyOf(c.Bank)]
		l := chargeLine{cable: c, lead: c, rests: s.rests(), charges: s.charges(), volts: 12 * s.blocks()}
		if i+1 < len(r.Cables) && r.Cables[i+1].Role == Lead { // it stands behind its line
			l.lead = r.Cables[i+1]
		}
		switch c.Source {
		case Sun:
			l.strings = r.Pieces(&r.Cables[i])
			l.sun()
		case Split:
			l.split()
		case Shore:
			l.shore()
		default:
			l.engine()
		}
		out = append(out, l.tests...)
	}
	return out
}

// chargeLine is a line that charges with its tests so far.
type chargeLine struct {
	cable, lead    Cable // from the source to what controls or converts it, and from there to the house battery; the same where there is no lead
	rests, charges band
	volts          float64 // that the house battery is called by
	strings        []Piece // of panels side by side
	tests          []Test
}

func (l *chargeLine) add(at Cable, how, expect string, in band, otherwise string) {
	l.tests = append(l.tests, Test{Cable: at.Number, Kind: TestCharge, How: how, Expect: expect, Low: in.low, High: in.high, Unit: "V", Otherwise: otherwise})
}

// house is the side of the battery: its open plug first, and later the voltage that rises.
func (l *chargeLine) house(what string) {
	l.add(l.lead, fmt.Sprintf("Put in the fuse of %s at the fuse board. At the open plug of %s towards the house battery.", l.lead.Number, what), l.rests.words()+", as at the battery", l.rests, "")
}

func (l *chargeLine) rises(when, what string) {
	l.add(l.lead, fmt.Sprintf("%s. At %s towards the house battery.", when, what), fmt.Sprintf("more than before, at most %.1f V (less where the battery is full or cold)", l.charges.high), l.charges,
		fmt.Sprintf("No more than before: it does not charge; see its lamps and its sheet. Above %.1f V: unplug it, it is set for another kind of battery.", l.charges.high))
}

func (l *chargeLine) falls(when string) {
	l.add(l.lead, when, "falls back within some minutes: "+l.rests.words(), l.rests, "It stays as high: something still charges. Find out what before you leave the van.")
}

// starter is where a starter battery stands at rest: flooded lead, as most are.
func (l *chargeLine) starter(at string) {
	b := resting[Flooded].times(l.cable.from)
	l.add(l.cable, fmt.Sprintf("Engine off. Put the starter battery's negative back on, then the fuse beside it. At %s.", at), b.words(), b, "")
}

func (l *chargeLine) runs(at string, loses float64) {
	lost := roundUp(loses, 0.1)
	n := l.cable.from
	b := band{alternatorLow*n - lost, alternatorHigh * n}
	l.add(l.cable, fmt.Sprintf("Van outdoors, handbrake on, engine running. At the starter battery, then at %s.", at),
		fmt.Sprintf("%.1f to %.1f V at the starter battery (%.1f to %.1f in newer vans that steer their alternator); at most %.1f V less here", 13.8*n, 14.4*n, alternatorLow*n, alternatorHigh*n, lost), b,
		"More is lost: feel for the warm crimp. Nothing: look at the fuses of both ends.")
}

func (l *chargeLine) engine() {
	what := l.cable.To.Words
	l.starter("the open plug of " + what + " towards the engine")
	l.house(what)
	l.add(l.lead, fmt.Sprintf("Both fuses out, plug %s in, both fuses back in. Engine off: at its house side.", what), l.rests.words()+", as at the battery", l.rests, "")
	l.runs(what+" towards the engine", l.cable.Drop.Alone)
	l.rises("Engine running", what)
	l.falls("Engine off again. At its house side.")
}

// split is a relay: between the two batteries is nothing but cable, and the body is its minus.
func (l *chargeLine) split() {
	l.starter("the relay, on the engine's side, black tip on bare metal of the body")
	l.add(l.lead, "Put in the fuse beside the house battery. At the relay, on the house side, black tip on bare metal of the body.", l.rests.words()+", as at the battery", l.rests, "")
	l.runs("the house battery's posts", l.cable.Drop.Alone+l.lead.Drop.Own+l.lead.Drop.Joints)
	l.rises("Engine running, black tip on bare metal of the body", "the relay")
	l.falls("Engine off for ten minutes: the relay has opened. At the house battery's posts.")
}

// panels are all of a line, or what the line is called.
func (l *chargeLine) panels() string {
	if len(l.cable.Loads) > 0 {
		return toLoads(l.cable.Loads).Words
	}
	return l.cable.From.Words
}

func (l *chargeLine) sun() {
	open := band{l.cable.Volts, roundUp(openOverWork*l.cable.Volts, 0.5)}
	l.house("the solar controller")
	l.add(l.lead, "Fuse out, plug the controller in on its battery side only, fuse back in. At its battery side.", l.rests.words()+", as at the battery; its lamp wakes up", l.rests, "")
	for _, p := range l.strings {
		if p.Amps > 0 {
			l.tests = append(l.tests, Test{Cable: l.cable.Number, Kind: TestCharge, How: fmt.Sprintf("Panels still covered. Put the %d fuses of %s A in, one in the plus of each panel, then join the branch plugs.", p.Count, digits(p.Amps, 3)), Expect: "no holder is empty, every plug has clicked"})
		}
	}
	joined, panels := "of one panel or of several side by side; what is in a row adds up", len(l.cable.Loads)
	if l.cable.row {
		joined, panels = "of all in the row together", 1
	}
	l.add(l.cable, fmt.Sprintf("Uncover %s, in daylight. At the two open plugs of the panels, without letting them touch.%s", l.panels(), inARow(panels, open)),
		fmt.Sprintf("+%.0f to +%.0f V %s. The label's open voltage knows better", open.low, open.high, joined), open,
		"A minus before the number: the plugs are on the wrong cores. Change them before you plug in: the wrong way round destroys the controller.")
	l.add(l.cable, "Cover the panels again, plug them in last, uncover. At the controller towards the panels, in sun.", fmt.Sprintf("more than at the battery, at most %.0f V", open.high), band{l.rests.low, open.high}, "")
	l.rises("In sun", "the controller")
	l.falls("Cover the panels again. At the controller towards the house battery.")
}

// inARow warns of what so many panels can give together.
func inARow(panels int, open band) string {
	if open.high*float64(max(1, panels)) < touchVolts {
		return ""
	}
	return " Panels in a row that give 60 V or more open can harm by touch: leave those to an electrician."
}

func (l *chargeLine) shore() {
	what := l.cable.From.Words
	l.house(what)
	l.add(l.lead, fmt.Sprintf("Fuse out, plug %s in on its %.0f V side, fuse back in. Mains still out.", what, l.volts), l.rests.words()+", as at the battery", l.rests, "")
	l.rises("Only after a licensed electrician has tested the mains side: mains lead in", what)
	l.falls(fmt.Sprintf("Mains lead out again. At its %.0f V side.", l.volts))
}
