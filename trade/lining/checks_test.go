package lining_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"tumblehome/quantity"
	"tumblehome/trade/finding"
	"tumblehome/trade/lining"
)

func TestWhatIsWrongWithTheLayersIsFound(t *testing.T) {
	for _, c := range []struct {
		name     string
		layers   []lining.Layer
		code     string
		severity finding.Severity
		about    string
		words    string
	}{
		{"a little proud of the ribs", []lining.Layer{{Of: wool25}, {Of: xps20}}, "lining.bay-overfull", finding.Note, "/lining/sides/0", "pack the battens out"},
		{"far too much", []lining.Layer{{Of: xps20, Times: 4}}, "lining.bay-overfull", finding.Close, "/lining/sides/0", "pack the battens out"},
		{"a slip in the name of a bay", []lining.Layer{{Of: foam10, Bays: map[string]lining.Layer{"rigt-2": {Of: xps20}}}}, "lining.bay-unknown", finding.Fault, "/lining/sides/0/bays/rigt-2", "Was right-2 meant?"},
		{"thin ply from rib to rib", []lining.Layer{{Of: foam10}, {Of: poplar4}}, "lining.board-slack", finding.Note, "/lining/sides/1", "300 to 400 mm"},
		{"no thickness", []lining.Layer{{Of: lining.Material{ID: "felt", Kind: lining.Cover, PerArea: 1}}}, "lining.thickness-unknown", finding.Note, "/lining/sides/0", "no room"},
		{"no mass", []lining.Layer{{Of: lining.Material{ID: "felt", Kind: lining.Cover, Thick: 4}}}, "lining.mass-unknown", finding.Note, "/lining/sides/0", "weighs nothing"},
	} {
		found := lining.Work(boxInputs(sides(c.layers...))).Findings
		i := slices.IndexFunc(found, func(f finding.Finding) bool { return f.Code == c.code })
		if i < 0 {
			t.Errorf("%s: %s not among %v", c.name, c.code, found)
			continue
		}
		if f := found[i]; f.Severity != c.severity || f.About[0] != c.about || !strings.Contains(f.Words, c.words) || f.Source.Text == "" {
			t.Errorf("%s: got %+v", c.name, f)
		}
	}
}

// Who lays one board everywhere makes one mistake, and reads of it once, with all its places.
func TestOneBoardWithoutBattensOnManySurfacesIsOneNote(t *testing.T) {
	layers := sides(lining.Layer{Of: foam10}, lining.Layer{Of: poplar4})
	var titles []string
	for _, f := range lining.Work(boxInputs(layers)).Findings {
		if f.Code == "lining.board-slack" {
			titles = append(titles, f.Title)
		}
	}
	if len(titles) != 1 || !strings.Contains(titles[0], "on the left and the right without a batten") {
		t.Errorf("it says %q", titles)
	}
}

func TestASoundLiningHasNothingToSay(t *testing.T) {
	r := lining.Work(boxInputs(sides(lining.Layer{Of: foam10}, lining.Layer{Of: wool25}, lining.Layer{Of: batten20}, lining.Layer{Of: poplar4})))
	for _, f := range r.Findings {
		t.Errorf("%s: %s", f.Code, f.Title)
	}
	if len(lining.Work(boxInputs(nil)).Findings) > 0 {
		t.Error("a bare van has findings")
	}
}

func TestEveryCodeIsExplained(t *testing.T) {
	for i, e := range lining.Explanations() {
		if e.Meaning == "" || e.Why == "" || e.Clear == "" || i > 0 && lining.Explanations()[i-1].Code >= e.Code {
			t.Errorf("%+v", e)
		}
	}
}

// FuzzWork holds that no layers bring the lining down or out of numbers.
func FuzzWork(f *testing.F) {
	f.Add(10.0, 0.3, 2, 100.0, 900.0, 400.0, "left-2", 3.0)
	f.Add(-10.0, 7.0, -2, 2000.0, -900.0, 0.0, "nowhere", -1.0)
	f.Fuzz(func(t *testing.T, thick, cover float64, times int, from, to, every float64, bay string, weighed float64) {
		for _, v := range []float64{thick, cover, from, to, every, weighed} {
			if !(v > -1e6 && v < 1e6) { // the document refuses what is larger
				return
			}
		}
		if times > 100 {
			return
		}
		kg := quantity.Mass(weighed)
		odd := lining.Layer{Of: wool50, Thick: quantity.Length(thick), Cover: quantity.Share(cover), Times: times, From: at(from), To: at(to)}
		odd.Bays = map[string]lining.Layer{bay: {Of: ply15}}
		more := lining.Layer{Of: foam10, Between: &lining.Battens{Of: batten20, Every: quantity.Length(every)}, Weighed: &kg}
		layers := sides(odd, more)
		layers[lining.Roof], layers[lining.Floor], layers[lining.Doors], layers[lining.Front] = layers[lining.Left], layers[lining.Left], layers[lining.Left], layers[lining.Left]
		r := lining.Work(boxInputs(layers))
		for _, figure := range r.Figures {
			if math.IsNaN(figure.Value) || math.IsInf(figure.Value, 0) {
				t.Fatalf("%s is %g", figure.Code, figure.Value)
			}
		}
		r.Room.Outline(1500)
	})
}
