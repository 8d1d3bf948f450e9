package shell_test

import (
	"testing"

	"tumblehome/quantity"
	"tumblehome/trade/finding"
	"tumblehome/trade/shell"
)

type row struct {
	id    string
	x     quantity.Length
	half  []quantity.Length
	crown quantity.Length
}

func table(reading quantity.Length, heights []quantity.Length, rows ...row) *shell.Table {
	t := &shell.Table{Heights: heights, Error: reading}
	for _, r := range rows {
		t.Stations = append(t.Stations, shell.Station{ID: r.id, X: r.x, Half: r.half, Crown: r.crown})
	}
	return t
}

func span(from, to quantity.Length) *shell.Span { return &shell.Span{From: from, To: to} }

var (
	sides = []string{"left", "right"}
	roof  = []string{"roof"}
)

// dipper is a van of middle length and height, invented.
func dipper() shell.Inputs {
	return shell.Inputs{
		Table: table(4, []quantity.Length{0, 300, 600, 900, 1200, 1500, 1680},
			row{"s0", 0, []quantity.Length{896, 921, 931, 926, 902, 842, 744}, 1758},
			row{"s1", 700, []quantity.Length{902, 927, 937, 932, 908, 849, 752}, 1776},
			row{"s2", 1475, []quantity.Length{904, 929, 939, 934, 910, 851, 755}, 1784},
			row{"s3", 2250, []quantity.Length{898, 923, 933, 928, 904, 844, 746}, 1774},
			row{"s4", 2950, []quantity.Length{846, 874, 884, 878, 852, 790, 690}, 1734}),
		Pressings: 8,
		Ribs: []shell.Rib{
			{ID: "r1", X: 80, On: sides, Depth: 60, Flange: 50}, {ID: "r2", X: 760, On: sides, Depth: 45, Flange: 50},
			{ID: "r3", X: 1440, On: []string{"right"}, Depth: 45, Flange: 50}, {ID: "r3-left", X: 1440, On: []string{"left"}, Depth: 60, Flange: 50},
			{ID: "r4", X: 2080, On: sides, Depth: 45, Flange: 50}, {ID: "r5", X: 2680, On: sides, Depth: 45, Flange: 50},
			{ID: "b1", X: 420, On: roof, Depth: 32, Flange: 60}, {ID: "b2", X: 960, On: roof, Depth: 32, Flange: 60}, {ID: "b3", X: 1500, On: roof, Depth: 32, Flange: 60},
			{ID: "b4", X: 2040, On: roof, Depth: 32, Flange: 60}, {ID: "b5", X: 2560, On: roof, Depth: 32, Flange: 60},
		},
		Arches: []shell.Arch{{ID: "rear-wheels", On: sides, From: 1680, To: 2440, Inward: 230, Up: 310}},
		Openings: []shell.Opening{
			{ID: "side", Through: "left", X: span(150, 1300), Z: span(0, 1430), Door: "sliding", WayOut: true, Made: true},
			{ID: "rear", Through: "rear", Y: span(-760, 760), Z: span(0, 1560), Door: "two leaves", WayOut: true, Made: true, Glazed: 0.403},
			{ID: "window", Through: "left", X: span(380, 1080), Z: span(800, 1200), In: "side", Made: true},
			{ID: "fan", Through: "roof", X: span(1030, 1430), Y: span(-200, 200), Made: true},
			{ID: "low-vent", Through: "floor", X: span(280, 380), Y: span(300, 400)},
		},
	}
}

// twite is a small van, invented.
func twite() shell.Inputs {
	return shell.Inputs{
		Table: table(4, []quantity.Length{0, 250, 500, 750, 1000, 1120},
			row{"s0", 0, []quantity.Length{736, 758, 768, 757, 706, 612}, 1196},
			row{"s1", 600, []quantity.Length{742, 763, 771, 760, 710, 617}, 1208},
			row{"s2", 1200, []quantity.Length{742, 762, 769, 756, 704, 610}, 1205},
			row{"s3", 1790, []quantity.Length{706, 728, 734, 720, 664, 566}, 1172}),
		Arches:   []shell.Arch{{ID: "rear-wheels", On: sides, From: 860, To: 1500, Inward: 130, Up: 330}},
		Openings: []shell.Opening{{ID: "side", Through: "right", X: span(60, 720), Z: span(0, 1060), Door: "sliding"}},
	}
}

// godwit is a long high van, invented.
func godwit() shell.Inputs {
	return shell.Inputs{
		Table: table(4, []quantity.Length{0, 400, 800, 1200, 1600, 1850, 1920},
			row{"s0", 0, []quantity.Length{945, 972, 982, 968, 930, 872, 812}, 1985},
			row{"s1", 1000, []quantity.Length{948, 975, 985, 972, 934, 877, 818}, 1999},
			row{"s2", 2035, []quantity.Length{948, 976, 986, 972, 934, 878, 820}, 2002},
			row{"s3", 3000, []quantity.Length{940, 968, 978, 964, 926, 869, 810}, 1992},
			row{"s4", 4070, []quantity.Length{880, 905, 915, 900, 862, 800, 735}, 1950}),
		Arches:   []shell.Arch{{ID: "rear-wheels", On: sides, From: 2300, To: 3110, Inward: 235, Up: 290}},
		Openings: []shell.Opening{{ID: "side", Through: "right", X: span(110, 1360), Z: span(0, 1780), Door: "sliding"}},
	}
}

// figure reads one figure of a result.
func figure(t testing.TB, r shell.Result, code string) float64 {
	t.Helper()
	for _, f := range r.Figures {
		if f.Code == code {
			return f.Value
		}
	}
	t.Fatalf("no figure %s", code)
	return 0
}

// codes lists the codes of findings.
func codes(found []finding.Finding) []string {
	var out []string
	for _, f := range found {
		out = append(out, f.Code)
	}
	return out
}
