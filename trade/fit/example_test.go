package fit_test

import (
	"fmt"

	"tumblehome/trade/fit"
)

func ExampleWork() {
	v := in(flat).person("tall", 1830).
		put(fit.Fitting{ID: "bed", Rests: true}, box(900, 2800, -700, 700, 400, 460)).
		mode("night", nil, fit.Pose{Person: "tall", Does: "lies", At: "bed", Head: "front"})
	r := fit.Work(v.in)
	for _, f := range r.Findings {
		if f.Code == "fit.bed.length" {
			fmt.Println(f.Severity, f.Title)
			fmt.Println(f.Words)
		}
	}
	// Output:
	// close The bed is short for tall
	// bed is 1 900 mm long. Lying down tall is about 1 845 mm; with feet and pillow 1 945 mm is comfortable, so it is 45 mm short of that.
}
