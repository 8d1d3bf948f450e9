package reckon_test

import (
	"testing"

	"tumblehome/internal/faultcase"
	"tumblehome/quantity"
	"tumblehome/trade/cables"
	"tumblehome/trade/power"
)

// What a thing is, is told by one set of words: a battery that is lithium to the year of power is lithium to its fuse.
func TestCablesAndPowerTakeAThingForTheSame(t *testing.T) {
	doc, err := faultcase.Case{On: "dipper", Patch: `{"fittings": {"battery": {"buy": "my-cell"}, "panel": {"buy": "my-sun"}},
		"catalogue": {"my-cell": {"kind": "appliance", "name": "LiFePO4 accumulator", "group": "electrical", "volts": 12.8, "amp-hours": 100, "size": {"x": 330, "y": 175, "z": 220}, "mass": 11, "each": "piece"},
			"my-sun": {"kind": "appliance", "name": "Solar panel 120 W", "group": "electrical", "volts": 18, "watts": 120, "size": {"x": 1000, "y": 600, "z": 35}, "mass": 8, "each": "piece"}}}`}.Document()
	if err != nil {
		t.Fatal(err)
	}
	r := quick().Reckon(doc, quantity.Date{})
	if is := r.Cables.Supplies[0].Batteries[0].Chemistry; is != cables.Lithium {
		t.Errorf("the cables take the battery for %q", is)
	}
	if is := r.Power.Inputs().Battery.Chemistry; is != power.Lithium {
		t.Errorf("the year of power takes the battery for %q", is)
	}
	for _, c := range r.Cables.Cables {
		if c.ID == "sun" && c.Source != cables.Sun {
			t.Errorf("the cables take the panels for %q", c.Source)
		}
	}
}
