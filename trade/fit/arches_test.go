package fit_test

import (
	"encoding/json"
	"strings"
	"testing"

	"tumblehome/solve/solid"
	"tumblehome/trade/fit"
)

// arched is a room with a wheel arch on its right, 200 deep and 300 high.
type arched struct{ room }

func (r arched) Right(x, z float64) float64 {
	if x > 1500 && x < 2200 && z < 300 {
		return r.half - 200
	}
	return r.half
}

func (r arched) Steps() (along, up []float64) {
	return []float64{1500, 1500.1, 2199.9, 2200}, []float64{299.9, 300}
}

func TestTheWheelArchIsNamedAndGotClearOf(t *testing.T) {
	for _, tt := range []struct {
		name       string
		z          float64
		wide, high float64
		title      string
		proposals  []string
	}{
		{"a board low down in the arch", 150, 300, 20, "bed stands 150 mm into the wheel arch on the right",
			[]string{"make bed 300 mm shorter, so that it ends at the wheel arch on the right", "move bed 150 mm up", "move bed 150 mm to the left", "cut the right face of bed to the right side"}},
		{"a wide board low down in the arch", 150, 600, 20, "bed stands 150 mm into the wheel arch on the right",
			[]string{"make bed 150 mm narrower, clear of the wheel arch on the right", "make bed 300 mm shorter, so that it ends at the wheel arch on the right", "move bed 150 mm up", "move bed 150 mm to the left", "cut the right face of bed to the right side"}},
	} {
		r := arched{flat}
		v := &van{in: fit.Inputs{Room: r, Error: 4, Partition: true, Arches: []fit.Arch{{Side: solid.Right, X: [2]float64{1500, 2200}, Up: 300}}}}
		v.in.Nudge = func(string, float64, float64, float64) (json.RawMessage, bool) { return json.RawMessage("{}"), true }
		v.in.Stretch = func(string, int, float64, float64) (json.RawMessage, bool) { return json.RawMessage("{}"), true }
		v.put(fit.Fitting{ID: "bed", Make: "slat-bed"}, box(900, 1800, 850-tt.wide, 850, tt.z, tt.z+tt.high))
		got := fit.Work(v.mode("day", nil).in)
		if len(got.Findings) != 1 || got.Findings[0].Title != tt.title {
			t.Fatalf("%s: %s", tt.name, told(got))
		}
		var words []string
		for _, p := range got.Findings[0].Proposals {
			words = append(words, p.Words)
		}
		if strings.Join(words, "\n") != strings.Join(tt.proposals, "\n") {
			t.Errorf("%s: proposed\n%s", tt.name, strings.Join(words, "\n"))
		}
	}
}
