package circuit_test

import (
	"errors"
	"fmt"

	"tumblehome/solve/circuit"
)

// A battery, 5 m of 4 mm² out and back at 50 °C, and a load of 55 W; then as much as that line never carries.
func ExampleSolve() {
	r, err := circuit.PerMetre(circuit.Flexible, 4, 50)
	if err != nil {
		fmt.Println(err)
		return
	}
	n := circuit.Network{Reference: "negative",
		Sources:    []circuit.Source{{Name: "battery", From: "negative", To: "positive", Voltage: 12.8, Resistance: 0.005}},
		Conductors: []circuit.Conductor{{Name: "pair", From: "positive", To: "far", Resistance: 2 * 5 * r}},
		Loads:      []circuit.Load{{Name: "cooler", From: "far", To: "negative", Power: 55}}}
	state, err := circuit.Solve(n)
	if err != nil {
		fmt.Println(err)
		return
	}
	v, _ := state.Voltage("far")
	fmt.Printf("%.3f V, %.3f A, %.2f W lost\n", v, state.Loads[0].Current, state.Lost)

	n.Loads[0].Power = 1000
	_, err = circuit.Solve(n)
	var collapse *circuit.Collapse
	if errors.As(err, &collapse) {
		fmt.Printf("at most %.0f W\n", collapse.Alone)
	}
	// Output:
	// 12.535 V, 4.388 A, 1.16 W lost
	// at most 679 W
}
