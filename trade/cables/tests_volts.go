package cables

import (
	"fmt"
	"math"
	"slices"
)

// band is between which volts something stands.
type band struct{ low, high float64 }

// Words of a band, with the sign that a meter must not show.
func (b band) words() string { return fmt.Sprintf("+%.1f to +%.1f V", b.low, b.high) }

// times is the band of so many batteries of 12 V in a row.
func (b band) times(n float64) band { return band{n * b.low, n * b.high} }

// resting is where a battery of 12 V stands when nothing flows, from one that is nearly empty to one that was just charged. Flooded lead:
// 11.9 V empty and 12.7 V full in tables printed in vehicles' manuals, a little more just after charging. The others are from memory. One that
// stands lower is charged before it is wired.
var resting = map[Chemistry]band{Flooded: {11.9, 12.9}, AGM: {11.8, 13.1}, Gel: {11.8, 13.1}, Lithium: {12.5, 13.6}}

// charging is up to which voltage a battery of 12 V is charged, from makers' sheets and from memory; the battery's own sheet wins.
var chargedTo = map[Chemistry]float64{Flooded: 14.8, AGM: 14.7, Gel: 14.4, Lithium: 14.6}

const (
	alternatorLow  = 12.2 // V at which clever alternators stand at times; from memory
	alternatorHigh = 15.0 // V
	openOverWork   = 1.4  // of a panel's working voltage that it gives open, at most, in frost; from memory
)

// rests is where a bank stands at rest. Of one whose kind nobody named the kinds together are taken.
func (s Supply) rests() band {
	if len(s.Batteries) == 0 || s.Batteries[0].Chemistry == Unknown {
		return band{resting[AGM].low, resting[Lithium].high}.times(s.blocks())
	}
	return resting[s.Batteries[0].Chemistry].times(s.blocks())
}

// charges is where a bank stands while it is charged.
func (s Supply) charges() band {
	most := chargedTo[Flooded]
	if len(s.Batteries) > 0 && s.Batteries[0].Chemistry != Unknown {
		most = chargedTo[s.Batteries[0].Chemistry]
	}
	return band{s.rests().low, most * s.blocks()}
}

func (s Supply) blocks() float64 {
	if len(s.Batteries) == 0 {
		return 1
	}
	return s.Batteries[0].blocks()
}

// wake puts each battery on and its main fuse in, measuring before and after.
func (r *Result) wake() []Test {
	var out []Test
	for _, s := range r.Supplies {
		main, rests, named, of := Cable{}, s.rests(), "the battery", ""
		if len(r.Supplies) > 1 {
			named = "the " + r.bankWords(s)
			of = " of " + named
		}
		if i := r.trunkOf(s.ID); i >= 0 {
			main = r.Cables[i]
		}
		line := func(how, expect, otherwise string) {
			out = append(out, Test{Cable: main.Number, Kind: TestFirst, How: how, Expect: expect, Otherwise: otherwise, Low: rests.low, High: rests.high, Unit: "V"})
		}
		out = append(out, r.apartFirst(s, main)...)
		line("Connect "+named+": plus first, negative last. Measure at its posts.", rests.words(),
			"Lower: charge the battery by itself before you go on. A minus: it is only the tips of your meter that are changed.")
		if main.Role != Trunk { // nothing is fed by it
			continue
		}
		line("Main fuse"+of+" still out: from the battery's side of its holder to the negative busbar.", "the same as at the posts, to 0.1 V", "")
		line(fmt.Sprintf("Put the main fuse%s in%s. Measure between plus and minus at its fuse board.", of, ampsIn(main.Fuse)), "the same as at the posts, to 0.1 V; no spark",
			"A minus or a spark: main fuse out at once. Swap the cables, or look for what is still plugged in.")
	}
	return out
}

func ampsIn(p Protection) string {
	if p.Amps <= 0 {
		return ""
	}
	return fmt.Sprintf(" (%s A)", digits(p.Amps, 4))
}

// polarity is the last thing before something is plugged in.
func (r *Result) polarity(c Cable) (Test, bool) {
	if c.Role != Feed {
		return Test{}, false
	}
	rests, also := r.Supplies[r.supplyOf(c.Bank)].rests(), ""
	if f := r.fusedBefore(c); f != "" {
		also = ", with that of " + f + " in as well"
	}
	return Test{Kind: TestPolarity, How: fmt.Sprintf("At the open plug of %s%s.", c.To.Words, also), Expect: rests.words() + ", as at the battery", Low: rests.low, High: rests.high, Unit: "V"}, true
}

// fusedBefore is the circuit that feeds a circuit; "" is the fuse board.
func (r *Result) fusedBefore(c Cable) string {
	i := slices.IndexFunc(r.Cables, func(o Cable) bool { return o.Role == Feed && o.Number == c.FedBy })
	if i < 0 {
		return ""
	}
	return r.Cables[i].Number
}

func plugged(c Cable) (Test, bool) {
	if c.Role != Feed {
		return Test{}, false
	}
	t := Test{Kind: TestPlug, How: fmt.Sprintf("Plug in %s, put in its fuse%s, switch it on.", c.To.Words, ampsIn(c.Fuse)), Expect: "it runs: no spark, no smell, the fuse holds"}
	if slices.ContainsFunc(c.Loads, func(l Load) bool { return l.Kind == Inverter }) {
		t.Expect = "one small spark as its fuse goes in is usual; then it runs, no smell"
	}
	return t, true
}

// voltage compares the load with the battery's posts at the same moment, so that the state of charge does not count.
func voltage(c Cable) (Test, bool) {
	if c.Role != Feed || c.Drop.At == 0 {
		return Test{}, false
	}
	lost := roundUp(c.Drop.Alone, 0.1)
	return Test{Kind: TestVoltage, How: fmt.Sprintf("%s runs.", capital(c.To.Words)), Low: c.Volts - lost, High: c.Volts, Unit: "V",
		Expect: fmt.Sprintf("at most %.1f V less than at the battery: with %.1f V there %.1f V or more here", lost, c.Volts, c.Volts-lost) + c.unmeasured()}, true
}

// roundUp is the next step above.
func roundUp(v, step float64) float64 { return step * (math.Floor(v/step) + 1) }
