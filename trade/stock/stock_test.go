package stock_test

import (
	"fmt"
	"math"
	"reflect"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/quantity"
	"tumblehome/trade/stock"
	"tumblehome/trade/takeoff"
)

func price(text, standing string) *stock.Price {
	m, err := quantity.ParseMoney(text)
	if err != nil {
		panic(err)
	}
	return &stock.Price{Price: quantity.About(m), Standing: standing}
}

func ply(net float64, pointer string) takeoff.Line {
	return takeoff.Line{Pointer: pointer, Of: "ply-poplar-12", Net: net, Unit: "m2", Mass: 5 * net}
}

func sheets() []stock.Offer {
	return []stock.Offer{
		{Of: "ply-poplar-12", Row: "ply-poplar-12-2440x1220", Each: "sheet", Holds: 2.9768, Unit: "m2", Waste: 0.15, Price: price("51", "guess")},
		{Of: "ply-poplar-12", Row: "ply-poplar-12-1220x1220", Each: "sheet", Holds: 1.4884, Unit: "m2", Waste: 0.15, Price: price("28", "guess")},
	}
}

func TestWholePacksWithWaste(t *testing.T) {
	for _, c := range []struct {
		name  string
		net   float64
		row   string
		packs int
		cost  float64
	}{
		{"one large sheet just holds 2.58 m2 and its waste", 2.58, "ply-poplar-12-2440x1220", 1, 51},
		{"a little more asks for a third half sheet", 2.59, "ply-poplar-12-1220x1220", 3, 84},
		{"a small need takes the small sheet", 1, "ply-poplar-12-1220x1220", 1, 28},
		{"two large ones are cheaper than four small", 5, "ply-poplar-12-2440x1220", 2, 102},
	} {
		r := stock.Work(stock.Inputs{Currency: "GBP", Needs: []takeoff.Line{ply(c.net, "/fittings/settle")}, Offers: sheets()})
		p := r.Lines[0].Buy
		if p.Row != c.row || p.Packs != c.packs || p.Cost.Likely != c.cost {
			t.Errorf("%s: %d of %s for %g, want %d of %s for %g", c.name, p.Packs, p.Row, p.Cost.Likely, c.packs, c.row, c.cost)
		}
		if p.Left() < 0 || float64(p.Packs)*p.Holds < c.net {
			t.Errorf("%s: %d packs do not hold %g", c.name, p.Packs, c.net)
		}
	}
}

func TestTheWorkedFloorOfTheHandbook(t *testing.T) {
	in := stock.Inputs{Currency: "GBP", Needs: []takeoff.Line{ply(5.6, "/lining/floor/2")}, Offers: sheets()[:1]}
	in.Offers[0].Waste = 0
	proof.Check(t, proof.Case{
		Name: "sheets for a floor of 3200 × 1750 mm by area", Source: "area bound by hand: ⌈5.60/2.977⌉, and laid out by hand in two sheets with one more joint",
		Inputs: "5.60 m2 from 2440 × 1220, no waste", Expected: 2, Got: float64(stock.Work(in).Lines[0].Buy.Packs), Tolerance: 0, Unit: "1",
	})
}

func TestStandingsHaveTheirSpread(t *testing.T) {
	for _, c := range []struct {
		standing          string
		mean, dev, likely float64
	}{
		// PERT by hand: guess 70, 100, 150: mean 620/6, variance (33.33)(46.67)/7; quote 95, 100, 105: variance 25/7.
		{"guess", 620.0 / 6, math.Sqrt((620.0/6 - 70) * (150 - 620.0/6) / 7), 100},
		{"quote", 100, math.Sqrt(25.0 / 7), 100},
		{"paid", 100, 0, 100},
		{"free", 0, 0, 0},
	} {
		got := stock.Work(stock.Inputs{Things: []stock.Thing{{Pointer: "/fittings/hob", Price: price("100", c.standing)}}}).Lines[0].Plan.Cost
		if math.Abs(got.Mean-c.mean) > 1e-9 || math.Abs(got.Dev-c.dev) > 1e-9 || got.Likely != c.likely {
			t.Errorf("%s: %+v, want mean %g, deviation %g", c.standing, got, c.mean, c.dev)
		}
	}
}

func TestWhatIsThereIsNotBoughtAgain(t *testing.T) {
	fitted := ply(2, "/lining/floor/2")
	fitted.Fitted = true
	for _, c := range []struct {
		name string
		in   stock.Inputs
		plan int
		buy  int
	}{
		{"nothing is there", stock.Inputs{Needs: []takeoff.Line{ply(2, "/a"), ply(3, "/b")}}, 2, 2},
		{"a part is fitted", stock.Inputs{Needs: []takeoff.Line{fitted, ply(3, "/b")}}, 2, 3},
		{"all of it is paid for", stock.Inputs{Needs: []takeoff.Line{ply(2, "/lining/floor/2")}, Settled: []string{"/lining/floor"}}, 1, 0},
		{"a sheet lies in the barn", stock.Inputs{Needs: []takeoff.Line{ply(5, "/a")}, InHand: []stock.InHand{{Row: "ply-poplar-12-2440x1220", Have: 1}}}, 2, 1},
		{"more lies in the barn than needed", stock.Inputs{Needs: []takeoff.Line{ply(1, "/a")}, InHand: []stock.InHand{{Row: "ply-poplar-12-2440x1220", Have: 3}}}, 1, 0},
		{"a thing's own price covers its boards", stock.Inputs{Needs: []takeoff.Line{ply(2, "/a"), ply(9, "/fittings/settle/of")}, Things: []stock.Thing{{Pointer: "/fittings/settle"}}}, 1, 1},
	} {
		c.in.Offers = sheets()
		l := stock.Work(c.in).Lines[0]
		// 3 m2 with waste are 3.45: three half sheets (84) are cheaper than two whole ones (102).
		if l.Plan.Packs != c.plan || l.Buy.Packs != c.buy {
			t.Errorf("%s: plan %d, buy %d (%s), want %d and %d", c.name, l.Plan.Packs, l.Buy.Packs, l.Buy.Row, c.plan, c.buy)
		}
	}
}

func TestThingsAreBoughtOnce(t *testing.T) {
	for _, c := range []struct {
		name   string
		thing  stock.Thing
		inHand []stock.InHand
		plan   float64
		buy    float64
	}{
		{"planned", stock.Thing{Price: price("100", "quote")}, nil, 100, 100},
		{"fitted", stock.Thing{Price: price("100", "quote"), Fitted: true}, nil, 100, 0},
		{"paid and waiting", stock.Thing{Price: price("100", "paid")}, nil, 100, 0},
		{"found", stock.Thing{Found: true}, nil, 0, 0},
		{"on the shelf", stock.Thing{Row: "hob", Price: price("100", "guess")}, []stock.InHand{{Row: "hob", Have: 1}}, 100, 0},
		{"half of one on the shelf is none", stock.Thing{Row: "hob", Price: price("100", "guess")}, []stock.InHand{{Row: "hob", Have: 0.5}}, 100, 100},
	} {
		c.thing.Pointer = "/fittings/hob"
		l := stock.Work(stock.Inputs{Things: []stock.Thing{c.thing}, InHand: c.inHand}).Lines[0]
		if l.Plan.Cost.Likely != c.plan || l.Buy.Cost.Likely != c.buy || l.Unpriced {
			t.Errorf("%s: plan %g, buy %g, unpriced %v", c.name, l.Plan.Cost.Likely, l.Buy.Cost.Likely, l.Unpriced)
		}
	}
	two := stock.Inputs{Things: []stock.Thing{{Pointer: "/a", Row: "strip"}, {Pointer: "/b", Row: "strip"}}, InHand: []stock.InHand{{Row: "strip", Have: 1}}}
	if r := stock.Work(two); r.Lines[0].Buy.Packs != 0 || r.Lines[1].Buy.Packs != 1 {
		t.Error("one strip on the shelf serves two places")
	}
}

func TestOtherCurrenciesNeedARate(t *testing.T) {
	in := stock.Inputs{Currency: "GBP", Rates: map[string]float64{"EUR": 0.85}, Things: []stock.Thing{{Pointer: "/a", Price: price("100 EUR", "paid")}, {Pointer: "/b", Price: price("100 USD", "paid")}}}
	r := stock.Work(in)
	if r.Lines[0].Plan.Cost.Likely != 85 || r.Lines[0].Unpriced || !r.Lines[1].Unpriced {
		t.Errorf("100 EUR are %+v, 100 USD without a rate are %+v", r.Lines[0], r.Lines[1])
	}
}

func TestWhatHasNoPriceIsSaid(t *testing.T) {
	r := stock.Work(stock.Inputs{Needs: []takeoff.Line{{Pointer: "/lining/floor/0", Of: "cork", Net: 3, Unit: "m2"}}, Things: []stock.Thing{{Pointer: "/fittings/lamp"}}})
	f := r.Findings()
	if len(f) != 1 || !reflect.DeepEqual(f[0].About, []string{"/lining/floor/0", "/fittings/lamp"}) || f[0].Code != stock.Explanations[0].Code {
		t.Errorf("got %+v", f)
	}
}

func TestEveryWorkingEndsInItsFigure(t *testing.T) {
	in := stock.Inputs{Needs: []takeoff.Line{ply(2, "/a"), {Pointer: "/b", Of: "ply-poplar-12-2440x1220", Net: 5, Unit: "m2"}}, Offers: sheets(), Things: []stock.Thing{{Pointer: "/c", Row: "hob"}}}
	r := stock.Work(in)
	for _, f := range r.Figures() {
		w, ok := r.Working(f.Code)
		if !ok || w.Last() != f.Value {
			t.Errorf("%s is %g, its working (%v) ends in %g", f.Code, f.Value, ok, w.Last())
		}
	}
	if len(r.Figures()) != 2 {
		t.Errorf("got %d figures, want the sheets of both names together, and the hob", len(r.Figures()))
	}
	for _, code := range []string{"stock.buy.", "stock.buy.nothing", "weight.total"} {
		if _, ok := r.Working(code); ok {
			t.Errorf("%q has a working", code)
		}
	}
}

func TestNothingNeededIsNothingBought(t *testing.T) {
	r := stock.Work(stock.Inputs{})
	if len(r.Lines)+len(r.Figures())+len(r.Findings()) != 0 {
		t.Errorf("got %+v", r)
	}
}

func TestTheOrderOfInputsDoesNotMatter(t *testing.T) {
	a := stock.Inputs{Needs: []takeoff.Line{ply(2, "/a"), ply(1, "/b")}, Offers: sheets(), Things: []stock.Thing{{Pointer: "/c"}, {Pointer: "/d"}}}
	b := stock.Inputs{Needs: []takeoff.Line{ply(1, "/b"), ply(2, "/a")}, Offers: []stock.Offer{sheets()[1], sheets()[0]}, Things: []stock.Thing{{Pointer: "/d"}, {Pointer: "/c"}}}
	if x, y := stock.Work(a), stock.Work(b); fmt.Sprint(x.Figures()) != fmt.Sprint(y.Figures()) {
		t.Errorf("%v\n%v", x.Figures(), y.Figures())
	}
}

func ExampleWork() {
	r := stock.Work(stock.Inputs{
		Currency: "GBP",
		Needs:    []takeoff.Line{{Pointer: "/lining/floor/2", Of: "ply-softwood-15", Net: 4.9, Unit: "m2"}},
		Offers: []stock.Offer{{
			Of: "ply-softwood-15", Row: "ply-softwood-15-2440x1220", Each: "sheet", Holds: 2.9768, Unit: "m2", Waste: 0.15, Price: price("33", "quote"),
		}},
	})
	for _, l := range r.Lines {
		fmt.Printf("%d × %s, %.0f GBP, %.1f m2 left over\n", l.Buy.Packs, l.Buy.Row, l.Buy.Cost.Likely, l.Buy.Left())
	}
	// Output: 2 × ply-softwood-15-2440x1220, 66 GBP, 1.1 m2 left over
}
