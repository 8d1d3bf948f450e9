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
	}, {
		Name:  "The bench is a little too high to sit upright on",
		Patch: `{"fittings": {"bench": {"size": {"z": 820}}}}`,
		Finds: []string{"close fit.headroom.sit /fittings/bench in day"},
	}, {
		Name:  "The cook is taller than the van is high inside",
		Patch: `{"people": {"ada": {"stature": 1600}, "ben": {"stature": 1790}}}`,
		Finds: []string{"note fit.headroom.stand /people/ben"},
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
		Name:  "A rack is hung before the rear doors and leaves one way out at night",
		Patch: `{"fittings": {"left-box": {"size": {"y": 660}}, "rack": {"make": "shelf", "at": {"x": "rear", "y": "mid 0", "z": 700}, "size": {"x": 300, "y": 1500, "z": 900}, "mass": 9}}}`,
		Finds: []string{"fault fit.way-out /fittings/bed in night", "close fit.way-out /fittings/bench in day", "note fit.way-out.blocked /fittings/rack in night"},
		Also:  "lids come up against the rack as well",
	}, {
		Name: "Both doors are built up and nobody gets out at night",
		Patch: `{"fittings": {"left-box": {"size": {"y": 660}}, "rack": {"make": "shelf", "at": {"x": "rear", "y": "mid 0", "z": 700}, "size": {"x": 300, "y": 1500, "z": 900}, "mass": 9},
			"coats": {"make": "locker", "at": {"x": 150, "y": "left"}, "size": {"x": 1150, "y": 200, "z": 1500}, "scribe": ["left"], "mass": 9}}}`,
		Finds: []string{"danger fit.way-out /fittings/bed in night", "danger fit.way-out /fittings/bench in day", "fault fit.walkway /fittings/kitchen in day",
			"note fit.way-out.blocked /fittings/rack in night", "note fit.way-out.blocked /fittings/coats in night"},
		Also: "lids and doors come up against rack and coats as well",
	},
}
