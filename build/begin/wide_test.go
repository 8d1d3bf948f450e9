package begin_test

import (
	"strings"
	"testing"

	"tumblehome/build/begin"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/trade/finding"
)

// What an arrangement holds is cut no more than it may be where the wheel arches reach further into the van than those of its outline, and is in
// nobody's way in a van that is narrower.
func TestArrangementsSuitWideAndNarrowVans(t *testing.T) {
	rules := map[string]string{"left": "gb", "right": "eu"} // the side door is at the kerb
	for _, c := range []struct {
		name   string
		knee   quantity.Length
		arches quantity.Length
		height quantity.Length
		door   string
		length string // class of body; empty for each
		wishes []string
	}{
		{"wide, the door right", 2080, 1380, 2000, "right", "", nil},
		{"wide, the door left", 2080, 1380, 2000, "left", "", nil},
		{"a little wide", 1950, 1380, 2000, "right", "", nil},
		{"wide, with a toilet, a heater and a fridge", 2080, 1380, 2000, "right", "mid-", []string{"toilet", "heating", "fridge"}},
		{"wide and long, with a toilet, a heater and a fridge", 2080, 1380, 2000, "right", "long-", []string{"toilet", "heating", "fridge"}},
		{"narrow", 1700, 1300, 1900, "right", "mid-", nil},
		{"narrow, the door left", 1700, 1250, 1900, "left", "mid-", nil},
	} {
		for _, b := range begin.Bodies() {
			if !strings.HasPrefix(b.ID, c.length) {
				continue
			}
			a := begin.Answers{Body: b.ID, Rules: rules[c.door], Wishes: c.wishes, Readings: begin.Readings{DoorSide: c.door, Knee: ptr(c.knee), Arches: ptr(c.arches), Height: ptr(c.height), Length: ptr(b.Length)}}
			for _, o := range begin.Offers(a) {
				a.Arrangement, a.Sleepers = o.ID, usual(o.Sleeps)
				for _, f := range reckon.NewMachine().Reckon(document(t, a), quantity.Date{}).Findings {
					if f.Severity >= finding.Fault {
						t.Errorf("%s: %s %s: %s", c.name, b.ID, o.ID, f.Title)
					}
				}
			}
		}
	}
}
