package begin_test

import (
	"strings"
	"testing"

	"tumblehome/build/begin"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/trade/finding"
)

// lowVan says whether a fault is one that a low van may begin with, told before it is picked: somebody too tall to sit upright, or a side door
// that boxes on the floor make narrow, since nobody stands in there anyhow.
func lowVan(body, code string) bool {
	return strings.HasSuffix(body, "-low") && (code == "fit.headroom.sit" || code == "fit.walkway" || code == "fit.way-out")
}

// The arrangements follow the readings and the sleepers. In a low van somebody may still be too tall to sit upright: that is so, and said.
func TestArrangementsFollowReadingsAndSleepers(t *testing.T) {
	fittings := []string{"toilet", "heating", "fridge"}
	for _, c := range []struct {
		name     string
		along    quantity.Length // longer than typical
		across   quantity.Length // wider and higher
		wishes   []string
		sleepers []begin.Sleeper
	}{
		{"a van a little smaller than its outline", -100, -40, fittings, nil},
		{"a van a little larger", 100, 40, fittings, nil},
		{"one of 1800 alone", 0, 0, fittings, []begin.Sleeper{{ID: "tom", Stature: 1800}}},
		{"two short people", 0, 0, fittings, []begin.Sleeper{{ID: "ann", Stature: 1550}, {ID: "tom", Stature: 1600}}},
		{"two tall people", 0, 0, nil, []begin.Sleeper{{ID: "ann", Stature: 1800}, {ID: "tom", Stature: 1900}}},
	} {
		for _, b := range begin.Bodies() {
			a := begin.Answers{Body: b.ID, Rules: "gb", Wishes: c.wishes, Sleepers: c.sleepers, Readings: begin.Readings{Length: ptr(b.Length + c.along),
				Knee: ptr(b.Knee + c.across), Arches: ptr(b.Arches + c.across), Height: ptr(b.Height + c.across), DoorWidth: ptr(b.DoorWidth + 2*c.across)}}
			for _, o := range begin.Offers(a) {
				a.Arrangement = o.ID
				if c.sleepers == nil {
					a.Sleepers = usual(o.Sleeps)
				}
				for _, f := range reckon.NewMachine().Reckon(document(t, a), quantity.Date{}).Findings {
					if f.Severity >= finding.Fault && !lowVan(b.ID, f.Code) {
						t.Errorf("%s: %s %s: %s", c.name, b.ID, o.ID, f.Title)
					}
				}
			}
		}
	}
}
