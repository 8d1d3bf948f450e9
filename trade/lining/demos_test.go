package lining_test

import (
	"tumblehome/quantity"
	"tumblehome/trade/lining"
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
	in := inputs(dipperBody(), map[string][]lining.Layer{
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
	in.Doors = []lining.Door{
		{ID: "side", Surface: lining.Left, From: 150, To: 1300, Low: 0, Up: 1430, Net: 1.37, Centre: [3]float64{725, -920, 716}},
		{ID: "rear", Surface: "rear", From: -760, To: 760, Low: 0, Up: 1560, Net: 1.97, Centre: [3]float64{2950, 0, 780}},
	}
	return in
}
