package outlook_test

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"tumblehome/build"
	"tumblehome/build/begin"
	"tumblehome/catalogue"
	"tumblehome/examples"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/reckon/outlook"
)

func reckoner() outlook.Reckoner {
	m := reckon.NewMachine()
	return func(doc *build.Document) *reckon.Reckoning { return m.Reckon(doc, quantity.Date{}) }
}

func look(t testing.TB, a begin.Answers) outlook.First {
	t.Helper()
	f, err := outlook.Look(a, reckoner())
	if err != nil {
		t.Fatal(err)
	}
	return f
}

func TestAllNineBodiesHaveFirstAnswers(t *testing.T) {
	for _, b := range begin.Bodies() {
		f := look(t, begin.Answers{Body: b.ID})
		if f.Room.Along < 1700 || f.Room.Across < 1300 || f.Room.Up < 1000 || f.Room.Floor < 1.5 || f.Left.Likely <= 0 || f.LeftOn == "" ||
			f.Money.Likely < 300 || f.Money.Late <= f.Money.Likely || f.Weekends.Likely < 10 || f.Weekends.Late <= f.Weekends.Likely || len(f.People) != 2 {
			t.Errorf("%s: %+v %+v left %+v on %q, money %+v, weekends %+v", b.ID, f.Room, f.People, f.Left, f.LeftOn, f.Money, f.Weekends)
		}
	}
}

func TestWhoFitsWhichWayIsStatureAgainstRoom(t *testing.T) {
	f := look(t, begin.Answers{Body: "mid-high", Sleepers: []begin.Sleeper{{ID: "ann", Stature: 1600}, {ID: "tom", Stature: 1900}}})
	for _, p := range f.People {
		if got, want := p.Along, f.Room.Along-p.Stature-115; math.Abs(got-want) > 1e-9 {
			t.Errorf("%s lengthwise: %g, want %g", p.ID, got, want)
		}
		if got, want := p.Up, f.Room.Up-p.Stature-25; math.Abs(got-want) > 1e-9 {
			t.Errorf("%s standing: %g, want %g", p.ID, got, want)
		}
	}
	if ann, tom := f.People[0], f.People[1]; ann.Up <= 0 || tom.Up >= ann.Up || tom.Across >= 0 || math.Abs(ann.Across-tom.Across-300) > 3 { // a big body's shoulders lie a little higher, where sides are as far apart but for that
		t.Errorf("ann %+v, tom %+v in %+v", ann, tom, f.Room)
	}
}

func TestALongerVanOfTheSameHeightTakesMoreWorkAndMoney(t *testing.T) {
	short, long := look(t, begin.Answers{Body: "short-high", Arrangement: "short-settle"}), look(t, begin.Answers{Body: "long-high", Arrangement: "long-parlour"})
	if long.Hours.Likely <= short.Hours.Likely || long.Money.Likely <= short.Money.Likely {
		t.Errorf("short %+v %+v, long %+v %+v", short.Hours, short.Money, long.Hours, long.Money)
	}
}

// The first answers and the workspace afterwards are of one van: they say the same.
func TestTheFirstAnswersAreTheFiguresOfTheWorkspace(t *testing.T) {
	for _, b := range begin.Bodies() {
		f := look(t, begin.Answers{Body: b.ID})
		for code, got := range map[string]float64{"weight.margin.least": f.Left.Likely, "cost.forecast": f.Money.Likely, "shell.headroom": f.Room.Up} {
			if want, ok := f.Reckoning.Figure(code); !ok || math.Abs(got-want.Value) > 1e-9 {
				t.Errorf("%s: %s is %g, the first answers say %g", b.ID, code, want.Value, got)
			}
		}
	}
}

func matters(t testing.TB, a begin.Answers) []outlook.Matter {
	t.Helper()
	all, err := outlook.Matters(a, reckoner())
	if err != nil {
		t.Fatal(err)
	}
	return all
}

func TestTheReadingsThatMatterMostComeFirst(t *testing.T) {
	all := matters(t, begin.Answers{Body: "mid-mid"})
	if len(all) < 8 {
		t.Fatalf("only %d things matter", len(all))
	}
	for i := 1; i < len(all); i++ {
		if all[i].Weight > all[i-1].Weight {
			t.Errorf("%s comes before %s", all[i-1].Words, all[i].Words)
		}
	}
	top := outlook.Top(all, 2)
	if len(top) != 2 || top[0].Asked == "plate" && top[1].Asked == "plate" {
		t.Errorf("the two that matter most: %+v", top)
	}
	for _, m := range top {
		if m.Answer == "" || m.Low == m.High {
			t.Errorf("%s moves nothing", m.Words)
		}
	}
}

// What was read moves nothing any more, and the answers move by as much as the readings do.
func TestAReadingThatWasTakenIsNoLongerAmongThem(t *testing.T) {
	b := begin.BodyOf("mid-mid")
	for _, m := range matters(t, begin.Answers{Body: b.ID, Readings: begin.Readings{Length: &b.Length}}) {
		if m.Path == "/shell/quick/length" {
			t.Error("the length is still among them")
		}
	}
	for _, m := range matters(t, begin.Answers{Body: b.ID}) {
		if m.Path == "/shell/quick/length" && m.Answer == "along" && math.Abs(m.High-m.Low-580) > 1 {
			t.Errorf("lengthwise %g to %g, the length itself 580 apart", m.Low, m.High)
		}
		if m.Path == "/vehicle/plate/gross" && m.Answer != "left" {
			t.Errorf("the plate moves %s most", m.Answer)
		}
	}
}

func BenchmarkMatters(b *testing.B) {
	for b.Loop() {
		matters(b, begin.Answers{Body: "mid-mid"})
	}
}

// ExampleLook gives the first answers to nothing but an outline.
func ExampleLook() {
	m := reckon.NewMachine()
	f, err := outlook.Look(begin.Answers{Body: "mid-mid", Rules: "eu"}, func(doc *build.Document) *reckon.Reckoning { return m.Reckon(doc, quantity.Date{}) })
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%s: %.0f lengthwise, %.0f across, %.0f high\n", f.With.Name, f.Room.Along, f.Room.Across, f.Room.Up)
	// Output:
	// Settle that pulls out: 2886 lengthwise, 1767 across, 1709 high
}

// Whether somebody stands upright hangs on a few centimetres: then the height is among the two readings asked for next.
func TestTheHeightIsAskedForWhereItDecidesWhetherSomebodyStands(t *testing.T) {
	for _, id := range []string{"mid-mid", "mid-high", "short-mid"} {
		b := begin.BodyOf(id)
		top := outlook.Top(matters(t, begin.Answers{Body: id, Sleepers: []begin.Sleeper{{ID: "one", Stature: b.Height - 150}}}), 2)
		if !slices.ContainsFunc(top, func(m outlook.Matter) bool { return m.Path == "/shell/quick/height" && m.Turns }) {
			t.Errorf("%s: asked for next are %s and %s", id, top[0].Words, top[1].Words)
		}
	}
}

// What the first hour says of lying across is what the workspace says of a bed across the van where that is widest.
func TestTheRoomAcrossIsThatOfABedAcross(t *testing.T) {
	for _, name := range []string{"dipper", "godwit", "twite"} {
		text, err := examples.Document(name)
		if err != nil {
			t.Fatal(err)
		}
		doc, _, err := build.Decode(name, text, catalogue.Builtin())
		if err != nil {
			t.Fatal(err)
		}
		longest := 0.0
		first := outlook.Of(begin.Arrangement{}, reckoner()(doc))
		who := first.People[0]
		for x := 0.0; x <= first.Room.Along-700; x += 100 {
			doc.Fittings = map[string]build.Fitting{"shelf": {Make: "box", At: across(x), Size: size(700, 2200, 400)}}
			doc.Modes = map[string]build.Mode{"night": {People: map[string]build.Pose{who.ID: {Lies: "shelf", Head: "left"}}}}
			f, ok := reckoner()(doc).Figure("fit.bed.length." + who.ID)
			if !ok {
				t.Fatalf("%s: nobody lies at %g", name, x)
			}
			longest = max(longest, f.Value)
		}
		if got := who.Across + who.Stature + 115; math.Abs(got-longest) > 2 {
			t.Errorf("%s: %g mm across, but the longest bed across is %g mm", name, got, longest)
		}
	}
}

// across is a place from side to side, on the load floor.
func across(x float64) *build.Place {
	at := func(v float64) build.AxisRule {
		return build.AxisRule{Form: build.LowAt, A: build.Point{Plus: quantity.Length(v)}}
	}
	return &build.Place{X: at(x), Y: at(-1100), Z: at(0)}
}

func size(x, y, z quantity.Length) *build.Size { return &build.Size{X: &x, Y: &y, Z: &z} }
