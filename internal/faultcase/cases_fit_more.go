package faultcase

// fitMoreCases are of the cab, of what hangs on doors, and of what nothing carries.
var fitMoreCases = []Case{
	{
		Name:  "A shelf reaches from the room to where the driver's head is",
		Patch: `{"fittings": {"rack": {"make": "shelf", "at": {"x": -250, "y": "mid 420", "z": 1000}, "size": {"x": 400, "y": 300, "z": 200}, "of": "ply-poplar-12", "mass": 3, "held": "screwed"}}}`,
		Finds: []string{"danger fit.cab.seat /fittings/rack in drive"},
	}, {
		Name:  "A box stands on the driver's seat while driving, in the cab by its own word",
		Patch: `{"fittings": {"rack": {"make": "box", "where": "cab", "at": {"x": -400, "y": "mid 420", "z": 420}, "size": {"x": 300, "y": 300, "z": 300}, "of": "ply-poplar-12", "mass": 3, "held": "strapped"}}}`,
		Finds: []string{"fault fit.cab.seat /fittings/rack in drive"},
	}, {
		Name: "At night a board lies over the driver's seat, and is folded away to drive",
		Patch: `{"fittings": {"rack": {"make": "flap", "at": {"x": -400, "y": "mid 420", "z": 420}, "where": "cab", "size": {"x": 400, "y": 300, "z": 18}, "of": "ply-softwood-18", "mass": 3, "held": "latched",
			"moves": {"up": {"off": true}}, "positions": {"away": {"up": "full"}}}}, "modes": {"drive": {"take": {"rack": "away"}}, "day": {"take": {"rack": "away"}}}}`,
		Finds: []string{"note fit.cab.seat /fittings/rack in night"},
	}, {
		Name:  "A box stands on the passenger's seat, and three ride along",
		Patch: `{"people": {"cia": {"stature": 1700, "mass": 70}}, "vehicle": {"seats": {"middle": {"x": -250, "y": 0}}}, "fittings": {"rack": {"make": "box", "where": "cab", "at": {"x": -400, "y": "mid -420", "z": 420}, "size": {"x": 300, "y": 300, "z": 300}, "of": "ply-poplar-12", "mass": 3, "held": "strapped"}}}`,
		Finds: []string{"fault fit.cab.seat /fittings/rack in drive"},
	}, {
		Name:  "A board lies low and deep in the right wheel arch",
		Patch: `{"fittings": {"left-box": null, "rack": {"make": "flap", "at": {"x": 1000, "y": 500, "z": 150}, "size": {"x": 900, "y": 340, "z": 18}, "of": "ply-softwood-18", "mass": 3, "held": "screwed"}, "bench": null, "bed": null, "battery": null}, "modes": {"day": {"people": {"ada": null}}, "night": {"take": null, "people": null}}}`,
		Finds: []string{"fault fit.sticks-out /fittings/rack"},
		Also:  "a flap in the air; nobody sleeps",
	}, {
		Name:  "Two sit on the bench, and a crate stands before all but one place of it",
		Patch: `{"fittings": {"crate": {"make": "box", "at": {"x": 1480, "y": 0}, "size": {"x": 1400, "y": 200, "z": 350}, "of": "ply-poplar-12", "mass": 6, "held": "screwed"}}, "modes": {"day": {"people": {"ben": {"sits": "bench", "cooks": null}}}}}`,
		Finds: []string{"close fit.seat.place /fittings/bench in day"},
		Also:  "the way to the bed is narrow, and it does not pull out",
	}, {
		Name:  "A table stands so far from the bench that one who leans back does not reach it",
		Patch: `{"fittings": {"table": {"make": "table", "at": {"x": 1350, "y": "to -140", "z": "to 755"}, "size": {"x": 500, "y": 400, "z": 25}, "of": "ply-poplar-12", "mass": 4, "held": "screwed", "moves": {"off": {"off": true}}, "positions": {"away": {"off": "full"}}}}, "modes": {"night": {"take": {"table": "away"}}, "drive": {"take": {"table": "away"}}}}`,
		Finds: []string{"close fit.table /fittings/table in day"},
	}, {
		Name:  "One sits on a travel seat whose size takes in its backrest, which makes it no high seat",
		On:    "godwit",
		Patch: `{"modes": {"day": {"people": {"child-2": {"sits": "seats2"}, "adult-1": {"sits": "seats2"}}}}}`,
	}, {
		Name: "Two blinds are for the rear doors, one over the other",
		Patch: `{"fittings": {"blind": {"make": "curtains", "for": "shell.openings.rear", "size": {"x": 20, "y": 1400, "z": 1500}, "of": "cloth-blackout", "mass": 2},
			"other": {"make": "curtains", "for": "shell.openings.rear", "size": {"x": 20, "y": 1400, "z": 1500}, "of": "cloth-blackout", "mass": 2}}}`,
		Finds: []string{"close fit.opening.shared /fittings/other"},
	}, {
		Name: "A drawer is left out while driving",
		Patch: `{"fittings": {"tray": {"make": "drawer", "at": {"x": 1000, "y": "mid -100", "z": 60}, "size": {"x": 500, "y": 300, "z": 120}, "mass": 4, "held": "latched",
			"moves": {"out": {"slide": "-x", "by": 300}}, "positions": {"out": {"out": "full"}}}}, "modes": {"drive": {"take": {"tray": "out"}}}}`,
		Finds: []string{"fault fit.door.open /fittings/tray in drive"},
	}, {
		Name:  "A ladder is hung over both leaves of the rear doors",
		Patch: `{"fittings": {"ladder": {"found": "yes", "where": "outside", "on-door": "rear", "at": {"x": "rear", "y": "mid 0", "z": 300}, "size": {"x": 60, "y": 350, "z": 1200}, "mass": 4, "held": "bolted"}}}`,
		Finds: []string{"fault fit.on-door /fittings/ladder/on-door"},
		Also:  "the rear doors are no way out",
	}, {
		Name:  "A ladder is said to hang on the roof fan",
		Patch: `{"fittings": {"ladder": {"found": "yes", "where": "outside", "on-door": "fan", "at": {"x": "rear", "y": 200, "z": 300}, "size": {"x": 60, "y": 350, "z": 1200}, "mass": 4, "held": "bolted"}}}`,
		Finds: []string{"fault fit.on-door /fittings/ladder/on-door"},
		Also:  "it stands before the rear doors",
	}, {
		Name:  "A ladder on the rear doors is said to hang on the side door",
		Patch: `{"fittings": {"ladder": {"found": "yes", "where": "outside", "on-door": "side", "at": {"x": "rear", "y": 200, "z": 300}, "size": {"x": 60, "y": 350, "z": 1200}, "mass": 4, "held": "bolted"}}}`,
		Finds: []string{"close fit.on-door /fittings/ladder/on-door"},
		Also:  "it stands before the rear doors",
	}, {
		Name:  "A bunk across the van is longer than the van is wide",
		Patch: `{"fittings": {"bunk": {"make": "slat-bed", "at": {"x": 2200, "y": "mid 0", "z": 1250}, "size": {"x": 700, "y": 1950, "z": 60}, "of": "ply-poplar-12", "held": "screwed"}}}`,
		Finds: []string{"fault fit.sticks-out /fittings/bunk"},
	}, {
		Name:  "A locker hangs right over the flame of the cooker",
		Patch: `{"fittings": {"cooker": {"buy": "stove-alcohol-2", "upon": "kitchen", "at": {"x": "front + 300", "y": "mid 0"}, "held": "screwed"}, "rack": {"make": "overlocker", "at": {"x": 300, "y": "right", "z": 1300}, "size": {"x": 600, "y": 300, "z": 260}, "scribe": ["right"], "mass": 6, "held": "screwed"}}}`,
		Finds: []string{"fault fit.flame /fittings/rack in day"},
		Also:  "the air of a flame, and who stands before the locker",
	}, {
		Name:  "A locker hangs half a metre over the flame of the cooker",
		Patch: `{"fittings": {"cooker": {"buy": "stove-alcohol-2", "upon": "kitchen", "at": {"x": "front + 300", "y": "mid 0"}, "held": "screwed"}, "rack": {"make": "overlocker", "at": {"x": 300, "y": "right", "z": 1510}, "size": {"x": 600, "y": 300, "z": 160}, "scribe": ["right"], "mass": 6, "held": "screwed"}}}`,
		Finds: []string{"close fit.flame /fittings/rack in day"},
		Also:  "the air of a flame, and the curve of the roof",
	}, {
		Name:  "A cushion stands on edge beside the flame of the cooker",
		Patch: `{"fittings": {"cooker": {"buy": "stove-alcohol-2", "upon": "kitchen", "at": {"x": "front + 300", "y": "mid 0"}, "held": "screwed"}, "pad": {"make": "cushions", "upon": "kitchen", "at": {"x": "front + 10", "y": "mid 0"}, "size": {"x": 100, "y": 400, "z": 400}, "mass": 1, "held": "strapped"}}}`,
		Finds: []string{"fault fit.flame /fittings/pad in day"},
		Also:  "the air of a flame",
	}, {
		Name:  "A wooden rack stands close beside the flame of the cooker",
		Patch: `{"fittings": {"cooker": {"buy": "stove-alcohol-2", "upon": "kitchen", "at": {"x": "front + 300", "y": "mid 0"}, "held": "screwed"}, "rack": {"make": "locker", "upon": "kitchen", "at": {"x": "front + 10", "y": "mid 0"}, "size": {"x": 270, "y": 300, "z": 400}, "mass": 3, "held": "screwed"}}}`,
		Finds: []string{"close fit.flame /fittings/rack in day"},
		Also:  "the air of a flame",
	}, {
		Name:  "A table rests so low that it drops into the floor in three modes",
		On:    "dipper",
		Patch: `{"fittings": {"table": {"at": {"z": "floor + 100"}}}}`,
		Finds: []string{"fault fit.sticks-out /fittings/table in drive", "fault fit.moves /fittings/table in day", "close fit.table /fittings/table in day"},
	},
}
