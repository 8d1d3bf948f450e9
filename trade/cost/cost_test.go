package cost_test

import (
	"fmt"
	"math"
	"reflect"
	"testing"

	"tumblehome/quantity"
	"tumblehome/solve/montecarlo"
	"tumblehome/trade/cost"
)

func money(text string) quantity.Money {
	m, err := quantity.ParseMoney(text)
	if err != nil {
		panic(err)
	}
	return m
}

func date(m, d int) quantity.Date { return quantity.Date{Year: 2026, Month: m, Day: d} }

// dipper is the spending of an invented van; conversion 2875.40 and vehicle 2735.00 were added up by hand.
func dipper() cost.Inputs {
	rows := []struct {
		month, day int
		paid, what string
		on         string
		sudden     bool
	}{
		{3, 1, "2350", "the van", "vehicle", false},
		{3, 6, "36", "weighbridge", "", false},
		{3, 14, "86.40", "degreaser, primer", "", false},
		{3, 22, "-60", "racks sold", "", false},
		{3, 28, "140", "welder", "", true},
		{4, 4, "71.20", "sealer, wax", "", false},
		{4, 11, "65", "fan", "", false},
		{4, 18, "197", "window", "", false},
		{4, 25, "114", "butyl", "", false},
		{5, 2, "126", "boards, battens", "", false},
		{5, 9, "-22", "a board returned", "", false},
		{5, 9, "138", "ply, linoleum", "", false},
		{5, 23, "167", "wool, foam", "", false},
		{6, 6, "148.30", "cable", "", false},
		{6, 27, "257", "ply, carpet", "", false},
		{7, 4, "130", "heater", "", false},
		{7, 11, "79", "strips, oil", "", false},
		{7, 18, "430", "battery, charger", "", false},
		{7, 25, "175", "fuse box", "", false},
		{8, 1, "385", "clutch", "vehicle", true},
		{8, 29, "195", "panel", "", false},
		{9, 5, "402.50", "ply, runners, hob", "", false},
	}
	budget := money("5200")
	in := cost.Inputs{Currency: "GBP", Budget: &budget, Contingency: 0.12}
	for i, r := range rows {
		in.Spending = append(in.Spending, cost.Spent{ID: fmt.Sprintf("s-%02d", i), Date: date(r.month, r.day), Paid: money(r.paid), What: r.what, On: r.on, Sudden: r.sudden})
	}
	in.Items = []cost.Item{
		{Pointer: "/fittings/coolbox", What: "coolbox", Row: "coolbox", Plan: cost.Amount{Likely: 190, Mean: 190, Dev: 3.6}, ToCome: cost.Amount{Likely: 190, Mean: 190, Dev: 3.6}},
		{Pointer: "/fittings/galley", What: "galley", Plan: cost.Amount{Likely: 900, Mean: 930, Dev: 136}, ToCome: cost.Amount{Likely: 900, Mean: 930, Dev: 136}},
		{Pointer: "/fittings/heater", What: "heater", Plan: cost.Amount{Likely: 130, Mean: 130}},
		{Pointer: "/lining/roof/3", What: "ply", Row: "ply", Plan: cost.Amount{Likely: 144, Mean: 148.8, Dev: 22}},
		{Pointer: "/lining/sides/3", What: "ply", Row: "ply", Plan: cost.Amount{Likely: 48, Mean: 49.6, Dev: 7.2}, ToCome: cost.Amount{Likely: 48, Mean: 49.6, Dev: 7.2}},
	}
	return in
}

func figure(t *testing.T, r cost.Result, code string) float64 {
	t.Helper()
	for _, f := range r.Figures() {
		if f.Code == code {
			return f.Value
		}
	}
	t.Fatalf("there is no figure %s", code)
	return 0
}

func TestSpendingAddsUpToThePenny(t *testing.T) {
	r := cost.Work(dipper())
	if r.Paid.String() != "2875.40" || r.Vehicle.String() != "2735" || r.Sudden.String() != "140" {
		t.Errorf("paid %s, vehicle %s, sudden %s; by hand 2875.40, 2735 and 140", r.Paid, r.Vehicle, r.Sudden)
	}
	pennies := cost.Inputs{Currency: "GBP"}
	for i := range 1000 {
		pennies.Spending = append(pennies.Spending, cost.Spent{ID: fmt.Sprint(i), Date: date(1, 1), Paid: money("0.10")})
	}
	if got := cost.Work(pennies).Paid.String(); got != "100" {
		t.Errorf("a thousand times 0.10 is %s", got)
	}
}

func TestTheWholeIsTheSumOfItsParts(t *testing.T) {
	r := cost.Work(dipper())
	for _, c := range []struct {
		code string
		want float64
	}{
		{"cost.planned", 190 + 900 + 130 + 144 + 48},
		{"cost.to-come", 190 + 930 + 49.6},
		{"cost.forecast", 2875.40 + 1169.6},
		{"cost.left", 5200 - 2875.40 - 1169.6},
		{"cost.contingency-left", 0.12*5200 - 140},
	} {
		if got := figure(t, r, c.code); math.Abs(got-c.want) > 1e-9 {
			t.Errorf("%s is %.2f, want %.2f", c.code, got, c.want)
		}
	}
}

func TestQuantilesAgreeWithDrawing(t *testing.T) {
	in := dipper()
	in.Items[3].ToCome = in.Items[3].Plan // two purchases of one row, sharing one error
	r := cost.Work(in)
	terms := []montecarlo.Term{{Of: montecarlo.Exactly(2875.40), Times: 1}}
	for _, i := range in.Items {
		terms = append(terms, montecarlo.Term{Of: montecarlo.Normal(i.ToCome.Mean, i.ToCome.Dev), Times: 1, Key: i.Row})
	}
	want, se := montecarlo.Sample(terms, 100_000, 5).Quantile(0.8)
	if got := r.Forecast.P80(); math.Abs(got-want) > 3*se {
		t.Errorf("P80 is %.2f, by drawing %.2f ± %.2f", got, want, se)
	}
}

// TestSkewedGuessesAreWellEnoughDescribedByANormal: thirty guesses of −30/+50 %, drawn as PERT, against the normal with their mean and variance.
func TestSkewedGuessesAreWellEnoughDescribedByANormal(t *testing.T) {
	var terms []montecarlo.Term
	var in cost.Inputs
	for i := range 30 {
		p := 20 + 7*float64(i)
		d := montecarlo.Pert(0.7*p, p, 1.5*p)
		terms = append(terms, montecarlo.Term{Of: d, Times: 1})
		in.Items = append(in.Items, cost.Item{Pointer: fmt.Sprint(i), ToCome: cost.Amount{Likely: p, Mean: d.Mean(), Dev: d.Dev()}})
	}
	drawn := montecarlo.Sample(terms, 100_000, 9)
	r := cost.Work(in)
	for _, q := range []struct{ p, got float64 }{{0.5, r.Forecast.Mean}, {0.8, r.Forecast.P80()}} {
		want, se := drawn.Quantile(q.p)
		// The skew of such a sum shifts the median by some tenth of a percent of it; a van's costs are shown to 5.
		if math.Abs(q.got-want) > 5+3*se {
			t.Errorf("P%.0f is %.1f, by drawing %.1f ± %.1f", 100*q.p, q.got, want, se)
		}
	}
}

func TestFindings(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(*cost.Inputs)
		want   []string
	}{
		{"dipper is within its budget", func(in *cost.Inputs) {}, nil},
		{"no budget, nothing to say", func(in *cost.Inputs) { in.Budget = nil }, nil},
		{"one in five it passes", func(in *cost.Inputs) { b := money("4100"); in.Budget = &b }, []string{"close cost.budget"}},
		{"likely it passes", func(in *cost.Inputs) { b := money("4000"); in.Budget = &b }, []string{"fault cost.budget"}},
		{"surprises ate the contingency", func(in *cost.Inputs) { in.Contingency = 0.02 }, []string{"close cost.contingency"}},
		{"money without a rate", func(in *cost.Inputs) { in.Spending[1].Paid = money("36 EUR") }, []string{"fault cost.rate"}},
		{"money with a rate", func(in *cost.Inputs) {
			in.Spending[1].Paid, in.Rates = money("36 EUR"), map[string]float64{"EUR": 0.85}
		}, nil},
	} {
		in := dipper()
		c.change(&in)
		var got []string
		for _, f := range cost.Work(in).Findings() {
			got = append(got, f.Severity.String()+" "+f.Code)
			known := false
			for _, e := range cost.Explanations {
				known = known || e.Code == f.Code
			}
			if !known {
				t.Errorf("%s is not explained", f.Code)
			}
		}
		if !reflect.DeepEqual(got, c.want) {
			t.Errorf("%s: got %v, want %v", c.name, got, c.want)
		}
	}
}

func TestOtherCurrenciesAreCountedAtTheirRate(t *testing.T) {
	r := cost.Work(cost.Inputs{Currency: "GBP", Rates: map[string]float64{"EUR": 0.85}, Spending: []cost.Spent{{ID: "a", Paid: money("61.50 EUR")}}})
	if got := r.Paid.String(); got != "52.28" {
		t.Errorf("61.50 EUR at 0.85 are %s, want 52.28 (52.275, half to even)", got)
	}
}

func TestEveryWorkingEndsInItsFigure(t *testing.T) {
	for _, in := range []cost.Inputs{dipper(), {}} {
		r := cost.Work(in)
		for _, f := range r.Figures() {
			w, ok := r.Working(f.Code)
			if !ok || math.Abs(w.Last()-f.Value) > 1e-9 || w.Formula == "" || w.Source.Text == "" {
				t.Errorf("%s is %g, its working (%v) ends in %g", f.Code, f.Value, ok, w.Last())
			}
		}
	}
	if _, ok := cost.Work(dipper()).Working("cost.nothing"); ok {
		t.Error("a figure that does not exist has a working")
	}
}

func TestTheOrderOfInputsDoesNotMatter(t *testing.T) {
	a, b := dipper(), dipper()
	for i, j := 0, len(b.Items)-1; i < j; i, j = i+1, j-1 {
		b.Items[i], b.Items[j] = b.Items[j], b.Items[i]
	}
	for i, j := 0, len(b.Spending)-1; i < j; i, j = i+1, j-1 {
		b.Spending[i], b.Spending[j] = b.Spending[j], b.Spending[i]
	}
	for _, f := range cost.Work(a).Figures() {
		x, _ := cost.Work(a).Working(f.Code)
		y, _ := cost.Work(b).Working(f.Code)
		if !reflect.DeepEqual(x, y) {
			t.Errorf("%s differs when its inputs stand in another order", f.Code)
		}
	}
}

func ExampleWork() {
	budget := money("700")
	r := cost.Work(cost.Inputs{
		Currency: "EUR", Budget: &budget,
		Spending: []cost.Spent{{ID: "s-1", Date: date(1, 5), Paid: money("498.20")}},
		Items:    []cost.Item{{Pointer: "/fittings/lamp", What: "lamp", Row: "lamp", ToCome: cost.Amount{Likely: 34, Mean: 35.1, Dev: 5}}},
	})
	fmt.Printf("paid %s, likely %.0f in all, one in five it passes %.0f\n", r.Paid, r.Forecast.Mean, r.Forecast.P80())
	// Output: paid 498.20, likely 533 in all, one in five it passes 538
}
