package reckon_test

import (
	"math"
	"testing"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/quantity"
	"tumblehome/reckon"
)

// bedWithThings is a bed that stands free, with a mattress from edge to edge, a light upon that, and a box and a battery in it.
const bedWithThings = `{"fittings": {
	"bed": {"make": "box", "at": {"x": 900, "y": "mid 0"}, "size": {"x": 1900, "y": 1235, "z": 400}, "of": "ply-poplar-12", "moves": {"out": {"slide": "-y", "by": 100}}},
	"mattress": {"make": "cushions", "upon": "bed", "at": {"x": "front..rear", "y": "right - 35"}, "size": {"y": 1200, "z": 100}, "of": "foam-pu-32-75"},
	"bag": {"make": "box", "upon": "mattress", "at": {"x": 100, "y": -300}, "size": {"x": 300, "y": 200, "z": 150}},
	"case": {"make": "box", "in": "bed", "at": {"x": "from front + 50", "y": "left + 20"}, "size": {"x": 400, "y": 300, "z": 250}, "scribe": ["front"]},
	"spare": {"buy": "battery-lfp-100ah", "in": "bed", "at": {"x": "case.rear + 30", "y": "mid 40"}},
	"jar": {"make": "box", "in": "bed", "at": {"x": "settle.rear - 2000", "y": 0}, "size": {"x": 60, "y": 50, "z": 100}}},
	"modes": {"night": {"people": {"tall": {"lies": "mattress", "head": "front"}, "small": {"lies": "bed", "head": "rear"}}}}}`

func TestWhatABedCarriesTurnsWithItAndSoDoHeads(t *testing.T) {
	patch, err := tree.ParsePatch([]byte(bedWithThings))
	if err != nil {
		t.Fatal(err)
	}
	day := quantity.Date{Year: 2026, Month: 9, Day: 19}
	machine := reckon.NewMachine()
	start := machine.Reckon(applied(t, demo(t, "dipper"), patch), day)
	for _, quarters := range []int{1, 2, 3, -1} {
		turn, ok := start.MovePatch(reckon.Move{Fitting: "bed", Turn: float64(90 * quarters)})
		if !ok {
			t.Fatalf("%d quarters: no patch", quarters)
		}
		doc, err := build.DecodeTree(tree.Merge(start.Written(), turn), catalogue.Builtin())
		if err != nil {
			t.Fatalf("%d quarters: %v", quarters, err)
		}
		now := machine.Reckon(doc, day)
		for _, id := range []string{"mattress", "bag", "case", "spare", "jar"} {
			was, is := about(start, id), about(now, id)
			for range (quarters + 4) % 4 {
				was = [4]float64{was[1], -was[0], was[3], was[2]}
			}
			for k := range was {
				if math.Abs(was[k]-is[k]) > 1 {
					t.Errorf("%d quarters: %s lies %v about the middle of the bed, want %v", quarters, id, is, was)
					break
				}
			}
		}
		if people := doc.Modes["night"].People; quarters == 1 && (people["tall"].Head != "right" || people["small"].Head != "left") {
			t.Errorf("heads lie %s and %s, want right and left", people["tall"].Head, people["small"].Head)
		}
		if slide := doc.Fittings["bed"].Moves["out"].Slide; quarters == 1 && (slide != build.Direction{Axis: "x", Back: true}) {
			t.Errorf("the bed is pulled out along %v, want forwards", slide)
		}
		if at := doc.Fittings["mattress"].At; quarters == 1 && (at.X.String() != "rear - 35" || at.Y.String() != "left..right") {
			t.Errorf("the mattress lies at x %s, y %s", at.X, at.Y)
		}
	}
}

// about is where the middle of a fitting is from the middle of the bed, and how long and wide it is [mm].
func about(r *reckon.Reckoning, id string) [4]float64 {
	a, b := r.Places.Find(id).Box, r.Places.Find("bed").Box
	return [4]float64{
		(a.MinX + a.MaxX - b.MinX - b.MaxX) / 2, (a.MinY + a.MaxY - b.MinY - b.MaxY) / 2, a.MaxX - a.MinX, a.MaxY - a.MinY,
	}
}

// runsToABed is a bed from face to face, a bench from the front to it, a rack from it to the rear and a shelf that has nothing to do with it.
const runsToABed = `{"fittings": {
	"bed": {"make": "box", "at": {"x": "900..2835", "y": "left + 100"}, "size": {"y": 700, "z": 400}, "of": "ply-poplar-12"},
	"bench": {"make": "box", "at": {"x": "front..bed.front - 20", "y": "left + 100"}, "size": {"y": 400, "z": 400}, "of": "ply-poplar-12"},
	"rack": {"make": "box", "at": {"x": "bed.rear..rear", "y": "left + 100"}, "size": {"y": 400, "z": 300}, "of": "ply-poplar-12"},
	"plank": {"make": "box", "at": {"x": "front..rear", "y": "left + 300", "z": 1400}, "size": {"y": 100, "z": 20}, "of": "ply-poplar-12"}}}`

func TestATurnedBedKeepsItsLengthAndSoDoesWhatRunsToIt(t *testing.T) {
	patch, err := tree.ParsePatch([]byte(runsToABed))
	if err != nil {
		t.Fatal(err)
	}
	day := quantity.Date{Year: 2026, Month: 9, Day: 19}
	start := reckon.NewMachine().Reckon(applied(t, demo(t, "dipper"), patch), day)
	quarter := reckon.Move{Fitting: "bed", Turn: 90}
	turn, ok := start.MovePatch(quarter)
	if why := start.WhyNot(quarter); !ok || why != "" {
		t.Fatalf("it does not turn: %q", why)
	}
	now := reckon.NewMachine().Reckon(applied(t, demo(t, "dipper"), both(t, patch, turn)), day)
	for id, across := range map[string]bool{"bed": true, "bench": false, "rack": false, "plank": false} {
		was, is := about(start, id), about(now, id)
		if across {
			was[2], was[3] = was[3], was[2]
		}
		if math.Abs(was[2]-is[2]) > 1 || math.Abs(was[3]-is[3]) > 1 {
			t.Errorf("%s is %g x %g, want %g x %g", id, is[2], is[3], was[2], was[3])
		}
	}
	if at := now.Document.Fittings["rack"].At.X.String(); at != "rear" {
		t.Errorf("the rack stands at %q", at)
	}
	if at := now.Document.Fittings["plank"].At.X.String(); at != "front..rear" {
		t.Errorf("the plank stands at %q", at)
	}
	if kept := start.LengthsKept(quarter); len(kept) != 3 || kept[0].Fitting != "bed" || kept[0].Length != 1935 {
		t.Errorf("told as kept: %v", kept)
	}
	if kept := start.LengthsKept(reckon.Move{Fitting: "bed", Turn: 180}); len(kept) != 1 {
		t.Errorf("half a turn keeps %v", kept)
	}
}

// both are two patches one after the other.
func both(t *testing.T, first, second tree.Patch) tree.Patch {
	t.Helper()
	start := build.Encode(demo(t, "dipper"))
	return tree.Difference(start, tree.Merge(tree.Merge(start, first), second))
}
