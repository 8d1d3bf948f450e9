package reckon_test

import (
	"fmt"
	"math"
	"testing"

	"tumblehome/build/tree"
)

// A mass m moved by Δx takes m·Δx/L from one axle and gives it to the other: statics, any textbook.
func TestABoughtThingMovedRearwardsBearsMoreOnTheRearAxleByTheLeverRule(t *testing.T) {
	const mass, by = 40.0, 1000.0
	eachDemo(t, func(t *testing.T, b tried) {
		at := func(x float64) tried {
			text := fmt.Sprintf(`{"fittings": {"crate-of-stone": {"buy": "container-20", "holds": 0, "mass": {"exactly": %g}, "at": {"x": %g, "y": "mid 0", "z": 900}}}}`, mass, x)
			patch, err := tree.ParsePatch([]byte(text))
			if err != nil {
				t.Fatal(err)
			}
			doc := applied(t, b.doc, patch)
			return tried{b.name, doc, reckoned(doc)}
		}
		before, after := at(400), at(400+by)
		share := mass * by / b.doc.Vehicle.Wheelbase.Float()
		for code, want := range map[string]float64{"weight.rear-axle": share, "weight.front-axle": -share, "weight.total": 0, "weight.finished.rear": share} {
			from, _ := before.Figure(code)
			to, ok := after.Figure(code)
			if got := to.Value - from.Value; !ok || math.Abs(got-want) > 0.01 {
				t.Errorf("%s changed by %.4f kg, the lever rule says %.4f", code, got, want)
			}
		}
	})
}
