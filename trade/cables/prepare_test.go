package cables_test

import (
	"slices"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/trade/cables"
	"tumblehome/trade/working"
)

// Two lamps, 4 m to the farther one and 1.5 m that branch off to the other: (4 + 1.5) m with a tenth more and 0.3 m at each end are 6.65 m of each core.
// What is lost is lost on the way to the farther one.
func TestWhatBranchesOffIsCutAndLosesNothing(t *testing.T) {
	with := func(branches float64) cables.Cable {
		return cable(t, cables.Work(van(circuit("lamps", cables.Light, 2, 4, section(1.5), fuse(5), func(c *cables.Circuit) { c.Branches = branches }))), "lamps")
	}
	c, alone := with(1500), with(0)
	proof.Check(t, proof.Case{Name: "cut from the reel, with what branches off", Source: "the rule of the trade by hand: a tenth more and 0.3 m at each end, to the next 50 mm", Inputs: "4 m and 1.5 m", Expected: 6650, Got: c.Cut,
		Tolerance: 1e-9, Unit: "mm"})
	if c.Drop != alone.Drop {
		t.Errorf("with branches %+v is lost, without %+v", c.Drop, alone.Drop)
	}
	r := cables.Work(van(circuit("lamps", cables.Light, 2, 4, section(1.5), fuse(5), func(c *cables.Circuit) { c.Branches = 1500 })))
	w, _ := r.Working("power.cable.length")
	if !slices.ContainsFunc(w.Lines, func(l working.Line) bool { return l.Value == 13.3 }) {
		t.Errorf("the working does not show 2 × 6.65 m: %+v", w.Lines)
	}
}
