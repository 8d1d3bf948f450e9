package people_test

import (
	"fmt"
	"math"
	"testing"

	"tumblehome/catalogue/people"
	"tumblehome/internal/proof"
	"tumblehome/quantity"
)

func TestTheSurveyIsWholeAndOrdered(t *testing.T) {
	for _, d := range []people.Dimension{people.Stature, people.SittingHeight, people.EyeSitting, people.ElbowRest, people.Popliteal,
		people.ButtockToKnee, people.ButtockToHollow, people.KneeSitting, people.Thigh, people.Shoulders, people.Elbows, people.Hips,
		people.ShoulderHeight, people.Chest, people.Belly, people.ReachUpSitting, people.Reach, people.BodyMass} {
		for sex, count := range map[people.Sex]int{people.Men: 4082, people.Women: 1986} {
			m, ok := people.Survey(d, sex)
			if !ok || m.Count != count {
				t.Errorf("%s %s: %v, %d people", d, sex, ok, m.Count)
			}
			if !(m.P1 < m.P5 && m.P5 < m.P50 && m.P50 < m.P95 && m.P95 < m.P99) {
				t.Errorf("%s %s: percentiles do not rise: %+v", d, sex, m)
			}
			if math.Abs(m.P50-m.Mean) > 0.15*m.Dev {
				t.Errorf("%s %s: median %g is far from the mean %g", d, sex, m.P50, m.Mean)
			}
		}
	}
	if _, ok := people.Survey("hat_size", people.Men); ok {
		t.Error("a dimension that was not surveyed was found")
	}
	if n := len(people.PublishedFigures()); n < 20 {
		t.Errorf("%d published figures", n)
	}
}

// The printed report of the 2012 survey gives means and scatters to a tenth of
// a mm; quoted from memory of its summary tables.
func TestMeansOfTheSurvey(t *testing.T) {
	for _, c := range []struct {
		d         people.Dimension
		sex       people.Sex
		mean, dev float64
	}{
		{people.Stature, people.Men, 1756.2, 68.6}, {people.Stature, people.Women, 1628.5, 64.2},
		{people.SittingHeight, people.Men, 918.3, 35.7}, {people.SittingHeight, people.Women, 856.6, 33.1},
	} {
		m, _ := people.Survey(c.d, c.sex)
		const source = "report of the US Army anthropometric survey of 2012, summary tables, from memory"
		name := fmt.Sprintf("mean %s, %s", c.d, c.sex)
		proof.Check(t, proof.Case{Name: name, Source: source, Inputs: "all records", Expected: c.mean, Got: m.Mean, Tolerance: 0.1, Unit: "mm"})
		proof.Check(t, proof.Case{Name: name + ", scatter", Source: source, Inputs: "all records", Expected: c.dev, Got: m.Dev, Tolerance: 0.1, Unit: "mm"})
	}
}

// A body scaled from the mean stature of another people must come out near
// what is printed for that people: an independent check of the shares.
func TestScalingAgainstBritishFigures(t *testing.T) {
	stature := map[people.Sex]float64{}
	for _, p := range people.PublishedFigures() {
		if p.Population != "British 19-65" {
			continue
		}
		if p.Dimension == people.Stature {
			stature[p.Sex] = p.P50
			continue
		}
		size, half := people.Of(quantity.Length(stature[p.Sex])).Size(p.Dimension)
		if size == 0 {
			t.Fatalf("%s is not surveyed", p.Dimension)
		}
		if p.Dimension == people.Shoulders && p.Sex == people.Women {
			// Soldiers' shoulders are wide, most so the women's: doc.go says so. The error is on the roomy side.
			if float64(size) < p.P50 || float64(size) > 1.17*p.P50 {
				t.Errorf("women's shoulders %g, printed %g: want up to 17 %% wide", float64(size), p.P50)
			}
			continue
		}
		proof.Check(t, proof.Case{
			Name: fmt.Sprintf("%s of a British %s of median stature", p.Dimension, p.Sex), Source: "British 19-65: " + p.Source,
			Inputs:   fmt.Sprintf("stature %g mm; shares of a US survey of 2012; allowed: the stated half-width", stature[p.Sex]),
			Expected: p.P50, Got: float64(size), Tolerance: half * float64(size), Unit: "mm"})
	}
}

func TestRoom(t *testing.T) {
	for _, c := range []struct {
		name   string
		got    quantity.Length
		expect float64
		inputs string
	}{
		{"least bed length of a median man", people.Of(1755).LyingLength(), 1755 + 15 + 100, "stature 1755, lying 15, feet and pillow 100"},
		{"standing headroom of a median man", people.Of(1755).StandingHeadroom(), 1815, "stature 1755, shoes 25, clearance 35"},
		{"standing headroom of a tall man (95 in 100)", people.Of(1870).StandingHeadroom(), 1930, "stature 1870, shoes 25, clearance 35"},
	} {
		proof.Check(t, proof.Case{Name: c.name, Source: "sum of the stated allowances, worked by hand; lying 15 and shoes 25 from university tables",
			Inputs: c.inputs + " mm", Expected: c.expect, Got: float64(c.got), Tolerance: 0, Unit: "mm"})
	}
}

// Scaling from stature is held against the survey's own medians: a person of
// median stature should come out at the median of each dimension, within the
// half-width Size states.
func TestABodyOfMedianStatureIsNearTheMedians(t *testing.T) {
	for _, sex := range []people.Sex{people.Men, people.Women} {
		stature, _ := people.Survey(people.Stature, sex)
		for _, d := range []people.Dimension{people.SittingHeight, people.Popliteal, people.ButtockToHollow, people.Thigh,
			people.Shoulders, people.Hips, people.Belly, people.Reach} {
			m, _ := people.Survey(d, sex)
			size, half := people.Of(quantity.Length(stature.P50)).Size(d)
			if off := math.Abs(float64(size)/m.P50 - 1); off > half/2 {
				t.Errorf("%s %s: scaled %g, surveyed %g, off by %.1f %% (half-width %.1f %%)", d, sex, float64(size), m.P50, 100*off, 100*half)
			}
		}
	}
}

func TestTwoSideBySideNeedLessThanTwoWideOnesWithTheirRoomAdded(t *testing.T) {
	a, b := people.Of(1755), people.Of(1626)
	wa, ha := a.Size(people.Shoulders)
	wb, hb := b.Size(people.Shoulders)
	least, most := float64(wa+wb)+people.Turning, float64(wa)*(1+ha)+float64(wb)*(1+hb)+people.Turning
	if got := float64(people.SideBySide(a, b)); got <= least || got >= most {
		t.Errorf("side by side %g, want between %g and %g", got, least, most)
	}
	if people.SideBySide() != 0 || people.SideBySide(a) != a.BedWidth() {
		t.Error("nobody needs room, or one alone needs another bed than one's own")
	}
}

func TestMoreStatureNeverNeedsLessRoom(t *testing.T) {
	for s := quantity.Length(1200); s < 2100; s += 50 {
		a, b := people.Of(s), people.Of(s+50)
		needs := func(p people.Body) []quantity.Length {
			low, high := p.SeatHeight()
			return []quantity.Length{p.LyingLength(), p.BedWidth(), p.SittingHeadroom(), p.StandingHeadroom(), low, high, p.SeatDepth(),
				p.SeatWidth(), p.LeaningHeadroom(), p.ArmReach(), p.KneeRoom(), p.TableAboveSeat(), p.WorktopHeight(), p.Sidling(), people.SideBySide(p, p)}
		}
		for i, n := range needs(b) {
			if n < needs(a)[i] {
				t.Errorf("need %d falls from %g to %g between %g and %g", i, float64(needs(a)[i]), float64(n), float64(s), float64(s+50))
			}
		}
	}
}

func ExampleOf() {
	p := people.Of(1830)
	fmt.Println("bed at least", p.LyingLength(), "long; stands under", p.StandingHeadroom())
	// Output: bed at least 1945 long; stands under 1890
}

// The six standard bodies against what the survey's own table prints.
func TestTheStandardBodiesAreThoseOfTheSurvey(t *testing.T) {
	const source = "table of the US Army survey of 2012, computed from its public records (vehicle-and-habitation tables, d1)"
	all := people.Standards()
	if len(all) != 6 {
		t.Fatalf("%d standard bodies", len(all))
	}
	for _, c := range []struct {
		name           string
		at             int
		stature, slips float64 // stature; and the gap to slip through sideways: depth of the belly, 40 of clothes, 10
		sits           float64 // headroom sitting: sitting height and 35
	}{
		{"small woman", 0, 1525, 184 + 50, 803 + 35},
		{"middling woman", 1, 1626, 227 + 50, 857 + 35},
		{"middling man", 4, 1755, 251 + 50, 918 + 35},
		{"large man", 5, 1870, 320 + 50, 977 + 35},
	} {
		b := all[c.at]
		if b.Name != c.name {
			t.Errorf("body %d is the %s, not the %s", c.at, b.Name, c.name)
		}
		for _, f := range []struct {
			what     string
			got      quantity.Length
			expected float64
		}{{"stature", b.Body.Stature, c.stature}, {"gap to slip through", b.Body.Sidling(), c.slips}, {"headroom sitting", b.Body.SittingHeadroom(), c.sits}} {
			proof.Check(t, proof.Case{Name: f.what + " of the " + c.name, Source: source, Inputs: "percentile of the survey and the stated allowances", Expected: f.expected, Got: float64(f.got), Unit: "mm"})
		}
	}
	if size, off := all[5].Body.Size(people.Thigh); size != 207 || off != 0 {
		t.Errorf("thighs of the large man: %g, off by %g", float64(size), off)
	}
}
