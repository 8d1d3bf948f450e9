package fit_test

import (
	"strings"
	"testing"

	"tumblehome/trade/fit"
)

func TestTheWidthOfABedIsNotToldToNeedWhatItHas(t *testing.T) {
	for tall := 1700.0; tall < 1790; tall += 15 {
		for wide := 1190.0; wide < 1260; wide++ {
			v := in(high).person("a", tall).person("b", tall).put(fit.Fitting{ID: "bed", Make: "slat-bed", Rests: true}, box(800, 2800, -wide/2, wide/2, 40, 400))
			r := fit.Work(v.mode("night", nil, fit.Pose{Person: "a", Does: "lies", At: "bed", Head: "front"}, fit.Pose{Person: "b", Does: "lies", At: "bed", Head: "front"}).in)
			for _, f := range r.Findings {
				_, after, _ := strings.Cut(f.Words, " it is ")
				has, needs, both := strings.Cut(after, " wide; shoulders side by side and room to turn over need about ")
				if f.Code == "fit.bed.width" && both && strings.HasPrefix(needs, has+".") {
					t.Fatalf("%.0f wide for two of %.0f: %s", wide, tall, f.Words)
				}
			}
		}
	}
}
