package lining_test

import (
	"fmt"
	"strings"
	"testing"

	"tumblehome/trade/lining"
)

// show writes a build-up as: material bay a..b rib c..d | ... = depth.
func show(courses []lining.Course, depth float64) string {
	var parts []string
	for _, c := range courses {
		parts = append(parts, fmt.Sprintf("%s bay %g..%g rib %g..%g", c.Material, c.InBay[0], c.InBay[1], c.OnRib[0], c.OnRib[1]))
	}
	return strings.Join(parts, " | ") + fmt.Sprintf(" = %g", depth)
}

// Ribs are 40 deep.
func TestWhereLayersLieBetweenAndOnTheRibs(t *testing.T) {
	half := lining.Material{ID: "ply", Kind: lining.Board, Thick: 4}
	wool := lining.Material{ID: "wool", Kind: lining.Fill, Thick: 50}
	foam := lining.Material{ID: "foam", Kind: lining.Fill, Thick: 10}
	butyl := lining.Material{ID: "butyl", Kind: lining.Patch, Thick: 2}
	batten := lining.Material{ID: "batten", Kind: lining.Batten, Thick: 20, Wide: 40}
	carpet := lining.Material{ID: "carpet", Kind: lining.Cover, Thick: 3}
	for _, c := range []struct {
		name   string
		layers []lining.Layer
		want   string
	}{
		{"nothing at all stands at the ribs", nil, " = 40"},
		{"a thin layer stays in the bay and the board lies on the ribs", []lining.Layer{{Of: foam}, {Of: half}},
			"foam bay 0..10 rib 40..40 | ply bay 40..44 rib 40..44 = 44"},
		{"thick wool pushes the board off the ribs", []lining.Layer{{Of: wool}, {Of: half}},
			"wool bay 0..50 rib 40..40 | ply bay 50..54 rib 50..54 = 54"},
		{"bridged ribs wear a strip of 10", []lining.Layer{{Of: foam}, {Of: foam, Ribs: lining.Bridged}, {Of: half}},
			"foam bay 0..10 rib 40..40 | foam bay 10..20 rib 40..50 | ply bay 50..54 rib 50..54 = 54"},
		{"a strip is no thicker than its layer", []lining.Layer{{Of: foam, Thick: 5, Ribs: lining.Bridged}, {Of: half}},
			"foam bay 0..5 rib 40..45 | ply bay 45..49 rib 45..49 = 49"},
		{"filled ribs add nothing over them", []lining.Layer{{Of: foam, Times: 3, Ribs: lining.Filled}, {Of: half}},
			"foam bay 0..30 rib 40..40 | ply bay 40..44 rib 40..44 = 44"},
		{"battens lie on the ribs with what is between them", []lining.Layer{{Of: foam}, {Of: foam, Between: &lining.Battens{Of: batten, Every: 400}}, {Of: half}},
			"foam bay 0..10 rib 40..40 | foam bay 40..60 rib 40..60 | ply bay 60..64 rib 60..64 = 64"},
		{"insulation after a board lies over the ribs", []lining.Layer{{Of: half}, {Of: foam}, {Of: carpet}},
			"ply bay 40..44 rib 40..44 | foam bay 44..54 rib 44..54 | carpet bay 54..57 rib 54..57 = 57"},
		{"patches are pressed into what lies over them", []lining.Layer{{Of: butyl, Cover: 0.3}, {Of: wool}, {Of: half}},
			"butyl bay 0..0 rib 40..40 | wool bay 0..50 rib 40..40 | ply bay 50..54 rib 50..54 = 54"},
		{"a whole sheet of them is not", []lining.Layer{{Of: butyl}, {Of: wool}, {Of: half}},
			"butyl bay 0..2 rib 40..40 | wool bay 2..52 rib 40..40 | ply bay 52..56 rib 52..56 = 56"},
		{"the thickness of the layer wins over the material's", []lining.Layer{{Of: wool, Thick: 35}, {Of: half}},
			"wool bay 0..35 rib 40..40 | ply bay 40..44 rib 40..44 = 44"},
	} {
		r := lining.Work(boxInputs(sides(c.layers...)))
		courses, depth, ok := r.Section(lining.Right, "right-1", 800)
		if got := show(courses, depth); !ok || got != c.want {
			t.Errorf("%s:\n got %s\nwant %s", c.name, got, c.want)
		}
		if y := r.Room.Right(500, 800); y != 900-depth {
			t.Errorf("%s: the side stands at %g, its build-up is %g", c.name, y, depth)
		}
	}
}

func TestPatchesLieInTheValleysOfTheFloor(t *testing.T) {
	floor := pointed("floor", lining.Layer{Of: butyl, Cover: 0.35}, lining.Layer{Of: ply15})
	in := boxInputs(map[string][]lining.Layer{lining.Floor: floor})
	if got := lining.Work(in).Room.Floor(); got != 17 {
		t.Errorf("on a flat floor: got %g, want 17", got)
	}
	in.Pressings = 8
	if got := lining.Work(in).Room.Floor(); got != 15 {
		t.Errorf("in valleys 8 deep: got %g, want 15", got)
	}
}

func TestLayersReachOnlyBetweenTheirHeights(t *testing.T) {
	r := lining.Work(boxInputs(sides(lining.Layer{Of: foam10}, lining.Layer{Of: poplar4, To: at(1000)}, lining.Layer{Of: carpet, From: at(1000)}, lining.Layer{Of: ply15, From: at(600), To: at(800)})))
	for _, c := range []struct{ z, want float64 }{{100, 43.6}, {599, 43.6}, {700, 58.6}, {801, 43.6}, {999, 43.6}, {1001, 43}, {1600, 43}} {
		if got := 900 - r.Room.Right(500, c.z); got != c.want && got-c.want > 1e-9 {
			t.Errorf("at z %g the lining is %g thick, want %g", c.z, got, c.want)
		}
	}
}

func TestANamedBayHasAnotherLayer(t *testing.T) {
	r := lining.Work(boxInputs(sides(lining.Layer{Of: foam10, Bays: map[string]lining.Layer{"right-2": {Pointer: "/lining/sides/0/bays/right-2", Of: xps20, Times: 3}}})))
	for _, c := range []struct{ got, want float64 }{{r.Room.Right(500, 800), 860}, {r.Room.Right(1500, 800), 840}, {r.Room.Left(1500, 800), -860}} {
		if c.got != c.want {
			t.Errorf("got %g, want %g", c.got, c.want)
		}
	}
}
