package cables_test

import (
	"math"
	"strings"
	"testing"

	"tumblehome/trade/cables"
)

func told(r cables.Result, code, about string) string {
	for _, f := range r.Findings() {
		if f.Code == code && f.About[0] == about {
			return f.Title + ". " + f.Words
		}
	}
	return ""
}

// One circuit that cannot be fed is told by itself, and the others are reckoned as if it were not there.
func TestOneCircuitThatCannotBeFedLeavesTheOthersAsTheyAre(t *testing.T) {
	fridge := circuit("fridge", cables.Fridge, 6, 7.4, section(2.5), fuse(10))
	without := cables.Work(van(fridge))
	with := cables.Work(van(fridge, circuit("coolbox", cables.Fridge, 5, 50, section(1), fuse(10))))
	if a, b := cable(t, without, "fridge").Drop, cable(t, with, "fridge").Drop; math.Abs(a.Own-b.Own) > 0.01 || a.Own == 0 {
		t.Errorf("the fridge loses %g V without the coolbox and %g V with it", a.Own, b.Own)
	}
	if words := told(with, "power.collapse", "/power/circuits/coolbox"); !strings.Contains(words, "The cable to coolbox is so long and thin") {
		t.Errorf("got %q", words)
	}
	if told(with, "power.drop", "/power/circuits/fridge/cable") == "" {
		t.Error("what the fridge loses is told no longer")
	}
	if with.Supplies[0].Collapsed != nil {
		t.Error("the whole bank is said to break down")
	}
}

func TestWhatIsLostInTheCableBeforeIsNamed(t *testing.T) {
	behind := func(c *cables.Circuit) { c.From = "pump" }
	r := cables.Work(van(circuit("pump", cables.Pump, 5, 6, section(1.5), fuse(15)), circuit("tap", cables.Pump, 4, 3, section(1.5), fuse(5), behind)))
	pump, tap := cable(t, r, "pump"), cable(t, r, "tap")
	if tap.Drop.Shared < pump.Drop.Own {
		t.Fatalf("the tap shares %g V, the pump's cable loses %g V", tap.Drop.Shared, pump.Drop.Own)
	}
	words := told(r, "power.drop", "/power/circuits/tap/cable")
	if !strings.Contains(words, pump.Number+" (pump)") {
		t.Errorf("the cable before it is not named: %q", words)
	}
}
