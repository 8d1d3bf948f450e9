package reckon_test

import (
	"math"
	"strings"
	"testing"

	"tumblehome/build"
	"tumblehome/quantity"
	"tumblehome/trade/shell"
	"tumblehome/trade/takeoff"
)

// sameSum fails when a whole is not the sum of its parts, to a thousandth of a millionth of it.
func sameSum(t *testing.T, what string, whole, parts float64) {
	t.Helper()
	if differ(whole, parts, 1e-9) {
		t.Errorf("%s: %.12g in all, but the parts come to %.12g", what, whole, parts)
	}
}

func value(t *testing.T, b tried, code string) float64 {
	t.Helper()
	f, ok := b.Figure(code)
	if !ok {
		t.Fatalf("there is no figure %s", code)
	}
	return f.Value
}

// Weighings beyond the first correct the guesses; without them the sum is plain.
func TestTheFinishedVanIsTheBareVanItsFuelAndEveryLine(t *testing.T) {
	eachBuild(t, func(t *testing.T, b tried) {
		plain := onlyFirstWeighing(t, b)
		lines := takeoff.Total(plain.Lines)
		fuel := standingFuel(plain.doc)
		sameSum(t, "finished van", value(t, plain, "weight.finished.total"), value(t, plain, "weight.bare.total")+fuel+lines)
		today := takeoff.Total(takeoff.Today(plain.Lines))
		sameSum(t, "van as it stands", value(t, plain, "weight.today.total"), value(t, plain, "weight.bare.total")+fuel+today)
		if moved, ok := b.Figure("weight.correction"); ok {
			sameSum(t, "finished van and what weighing taught", value(t, b, "weight.finished.total"), value(t, plain, "weight.finished.total")+moved.Value)
		}
	})
}

// standingFuel is the fuel of the van as it stands [kg]: diesel 0.84 kg/l and petrol 0.74 kg/l, from memory, as package weight has it.
func standingFuel(doc *build.Document) float64 {
	tank, share := doc.Vehicle.Tank, 0.5
	if tank == nil {
		return 0
	}
	for _, w := range doc.Vehicle.Weighed {
		if w.Aboard.Fuel != nil {
			share = w.Aboard.Fuel.Float()
		}
	}
	return share * tank.Holds.Float() * map[string]float64{"diesel": 0.84, "petrol": 0.74}[tank.Fuel]
}

// onlyFirstWeighing leaves the weighing that the bare van rests on.
func onlyFirstWeighing(t *testing.T, b tried) tried {
	t.Helper()
	if len(b.doc.Vehicle.Weighed) < 2 {
		return b
	}
	doc := again(t, b.doc)
	for id := range doc.Vehicle.Weighed {
		if _, ok := b.Figure("weight.weighing." + id + ".off"); ok {
			delete(doc.Vehicle.Weighed, id)
		}
	}
	return tried{b.name, doc, reckoned(doc)}
}

func TestEveryAxleOfEveryCaseAddsUpToTheWhole(t *testing.T) {
	eachBuild(t, func(t *testing.T, b tried) {
		for _, f := range b.Figures {
			if head, ok := strings.CutSuffix(f.Code, ".total"); ok && head != "weight" && head != "weight.margin" {
				sameSum(t, head, f.Value, value(t, b, head+".front")+value(t, b, head+".rear"))
			}
		}
	})
}

func TestTheLiningWeighsWhatItsSurfacesAndItsLinesWeigh(t *testing.T) {
	eachBuild(t, func(t *testing.T, b tried) {
		surfaces, lines := 0.0, 0.0
		for _, surface := range []string{"floor", "sides", "roof", "doors", "front"} {
			surfaces += value(t, b, "lining.mass-"+surface)
		}
		for _, l := range b.Lines {
			if l.Group == "lining" {
				lines += l.Mass
			}
		}
		sameSum(t, "lining by surfaces", value(t, b, "lining.mass"), surfaces)
		sameSum(t, "lining by lines", value(t, b, "lining.mass"), lines)
	})
}

func TestEverySurfaceOfTheBodyIsItsOpeningsItsArchesAndItsBays(t *testing.T) {
	eachBuild(t, func(t *testing.T, b tried) {
		for _, surface := range []string{shell.Floor, shell.Left, shell.Right, shell.Roof, shell.Front, shell.Rear} {
			a, bays := b.Body.Areas(surface), 0.0
			for _, bay := range b.Body.Bays(surface) {
				bays += bay.Net
			}
			if a.Net > 0 {
				sameSum(t, surface, a.Gross, a.Net+a.Openings+a.Arches)
			}
			// The curved skin is summed in strips that are cut anew at each rib: to a millionth.
			if overlapping := a.Gross < a.Openings+a.Arches || hasFinding(b, "shell.openings-overlap"); !overlapping && differ(a.Net, bays, 1e-6) {
				t.Errorf("%s: %.6f m2 in all, but its bays come to %.6f", surface, a.Net, bays)
			}
		}
	})
}

func hasFinding(b tried, code string) bool {
	for _, f := range b.Findings {
		if f.Code == code {
			return true
		}
	}
	return false
}

func TestThePlanCostsWhatItsItemsCost(t *testing.T) {
	eachBuild(t, func(t *testing.T, b tried) {
		planned, toCome := 0.0, 0.0
		for _, l := range b.Stock.Lines {
			planned += l.Plan.Cost.Likely
			toCome += l.Buy.Cost.Mean
		}
		sameSum(t, "planned", value(t, b, "cost.planned"), planned)
		sameSum(t, "to come", value(t, b, "cost.to-come"), toCome)
		sameSum(t, "forecast", value(t, b, "cost.forecast"), value(t, b, "cost.paid")+value(t, b, "cost.to-come"))
	})
}

func TestWhatWasPaidIsTheSpendingToThePenny(t *testing.T) {
	eachBuild(t, func(t *testing.T, b tried) {
		pence := map[bool]int64{}
		for _, s := range b.doc.Spending {
			pence[s.On == "vehicle"] += int64(math.Round(100 * own(b.doc, s.Paid)))
		}
		if got := value(t, b, "cost.paid"); got != float64(pence[false])/100 {
			t.Errorf("paid for the conversion: %.4f, the entries come to %.2f", got, float64(pence[false])/100)
		}
		if got := value(t, b, "cost.paid-vehicle"); got != float64(pence[true])/100 {
			t.Errorf("paid for the van: %.4f, the entries come to %.2f", got, float64(pence[true])/100)
		}
	})
}

// own is money in the build's currency.
func own(doc *build.Document, m quantity.Money) float64 {
	if m.Currency == "" || m.Currency == doc.Build.Currency {
		return m.Float()
	}
	return m.Float() * doc.Build.Rates[m.Currency]
}
