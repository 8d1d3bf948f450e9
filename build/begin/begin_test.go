package begin_test

import (
	"bytes"
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"tumblehome/build"
	"tumblehome/build/begin"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/catalogue/people"
	"tumblehome/internal/proof"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/trade/finding"
	"tumblehome/trade/shell"
)

func ptr[T any](v T) *T { return &v }

func document(t testing.TB, a begin.Answers) *build.Document {
	t.Helper()
	doc, _, err := begin.Document(a)
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

// usual are the sleepers an arrangement is made for.
func usual(sleeps int) []begin.Sleeper {
	switch sleeps {
	case 1:
		return []begin.Sleeper{{ID: "solo", Stature: 1750}}
	case 4:
		return []begin.Sleeper{{ID: "tall", Stature: 1750}, {ID: "small", Stature: 1650}, {ID: "elder", Stature: 1300}, {ID: "younger", Stature: 1200}}
	}
	return nil // the two assumed
}

// every calls f for all twenty-seven starting arrangements.
func every(t *testing.T, wishes []string, rules string, f func(t *testing.T, a begin.Answers)) {
	for _, b := range begin.Bodies() {
		a := begin.Answers{Body: b.ID, Rules: rules, Wishes: wishes}
		offers := begin.Offers(a)
		if len(offers) != 3 {
			t.Fatalf("%s: %d starting arrangements", b.ID, len(offers))
		}
		for _, o := range offers {
			a.Arrangement, a.Sleepers = o.ID, usual(o.Sleeps)
			t.Run(b.ID+" "+o.ID, func(t *testing.T) { f(t, a) })
		}
	}
}

func faultless(t *testing.T, a begin.Answers) {
	doc := document(t, a)
	r := reckon.NewMachine().Reckon(doc, quantity.Date{})
	for _, f := range r.Findings {
		if f.Severity >= finding.Fault || f.Code == "fit.bed.bare" {
			t.Errorf("%s: %s", f.Severity, f.Title)
		}
	}
	for id := range doc.People {
		if _, lies := r.Figure("fit.bed.length." + id); !lies {
			t.Errorf("%s has no bed", id)
		}
	}
}

func TestEveryStartingArrangementReckonsWithoutAFault(t *testing.T) {
	every(t, nil, "eu", faultless)
}

func TestEveryArrangementReckonsMirroredAndWithAllWishes(t *testing.T) {
	var all []string
	for _, w := range begin.Wishes() {
		all = append(all, w.ID)
	}
	every(t, all, "gb", faultless)
}

func TestWhatIsNamedAfterASideStandsOnThatSide(t *testing.T) {
	named := 0
	for _, rules := range []string{"eu", "gb"} {
		every(t, nil, rules, func(t *testing.T, a begin.Answers) {
			doc := document(t, a)
			r := reckon.NewMachine().Reckon(doc, quantity.Date{})
			for id, f := range doc.Fittings {
				side := map[bool]float64{strings.HasPrefix(f.Called, "left "): -1, strings.HasPrefix(f.Called, "right "): 1}[true]
				if one := r.Places.Find(id); side != 0 {
					named++
					if one == nil || side*(one.Box.MinY+one.Box.MaxY) <= 0 {
						t.Errorf("%s, the %s, stands on the other side", id, f.Called)
					}
				}
			}
			if left, pair := doc.Vehicle.Seats["rear-left"]; pair && left.Y >= doc.Vehicle.Seats["rear-right"].Y {
				t.Errorf("the left seat of the rear is at %v, right of the right one", left.Y)
			}
		})
	}
	if named == 0 {
		t.Error("nothing is named after a side")
	}
}

func TestTheBedsAreLongEnoughForWhoIsAsked(t *testing.T) {
	every(t, nil, "gb", func(t *testing.T, a begin.Answers) {
		r := reckon.NewMachine().Reckon(document(t, a), quantity.Date{})
		for _, f := range r.Figures {
			if strings.HasPrefix(f.Code, "fit.bed.length.") && f.Value < *f.Limit-1 {
				t.Errorf("%s: %.0f of %.0f", f.Label, f.Value, *f.Limit)
			}
		}
	})
}

func TestTallSleepersGetALongerBed(t *testing.T) {
	for _, stature := range []quantity.Length{1450, 1750, 1900, 2000} {
		a := begin.Answers{Body: "mid-mid", Arrangement: "mid-settle", Sleepers: []begin.Sleeper{{ID: "one", Stature: stature}}}
		r := reckon.NewMachine().Reckon(document(t, a), quantity.Date{})
		f, _ := r.Figure("fit.bed.length.one")
		if f.Value < float64(stature)+115 || f.Value > float64(stature)+120 {
			t.Errorf("stature %v: bed of %.0f", stature, f.Value)
		}
	}
}

func TestTypicalReadingsAreThoseOfTheGenericBodies(t *testing.T) {
	for _, b := range begin.Bodies() {
		body := shell.Work(shell.Inputs{Quick: &shell.Quick{Body: b.ID}}).Body
		mid := body.Length() / 2
		arch := body.Arches()[0]
		var door shell.Door
		for _, d := range body.Doors() {
			if d.Surface == shell.Right {
				door = d
			}
		}
		for _, c := range []struct {
			name      string
			got, want float64
		}{
			{"length", float64(b.Length), body.Length()},
			{"width at the knee", float64(b.Knee), 2 * body.Half(mid, 400)},
			{"between the arches", float64(b.Arches), 2 * arch.Face},
			{"height", float64(b.Height), body.Roof(mid, 0)},
			{"door width", float64(b.DoorWidth), door.To - door.From},
			{"door height", float64(b.DoorHeight), door.Up},
		} {
			if math.Abs(c.got-c.want) > 1 {
				t.Errorf("%s: %s is %g here and %g in the shell", b.ID, c.name, c.got, c.want)
			}
		}
		v := document(t, begin.Answers{Body: b.ID}).Vehicle
		if axle := float64(v.Wheelbase - v.Datum); axle < arch.From || axle > arch.To || math.Abs(axle-(arch.From+arch.To)/2) > 6 {
			t.Errorf("%s: the rear axle lies at %g, the arches from %g to %g", b.ID, axle, arch.From, arch.To)
		}
	}
}

// The mass guessed from stature against the mean soldier of each sex, who is fitter and heavier built than most.
func TestGuessedMassesHoldTheSurveyedMeans(t *testing.T) {
	for _, c := range []struct {
		name    string
		stature quantity.Length
		mean    float64
	}{{"men", 1756, 85.5}, {"women", 1629, 67.8}} {
		m := document(t, begin.Answers{Sleepers: []begin.Sleeper{{ID: "x", Stature: c.stature}}}).People["x"].Mass
		proof.Check(t, proof.Case{Name: "guessed mass of " + c.name + " of mean stature", Source: "public US Army survey of 2012, mean body mass", Inputs: c.stature.String() + " mm",
			Expected: c.mean, Got: float64(m.Likely), Tolerance: 9, Unit: "kg"})
		if float64(m.Low) > c.mean || float64(m.High) < c.mean {
			t.Errorf("%s: %v does not hold %g", c.name, m, c.mean)
		}
	}
	if m, ok := people.Survey(people.BodyMass, people.Men); ok && math.Abs(m.Mean-85.5) > 0.5 {
		t.Errorf("the survey says %g", m.Mean)
	}
}

// some answers at random: each question answered or not.
func some(r *rand.Rand) begin.Answers {
	a := begin.Answers{Rules: []string{"gb", "eu", "us"}[r.IntN(3)]}
	asked := func() bool { return r.IntN(2) == 0 }
	length := func(usual quantity.Length) *quantity.Length {
		if !asked() {
			return nil
		}
		return ptr(usual + quantity.Length(r.IntN(200)-100))
	}
	if asked() {
		a.Title, a.Currency = "Wren", "EUR"
	}
	b := begin.Bodies()[r.IntN(9)]
	if asked() {
		a.Body = b.ID
	} else {
		b = begin.BodyOf("")
	}
	a.Readings = begin.Readings{Length: length(b.Length), Knee: length(b.Knee), Arches: length(b.Arches), Height: length(b.Height), DoorWidth: length(b.DoorWidth)}
	if asked() {
		a.Readings.DoorSide = map[string]string{"gb": "right", "eu": "left", "us": "none"}[a.Rules]
	}
	if asked() {
		a.Plate.Gross, a.Plate.Train = ptr(quantity.Mass(3050)), ptr(quantity.Mass(5000))
	}
	if asked() {
		a.Plate.Rear, a.Wheelbase = ptr(quantity.Mass(1800)), ptr(quantity.Length(3300))
	}
	for i := range r.IntN(4) {
		a.Sleepers = append(a.Sleepers, begin.Sleeper{ID: fmt.Sprintf("p%d", i), Stature: quantity.Length(1100 + r.IntN(900))})
	}
	for _, w := range begin.Wishes() {
		if r.IntN(4) == 0 {
			a.Wishes = append(a.Wishes, w.ID)
		}
	}
	if asked() {
		m, _ := quantity.ParseMoney("5000")
		a.Budget, a.Weekends = &m, ptr(20)
	}
	if asked() {
		a.Arrangement = begin.Offers(a)[r.IntN(3)].ID
	}
	return a
}

func TestAnswersAreFoundAgainInTheDocument(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 200 {
		a := some(r)
		doc := document(t, a)
		again := document(t, begin.Read(doc))
		if !bytes.Equal(build.WriteYAML(doc), build.WriteYAML(again)) {
			t.Fatalf("%+v is read as %+v:\n%s\n---\n%s", a, begin.Read(doc), build.WriteYAML(doc), build.WriteYAML(again))
		}
		if !bytes.Equal(build.WriteYAML(doc), build.WriteYAML(document(t, a))) {
			t.Fatalf("%+v gives two documents", a)
		}
	}
}

func TestAnAnswerIsAnEditThatLeavesTheRestAlone(t *testing.T) {
	from := begin.Answers{Body: "mid-mid", Arrangement: "mid-settle"}
	doc := document(t, from)
	moved, err := build.Apply(doc, tree.Setting("/fittings/locker/at/x", tree.Plain("1400")), catalogue.Builtin())
	if err != nil {
		t.Fatal(err)
	}
	to := from
	to.Plate.Gross = ptr(quantity.Mass(3000))
	patch, err := begin.Change(from, to)
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range patch.Touches() {
		if !strings.HasPrefix(string(p), "/vehicle/") {
			t.Errorf("reading the plate touches %s", p)
		}
	}
	after, err := build.Apply(moved, patch, catalogue.Builtin())
	if err != nil {
		t.Fatal(err)
	}
	if *after.Vehicle.Plate.Gross != 3000 || after.Fittings["locker"].At.X.A.Plus != 1400 {
		t.Errorf("gross %v, locker at %v", *after.Vehicle.Plate.Gross, after.Fittings["locker"].At.X)
	}
}

func paths(all []begin.Assumption) []string {
	var out []string
	for _, a := range all {
		out = append(out, a.Path)
	}
	return out
}

func TestWhatIsSaidIsNoLongerAssumed(t *testing.T) {
	_, all, err := begin.Document(begin.Answers{})
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{"/shell/quick/body", "/shell/quick/length", "/vehicle/plate/gross", "/vehicle/wheelbase", "/vehicle/weighed",
		"/people/first/stature", "/people/first/mass", "/lining", "/use/note"} {
		if !slices.Contains(paths(all), want) {
			t.Errorf("%s is not said to be assumed", want)
		}
	}
	for _, one := range all {
		if one.Words == "" || one.Value == "" || one.Spread == "" || one.Matters == "" {
			t.Errorf("%+v does not say all", one)
		}
	}
	body := begin.BodyOf("mid-mid")
	_, few, _ := begin.Document(begin.Answers{Body: body.ID, Readings: begin.Readings{Length: &body.Length}, Plate: begin.Plate{Gross: ptr(quantity.Mass(3300))},
		Sleepers: []begin.Sleeper{{ID: "ann", Stature: 1700}}, Wishes: []string{"kitchen"}})
	for _, gone := range []string{"/shell/quick/body", "/shell/quick/length", "/vehicle/plate/gross", "/people/first/stature", "/use/note"} {
		if slices.Contains(paths(few), gone) {
			t.Errorf("%s is assumed though it was said, even where it is as typical", gone)
		}
	}
}

func TestWhereThereIsNoSideDoorItsSizeIsNotAssumed(t *testing.T) {
	for side, want := range map[string]bool{"left": true, "none": false} {
		_, all, _ := begin.Document(begin.Answers{Readings: begin.Readings{DoorSide: side}})
		for _, path := range []string{"/shell/quick/door-width", "/shell/quick/door-height"} {
			if slices.Contains(paths(all), path) != want {
				t.Errorf("door %s: %s among what is assumed: %v", side, path, !want)
			}
		}
	}
}

func TestWhatIsChangedElsewhereIsNoLongerAssumed(t *testing.T) {
	doc := document(t, begin.Answers{})
	changed, err := build.Apply(doc, tree.Setting("/vehicle/wheelbase", tree.Plain("3400")), catalogue.Builtin())
	if err != nil {
		t.Fatal(err)
	}
	if slices.Contains(paths(begin.Assumed(changed)), "/vehicle/wheelbase") {
		t.Error("the wheelbase is still assumed")
	}
}

func TestAnswersThatCannotBeAreRefused(t *testing.T) {
	for name, a := range map[string]begin.Answers{
		"two sleepers of one name":                {Sleepers: []begin.Sleeper{{ID: "ann", Stature: 1700}, {ID: "ann", Stature: 1600}}},
		"an arrangement of another length":        {Body: "short-low", Arrangement: "long-bunks"},
		"an arrangement that does not exist":      {Body: "short-low", Arrangement: "short-palace"},
		"a fragment that is no arrangement":       {Body: "short-low", Arrangement: "lining"},
		"a load floor longer than any van's":      {Readings: begin.Readings{Length: ptr(quantity.Length(9000))}},
		"a sleeper taller than anybody":           {Sleepers: []begin.Sleeper{{ID: "ann", Stature: 3000}}},
		"a name that is no id":                    {Sleepers: []begin.Sleeper{{ID: "Ann B", Stature: 1700}}},
		"a plate lighter than any van's":          {Plate: begin.Plate{Gross: ptr(quantity.Mass(12))}},
		"a wheelbase shorter than any van's":      {Wheelbase: ptr(quantity.Length(100))},
		"a currency that nobody knows":            {Currency: "ABC"},
		"a width at the knee wider than the road": {Readings: begin.Readings{Knee: ptr(quantity.Length(5000))}},
	} {
		if _, _, err := begin.Document(a); err == nil {
			t.Errorf("%s is taken", name)
		}
	}
}

func TestOffersThatSuitComeFirst(t *testing.T) {
	for _, c := range []struct {
		name  string
		a     begin.Answers
		first string
	}{
		{"one who wants it cheap and out again", begin.Answers{Body: "short-low", Sleepers: usual(1), Wishes: []string{"cheap", "removable"}}, "short-boxes"},
		{"two who want the bed made", begin.Answers{Body: "mid-mid", Wishes: []string{"fixed-bed", "garage"}}, "mid-fixed"},
		{"two who want to sit and dry things", begin.Answers{Body: "mid-mid", Wishes: []string{"seats-table", "heating"}}, "mid-settle"},
		{"a family", begin.Answers{Body: "long-high", Sleepers: usual(4)}, "long-bunks"},
		{"two on long journeys", begin.Answers{Body: "long-high", Wishes: []string{"toilet", "work-desk"}}, "long-parlour"},
	} {
		offers := begin.Offers(c.a)
		if offers[0].ID != c.first {
			t.Errorf("%s: %s comes first", c.name, offers[0].ID)
		}
	}
}

func TestIDOfAName(t *testing.T) {
	for name, want := range map[string]string{"Tall one": "tall-one", "  Ann ": "ann", "42": "", "B. & C.": "b-c", "Zoë": "zoe", "Anna Löf": "anna-lof", "Jürgen Strauß": "jurgen-strauss", "Łukasz": "lukasz", "Søren Æbel": "soren-aebel", "Юрий": "", "O’Nell": "onell", strings.Repeat("long name ", 9): "long-name-long-name-long-name-long-nam"} {
		if got := begin.ID(name); got != want {
			t.Errorf("%q is %q, want %q", name, got, want)
		}
	}
}

func TestANameIsKeptAsItWasTyped(t *testing.T) {
	said := []begin.Sleeper{{ID: "anna-lof", Name: "Anna Löf", Stature: 1700}, {ID: "sleeper-2", Name: "Юрий", Stature: 1800}}
	doc := document(t, begin.Answers{Body: "mid-mid", Arrangement: "mid-settle", Sleepers: said})
	if got := begin.Read(doc).Sleepers; !slices.Equal(got, said) {
		t.Errorf("read again as %v", got)
	}
	for _, one := range begin.Assumed(doc) {
		if one.Path == "/people/anna-lof/mass" && one.Words != "mass of Anna Löf" {
			t.Errorf("it is the %s", one.Words)
		}
	}
}

func TestNobodyInventedIsCalledByANumber(t *testing.T) {
	for id, p := range document(t, begin.Answers{}).People {
		if !strings.HasSuffix(p.Called, "sleeper") {
			t.Errorf("%s is called %q", id, p.Called)
		}
	}
}

// ExampleDocument begins with two answers; the rest is assumed.
func ExampleDocument() {
	doc, assumed, err := begin.Document(begin.Answers{Rules: "eu", Body: "short-low", Sleepers: []begin.Sleeper{{ID: "solo", Stature: 1720}}})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("wheelbase", doc.Vehicle.Wheelbase, "plate", *doc.Vehicle.Plate.Gross)
	fmt.Println(len(assumed), "things are assumed; the first:", assumed[0].Words+",", assumed[0].Value+",", assumed[0].Spread)
	for _, o := range begin.Offers(begin.Read(doc)) {
		fmt.Println("-", o.Name)
	}
	// Output:
	// wheelbase 2690 plate 2000
	// 17 things are assumed; the first: length of the load floor, 1 800 mm, give or take 180 mm
	// - Low settle and cook box
	// - Boxes on the passenger's side
	// - Platform for two
}
