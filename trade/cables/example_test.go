package cables_test

import (
	"fmt"

	"tumblehome/trade/cables"
)

// A fridge that draws 6 A hangs at the end of 7.4 m of cable. What must the cable be, and why?
func Example() {
	r := cables.Work(cables.Inputs{
		Banks: []cables.Bank{{ID: "house", About: "/power/batteries/house", Batteries: []cables.Battery{{Name: "battery", Chemistry: cables.Lithium, AmpHours: 100}}}},
		Circuits: []cables.Circuit{{
			Way:  cables.Way{ID: "fridge", About: "/power/circuits/fridge", Title: "fridge", Length: cables.Length{MM: 7400, Known: cables.Measured}},
			From: "house", Current: 6, Loads: []cables.Load{{ID: "fridge", Name: "fridge", Kind: cables.Fridge}},
		}},
	})
	c := r.Cables[1]
	fmt.Println(c.Label())
	fmt.Printf("decided by its %s; %s\n", c.Section.Rule, c.Fuse.Words())
	fmt.Printf("%.1f %% of the voltage stays in the cables\n", 100*c.Drop.Cables()/c.Volts)
	// Output:
	// W2 fridge, 6 mm², fuse 7.5 A
	// decided by its drop; 7.5 A, brown blade fuse
	// 2.6 % of the voltage stays in the cables
}
