package reckon_test

import (
	"testing"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/quantity"
	"tumblehome/reckon"
)

// What is done by hand to the first demonstration build, and how the document reads then. There the galley stands at 40 from the
// front against the right side, 950 long and 880 high; the settle runs from 995 to 2895; the table stands at 1060.
func TestMovesByHandAreOnePatchInTheBuildersWords(t *testing.T) {
	was := reckon.NewMachine().Reckon(demo(t, "dipper"), quantity.Date{Year: 2026, Month: 9, Day: 19})
	stretch := func(face string, by float64, to string) []reckon.Stretch {
		return []reckon.Stretch{{Face: face, By: by, To: to}}
	}
	tests := []struct {
		name  string
		moves []reckon.Move
		want  string // within fittings
	}{
		{"two at once", []reckon.Move{{Fitting: "galley", DX: 20}, {Fitting: "table", DX: 20, DY: -10}},
			`{"galley":{"at":{"x":60}},"table":{"at":{"x":1080,"y":"mid -30"}}}`},
		{"flush with another", []reckon.Move{{Fitting: "table", DX: 3, Snap: reckon.Snap{X: "from galley.rear"}}}, `{"table":{"at":{"x":"from galley.rear"}}}`},
		{"in the middle of the van", []reckon.Move{{Fitting: "table", DY: 20, Snap: reckon.Snap{Y: "mid 0"}}}, `{"table":{"at":{"y":"mid 0"}}}`},
		{"what would stand on itself is a length", []reckon.Move{{Fitting: "galley", DX: 30, Snap: reckon.Snap{X: "worktop.rear"}}}, `{"galley":{"at":{"x":70}}}`},
		{"a free face", []reckon.Move{{Fitting: "galley", Stretch: stretch("rear", 60, "settle.front")}}, `{"galley":{"size":{"x":1010}}}`},
		{"an end of two, laid against a face", []reckon.Move{{Fitting: "settle", Stretch: stretch("front", 40, "galley.rear")}}, `{"settle":{"at":{"x":"galley.rear..2895"}}}`},
		{"a corner is two faces", []reckon.Move{{Fitting: "galley", Stretch: append(stretch("rear", 60, ""), stretch("top", -30, "")...)}},
			`{"galley":{"size":{"x":1010,"z":850}}}`},
	}
	for _, tt := range tests {
		patch, ok := was.MovePatch(tt.moves...)
		if got, want := string(patch.JSON()), `{"fittings":`+tt.want+`}`; !ok || got != want {
			t.Errorf("%s: got %s, want %s", tt.name, got, want)
		}
		if _, err := build.DecodeTree(tree.Merge(was.Written(), patch), catalogue.Builtin()); err != nil {
			t.Errorf("%s: %v", tt.name, err)
		}
	}
}

func TestWhatCannotBeMovedSaysWhy(t *testing.T) {
	locked, err := tree.ParsePatch([]byte(`{"fittings": {"table": {"locked": "yes"}}}`))
	if err != nil {
		t.Fatal(err)
	}
	was := reckon.NewMachine().Reckon(applied(t, demo(t, "dipper"), locked), quantity.Date{Year: 2026, Month: 9, Day: 19})
	face := []reckon.Stretch{{Face: "right", By: 10}}
	for name, tt := range map[string]struct {
		move reckon.Move
		want string
	}{
		"a galley goes":                                   {reckon.Move{Fitting: "galley", DX: 10}, ""},
		"its scribed face does not":                       {reckon.Move{Fitting: "galley", Stretch: face}, "its right face is cut to the lining and ends where that is"},
		"what is locked stays":                            {reckon.Move{Fitting: "table", DX: 10}, "it is locked"},
		"what is bought keeps its size":                   {reckon.Move{Fitting: "battery", Stretch: face}, "it is bought and comes in one size"},
		"what runs from end to end turns with its length": {reckon.Move{Fitting: "settle", Turn: 90}, ""},
	} {
		if got := was.WhyNot(tt.move); got != tt.want {
			t.Errorf("%s: %q, want %q", name, got, tt.want)
		}
	}
}
