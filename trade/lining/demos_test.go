package lining_test

import (
	"tumblehome/quantity"
	"tumblehome/trade/lining"
	"tumblehome/trade/shell"
)

// Materials of the invented vans, typical values.
var (
	butyl    = lining.Material{ID: "sound-butyl-2mm", Kind: lining.Patch, Thick: 2, PerArea: 3.3, Spread: 0.05}
	foam5    = lining.Material{ID: "foam-xlpe-5", Kind: lining.Fill, Thick: 5, PerArea: 0.15, Spread: 0.15}
	foam10   = lining.Material{ID: "foam-xlpe-10", Kind: lining.Fill, Thick: 10, PerArea: 0.3, Spread: 0.15}
	foam20   = lining.Material{ID: "foam-xlpe-20", Kind: lining.Fill, Thick: 20, PerArea: 0.6, Spread: 0.15}
	wool25   = lining.Material{ID: "wool-sheep-25", Kind: lining.Fill, Thick: 25, PerArea: 0.45, Spread: 0.2}
	wool50   = lining.Material{ID: "wool-sheep-50", Kind: lining.Fill, Thick: 50, PerArea: 0.9, Spread: 0.2}
	fleece50 = lining.Material{ID: "fleece-50", Kind: lining.Fill, Thick: 50, PerArea: 1, Spread: 0.2}
	xps20    = lining.Material{ID: "xps-20", Kind: lining.Fill, Thick: 20, PerArea: 0.64, Spread: 0.1}
	batten20 = lining.Material{ID: "pse-20-5x44", Kind: lining.Batten, Thick: 20.5, Wide: 44, PerLength: 0.43, Spread: 0.12}
	batten19 = lining.Material{ID: "pse-19x38", Kind: lining.Batten, Thick: 19, Wide: 38, PerLength: 0.35, Spread: 0.12}
	poplar4  = lining.Material{ID: "ply-poplar-3-6", Kind: lining.Board, Thick: 3.6, PerArea: 1.6, Spread: 0.08}
	ply15    = lining.Material{ID: "ply-softwood-15", Kind: lining.Board, Thick: 15, PerArea: 7.8, Spread: 0.08}
	lino     = lining.Material{ID: "linoleum-2-5", Kind: lining.Cover, Thick: 2.5, PerArea: 2.9, Spread: 0.05}
	carpet   = lining.Material{ID: "carpet-4way", Kind: lining.Cover, Thick: 3, PerArea: 0.4, Spread: 0.1}
)

func at(v float64) *quantity.Length { l := quantity.Length(v); return &l }

// dipperBody is a van of middle length and height, invented.
func dipperBody() *shell.Body {
	half := func(v ...quantity.Length) []quantity.Length { return v }
	sides, roof := []string{"left", "right"}, []string{"roof"}
	return shell.Work(shell.Inputs{
		Table: &shell.Table{Error: 4, Heights: half(0, 300, 600, 900, 1200, 1500, 1680), Stations: []shell.Station{
			{ID: "s0", X: 0, Half: half(896, 921, 931, 926, 902, 842, 744), Crown: 1758},
			{ID: "s1", X: 700, Half: half(902, 927, 937, 932, 908, 849, 752), Crown: 1776},
			{ID: "s2", X: 1475, Half: half(904, 929, 939, 934, 910, 851, 755), Crown: 1784},
			{ID: "s3", X: 2250, Half: half(898, 923, 933, 928, 904, 844, 746), Crown: 1774},
			{ID: "s4", X: 2950, Half: half(846, 874, 884, 878, 852, 790, 690), Crown: 1734}}},
		Pressings: 8,
		Ribs: []shell.Rib{
			{ID: "r1", X: 80, On: sides, Depth: 60, Flange: 50}, {ID: "r2", X: 760, On: sides, Depth: 45, Flange: 50},
			{ID: "r3", X: 1440, On: []string{"right"}, Depth: 45, Flange: 50}, {ID: "r3-left", X: 1440, On: []string{"left"}, Depth: 60, Flange: 50},
			{ID: "r4", X: 2080, On: sides, Depth: 45, Flange: 50}, {ID: "r5", X: 2680, On: sides, Depth: 45, Flange: 50},
			{ID: "b1", X: 420, On: roof, Depth: 32, Flange: 60}, {ID: "b2", X: 960, On: roof, Depth: 32, Flange: 60}, {ID: "b3", X: 1500, On: roof, Depth: 32, Flange: 60},
			{ID: "b4", X: 2040, On: roof, Depth: 32, Flange: 60}, {ID: "b5", X: 2560, On: roof, Depth: 32, Flange: 60}},
		Arches: []shell.Arch{{ID: "rear-wheels", On: sides, From: 1680, To: 2440, Inward: 230, Up: 310}},
		Openings: []shell.Opening{
			{ID: "side", Through: "left", X: &shell.Span{From: 150, To: 1300}, Z: &shell.Span{From: 0, To: 1430}, Door: "sliding"},
			{ID: "rear", Through: "rear", Y: &shell.Span{From: -760, To: 760}, Z: &shell.Span{From: 0, To: 1560}, Door: "two leaves", Glazed: 0.403},
			{ID: "window", Through: "left", X: &shell.Span{From: 380, To: 1080}, Z: &shell.Span{From: 800, To: 1200}, In: "side"},
			{ID: "fan", Through: "roof", X: &shell.Span{From: 1030, To: 1430}, Y: &shell.Span{From: -200, To: 200}}}}).Body
}

// godwitBody is a long high van, invented.
func godwitBody() *shell.Body {
	half := func(v ...quantity.Length) []quantity.Length { return v }
	in := shell.Inputs{Table: &shell.Table{Error: 4, Heights: half(0, 400, 800, 1200, 1600, 1850, 1920), Stations: []shell.Station{
		{ID: "s0", X: 0, Half: half(945, 972, 982, 968, 930, 872, 812), Crown: 1985},
		{ID: "s1", X: 1000, Half: half(948, 975, 985, 972, 934, 877, 818), Crown: 1999},
		{ID: "s2", X: 2035, Half: half(948, 976, 986, 972, 934, 878, 820), Crown: 2002},
		{ID: "s3", X: 3000, Half: half(940, 968, 978, 964, 926, 869, 810), Crown: 1992},
		{ID: "s4", X: 4070, Half: half(880, 905, 915, 900, 862, 800, 735), Crown: 1950}}}}
	for _, x := range []quantity.Length{70, 690, 1420, 2020, 2640, 3240, 3920} {
		in.Ribs = append(in.Ribs, shell.Rib{ID: "r", X: x, On: []string{"left", "right"}, Depth: 55, Flange: 60})
	}
	return shell.Work(in).Body
}

// inputs copies what the shell says into what the lining asks.
func inputs(b *shell.Body, layers map[string][]lining.Layer) lining.Inputs {
	in := lining.Inputs{Body: b, Pressings: 8, Layers: layers}
	for _, surface := range []string{"left", "right", "roof"} {
		for _, bay := range b.Bays(surface) {
			in.Bays = append(in.Bays, lining.Bay{ID: bay.ID, Surface: bay.Surface, From: bay.From, To: bay.To, Depth: bay.Depth, Steel: bay.Steel})
		}
	}
	for _, a := range b.Arches() {
		m2, centre := b.ArchArea(a)
		in.Arches = append(in.Arches, lining.Arch{ID: a.ID, Side: a.Side, From: a.From, To: a.To, Face: a.Face, Up: a.Up, Area: m2, Centre: centre})
	}
	for _, d := range b.Doors() {
		in.Doors = append(in.Doors, lining.Door{ID: d.ID, Surface: d.Surface, From: d.From, To: d.To, Low: d.Low, Up: d.Up, Net: d.Net, Centre: d.Centre})
	}
	return in
}

// dipper is the lining of dipper as its builder describes it.
func dipper() lining.Inputs {
	sides := []lining.Layer{
		{Pointer: "/lining/sides/0", Of: butyl, Cover: 0.25},
		{Pointer: "/lining/sides/1", Of: foam10},
		{Pointer: "/lining/sides/2", Of: wool50, Ribs: lining.Bridged, Bays: map[string]lining.Layer{
			"right-2": {Pointer: "/lining/sides/2/bays/right-2", Of: xps20, Times: 2}}},
		{Pointer: "/lining/sides/3", Of: batten20},
		{Pointer: "/lining/sides/4", Of: poplar4, To: at(1000)},
		{Pointer: "/lining/sides/5", Of: carpet, From: at(1000)},
	}
	return inputs(dipperBody(), map[string][]lining.Layer{
		lining.Floor: {
			{Pointer: "/lining/floor/0", Of: butyl, Cover: 0.35},
			{Pointer: "/lining/floor/1", Of: xps20, Between: &lining.Battens{Of: batten20, Every: 400}},
			{Pointer: "/lining/floor/2", Of: ply15},
			{Pointer: "/lining/floor/3", Of: lino},
		},
		lining.Left:  sides,
		lining.Right: sides,
		lining.Roof: {
			{Pointer: "/lining/roof/0", Of: butyl, Cover: 0.3},
			{Pointer: "/lining/roof/1", Of: foam20},
			{Pointer: "/lining/roof/2", Of: foam5, Ribs: lining.Bridged},
			{Pointer: "/lining/roof/3", Of: batten19},
			{Pointer: "/lining/roof/4", Of: poplar4},
		},
		lining.Doors: {
			{Pointer: "/lining/doors/0", Of: butyl, Cover: 0.25},
			{Pointer: "/lining/doors/1", Of: foam10},
			{Pointer: "/lining/doors/2", Of: wool25},
			{Pointer: "/lining/doors/3", Of: poplar4},
		},
	})
}
