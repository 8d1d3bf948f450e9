package cables_test

import (
	"encoding/json"
	"fmt"
	"os"
	"regexp"
	"strconv"
	"testing"

	"tumblehome/internal/oracle"
	"tumblehome/internal/proof"
	"tumblehome/trade/cables"
)

// Random vans as a builder would write them, worked out here from their circuits and by ngspice from a netlist that testdata/vans.py made by itself.
func TestWholeVansAgreeWithNgspice(t *testing.T) {
	text, err := os.ReadFile("testdata/vans.json")
	if err != nil {
		t.Fatal(err)
	}
	var vans []struct {
		Name   string
		Inputs cables.Inputs
	}
	if err := json.Unmarshal(text, &vans); err != nil {
		t.Fatal(err)
	}
	volts := map[string]float64{}
	for _, m := range regexp.MustCompile(`(?m)^v\((\w+)\) = (\S+)`).FindAllStringSubmatch(string(oracle.Ask(t, oracle.NGSpice, "testdata/vans.cir")), -1) {
		if volts[m[1]], err = strconv.ParseFloat(m[2], 64); err != nil {
			t.Fatal(err)
		}
	}
	used := 0
	for k, v := range vans {
		r := cables.Work(v.Inputs)
		posts := volts[fmt.Sprintf("x%d_posts", k)]
		for _, c := range r.Cables {
			node := c.ID
			if c.Role == cables.Bond {
				continue
			}
			if c.Role == cables.Trunk {
				node = "bus"
			}
			want, ok := volts[fmt.Sprintf("x%d_%s", k, node)]
			if !ok {
				t.Fatalf("%s: ngspice knows no %s", v.Name, node)
			}
			used++
			proof.Check(t, proof.Case{Name: v.Name + ": voltage at the far end of " + c.ID, Source: "ngspice 39.3, testdata/vans.cir", Inputs: "testdata/vans.json",
				Expected: want, Got: c.Drop.At, Tolerance: 1e-6, Unit: "V"})
			if lost := c.Drop.Cables() + c.Drop.Joints; posts-want-lost > 1e-6 || lost-posts+want > 1e-6 {
				t.Errorf("%s: %s loses %.7g V in cables, fuses and joints, ngspice has %.7g from the posts", v.Name, c.ID, lost, posts-want)
			}
		}
	}
	if used+len(vans) != len(volts) {
		t.Errorf("%d voltages are compared, ngspice tells %d", used+len(vans), len(volts))
	}
}
