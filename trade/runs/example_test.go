package runs_test

import (
	"fmt"

	"tumblehome/trade/runs"
)

func ExampleWork() {
	r := runs.Work(runs.Inputs{Room: hall{}, Skin: hall{60},
		Ways: []runs.Way{{ID: "conduit", Bore: 20, At: []runs.Point{{500, 900, 100}, {500, 900, 1700}, {1500, 900, 1700}}}},
		Circuits: []runs.Circuit{{ID: "lights", Along: []string{"conduit"}, Section: 1.5,
			Start: &runs.End{Fitting: "board", Name: "the fuse board", At: runs.Point{600, 800, 100}},
			Ends:  []runs.End{{Fitting: "lamp", Name: "lamp", At: runs.Point{1500, 300, 1800}}}}}})
	way := r.Way("conduit")
	fmt.Printf("%.0f mm long, %d fixings, %.0f %% full\n", way.Length, way.Supports, 100*way.Fill)
	for _, s := range r.Route("lights", false).Steps {
		fmt.Printf("%s: %.0f mm\n", s.Words, s.Length)
	}
	// Output:
	// 2600 mm long, 7 fixings, 3 % full
	// from the fuse board to the way conduit: 200 mm
	// along conduit: 2600 mm
	// from the way to lamp: 700 mm
}
