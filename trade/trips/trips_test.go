package trips_test

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/quantity"
	"tumblehome/trade/trips"
	"tumblehome/trade/working"
)

func rate(amount float64, unit string, per quantity.Period) *quantity.Rate {
	return &quantity.Rate{Amount: amount, Unit: unit, Per: per}
}

func count(n int) *int { return &n }

func trip(months []int, often *quantity.Rate, nights int, driving *quantity.Rate, heads int) trips.Trip {
	return trips.Trip{ID: fmt.Sprintf("trip-%d", nights), Months: months, Often: often, Nights: count(nights), Driving: driving, Aboard: make([]string, heads)}
}

// The three demonstration builds.
var (
	dipper = trips.Inputs{Habits: "frugal", Trips: []trips.Trip{
		trip([]int{1, 2, 3, 11, 12}, rate(2, "", quantity.Monthly), 2, rate(5, "h", quantity.ATrip), 2),
		trip([]int{6}, rate(1, "", quantity.Yearly), 14, rate(1, "h", quantity.Daily), 2)}}
	twite = trips.Inputs{Habits: "frugal", Trips: []trips.Trip{
		trip([]int{8}, rate(1, "", quantity.Yearly), 10, rate(2, "h", quantity.Daily), 1),
		trip([]int{4, 5, 6, 7, 8, 9, 10}, rate(2, "", quantity.Monthly), 2, rate(4, "h", quantity.ATrip), 1)}}
	godwit = trips.Inputs{Habits: "usual", Trips: []trips.Trip{
		trip([]int{7}, rate(1, "", quantity.Yearly), 18, rate(2, "h", quantity.Daily), 4),
		trip([]int{3, 4, 5, 6, 7, 8, 9, 10}, rate(1.5, "", quantity.Monthly), 2, rate(5, "h", quantity.ATrip), 4)}}
)

func TestTheYearsOfTheThreeVansAddedUpByHand(t *testing.T) {
	for _, c := range []struct {
		name, inputs string
		in           trips.Inputs
		code         string
		want         float64
	}{
		{"two walkers in winter: nights", "5 months × 2 × 2 nights + 14", dipper, "trips.nights", 34},
		{"two walkers in winter: hours at the wheel", "10 trips × 5 h + 14 days × 1 h", dipper, "trips.driving", 64},
		{"one alone in summer: nights", "7 months × 2 × 2 nights + 10", twite, "trips.nights", 38},
		{"one alone in summer: hours at the wheel", "14 trips × 4 h + 10 days × 2 h", twite, "trips.driving", 76},
		{"a family: nights", "8 months × 1.5 × 2 nights + 18", godwit, "trips.nights", 42},
		{"a family: hours at the wheel", "12 trips × 5 h + 18 days × 2 h", godwit, "trips.driving", 96},
	} {
		all := trips.Work(c.in).Figures()
		i := slices.IndexFunc(all, func(f working.Figure) bool { return f.Code == c.code })
		if i < 0 {
			t.Fatalf("there is no figure %s", c.code)
		}
		proof.Check(t, proof.Case{Name: c.name, Source: "sum by hand", Inputs: c.inputs, Expected: c.want, Got: all[i].Value, Tolerance: 1e-9, Unit: all[i].Unit})
	}
}

func TestNightsFallInTheirMonths(t *testing.T) {
	for name, c := range map[string]struct {
		in   trips.Inputs
		want [12]float64
	}{
		"two walkers": {dipper, [12]float64{4, 4, 4, 0, 0, 14, 0, 0, 0, 0, 4, 4}},
		"one alone":   {twite, [12]float64{0, 0, 0, 4, 4, 4, 4, 14, 4, 4, 0, 0}},
		"a family":    {godwit, [12]float64{0, 0, 3, 3, 3, 3, 21, 3, 3, 3, 0, 0}},
	} {
		if got := trips.Work(c.in).Nights; got != c.want {
			t.Errorf("%s: %v, want %v", name, got, c.want)
		}
	}
}

func TestEveryHourOfADayHoldsEverybodyOnce(t *testing.T) {
	for _, habit := range []string{"frugal", "usual", "cosy", ""} {
		for driving := 0.0; driving <= 24; driving += 0.75 {
			for month := 1; month <= 12; month++ {
				in := trips.Inputs{Habits: habit, Trips: []trips.Trip{trip([]int{month}, rate(1, "", quantity.Yearly), 1, rate(driving, "h", quantity.Daily), 3)}}
				r := trips.Work(in)
				day := r.Trips[0].Months[0].Day
				var onTheRoad, asleep float64
				for i, h := range day {
					if h.Asleep+h.Awake+h.Away+h.Cabs != 3 || h.Cooking > 1 || h.Cooking > 0 && h.Awake == 0 || h.Driving > 0 != (h.Mode == trips.Drive) {
						t.Fatalf("%s, %g h, month %d, hour %d: %+v", habit, driving, month, i, h)
					}
					onTheRoad += h.Driving
					if h.Mode == trips.Night {
						asleep++
					}
				}
				if awake := 24 - asleep - 1; math.Abs(onTheRoad-min(driving, awake)) > 1e-9 {
					t.Errorf("%s: %g h of driving, %g in the day", habit, driving, onTheRoad)
				}
			}
		}
	}
}

func TestAWinterDayOfTwoWalkers(t *testing.T) {
	r := trips.Work(dipper)
	january := r.Trips[0].Months[0]
	if january.Number != 1 || january.Nights != 4 || january.Trips != 2 {
		t.Fatalf("the first month is %+v", january)
	}
	want := map[int]trips.Hour{
		3:  {Mode: trips.Night, Asleep: 2, Heated: true, Wanted: 10},
		7:  {Mode: trips.Home, Awake: 2, Heated: true, Wanted: 16, Cooking: 0.25},
		8:  {Mode: trips.Drive, Cabs: 2, Driving: 1},
		10: {Mode: trips.Drive, Cabs: 2, Driving: 0.5},
		12: {Mode: trips.Home, Away: 2},
		16: {Mode: trips.Home, Awake: 2, Heated: true, Wanted: 16, Wet: 1.5},
		18: {Mode: trips.Home, Awake: 2, Heated: true, Wanted: 16, Cooking: 0.5},
		22: {Mode: trips.Night, Asleep: 2, Heated: true, Wanted: 10},
	}
	for hour, h := range want {
		if january.Day[hour] != h {
			t.Errorf("hour %d: %+v, want %+v", hour, january.Day[hour], h)
		}
	}
}

func TestWhatATripLeavesOutIsSaid(t *testing.T) {
	r := trips.Work(trips.Inputs{People: []string{"ada", "ben"}, Trips: []trips.Trip{{ID: "hills"}}})
	if r.Trips[0].NightsPerYear != 24 || len(r.Trips[0].Aboard) != 2 || len(r.Trips[0].Assumed) != 5 {
		t.Errorf("%+v", r.Trips[0])
	}
	if all := r.Findings(); len(all) != 1 || all[0].Code != "trips.unsaid" {
		t.Errorf("found %+v", all)
	}
}

func TestTheNightTripKeepsItsOwnWarmth(t *testing.T) {
	in := dipper
	fourteen := quantity.Temperature(14)
	in.Trips = []trips.Trip{dipper.Trips[0]}
	in.Trips[0].Keep = &fourteen
	day := trips.Work(in).Trips[0].Months[0].Day
	if day[2].Wanted != 14 || day[19].Wanted != 16 {
		t.Errorf("at night %g °C, in the evening %g °C", day[2].Wanted, day[19].Wanted)
	}
}

func ExampleWork() {
	two, nights := quantity.Rate{Amount: 2, Per: quantity.Monthly}, 2
	r := trips.Work(trips.Inputs{Habits: "frugal", Trips: []trips.Trip{
		{ID: "hills", Months: []int{11, 12, 1, 2, 3}, Often: &two, Nights: &nights, Aboard: []string{"tall", "small"}}}})
	fmt.Printf("%.0f nights a year, %.0f of them in January\n", r.Trips[0].NightsPerYear, r.Nights[0])
	// Output: 20 nights a year, 4 of them in January
}
