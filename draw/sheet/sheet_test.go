package sheet_test

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/draw"
	"tumblehome/draw/sheet"
	"tumblehome/internal/golden"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/trade/finding"
)

var demos = []string{"dipper", "twite", "godwit"}

// demo reckons one of the example builds.
func demo(t testing.TB, name string) *reckon.Reckoning {
	t.Helper()
	text, err := os.ReadFile(filepath.Join("..", "..", "examples", name+".yaml"))
	if err != nil {
		t.Fatal(err)
	}
	doc, _, err := build.Decode(name, text, catalogue.Builtin())
	if err != nil {
		t.Fatal(err)
	}
	return reckon.NewMachine().Reckon(doc, quantity.Date{Year: 2026, Month: 9, Day: 19})
}

// modes of a build, and the van of today.
func modes(r *reckon.Reckoning) []string {
	out := []string{sheet.Today}
	for _, m := range r.Places.Modes {
		out = append(out, m.Name)
	}
	return out
}

func flawless(t *testing.T, s draw.Scene) {
	t.Helper()
	if len(s.Marks) == 0 || s.Title == "" || s.Description == "" {
		t.Errorf("%d marks, title %q, description %q", len(s.Marks), s.Title, s.Description)
	}
	for _, f := range s.Check() {
		t.Errorf("%s: %s", f.Kind, f.Says)
	}
}

func TestTheArrangementIsFitToBeSeenInEveryModeAndSize(t *testing.T) {
	for _, name := range demos {
		r := demo(t, name)
		for _, mode := range modes(r) {
			for _, v := range []sheet.View{{}, {Size: draw.A3, Revision: "214, 25 November"}, {Only: sheet.Plan}, {Only: sheet.Side}, {Only: sheet.Cross}} {
				v.Mode = mode
				t.Run(fmt.Sprintf("%s, %s, %v%s", name, mode, v.Size.Width, v.Only), func(t *testing.T) { flawless(t, sheet.Arrangement(r, v)) })
			}
		}
	}
}

func TestTheOtherSheetsAreFitToBeSeen(t *testing.T) {
	for _, name := range demos {
		r := demo(t, name)
		t.Run(name+", weight", func(t *testing.T) { flawless(t, sheet.Weight(r)) })
		t.Run(name+", measuring", func(t *testing.T) { flawless(t, sheet.Measuring(r)) })
		for _, surface := range []string{"left", "right", "roof", "floor"} {
			for _, bay := range r.Body.Bays(surface) {
				t.Run(name+", "+bay.ID, func(t *testing.T) { flawless(t, sheet.Section(r, surface, bay.ID, 0)) })
			}
		}
		for _, door := range r.Body.Doors() {
			t.Run(name+", "+door.ID, func(t *testing.T) { flawless(t, sheet.Section(r, "doors", door.ID, 0)) })
		}
	}
}

func TestASectionOfNoBayIsEmpty(t *testing.T) {
	if s := sheet.Section(demo(t, "dipper"), "left", "left-99", 0); len(s.Marks) != 0 {
		t.Errorf("%d marks", len(s.Marks))
	}
}

// groups gathers all groups of a scene by id.
func groups(marks []draw.Mark, into map[string]draw.Group) {
	for _, m := range marks {
		if g, ok := m.(draw.Group); ok {
			into[g.ID] = g
			groups(g.Marks, into)
		}
	}
}

func found(s draw.Scene) map[string]draw.Group {
	all := map[string]draw.Group{}
	groups(s.Marks, all)
	return all
}

// bounds of the first shape of a group.
func bounds(g draw.Group) draw.Rect { return g.Marks[0].(draw.Shape).Path.Bounds() }

func TestTheGroupsOfAFittingLieWhereTheViewsSayThatItIs(t *testing.T) {
	r := demo(t, "dipper")
	all := found(sheet.Arrangement(r, sheet.View{Mode: "day"}))
	box := r.Places.Mode("day").Find("table").Box
	for _, c := range []struct {
		view           string
		across0, along float64 // least across; least along on the paper
	}{
		{"plan", box.MinX, -box.MaxY},
		{"side", box.MinX, -box.MaxZ},
	} {
		t.Run(c.view, func(t *testing.T) {
			data := all["view-"+c.view].Data
			n := func(key string) float64 { v, _ := strconv.ParseFloat(data[key], 64); return v }
			want := draw.Pt(n("origin-x")+c.across0*n("scale"), n("origin-y")+c.along*n("scale"))
			g := all[c.view+"-table"]
			if got := bounds(g).Min; got.Distance(want) > 0.02 {
				t.Errorf("at %v, want %v", got, want)
			}
			if g.Class != "fitting" || g.Data["fitting"] != "table" || g.Data["view"] != c.view || g.Digest == "" {
				t.Errorf("class %q, data %v, digest %q", g.Class, g.Data, g.Digest)
			}
		})
	}
}

func TestWhatIsDrawnInAMode(t *testing.T) {
	r := demo(t, "dipper")
	for _, c := range []struct {
		name, mode string
		has, lacks []string
	}{
		{"the bed made up, somebody on it", "night", []string{"plan-pullout", "plan-person-tall", "side-person-small"}, nil},
		{"nobody about while driving", "drive", []string{"plan-table"}, []string{"plan-person-tall"}},
		{"today only what is in", sheet.Today, []string{"plan-settle", "plan-window"}, []string{"plan-galley", "plan-person-tall"}},
		{"the blind taken down", "unload", []string{"plan-gear-drawer"}, []string{"plan-blind-rear"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			all := found(sheet.Arrangement(r, sheet.View{Mode: c.mode}))
			for _, id := range c.has {
				if _, ok := all[id]; !ok {
					t.Errorf("%s is not drawn", id)
				}
			}
			for _, id := range c.lacks {
				if _, ok := all[id]; ok {
					t.Errorf("%s is drawn", id)
				}
			}
		})
	}
}

func TestADigestChangesWithWhatIsDrawnAndOnlyThen(t *testing.T) {
	r := demo(t, "dipper")
	drive, night := found(sheet.Arrangement(r, sheet.View{Mode: "drive"})), found(sheet.Arrangement(r, sheet.View{Mode: "night"}))
	for _, c := range []struct {
		id   string
		same bool
	}{{"plan-galley", true}, {"side-overlocker", true}, {"plan-pullout", false}, {"plan-body", true}} {
		if same := drive[c.id].Digest == night[c.id].Digest; same != c.same {
			t.Errorf("%s: same %v, want %v", c.id, same, c.same)
		}
		if text := drive[c.id].String() == night[c.id].String(); text != c.same {
			t.Errorf("%s: drawn the same %v, want %v", c.id, text, c.same)
		}
	}
}

func TestFlagsCarryTheNumbersOfTheOpenNotes(t *testing.T) {
	r := *demo(t, "dipper")
	r.Findings = nil
	for i := range 24 {
		about := []string{"/fittings/settle", "/fittings/galley", "/lining/roof/2", "/shell/openings/side", "/vehicle/tyres/rear", "/build/budget"}[i%6]
		f := finding.Finding{Code: "test." + strconv.Itoa(i), Severity: finding.Severity(3 - i/6), About: []string{about}, Title: "note"}
		switch i {
		case 1:
			f.Accepted = "we live with it"
		case 2:
			f.Mode = "day"
		}
		r.Findings = append(r.Findings, f)
	}
	s := sheet.Arrangement(&r, sheet.View{Mode: "night"})
	flawless(t, s)
	all := found(s)
	flags := 0
	for id, g := range all {
		if strings.HasPrefix(id, "flag-") {
			flags++
			if g.Href != "#note-"+strings.TrimPrefix(id, "flag-") {
				t.Errorf("%s goes to %s", id, g.Href)
			}
		}
	}
	// 24 less one accepted and one of another mode; four of the rest are about the budget, which has no place.
	if flags != 18 {
		t.Errorf("%d flags, want 18", flags)
	}
	if g := all["flag-2"]; !strings.Contains(g.Class, "danger") { // the fourth finding is the second open note
		t.Errorf("flag 2 is %q", g.Class)
	}
	if _, ok := all["flag-4"]; ok {
		t.Error("a note about the budget has a flag")
	}
}

func TestTheDrawingSaysInWordsWhatStandsWhere(t *testing.T) {
	text := sheet.Arrangement(demo(t, "dipper"), sheet.View{Mode: "night"}).Description
	for _, want := range []string{"2\u202f910 long inside the lining", "On the right, from the front: galley from 40 to 990", "tall lies on the pull-out bed", "Outside: panel"} {
		if !strings.Contains(text, want) {
			t.Errorf("no %q in %q", want, text)
		}
	}
}

func TestTheSameReckoningGivesTheSameBytes(t *testing.T) {
	r := demo(t, "godwit")
	var first, second bytes.Buffer
	_ = sheet.Arrangement(r, sheet.View{Mode: "night"}).SVG(&first, draw.SVGOptions{})
	_ = sheet.Arrangement(demo(t, "godwit"), sheet.View{Mode: "night"}).SVG(&second, draw.SVGOptions{})
	if !bytes.Equal(first.Bytes(), second.Bytes()) {
		t.Error("the drawings differ")
	}
}

// What stands so far out that the sheet does not reach it is named at the rim, on the side where it is.
func TestWhatStandsOffTheSheetIsNamedAtItsRim(t *testing.T) {
	for _, at := range []string{"{x: 9000, y: 0, z: 0}", "{x: -9000, y: 0, z: 0}", "{x: 500, y: 7000, z: 0}", "{x: 9000, y: -7000, z: 9000}"} {
		doc, _, err := build.Decode("bare", []byte("tumblehome: 1\nbuild: {title: Bare, rules: gb, currency: GBP}\nuse: {climate: gb-highland}\nvehicle: {wheelbase: 3000, datum: 1200}\nshell: {}\n"+
			"fittings: {crate: {make: box, at: "+at+", size: {x: 400, y: 300, z: 300}, mass: 6}}\n"), catalogue.Builtin())
		if err != nil {
			t.Fatal(err)
		}
		for _, v := range []sheet.View{{}, {Only: sheet.Plan}} {
			s := sheet.Arrangement(reckon.NewMachine().Reckon(doc, quantity.Date{}), v)
			flawless(t, s)
			g, ok := found(s)["plan-crate-astray"]
			if !ok || g.Data["fitting"] != "crate" || !strings.Contains(letters(s), " m off") {
				t.Errorf("at %s, %v: the crate is not named: %v", at, v, g)
			}
			if _, ok := found(s)["plan-crate"]; ok {
				t.Errorf("at %s, %v: it is drawn off the sheet as well", at, v)
			}
		}
	}
}

// A build of which nothing is known but what must be said is drawn as a typical body.
func TestABuildWithoutReadingsIsDrawnToo(t *testing.T) {
	doc, _, err := build.Decode("bare", []byte("tumblehome: 1\nbuild: {title: Bare, rules: gb, currency: GBP}\nuse: {climate: gb-highland}\nvehicle: {wheelbase: 3000, datum: 1200}\nshell: {}\n"), catalogue.Builtin())
	if err != nil {
		t.Fatal(err)
	}
	r := reckon.NewMachine().Reckon(doc, quantity.Date{})
	for _, s := range []draw.Scene{sheet.Arrangement(r, sheet.View{}), sheet.Measuring(r), sheet.Weight(r), sheet.Section(r, "left", "left-1", 0)} {
		for _, f := range s.Check() {
			t.Errorf("%s: %s: %s", s.Title, f.Kind, f.Says)
		}
	}
}

func TestGolden(t *testing.T) {
	r := demo(t, "dipper")
	for name, s := range map[string]draw.Scene{
		"night": sheet.Arrangement(r, sheet.View{Mode: "night", Size: draw.A3}), "weight": sheet.Weight(r), "measuring": sheet.Measuring(r),
		"right-3": sheet.Section(r, "right", "right-3", 0),
	} {
		var text bytes.Buffer
		if err := s.SVG(&text, draw.SVGOptions{Standalone: true}); err != nil {
			t.Fatal(err)
		}
		golden.Equal(t, filepath.Join("testdata", "dipper-"+name+".golden.svg"), text.Bytes())
	}
}

func BenchmarkArrangement(b *testing.B) {
	for _, name := range demos {
		r := demo(b, name)
		b.Run(fmt.Sprintf("%s, %d fittings", name, len(r.Document.Fittings)), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				sheet.Arrangement(r, sheet.View{Mode: "night"})
			}
		})
	}
}
