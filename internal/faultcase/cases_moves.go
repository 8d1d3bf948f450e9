package faultcase

// movesCases are faults of what moves: lids, doors, drawers, and the way from one mode to the next.
var movesCases = []Case{
	{
		Name:  "A chest stands before the kitchen's drawers",
		Patch: `{"fittings": {"kitchen": {"fronts": {"drawers": 3}}, "chest": {"make": "box", "at": {"x": 400, "y": "kitchen.left - 150"}, "size": {"x": 300, "y": 300, "z": 500}, "mass": 9}}}`,
		Finds: []string{"fault fit.opens /fittings/kitchen in day", "close fit.walkway /fittings/kitchen in day"},
	}, {
		Name:  "A shelf is hung over the lid of the bench",
		Patch: `{"fittings": {"rack": {"make": "shelf", "at": {"x": 1200, "y": "right", "z": 900}, "size": {"x": 900, "y": 300, "z": 120}, "scribe": ["right"], "mass": 3}}}`,
		Finds: []string{"close fit.opens /fittings/bench in day"},
	}, {
		Name:  "A cupboard stands on the lid of the left box",
		Patch: `{"fittings": {"larder": {"make": "locker", "upon": "left-box", "at": {"x": 300, "y": "left + 60"}, "size": {"x": 300, "y": 280, "z": 400}, "scribe": ["left"], "mass": 6}}}`,
		Finds: []string{"note fit.opens /fittings/left-box in day"},
	}, {
		Name: "A board that turns half round for the night meets a lamp on its way",
		Patch: `{"fittings": {
			"board": {"make": "table", "at": {"x": 1300, "y": "mid 0", "z": 800}, "size": {"x": 700, "y": 100, "z": 25}, "mass": 3,
				"moves": {"spin": {"swivel": {"x": 0, "y": 0}, "by": "180°"}}, "positions": {"round": {"spin": "full"}}},
			"lamp": {"make": "shelf", "at": {"x": 1630, "y": 200, "z": 790}, "size": {"x": 40, "y": 40, "z": 60}, "mass": 0.5}},
			"modes": {"night": {"take": {"board": "round"}}}}`,
		Finds: []string{"fault fit.moves /fittings/board in night"},
	}, {
		Name:  "The bed is pulled out until its slats hardly hold",
		Patch: `{"fittings": {"bed": {"moves": {"out": {"by": 625}}}}}`,
		Finds: []string{"close fit.pull-out /fittings/bed in night"},
	}, {
		Name:  "The bed is pulled out farther than it is deep",
		Patch: `{"fittings": {"bed": {"moves": {"out": {"by": 660}}}}}`,
		Finds: []string{"fault fit.pull-out /fittings/bed in night"},
	}, {
		Name:  "A tray stands where a leg of the bed should",
		Patch: `{"fittings": {"tray": {"make": "box", "at": {"x": 1030, "y": -320}, "size": {"x": 200, "y": 200, "z": 150}, "mass": 0.5}}}`,
		Finds: []string{"close fit.pull-out.leg /fittings/bed in night"},
	}, {
		Name: "A drawer slides out at the rear, higher than the door",
		Patch: `{"fittings": {"tray": {"make": "drawer", "at": {"x": 1900, "y": "mid 0", "z": 1560}, "size": {"x": 900, "y": 400, "z": 120}, "mass": 4,
			"moves": {"out": {"slide": "x", "by": 800}}, "positions": {"out": {"out": "full"}}}}, "modes": {"load": {"take": {"tray": "out"}, "open": ["rear"]}}}`,
		Finds: []string{"fault fit.through /fittings/tray in load"},
	},
}
