package cables_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"tumblehome/trade/cables"
)

// lostTo is the share that the cables to a load lose.
func lostTo(t *testing.T, id string, all ...cables.Circuit) float64 {
	t.Helper()
	c := cable(t, cables.Work(van(all...)), id)
	return c.Drop.Cables() / c.Volts
}

func TestThickerLosesLessAndLongerMore(t *testing.T) {
	for _, kind := range []cables.Appliance{cables.Light, cables.Pump} {
		before := math.Inf(1)
		for _, mm2 := range []float64{1, 1.5, 2.5, 4, 6, 10, 16} {
			got := lostTo(t, "one", circuit("one", kind, 5, 5, section(mm2), fuse(7.5)))
			if got >= before {
				t.Errorf("%s: %g mm2 loses %g, no less than the thinner one", kind, mm2, got)
			}
			before = got
		}
		before = 0
		for metres := 1.0; metres < 9; metres++ {
			got := lostTo(t, "one", circuit("one", kind, 5, metres, section(2.5), fuse(7.5)))
			if got <= before {
				t.Errorf("%s: %g m lose %g, no more than the shorter ones", kind, metres, got)
			}
			before = got
		}
	}
}

func TestWhatRunsBesideTakesVoltageToo(t *testing.T) {
	one := circuit("one", cables.Light, 3, 5, section(2.5), fuse(5))
	if alone, beside := lostTo(t, "one", one), lostTo(t, "one", one, circuit("two", cables.Inverter, 40, 1, section(16), fuse(60))); beside <= alone {
		t.Errorf("alone it loses %g, beside a large load %g", alone, beside)
	}
}

// Whatever is written, Work answers with numbers, and what it chooses by itself the fuse protects.
func TestWhateverIsWrittenTheAnswerIsNumbers(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 11))
	kinds := []cables.Appliance{cables.Fridge, cables.Pump, cables.Fan, cables.Light, cables.Inverter}
	pick := func(of ...float64) float64 { return of[rng.IntN(len(of))] }
	for round := range 300 {
		var all []cables.Circuit
		for k := range 1 + rng.IntN(5) {
			c := circuit(fmt.Sprintf("c%d", k), kinds[rng.IntN(len(kinds))], pick(0, 0.1, 4, 30, 900), pick(0, 0.05, 3, 50), section(pick(0, 0, 0.1, 3, 6, 150)))
			if rng.IntN(2) == 0 {
				fuse(pick(0.1, 5, 13, 60, 2000))(&c)
			}
			if k > 0 && rng.IntN(3) == 0 {
				c.From = fmt.Sprintf("c%d", rng.IntN(k))
			}
			c.Insulation, c.Bundled, c.Hot, c.Surrounded, c.Body = pick(0, 60, 200), rng.IntN(40), rng.IntN(3) == 0, rng.IntN(3) == 0, rng.IntN(5) == 0
			all = append(all, c)
		}
		r := cables.Work(van(all...))
		for _, f := range r.Figures() {
			w, ok := r.Working(f.Code)
			if math.IsNaN(f.Value) || math.IsInf(f.Value, 0) || !ok || w.Last() != f.Value {
				t.Fatalf("round %d: %s is %g and its working ends in %g", round, f.Code, f.Value, w.Last())
			}
		}
		for _, c := range r.Cables {
			if c.Role != cables.Bond && !c.Section.Said && !c.Fuse.Said && c.Fuse.Amps > c.Rating.Amps*(1+1e-9) {
				t.Fatalf("round %d: %s: a fuse of %g A was chosen for a cable that stands %g", round, c.ID, c.Fuse.Amps, c.Rating.Amps)
			}
		}
	}
}
