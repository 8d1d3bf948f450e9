package begin_test

import (
	"strings"
	"testing"

	"tumblehome/build/begin"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/trade/finding"
)

// The arrangements follow the readings and the sleepers.
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
					if f.Severity >= finding.Fault {
						t.Errorf("%s: %s %s: %s", c.name, b.ID, o.ID, f.Title)
					}
				}
			}
		}
	}
}

// What is lived with stays behind the cab, even where the van is shorter than its outline and its people are tall.
func TestNothingOfALongVanStandsInTheCab(t *testing.T) {
	for _, b := range begin.Bodies() {
		if !strings.HasPrefix(b.ID, "long-") {
			continue
		}
		a := begin.Answers{Body: b.ID, Rules: "gb", Wishes: []string{"fridge"}, Readings: begin.Readings{Length: ptr(b.Length - 250)},
			Sleepers: []begin.Sleeper{{ID: "ann", Stature: 1800}, {ID: "tom", Stature: 1900}}}
		for _, o := range begin.Offers(a) {
			a.Arrangement = o.ID
			doc := document(t, a)
			for _, s := range reckon.NewMachine().Reckon(doc, quantity.Date{}).Places.Rest {
				if doc.Fittings[s.ID].Where == "" && len(s.Solid) > 0 && s.Box.MinX < -20 {
					t.Errorf("%s %s: %s begins %.0f before the room", b.ID, o.ID, s.ID, -s.Box.MinX)
				}
			}
		}
	}
}

// Who picks an arrangement in a low van is told beforehand that one sits close to the floor there, and of nothing that it does not hold.
func TestACardOfALowVanSaysThatSeatsAreLow(t *testing.T) {
	for _, b := range begin.Bodies() {
		low := strings.HasSuffix(b.ID, "-low")
		for _, o := range begin.Offers(begin.Answers{Body: b.ID}) {
			if strings.Contains(o.Says, "close to the floor") != low {
				t.Errorf("%s: %s says %q", b.ID, o.ID, o.Says)
			}
			for _, tall := range []string{"wardrobe", "tall locker", "bunk"} {
				if low && strings.Contains(o.Name+o.Says, tall) {
					t.Errorf("%s: %s tells of a %s", b.ID, o.ID, tall)
				}
			}
		}
	}
}
