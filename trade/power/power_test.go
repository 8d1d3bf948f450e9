package power_test

import (
	"math"
	"reflect"
	"strings"
	"testing"

	"tumblehome/internal/proof"
	"tumblehome/trade/finding"
	"tumblehome/trade/power"
)

func some(years int, in power.Inputs) power.Inputs { in.Years = years; return in }

func TestTheSameInputsGiveTheSameResult(t *testing.T) {
	a, b := power.Work(some(10, standing())), power.Work(some(10, standing()))
	if !reflect.DeepEqual(a.Figures(), b.Figures()) || !reflect.DeepEqual(a.Findings(), b.Findings()) {
		t.Error("two runs differ")
	}
}

func TestEveryNightOfTheTripsIsSpent(t *testing.T) {
	r := power.Work(some(100, walkers()))
	for m, want := range map[int]int{0: 400, 1: 400, 2: 400, 5: 1400, 6: 0, 10: 400, 11: 400} {
		if got := r.Months[m].Flat.In; got != want {
			t.Errorf("month %d has %d nights in a hundred years, want %d", m+1, got, want)
		}
	}
}

func TestTheStandardErrorIsThatOfACount(t *testing.T) {
	r := power.Work(some(50, standing()))
	c := r.Months[11].Flat
	p := float64(c.Of) / float64(c.In)
	proof.Check(t, proof.Case{Name: "standard error of flat nights in December", Source: "binomial distribution", Inputs: "√(p(1−p)/n)", Expected: math.Sqrt(p * (1 - p) / float64(c.In)), Got: c.Error, Tolerance: 1e-12, Unit: "1"})
	if c.Share != p || c.Of == 0 {
		t.Errorf("%+v", c)
	}
}

func TestWhatTakesMoreIsFlatMoreOften(t *testing.T) {
	last := -1.0
	for _, watts := range []float64{0.001, 10, 30, 60, 120} {
		in := some(30, standing())
		in.Things = append([]power.Thing{{ID: "more", Name: "more", Kind: power.Standby, Watts: watts, Circuit: "c"}}, in.Things...)
		if share := power.Work(in).Flat.Share; share < last {
			t.Errorf("with %g W more %g of nights are flat, with less %g", watts, share, last)
		} else {
			last = share
		}
	}
	if last < 0.99 {
		t.Errorf("120 W all day are flat in only %g of nights", last)
	}
}

func TestWhatChargesItHelps(t *testing.T) {
	plain := power.Work(some(30, standing())).Flat.Share
	for name, change := range map[string]func(*power.Inputs){
		"full from home": func(in *power.Inputs) { in.AtHome = power.AtHomeMains },
		"less use":       func(in *power.Inputs) { in.Things = in.Things[2:] },
		"more panel":     func(in *power.Inputs) { in.Sources[0].Watts *= 1.5 },
		"nights on the mains": func(in *power.Inputs) {
			in.Mains.Inlet = true
			in.Sources = append(in.Sources, power.Source{Kind: power.Shore, Amps: 20})
			in.Journeys[0].HookUp = 0.5
		},
	} {
		in := some(30, standing())
		if change(&in); power.Work(in).Flat.Share >= plain {
			t.Errorf("%s: %g of nights are flat, without %g", name, power.Work(in).Flat.Share, plain)
		}
	}
	dark := some(30, standing())
	if dark.AtHome = power.AtHomeNothing; power.Work(dark).Flat.Share < plain {
		t.Error("a van that stands in the dark is flat less often")
	}
}

func TestNightsOnTheMainsDoNothingWithoutAnInlet(t *testing.T) {
	plain := power.Work(some(20, standing())).Flat
	in := some(20, standing())
	in.Sources = append(in.Sources, power.Source{Kind: power.Shore, Amps: 20})
	in.Journeys[0].HookUp = 1
	if got := power.Work(in).Flat; got != plain {
		t.Errorf("%v flat, %v without", got, plain)
	}
}

func TestFrostStopsTheChargeOfLithiumOnlyWhereSomethingDoes(t *testing.T) {
	in := some(20, standing())
	for m := range in.Climate.Mean {
		in.Climate.Mean[m], in.Climate.Low[m], in.Climate.High[m] = in.Climate.Mean[m]-6, in.Climate.Low[m]-6, in.Climate.High[m]-6
	}
	for _, cut := range []bool{true, false} {
		b := *in.Battery
		b.CutOff, in.Battery = cut, &b
		r := power.Work(in)
		if (r.Cold > 0) == cut {
			t.Errorf("with a cut-off %t it is charged %g h a year below freezing", cut, r.Cold)
		}
	}
	warm := *in.Battery
	warm.Heated, in.Battery = true, &warm
	if r := power.Work(in); r.Cold != 0 {
		t.Errorf("a battery that warms itself is charged %g h a year below freezing", r.Cold)
	}
}

func TestAGluedPanelGivesLessThanOneWithAirBehind(t *testing.T) {
	in := some(20, standing())
	free := power.Work(in).Months[5].Yield
	in.Sources[0].Bonded = true
	glued := power.Work(in).Months[5].Yield
	in.Sources[0].Bonded, in.Sources[0].PWM = false, true
	held := power.Work(in).Months[5].Yield
	if glued >= free || glued < 0.9*free || held >= free || held < 0.7*free {
		t.Errorf("June: with air %g Wh, glued %g, held at the battery's voltage %g", free, glued, held)
	}
}

func TestThreeWaysOfLivingTakeMoreAndMore(t *testing.T) {
	r := power.Work(some(2, walkers()))
	for _, u := range r.Uses {
		if u.Mean[power.Frugal] > u.Mean[power.Usual] || u.Mean[power.Usual] > u.Mean[power.Cosy] {
			t.Errorf("%s takes %v Wh", u.Name, u.Mean)
		}
	}
	for m := range r.Months {
		sum := 0.0
		for _, u := range r.Uses {
			sum += u.Wh[m][power.Usual]
		}
		if math.Abs(sum-r.Months[m].Use[power.Usual]) > 1e-9 {
			t.Errorf("month %d: the uses add up to %g, the month says %g", m+1, sum, r.Months[m].Use[power.Usual])
		}
	}
}

func TestABatteryForTwoDays(t *testing.T) {
	const day = 788.458 // Wh: lights 48, reading 6, fridge 378, pump 9, fan 72, phones 35.294, laptop 136.364, heater 75, standby 28.8
	for _, c := range []struct {
		name                               string
		days, volts, usable, cold, age, ah float64
	}{{"one day, all of it", 1, 12.8, 1, 1, 1, 61.598}, {"AGM", 2, 12.8, 0.5, 0.9, 0.85, 322.1}, {"lithium", 2, 12.8, 0.8, 0.95, 0.9, 180.1}} {
		proof.Check(t, proof.Case{Name: c.name, Source: "worked diary of loads, by hand", Inputs: "788.458 Wh a day", Expected: c.ah, Got: power.Needed(day, c.days, c.volts, c.usable, c.cold, c.age), Tolerance: 0.05, Unit: "Ah"})
	}
}

// Two of the lines of that diary are things as they are reckoned here.
func TestLinesOfAWorkedDiary(t *testing.T) {
	in := walkers()
	in.Years, in.Habit = 1, "cosy"
	in.Things = []power.Thing{{ID: "a", Kind: power.Socket, Circuit: "c"}, {ID: "b", Kind: power.Standby, Watts: 1.2, Circuit: "c"}}
	r := power.Work(in)
	for i, want := range []float64{136.364, 28.8} {
		proof.Check(t, proof.Case{Name: "a line of the diary", Source: "a laptop of 60 W for 2 h through 0.88; 1.2 W all day; by hand", Inputs: r.Uses[i].How, Expected: want, Got: r.Uses[i].Mean[power.Cosy], Tolerance: 1e-3, Unit: "Wh"})
	}
}

func TestAReadingThatCannotBeIsHeldWithinReason(t *testing.T) {
	in := some(2, walkers())
	in.Readings = []power.Reading{{Month: 1, Wh: 1e6}, {Month: 7, Wh: 10}}
	r := power.Work(in)
	if r.Scale != 5 {
		t.Errorf("use is multiplied by %g; a reading of July, when nobody travels, says nothing", r.Scale)
	}
}

func TestAClimateThatCannotBeIsSaid(t *testing.T) {
	in := some(2, walkers())
	in.Climate.Mean[3] = math.NaN()
	if r := power.Work(in); r.Years != 0 || len(r.Assumed) != 1 {
		t.Errorf("%d years, %v", r.Years, r.Assumed)
	}
}

func TestTheCourseOfYearsAddsUpToTheChance(t *testing.T) {
	r := power.Work(some(12, standing()))
	flat, nights := 0, 0
	for y := range 12 {
		last := -1
		for _, n := range r.Course(y) {
			if n.Day <= last || n.Lowest > n.Morning+1e-12 || n.Lowest < 0 || n.Morning > 1 {
				t.Fatalf("year %d: %+v after day %d", y, n, last)
			}
			last = n.Day
			if nights++; n.Flat {
				flat++
			}
		}
	}
	if flat != r.Flat.Of || nights != r.Flat.In {
		t.Errorf("%d of %d nights, the chance is of %d in %d", flat, nights, r.Flat.Of, r.Flat.In)
	}
	if r.Course(12) != nil {
		t.Error("there is a thirteenth of twelve years")
	}
}

func TestAChartIsOfTheVanAsItIs(t *testing.T) {
	r := power.Work(some(20, standing()))
	c := power.Draw(r.Inputs(), 20, nil)
	if c.OwnShare != r.Flat.Share {
		t.Errorf("the chart has the van flat in %g of nights, the year in %g", c.OwnShare, r.Flat.Share)
	}
}

func TestAReadingTooFarOffIsSaidToBeHeld(t *testing.T) {
	in := some(2, walkers())
	in.Readings = []power.Reading{{About: "/power/read/july", Month: 7, Wh: 10}, {About: "/power/read/january", Month: 1, Wh: 1e6}}
	told := map[string]finding.Finding{}
	for _, f := range power.Work(in).Findings() {
		told[f.Code] = f
	}
	if f := told["power.read"]; len(f.About) != 1 || f.About[0] != "/power/read/january" || !strings.Contains(f.Words, "no more than 5 times") {
		t.Errorf("said about %v: %s", f.About, f.Words)
	}
	if f := told["power.read.unused"]; len(f.About) != 1 || f.About[0] != "/power/read/july" || !strings.Contains(f.Words, "July") {
		t.Errorf("said about %v: %s", f.About, f.Words)
	}
}

func TestNoSmallBatteryHasALimitOfNought(t *testing.T) {
	in := some(2, walkers())
	b := *in.Battery
	b.Rated, b.Tested, in.Battery = 0.4, 0, &b
	for _, f := range power.Work(in).Findings() {
		if strings.Contains(f.Words, " 0 A") || strings.Contains(f.Words, " 0 Ah") {
			t.Errorf("%s: %s", f.Code, f.Words)
		}
	}
}

// More panel would stand in the shade of those that are there.
func TestWhereNoLightFallsMorePanelHelpsNothing(t *testing.T) {
	in := some(30, standing())
	all := 1.0
	for i := range in.Sources {
		in.Sources[i].Shade = &all
	}
	r := power.Work(in)
	for _, h := range r.Helps {
		if h.Of == power.LimitPanel && h.Share < r.Flat.Share {
			t.Errorf("in full shade half as much panel again leaves %g of nights flat instead of %g", h.Share, r.Flat.Share)
		}
	}
}
