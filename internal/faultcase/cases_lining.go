package faultcase

var liningCases = []Case{
	{
		Name:  "Three boards of insulation are laid where the ribs leave room for two",
		Patch: `{"lining": {"sides": [{"lay": "foam-xlpe-20", "bays": {"right-2": {"lay": "xps-20", "times": 3}}}, {"lay": "pse-20-5x44"}, {"lay": "ply-poplar-5-5"}]}}`,
		Finds: []string{"close lining.bay-overfull /lining/sides/0/bays/right-2"},
	}, {
		Name:  "Insulation stands a little proud of the ribs",
		Patch: `{"lining": {"sides": [{"lay": "foam-xlpe-20", "bays": {"right-2": {"lay": "foam-xlpe-10", "times": 5}}}, {"lay": "pse-20-5x44"}, {"lay": "ply-poplar-5-5"}]}}`,
		Finds: []string{"note lining.bay-overfull /lining/sides/0/bays/right-2"},
	}, {
		Name:  "A layer is named for a bay that there is not",
		Patch: `{"lining": {"sides": [{"lay": "foam-xlpe-20", "bays": {"right-8": {"lay": "xps-20"}}}, {"lay": "pse-20-5x44"}, {"lay": "ply-poplar-5-5"}]}}`,
		Finds: []string{"fault lining.bay-unknown /lining/sides/0/bays/right-8"},
	}, {
		Name:  "Thin boards go from bow to bow under the roof without battens",
		Patch: `{"lining": {"roof": [{"lay": "foam-xlpe-20"}, {"lay": "ply-poplar-3-6"}]}}`,
		Finds: []string{"note lining.board-slack /lining/roof/1"},
	}, {
		Name:  "A board lies about of which nobody knows how heavy it is",
		Patch: `{"catalogue": {"grey-board-8": {"name": "grey board", "kind": "sheet", "group": "board", "thick": 8, "long": 2000, "wide": 1000, "price": 10}}, "lining": {"doors": [{"lay": "foam-xlpe-20"}, {"lay": "grey-board-8"}]}}`,
		Finds: []string{"note lining.mass-unknown /lining/doors/1"},
	}, {
		Name:  "A mat is laid of which nobody knows how thick it is",
		Patch: `{"catalogue": {"mat": {"name": "mat", "kind": "roll", "group": "floor", "mass": "2 kg/m2", "long": 10000, "wide": 2000, "price": 60}}, "lining": {"floor": [{"lay": "ply-softwood-15"}, {"lay": "mat"}]}}`,
		Finds: []string{"note lining.thickness-unknown /lining/floor/1"},
	},
}
