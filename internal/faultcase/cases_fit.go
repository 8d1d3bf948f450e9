package faultcase

var fitCases = []Case{
	{
		Name:  "A box reaches through the lining of the rear doors",
		Patch: `{"fittings": {"left-box": {"at": {"x": "1700..2990"}}}}`,
		Finds: []string{"fault fit.sticks-out /fittings/left-box"},
	}, {
		Name:  "A box reaches into the rear doors by less than the tape is good for",
		Patch: `{"fittings": {"left-box": {"at": {"x": "1700..2979"}}}}`,
		Finds: []string{"close fit.sticks-out /fittings/left-box"},
	}, {
		Name:  "A locker scribed to the right side was lifted through the roof",
		Patch: `{"fittings": {"tall": {"make": "locker", "at": {"x": 1500, "y": "right", "z": 900}, "size": {"x": 300, "y": 300, "z": 1200}, "scribe": ["right"], "of": "ply-poplar-12"}}}`,
		Finds: []string{"fault fit.sticks-out /fittings/tall"},
		Also:  "it stands in other things as well",
	}, {
		Name:  "A locker scribed to the right side stands wholly outside it, so that nothing is left of it",
		Patch: `{"fittings": {"tall": {"make": "locker", "at": {"x": 1500, "y": 1200, "z": 900}, "size": {"x": 300, "y": 300, "z": 500}, "scribe": ["right"], "of": "ply-poplar-12"}}}`,
		Finds: []string{"fault fit.sticks-out /fittings/tall"},
	}, {
		Name: "A pressing narrower than the places looked at stands into a chest between them",
		Patch: `{"shell": {"arches": {"pressing": {"on": ["left"], "x": "1500..1560", "inward": 150, "up": 300}}},
			"fittings": {"chest": {"make": "shelf", "at": {"x": "1310..1610", "y": -830}, "size": {"y": 250, "z": 250}, "of": "ply-poplar-12", "mass": 4}}}`,
		Finds: []string{"fault fit.sticks-out /fittings/chest"},
	}, {
		Name:  "The panel on the roof is laid over the place of the fan",
		Patch: `{"fittings": {"fan": {"buy": "fan-roof-400", "for": "shell.openings.fan"}, "panel": {"at": {"x": 1100}}}}`,
		Finds: []string{"fault fit.foul /fittings/fan"},
	}, {
		Name:  "The panel on the roof is laid over a vent",
		Patch: `{"fittings": {"panel": {"at": {"x": 350, "y": 100}}}}`,
		Finds: []string{"close fit.covered /fittings/panel"},
	}, {
		Name:  "The panel stands so little over the roof fan that its lid does not come up",
		Patch: `{"fittings": {"fan": {"buy": "fan-roof-400", "for": "shell.openings.fan"}, "panel": {"at": {"x": 1100, "z": "roof + 160"}}}}`,
		Finds: []string{"close fit.covered /fittings/panel"},
	}, {
		Name:  "The panel is held high enough over the roof fan for its lid",
		Patch: `{"fittings": {"fan": {"buy": "fan-roof-400", "for": "shell.openings.fan"}, "panel": {"at": {"x": 1100, "z": "roof + 340"}}}}`,
	}, {
		Name: "A jar stands on an open shelf and nobody says what holds it",
		Patch: `{"fittings": {"rack": {"make": "shelf", "at": {"x": 1330, "y": "left", "z": 1000}, "size": {"x": 300, "y": 250, "z": 220}, "of": "ply-poplar-12", "mass": 2},
			"jar": {"found": "yes", "in": "rack", "at": {"x": "front", "y": "mid 0"}, "size": {"x": 150, "y": 150, "z": 180}, "mass": 4, "fitted": "2026-05-30"}}}`,
		Finds: []string{"close fit.loose /fittings/jar in drive"},
	}, {
		Name:  "The panel on the roof is written ten times too far back",
		Patch: `{"fittings": {"panel": {"at": {"x": 16000}}}}`,
		Finds: []string{"fault fit.astray /fittings/panel"},
		Also:  "its weight counts there",
	}, {
		Name:  "The panel of the roof is held by nothing, just behind the roof",
		Patch: `{"fittings": {"panel": {"at": {"x": 3050}}}}`,
		Finds: []string{"fault fit.astray /fittings/panel"},
	}, {
		Name:  "The panel of the roof lies in the air under the floor",
		Patch: `{"fittings": {"panel": {"at": {"z": -500}}}}`,
		Finds: []string{"fault fit.astray /fittings/panel"},
	}, {
		Name:  "The panel of the roof lies in the room over the heads",
		Patch: `{"fittings": {"panel": {"at": {"z": 1500}}}}`,
		Finds: []string{"fault fit.astray /fittings/panel"},
	}, {
		Name:  "The panel of the roof stands behind the van before its doors",
		Patch: `{"fittings": {"panel": {"at": {"x": 3000, "z": 900}}}}`,
		Finds: []string{"fault fit.door.barred /fittings/panel in day"},
		Also:  "the rear doors are no way out",
	}, {
		Name:  "A ladder hangs on the rear door and swings with it",
		Patch: `{"fittings": {"ladder": {"found": "yes", "where": "outside", "on-door": "rear", "at": {"x": "rear", "y": 200, "z": 300}, "size": {"x": 60, "y": 350, "z": 1200}, "mass": 4, "held": "bolted"}}}`,
	}, {
		Name:  "A ladder is hung before the rear doors, and nobody says that it swings with them",
		Patch: `{"fittings": {"ladder": {"found": "yes", "where": "outside", "at": {"x": "rear", "y": 200, "z": 300}, "size": {"x": 60, "y": 350, "z": 1200}, "mass": 4, "held": "bolted"}}}`,
		Finds: []string{"fault fit.door.barred /fittings/ladder in day"},
		Also:  "the rear doors are no way out",
	}, {
		Name:  "A tank is hung under the floor where the rear axle is",
		Patch: `{"fittings": {"tank": {"buy": "container-20", "where": "under", "at": {"x": 1900, "y": "mid 0"}, "size": {"x": 400, "y": 600, "z": 300}, "held": "bolted"}}}`,
		Finds: []string{"fault fit.wheel /fittings/tank"},
	}, {
		Name: "Two tanks are hung under the floor in one another",
		Patch: `{"fittings": {"tank": {"buy": "container-20", "where": "under", "at": {"x": 700, "y": "mid 0"}, "size": {"x": 400, "y": 600, "z": 200}, "held": "bolted"},
			"other": {"buy": "container-20", "where": "under", "at": {"x": 1050, "y": "mid 0"}, "size": {"x": 400, "y": 600, "z": 200}, "held": "bolted"}}}`,
		Finds: []string{"fault fit.foul /fittings/other"},
	}, {
		Name:  "A kettle is said to stand on the box and hangs in the air beside it",
		Patch: `{"fittings": {"kettle": {"found": "yes", "upon": "left-box", "at": {"x": "front - 300", "y": "mid 0"}, "size": {"x": 200, "y": 200, "z": 250}, "mass": 0.6}}}`,
		Finds: []string{"fault fit.upon /fittings/kettle"},
	}, {
		Name:  "A kettle stands with its middle beyond the edge of the box",
		Patch: `{"fittings": {"kettle": {"found": "yes", "upon": "left-box", "at": {"x": "front - 110", "y": "mid 0"}, "size": {"x": 200, "y": 200, "z": 250}, "mass": 0.6}}}`,
		Finds: []string{"close fit.upon /fittings/kettle", "note fit.opens /fittings/left-box in day"},
	}, {
		Name:  "A coolbox is put into the kitchen past three narrow doors",
		Patch: `{"fittings": {"kitchen": {"fronts": {"doors": 3}}, "cold": {"found": "yes", "in": "kitchen", "at": {"x": "rear", "y": "mid 0"}, "size": {"x": 400, "y": 350, "z": 400}, "mass": 9}}}`,
		Finds: []string{"note fit.comes-out /fittings/cold"},
	}, {
		Name:  "Five sit on the bench in a row",
		Patch: `{"people": {"cia": {"stature": 1700, "mass": 70}, "dan": {"stature": 1700, "mass": 70}, "eve": {"stature": 1700, "mass": 70}}, "modes": {"day": {"people": {"ben": {"cooks": null, "sits": "bench"}, "cia": {"sits": "bench"}, "dan": {"sits": "bench"}, "eve": {"sits": "bench"}}}}}`,
		Finds: []string{"fault fit.seat.width /fittings/bench in day"},
	}, {
		Name:  "Four lie in a bed for two",
		Patch: `{"people": {"cia": {"stature": 1700, "mass": 70}, "dan": {"stature": 1700, "mass": 70}}, "modes": {"night": {"people": {"cia": {"lies": "bed", "head": "front"}, "dan": {"lies": "bed", "head": "front"}}}}}`,
		Finds: []string{"fault fit.bed.width /fittings/bed in night"},
	}, {
		Name:  "A rack hangs so low over the cook that he stoops",
		Patch: `{"fittings": {"rack": {"make": "shelf", "at": {"x": 60, "y": "right", "z": 1620}, "size": {"x": 900, "y": 900, "z": 60}, "scribe": ["right"], "mass": 4, "held": "screwed"}}}`,
		Finds: []string{"note fit.headroom.stand /people/ben"},
	}, {
		Name:  "A giant cannot stand upright in the van",
		Patch: `{"people": {"cia": {"stature": 2250, "mass": 70}}}`,
		Finds: []string{"note fit.headroom.stand /people/cia"},
	}, {
		Name:  "Two giants cannot stand upright in the van",
		Patch: `{"people": {"cia": {"stature": 2200, "mass": 70}, "dan": {"stature": 2240, "mass": 70}}}`,
		Finds: []string{"note fit.headroom.stand /people/dan"},
	}, {
		Name:  "The battery is put beyond the end of the bench it stands in",
		Patch: `{"fittings": {"battery": {"at": {"x": "front + 1608"}}}}`,
		Finds: []string{"fault fit.out-of-host /fittings/battery"},
	}, {
		Name:  "The left box is made so deep that it stands in the bench",
		Patch: `{"fittings": {"left-box": {"size": {"y": 1150}}}}`,
		Finds: []string{"fault fit.foul /fittings/bench"},
		Also:  "it stands in the way to the bed as well",
	}, {
		Name:  "The kitchen is lengthened into the bench by less than the tape is good for",
		Patch: `{"fittings": {"bed": null, "kitchen": {"size": {"x": 943}}}, "modes": {"night": {"take": null, "people": {"ada": {"lies": "bench"}, "ben": null}}}}`,
		Finds: []string{"close fit.foul /fittings/bench"},
	}, {
		Name:  "The bed is pulled out into a box that stands in its way at night",
		Patch: `{"fittings": {"left-box": {"size": {"y": 600, "z": 470}}}}`,
		Finds: []string{"fault fit.foul /fittings/bed in night"},
	}, {
		Name:  "A tall sleeper lies in a bed that is only just long enough",
		Patch: `{"people": {"ada": {"stature": 1830}}}`,
		Finds: []string{"close fit.bed.length /people/ada in night"},
		Also:  "the roof is low for so tall a person",
	}, {
		Name:  "The bed is shorter than who lies in it",
		Patch: `{"fittings": {"bench": {"at": {"x": "1300..2920"}}}}`,
		Finds: []string{"fault fit.bed.length /people/ada in night", "fault fit.bed.length /people/ben in night"},
	}, {
		Name: "A bed lies across a van that is narrower than who lies in it is long",
		Patch: `{"people": {"ada": {"stature": 1750}}, "fittings": {"left-box": null, "bench": {"at": {"x": 1100, "y": "mid 0"}, "size": {"x": 700, "y": 1950}, "scribe": ["left", "right"], "moves": null, "positions": null},
			"bed": {"at": {"x": "front..rear", "y": "left..right"}, "size": {"y": null}, "scribe": ["left", "right"], "moves": null, "positions": null}},
			"modes": {"night": {"take": null, "people": {"ada": {"head": "left"}, "ben": null}}}}`,
		Finds: []string{"fault fit.bed.length /people/ada in night"},
		Also:  "it stands in the way",
	}, {
		Name:  "The mattress is shorter than the bed and than who lies on it",
		Patch: `{"fittings": {"mattress": {"make": "cushions", "upon": "bed", "at": {"x": "to rear", "y": "left..right"}, "size": {"x": 1660, "z": 75}, "of": "foam-pu-32-75", "held": "strapped"}}}`,
		Finds: []string{"fault fit.bed.length /people/ada in night", "fault fit.bed.length /people/ben in night"},
		Also:  "it does not lie on the whole bed, and one sits higher on it",
	}, {
		Name:  "A cushion hangs over the end of the box it lies on",
		Patch: `{"fittings": {"pad": {"make": "cushions", "upon": "left-box", "at": {"x": "front - 120", "y": "left..right"}, "size": {"x": 500, "z": 60}, "of": "foam-pu-32-75", "held": "strapped"}}}`,
		Finds: []string{"note fit.upon /fittings/pad"},
	}, {
		Name:  "A cooker reaches over the end of the box it stands on",
		Patch: `{"fittings": {"ring": {"found": "yes", "upon": "left-box", "at": {"x": "front - 120", "y": "mid 0"}, "size": {"x": 400, "y": 250, "z": 90}, "mass": 3, "held": "strapped"}}}`,
		Finds: []string{"note fit.upon /fittings/ring", "note fit.opens /fittings/left-box in day"},
	}, {
		Name:  "The bed pulls out too little for two",
		Patch: `{"fittings": {"bed": {"moves": {"out": {"by": 420}}}}}`,
		Finds: []string{"close fit.bed.width /fittings/bed in night"},
	}, {
		Name:  "The bed does not pull out at all",
		Patch: `{"modes": {"night": {"take": null}}}`,
		Finds: []string{"fault fit.bed.width /fittings/bed in night"},
	}, {
		Name:  "The bench is made so high that nobody sits upright on it",
		Patch: `{"fittings": {"bench": {"size": {"z": 900}}}}`,
		Finds: []string{"fault fit.headroom.sit /fittings/bench in day"},
		Also:  "feet no longer reach the floor, and nobody sits up in bed",
	}, {
		Name:  "The bench is a little too high to sit upright on",
		Patch: `{"fittings": {"bench": {"size": {"z": 820}}}}`,
		Finds: []string{"close fit.headroom.sit /fittings/bench in day"},
		Also:  "feet no longer reach the floor",
	}, {
		Name:  "The cook is taller than the van is high inside",
		Patch: `{"people": {"ada": {"stature": 1600}, "ben": {"stature": 1790}}}`,
		Finds: []string{"note fit.headroom.stand /people/ben"},
		Also:  "the kitchen is low for so tall a cook",
	}, {
		Name:  "A tall locker stands behind the middle of the side door",
		Patch: `{"fittings": {"tall": {"make": "locker", "at": {"x": 500, "y": "left"}, "size": {"x": 450, "y": 350, "z": 1500}, "scribe": ["left"], "mass": 12}}}`,
		Finds: []string{"fault fit.door.barred /fittings/tall in day"},
		Also:  "it stands in the way to the kitchen as well",
	}, {
		Name:  "A chest narrows the way in",
		Patch: `{"fittings": {"chest": {"make": "box", "at": {"x": 570, "y": "left"}, "size": {"x": 740, "y": 400, "z": 400}, "scribe": ["left"], "mass": 9, "held": "screwed"}}}`,
		Finds: []string{"close fit.walkway /fittings/kitchen in day"},
		Also:  "it stands before a way out as well",
	}, {
		Name:  "A chest closes the way in",
		Patch: `{"fittings": {"chest": {"make": "box", "at": {"x": 450, "y": "left"}, "size": {"x": 860, "y": 400, "z": 400}, "scribe": ["left"], "mass": 9, "held": "screwed"}}}`,
		Finds: []string{"fault fit.walkway /fittings/kitchen in day"},
		Also:  "it stands before a way out as well",
	}, {
		Name:  "A table that nothing folds is made a wall behind the sliding door",
		Patch: `{"fittings": {"wall": {"make": "table", "at": {"x": 120, "y": -720, "z": "floor"}, "size": {"x": 1220, "y": 30, "z": 1500}, "mass": 9, "held": "screwed"}}}`,
		Finds: []string{"fault fit.way-out /fittings/bed in night", "close fit.way-out /fittings/bench in day", "fault fit.walkway /fittings/kitchen in day",
			"fault fit.door.barred /fittings/wall in day", "note fit.way-out.blocked /fittings/wall in night"},
	}, {
		Name:  "A rack is hung before the rear doors and leaves one way out at night",
		Patch: `{"fittings": {"left-box": {"size": {"y": 660}}, "rack": {"make": "shelf", "at": {"x": "rear", "y": "mid 0", "z": 700}, "size": {"x": 300, "y": 1500, "z": 900}, "mass": 9}}}`,
		Finds: []string{"fault fit.way-out /fittings/bed in night", "close fit.way-out /fittings/bench in day", "note fit.way-out.blocked /fittings/rack in night"},
		Also:  "lids come up against the rack as well",
	}, {
		Name:  "No door opens from inside",
		Patch: `{"shell": {"openings": {"side": {"way-out": "no"}, "rear": {"way-out": "no"}}}}`,
		Finds: []string{"danger fit.way-out /fittings/bed in night", "danger fit.way-out /fittings/bench in day"},
	}, {
		Name: "Both doors are built up and nobody gets out at night",
		Patch: `{"fittings": {"left-box": {"size": {"y": 660}}, "rack": {"make": "shelf", "at": {"x": "rear", "y": "mid 0", "z": 700}, "size": {"x": 300, "y": 1500, "z": 900}, "mass": 9},
			"coats": {"make": "locker", "at": {"x": 150, "y": "left"}, "size": {"x": 1150, "y": 200, "z": 1500}, "scribe": ["left"], "mass": 9}}}`,
		Finds: []string{"danger fit.way-out /fittings/bed in night", "danger fit.way-out /fittings/bench in day", "fault fit.walkway /fittings/kitchen in day",
			"note fit.way-out.blocked /fittings/rack in night", "note fit.way-out.blocked /fittings/coats in night"},
		Also: "lids and doors come up against rack and coats as well",
	},
	{
		Name:  "A board is hung low over the whole bed",
		Patch: `{"fittings": {"rack": {"make": "shelf", "at": {"x": 1200, "y": "mid 0", "z": 960}, "size": {"x": 1500, "y": 1700, "z": 30}, "mass": 3}}}`,
		Finds: []string{"fault fit.bed.above /fittings/bed in night"},
		Also:  "it is in the way of heads by day and of lids as well",
	}, {
		Name:  "A rail runs over the bed a little higher than one turns over",
		Patch: `{"fittings": {"rack": {"make": "shelf", "at": {"x": 1300, "y": "mid 0", "z": 1250}, "size": {"x": 1500, "y": 1640, "z": 30}, "mass": 3}}}`,
		Finds: []string{"note fit.bed.sit-up /fittings/bed in night"},
		Also:  "it is in the way of who sits on the bench and of the lid",
	}, {
		Name:  "Somebody will have outgrown the bed",
		Patch: `{"people": {"ben": {"stature-in": {"years": 6, "stature": 1880}}}}`,
		Finds: []string{"note fit.bed.growth /people/ben"},
	}, {
		Name:  "A wardrobe is bought that goes in through no door",
		Patch: `{"fittings": {"press": {"buy": "container-20", "holds": 0, "mass": 8, "at": {"x": 1000, "y": "mid 0"}, "size": {"x": 1700, "y": 1360, "z": 1690}, "held": "bolted"}}}`,
		Finds: []string{"fault fit.door /fittings/press"},
		Also:  "it stands in everything",
	}, {
		Name:  "A door panel is made wider than any door is high, and goes in tilted",
		Patch: `{"fittings": {"panel-board": {"make": "partition", "at": {"x": 2950, "y": "mid 0"}, "size": {"x": 12, "y": 1450, "z": 1680}, "of": "ply-poplar-12", "mass": 8}}}`,
		Finds: []string{"note fit.way-out.blocked /fittings/panel-board in night"},
		Also:  "it stands before the rear doors; tilted it goes in through them",
	}, {
		Name:  "The hole of the fan is marked too near a bow",
		Patch: `{"shell": {"openings": {"fan": {"x": "640..1040"}}}}`,
		Finds: []string{"close fit.cut /shell/openings/fan"},
	}, {
		Name:  "A heavy box stands loose",
		Patch: `{"fittings": {"left-box": {"held": "loose"}}}`,
		Finds: []string{"fault fit.loose /fittings/left-box in drive"},
	}, {
		Name:  "Somebody rides on the bench, which has no belts",
		Patch: `{"modes": {"drive": {"people": {"ada": {"sits": "bench"}}}}}`,
		Finds: []string{"danger fit.seat.belts /people/ada in drive"},
	}, {
		Name:  "Somebody lies in the bed while the van is driven, on a place that has a belt",
		Patch: `{"vehicle": {"seats": {"rear": {"x": 1500, "y": 500}}}, "modes": {"drive": {"people": {"ben": {"lies": "bed"}}}}}`,
		Finds: []string{"danger fit.seat.belts /people/ben in drive"},
	}, {
		Name:  "Somebody rides on a bench where the vehicle has a seat with belts",
		Patch: `{"vehicle": {"seats": {"rear": {"x": 1500, "y": 500}}}, "modes": {"drive": {"people": {"ada": {"sits": "bench"}}}}}`,
	}, {
		Name:  "A seat with belts is planned and nobody says how it is held",
		Patch: `{"fittings": {"travel": {"buy": "seat-double-belted", "at": {"x": 1330, "y": "left + 10"}, "size": {"x": 360, "y": 300, "z": 400}}}}`,
		Finds: []string{"close fit.seat.mounting /fittings/travel in drive"},
		Also:  "the aisle is narrower",
	}, {
		Name: "A full drawer slides under the bench, and nothing keeps it shut",
		Patch: `{"fittings": {"drawer": {"make": "drawer", "in": "bench", "at": {"x": "rear", "y": "left + 20"}, "size": {"x": 700, "y": 280, "z": 250}, "of": "ply-poplar-12", "mass": 12, "fitted": "2026-05-30",
			"moves": {"out": {"slide": "x", "by": 600}}, "positions": {"out": {"out": "full"}}}}}`,
		Finds: []string{"fault fit.loose /fittings/drawer in drive"},
	}, {
		Name: "A drawer under the bench has a latch",
		Patch: `{"fittings": {"drawer": {"make": "drawer", "in": "bench", "at": {"x": "rear", "y": "left + 20"}, "size": {"x": 700, "y": 280, "z": 250}, "of": "ply-poplar-12", "mass": 12, "fitted": "2026-05-30",
			"held": "latched", "moves": {"out": {"slide": "x", "by": 600}}, "positions": {"out": {"out": "full"}}}}}`,
	}, {
		Name: "A drawer under the bench is drawn out through the rear doors while driving",
		Patch: `{"fittings": {"drawer": {"make": "drawer", "in": "bench", "at": {"x": "rear", "y": "left + 20"}, "size": {"x": 700, "y": 280, "z": 250}, "of": "ply-poplar-12", "mass": 12, "fitted": "2026-05-30",
			"held": "latched", "moves": {"out": {"slide": "x", "by": 600}}, "positions": {"out": {"out": "full"}}}}, "modes": {"drive": {"take": {"drawer": "out"}}}}`,
		Finds: []string{"fault fit.sticks-out /fittings/drawer in drive"},
		Also:  "its way through the doors is told as well",
	}, {
		Name:  "A bag lies strapped on the bed while driving, and nobody says where it is at night",
		Patch: `{"fittings": {"bag": {"found": "yes", "upon": "bed", "at": {"x": "mid 500", "y": "mid 0"}, "size": {"x": 400, "y": 300, "z": 300}, "mass": 8, "held": "strapped"}}}`,
		Finds: []string{"fault fit.bed.above /fittings/bed in night"},
	}, {
		Name: "A bag on the bed is out of the van at night",
		Patch: `{"fittings": {"bag": {"found": "yes", "upon": "bed", "at": {"x": "mid 500", "y": "mid 0"}, "size": {"x": 400, "y": 300, "z": 300}, "mass": 8, "held": "strapped",
			"moves": {"off": {"off": "yes"}}, "positions": {"away": {"off": "full"}}}}, "modes": {"night": {"take": {"bag": "away"}}}}`,
	}, {
		Name:  "Somebody drives with the rear doors open",
		Patch: `{"modes": {"drive": {"open": ["rear"]}}}`,
		Finds: []string{"fault fit.door.open /shell/openings/rear in drive"},
	}, {
		Name:  "A kettle stands loose",
		Patch: `{"fittings": {"kettle": {"buy": "container-10", "holds": 0, "mass": 1.4, "at": {"x": 1000, "y": "left", "z": 900}, "size": {"x": 150, "y": 150, "z": 200}, "held": "loose"}}}`,
		Finds: []string{"close fit.loose /fittings/kettle in drive"},
	}, {
		Name:  "Two things are in the van and nobody says what holds them",
		Patch: `{"fittings": {"left-box": {"held": null, "fitted": "2026-05-30"}, "can": {"buy": "container-10", "mass": 1, "holds": 10, "costs": {"price": 9, "standing": "guess"}, "at": {"x": 1330, "y": "left"}, "fitted": "2026-05-30"}}}`,
		Finds: []string{"fault fit.loose /fittings/can in drive"},
	}, {
		Name:  "Nobody has said yet how a heavy box will be held",
		Patch: `{"fittings": {"left-box": {"held": null}}}`,
		Finds: []string{"note fit.held /fittings/left-box in drive"},
	}, {
		Name:  "The bench is so narrow that one perches on it",
		Patch: `{"fittings": {"bed": null, "bench": {"size": {"y": 330}}}, "modes": {"night": {"take": null, "people": {"ada": null, "ben": null}}}}`,
		Finds: []string{"close fit.seat.depth /fittings/bench in day"},
		Also:  "there is no bed any more, and the battery does not go in",
	}, {
		Name:  "A tall bench is built up before the seat",
		Patch: `{"fittings": {"left-box": {"at": {"x": "1000..2900"}, "size": {"y": 980, "z": 400}, "mass": 30}}}`,
		Finds: []string{"close fit.seat.knees /fittings/bench in day"},
		Also:  "it closes the aisle",
	}, {
		Name:  "The seat is made far too high for the feet",
		Patch: `{"fittings": {"bench": {"size": {"z": 560}}}}`,
		Finds: []string{"note fit.seat.height /fittings/bench in day"},
	}, {
		Name:  "A table stands so low that no legs go under it",
		Patch: `{"fittings": {"eating": {"make": "table", "at": {"x": 1500, "y": "bench.left - 20", "z": "floor + 600"}, "size": {"x": 600, "y": 400, "z": 25}, "mass": 5}}}`,
		Finds: []string{"close fit.table /fittings/eating in day"},
		Also:  "it is in the way of the bed at night",
	}, {
		Name:  "A table stands too high to eat at",
		Patch: `{"fittings": {"eating": {"make": "table", "at": {"x": 1500, "y": "bench.left - 20", "z": "floor + 900"}, "size": {"x": 600, "y": 400, "z": 25}, "mass": 5}}}`,
		Finds: []string{"note fit.table /fittings/eating in day"},
	}, {
		Name:  "The kitchen is made too low to work at",
		Patch: `{"fittings": {"kitchen": {"size": {"z": 700}}}}`,
		Finds: []string{"note fit.worktop /fittings/kitchen in day"},
	}, {
		Name: "The second way out is a roof hatch that is not cut yet",
		Patch: `{"shell": {"openings": {"fan": {"way-out": "yes", "x": "800..1400", "y": "-300..300"}, "rear": {"way-out": "no"}}},
			"fittings": {"kitchen": {"fitted": "2026-05-30"}}}`,
		Finds: []string{"fault fit.way-out.today /fittings/bed in night"},
	},
}
