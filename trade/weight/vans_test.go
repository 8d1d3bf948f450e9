package weight_test

import (
	"encoding/csv"
	"os"
	"strconv"
	"testing"

	"tumblehome/quantity"
	"tumblehome/trade/takeoff"
	"tumblehome/trade/weight"
)

func mass(v float64) *quantity.Mass   { m := quantity.Mass(v); return &m }
func share(v float64) *quantity.Share { s := quantity.Share(v); return &s }

func date(y, m, d int) quantity.Date { return quantity.Date{Year: y, Month: m, Day: d} }

// lines reads one van of testdata/three_vans.csv: what is in it, and what is taken along.
func lines(t testing.TB, van string) (inside, gear []takeoff.Line) {
	t.Helper()
	file, err := os.Open("testdata/three_vans.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	r := csv.NewReader(file)
	r.Comment = '#'
	rows, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	for _, row := range rows[1:] {
		if row[0] != van {
			continue
		}
		l := takeoff.Line{Group: row[1], Fitted: row[6] == "yes", Unit: "piece", Net: 1}
		l.Mass, l.At[0], l.At[1] = number(t, row[3]), number(t, row[4]), number(t, row[5])
		l.Dev = 0.12 * l.Mass
		switch row[1] {
		case "lining":
			l.Pointer = "/lining/" + row[2]
		case "fitting":
			l.Pointer = "/fittings/" + row[2]
		case "gear":
			l.Pointer = "/use/gear/" + row[2]
			gear = append(gear, l)
			continue
		}
		inside = append(inside, l)
	}
	return inside, gear
}

func number(t testing.TB, s string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

func dipper(t testing.TB) weight.Inputs {
	inside, gear := lines(t, "dipper")
	linings := takeoff.About(inside, "/lining")
	aboard := append(append(linings[:len(linings):len(linings)], takeoff.About(inside, "/fittings/fan")...), takeoff.About(inside, "/fittings/window")...)
	aboard = append(aboard, takeoff.Line{Pointer: "/vehicle/weighed/lined/aboard/besides/tools", Mass: 25, At: [3]float64{2400}})
	both := []string{"tall", "small"}
	return weight.Inputs{
		Wheelbase: 3350, Datum: 1290, Body: weight.Body{Length: 5330, Width: 1975, Height: 2390},
		Plate:   weight.Plate{Gross: mass(3300), Front: mass(1650), Rear: mass(1850), Train: mass(5300)},
		Licence: 3500, RoofLimit: 100, Today: date(2026, 9, 19),
		Lines: inside, OnRoof: []string{"/fittings/panel", "/fittings/fan"}, Gear: gear,
		Weighings: []weight.Weighing{
			{ID: "bought", Date: date(2026, 3, 6), Front: 1110, Rear: 875, Step: mass(20), Times: 2, Fuel: share(0.5), Aboard: []takeoff.Line{
				{Pointer: "/removed/bulkhead", Mass: -22, At: [3]float64{0}}, {Pointer: "/removed/linings", Mass: -48, At: [3]float64{1475}, Dev: 10},
				{Pointer: "/removed/racks", Mass: -36, At: [3]float64{1500}},
			}},
			{ID: "stripped", Date: date(2026, 3, 29), Front: 1080, Rear: 800, Step: mass(20), Times: 2, Fuel: share(0.5)},
			{ID: "lined", Date: date(2026, 8, 22), Front: 1110, Rear: 980, Step: mass(20), Times: 1, Fuel: share(0.5), Aboard: aboard},
		},
		FuelTank: &weight.FuelTank{Holds: 80, X: 560, Fuel: "diesel"},
		Seats:    []weight.Seat{{ID: "driver", X: -240, Y: 450}, {ID: "passenger", X: -240, Y: -450}},
		People:   []weight.Person{{ID: "tall", Mass: 84}, {ID: "small", Mass: 61}},
		Tanks: []weight.Tank{
			{ID: "fresh", Holds: 20, At: [3]float64{136, 660, 200}}, {ID: "spare", Holds: 20, At: [3]float64{2010, -500, 200}},
			{ID: "waste-can", Holds: 15, At: [3]float64{310, 660, 150}, Waste: true},
		},
		Cases: []weight.Case{
			{ID: "dry", Title: "two aboard, gear, no water", People: both, Fuel: share(1), Gear: true},
			{ID: "full", Title: "two aboard, gear, full of water", People: both, Fuel: share(1), Gear: true, Fill: map[string]quantity.Share{"fresh": 1, "spare": 1}},
			{ID: "waste-full", People: both, Fuel: share(1), Gear: true, Fill: map[string]quantity.Share{"waste-can": 1}},
		},
		Front: &weight.Tyre{LoadIndex: 109, Carries: 1030, Made: date(2022, 5, 2)},
		Rear:  &weight.Tyre{LoadIndex: 109, Carries: 1030, Made: date(2017, 6, 5)},
	}
}

func twite(t testing.TB) weight.Inputs {
	inside, gear := lines(t, "twite")
	return weight.Inputs{
		Wheelbase: 2700, Datum: 1520, Body: weight.Body{Length: 4340, Width: 1810, Height: 1830},
		Plate:   weight.Plate{Gross: mass(1960), Front: mass(1060), Rear: mass(1100)},
		Licence: 3500, Today: date(2026, 4, 1), Lines: inside, Gear: gear,
		Weighings: []weight.Weighing{{ID: "bare", Date: date(2025, 11, 8), Front: 790, Rear: 520, Step: mass(10), Times: 1, Fuel: share(0.6)}},
		FuelTank:  &weight.FuelTank{Holds: 55, X: 700, Fuel: "diesel"},
		Seats:     []weight.Seat{{ID: "driver", X: -250, Y: -380}},
		People:    []weight.Person{{ID: "solo", Mass: 68}},
		Tanks:     []weight.Tank{{ID: "cans", Holds: 20, At: [3]float64{1460, -400, 135}}},
		Cases:     []weight.Case{{ID: "away", People: []string{"solo"}, Fuel: share(1), Gear: true, Fill: map[string]quantity.Share{"cans": 1}}},
		Front:     &weight.Tyre{LoadIndex: 95, Carries: 690}, Rear: &weight.Tyre{LoadIndex: 95, Carries: 690},
	}
}

func godwit(t testing.TB) weight.Inputs {
	inside, gear := lines(t, "godwit")
	four := []string{"a", "b", "c", "d"}
	water := map[string]quantity.Share{"fresh": 1}
	return weight.Inputs{
		Wheelbase: 4035, Datum: 1330, Body: weight.Body{Length: 6363, Width: 2050, Height: 2610}, Track: 1750,
		Plate:   weight.Plate{Gross: mass(3500), Front: mass(1850), Rear: mass(1950), Train: mass(5500)},
		Licence: 3500, Today: date(2026, 6, 1), Lines: inside, Gear: gear,
		Weighings: []weight.Weighing{{ID: "stripped", Date: date(2025, 9, 20), Front: 1290, Rear: 820, Step: mass(20), Times: 1, Fuel: share(0.5)}},
		FuelTank:  &weight.FuelTank{Holds: 90, X: 700, Fuel: "diesel"},
		Seats: []weight.Seat{
			{ID: "cab-1", X: -280, Y: -450}, {ID: "cab-2", X: -280, Y: 450}, {ID: "rear-1", X: 620, Y: -700}, {ID: "rear-2", X: 620, Y: -250},
		},
		People: []weight.Person{{ID: "a", Mass: 82}, {ID: "b", Mass: 68}, {ID: "c", Mass: 38}, {ID: "d", Mass: 26}},
		Tanks: []weight.Tank{
			{ID: "fresh", Holds: 95, At: [3]float64{3420, -690, 230}}, {ID: "waste", Holds: 70, At: [3]float64{2150, 0, -150}, Waste: true},
		},
		Cases: []weight.Case{
			{ID: "dry", Title: "four aboard, no water", People: four, Fuel: share(1), Gear: true, Without: []string{"bikes"}},
			{ID: "water", Title: "four aboard with water", People: four, Fuel: share(1), Gear: true, Fill: water, Without: []string{"bikes"}},
			{ID: "bikes", Title: "four aboard with water and bikes", People: four, Fuel: share(1), Gear: true, Fill: water},
			{ID: "two", Title: "two adults, water, bikes", People: four[:2], Fuel: share(1), Gear: true, Fill: water},
			{ID: "waste-full", People: four, Fuel: share(1), Gear: true, Fill: map[string]quantity.Share{"waste": 1}},
		},
		Front: &weight.Tyre{LoadIndex: 112, Carries: 1120}, Rear: &weight.Tyre{LoadIndex: 112, Carries: 1120},
		Movable: []weight.Movable{{ID: "fresh", Low: 3200, Least: 0, Most: 3600}, {ID: "garage", Low: 3000, Least: 3000, Most: 3000}},
	}
}

// figure finds a figure or fails.
func figure(t testing.TB, r weight.Result, code string) float64 {
	t.Helper()
	for _, f := range r.Figures() {
		if f.Code == code {
			return f.Value
		}
	}
	t.Fatalf("there is no figure %s", code)
	return 0
}
