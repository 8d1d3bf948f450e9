package circuit_test

import (
	"encoding/json"
	"fmt"
	"math"
	"os"
	"regexp"
	"strconv"
	"testing"

	"tumblehome/internal/oracle"
	"tumblehome/internal/proof"
	"tumblehome/solve/circuit"
)

// A recorded network is one of testdata/networks.json.
type recorded struct {
	Name string
	circuit.Network
}

func readNetworks(t testing.TB) (all []recorded) {
	t.Helper()
	text, err := os.ReadFile("testdata/networks.json")
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(text, &all); err != nil {
		t.Fatal(err)
	}
	return all
}

func solve(t testing.TB, n circuit.Network) circuit.Result {
	t.Helper()
	r, err := circuit.Solve(n)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func near(t testing.TB, what string, got, want, allowed float64) {
	t.Helper()
	if !(math.Abs(got-want) <= allowed) {
		t.Errorf("%s: got %.12g, want %.12g within %g", what, got, want, allowed)
	}
}

// spiceFigures are the figures that ngspice prints, by name: v(x7_p3) is node p3 of network 7, i(vx7_0) the current
// through its source 0 from To to From, as that program counts.
func spiceFigures(t *testing.T) map[string]float64 {
	t.Helper()
	text := string(oracle.Ask(t, oracle.NGSpice, "testdata/networks.cir"))
	figures := map[string]float64{}
	for _, line := range regexp.MustCompile(`(?m)^([vi]\(\w+\)) = (\S+)`).FindAllStringSubmatch(text, -1) {
		v, err := strconv.ParseFloat(line[2], 64)
		if err != nil {
			t.Fatal(err)
		}
		figures[line[1]] = v
	}
	return figures
}

// Every figure is compared; of each network the worst is put in the table of proofs.
func TestNetworksAgreeWithNgspice(t *testing.T) {
	figures, used := spiceFigures(t), 0
	for k, n := range readNetworks(t) {
		r := solve(t, n.Network)
		worst := proof.Case{Tolerance: 1e-6}
		check := func(name, key, unit string, got float64) {
			want, found := figures[key]
			if !found {
				t.Fatalf("%s: ngspice prints no %s", n.Name, key)
			}
			used++
			if !(math.Abs(got-want) < math.Abs(worst.Got-worst.Expected)) {
				worst.Name, worst.Unit, worst.Got, worst.Expected = n.Name+": worst of all figures, "+name, unit, got, want
			}
		}
		for _, node := range r.Nodes[1:] {
			check("node "+node.Name, fmt.Sprintf("v(x%d_%s)", k, node.Name), "V", node.Voltage)
		}
		for j, s := range r.Sources {
			check("source "+s.Name, fmt.Sprintf("i(vx%d_%d)", k, j), "A", -s.Current)
		}
		worst.Source, worst.Inputs = "ngspice 39.3, testdata/networks.cir", fmt.Sprintf("network %d of testdata/networks.json", k)
		proof.Check(t, worst)
	}
	if used != len(figures) || used < 1500 {
		t.Errorf("%d figures were compared, ngspice printed %d", used, len(figures))
	}
}

// Currents and sums of the branched network by a bisection on the voltage of its bus, each branch in closed form: worked
// out apart from ngspice.
func TestTheBranchedNetworkHasTheCurrentsOfABisection(t *testing.T) {
	cases := []struct{ lights, fridge, pump, fan, inverter, given, drawn, lost float64 }{
		{1.48441872, 4.52038032, 4.93535122, 1.3083598, 35.8434646, 615.577275, 586.864708, 28.7125666},
		{1.44710271, 4.40749817, 5.05727553, 1.34068189, 0, 156.832746, 150.559337, 6.27340908},
		{1.42710497, 4.34698013, 5.12529592, 1.35871407, 0, 158.225934, 152.659715, 5.56621943},
		{1.49141699, 4.53939458, 4.89717326, 1.29704067, 35.9285843, 616.366205, 585.698365, 30.6678407},
		{1.80183569, 5.47797006, 4.10683552, 1.08872059, 43.2549204, 663.190359, 564.146448, 99.0439115},
	}
	networks := readNetworks(t)
	for k, c := range cases {
		r := solve(t, networks[k].Network)
		check := func(name, unit string, got, want, tolerance float64) {
			proof.Check(t, proof.Case{Name: networks[k].Name + ": " + name, Source: "bisection on the voltage of the bus, eight digits kept",
				Inputs: fmt.Sprintf("network %d of testdata/networks.json", k), Expected: want, Got: got, Tolerance: tolerance, Unit: unit})
		}
		for j, want := range []float64{c.lights, c.fridge, c.pump, c.fan, c.inverter} {
			check("current of "+r.Loads[j].Name, "A", r.Loads[j].Current, want, 1e-6)
		}
		check("power given", "W", r.Given, c.given, 2e-6)
		check("power drawn", "W", r.Drawn, c.drawn, 2e-6)
		check("power lost", "W", r.Lost, c.lost, 2e-6)
	}
}
