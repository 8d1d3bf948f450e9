package faultcase

import (
	"fmt"
	"strings"
)

// movesCases are faults of what moves: lids, doors, drawers, and the way from one mode to the next.
var movesCases = []Case{
	{
		Name:  "A chest stands before the kitchen's drawers",
		Patch: `{"fittings": {"kitchen": {"fronts": {"drawers": 3}}, "chest": {"make": "box", "at": {"x": 400, "y": "kitchen.left - 150"}, "size": {"x": 300, "y": 300, "z": 500}, "mass": 9}}}`,
		Finds: []string{"fault fit.opens /fittings/kitchen in day", "close fit.walkway /fittings/kitchen in day"},
	}, {
		Name:  "The lid of the left box is hinged to turn into the box",
		Patch: `{"fittings": {"left-box": {"moves": {"lid": {"hinge": "left top", "by": "-95°"}}}}}`,
		Finds: []string{"note fit.opens.never /fittings/left-box/moves/lid"},
	}, {
		Name: "A drawer is pulled out by nothing",
		Patch: `{"fittings": {"drawer": {"make": "drawer", "in": "bench", "at": {"x": "rear", "y": "left + 20"}, "size": {"x": 700, "y": 280, "z": 250}, "of": "ply-poplar-12", "mass": 12, "fitted": "2026-05-30",
			"held": "latched", "moves": {"out": {"slide": "x", "by": 0}}}}}`,
		Finds: []string{"note fit.opens.never /fittings/drawer/moves/out"},
	}, {
		Name:  "A shelf is hung over the lid of the bench",
		Patch: `{"fittings": {"rack": {"make": "shelf", "at": {"x": 1200, "y": "right", "z": 900}, "size": {"x": 900, "y": 300, "z": 120}, "scribe": ["right"], "mass": 3}}}`,
		Finds: []string{"close fit.opens /fittings/bench in day"},
	}, {
		Name: "A shelf over the lid of the bench is only taken off at night, when one lies on the lid",
		Patch: `{"fittings": {"rack": {"make": "shelf", "at": {"x": 1200, "y": "right", "z": 900}, "size": {"x": 900, "y": 300, "z": 120}, "scribe": ["right"], "mass": 3,
			"moves": {"off": {"off": "yes"}}, "positions": {"away": {"off": "full"}}}}, "modes": {"night": {"take": {"rack": "away"}}}}`,
		Finds: []string{"close fit.opens /fittings/bench in day"},
	}, {
		Name: "Two trays change places on one line",
		Patch: `{"fittings": {
			"tray-a": {"make": "shelf", "at": {"x": 300, "y": -500, "z": 1450}, "size": {"x": 60, "y": 40, "z": 20}, "mass": 0.2,
				"moves": {"along": {"slide": "x", "by": 300}}, "positions": {"gone": {"along": "full"}}},
			"tray-b": {"make": "shelf", "at": {"x": 600, "y": -500, "z": 1450}, "size": {"x": 60, "y": 40, "z": 20}, "mass": 0.2,
				"moves": {"along": {"slide": "-x", "by": 300}}, "positions": {"gone": {"along": "full"}}}},
			"modes": {"work": {"take": {"tray-a": "gone", "tray-b": "gone"}}}}`,
		Finds: []string{"fault fit.moves /fittings/tray-a in work"},
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
	{
		Name:  "Two sleep in a bed that is taken out for the night",
		Patch: `{"fittings": {"bed": {"moves": {"gone": {"off": "yes"}}, "positions": {"away": {"gone": "full"}}}}, "modes": {"night": {"take": {"bed": "away"}}}}`,
		Finds: []string{"fault fit.absent /fittings/bed in night"},
	}, {
		Name:  "A chest stands where the seats of the cab are",
		Patch: `{"fittings": {"chest": {"make": "box", "at": {"x": -330, "y": 300}, "size": {"x": 380, "y": 400, "z": 400}, "mass": 9, "held": "screwed"}}}`,
		Finds: []string{"fault fit.cab.seat /fittings/chest in drive"},
	}, {
		Name:  "A chest reaches into the driver's place by less than the seat slides forward",
		Patch: `{"fittings": {"chest": {"make": "box", "at": {"x": -250, "y": 300}, "size": {"x": 300, "y": 400, "z": 400}, "mass": 9, "held": "screwed"}}}`,
		Finds: []string{"close fit.cab.seat /fittings/chest in drive"},
	}, {
		Name:  "A chest stands between the seats of the cab",
		Patch: `{"fittings": {"chest": {"make": "box", "at": {"x": -250, "y": "mid 0"}, "size": {"x": 300, "y": 380, "z": 400}, "mass": 9, "held": "screwed"}}}`,
		Finds: []string{"note fit.into-cab /fittings/chest"},
	}, {
		Name:  "A chest was dragged out through the windscreen",
		Patch: `{"fittings": {"chest": {"make": "box", "at": {"x": -2500, "y": 300}, "size": {"x": 300, "y": 400, "z": 400}, "mass": 9, "held": "screwed"}}}`,
		Finds: []string{"fault fit.sticks-out /fittings/chest"},
	}, {
		Name:  "A board in the cab was dragged out through the passenger's door",
		Patch: `{"fittings": {"board": {"make": "shelf", "where": "cab", "at": {"x": -450, "y": 600, "z": 600}, "size": {"x": 300, "y": 700, "z": 18}, "of": "ply-poplar-12", "mass": 3, "held": "screwed"}}}`,
		Finds: []string{"fault fit.sticks-out /fittings/board", "fault fit.cab.seat /fittings/board in drive"},
	}, {
		Name:  "Eleven things slide at once, and one of them meets a post that stays",
		Patch: manySlide(11),
		Finds: []string{"fault fit.moves /fittings/tray-0 in work"},
		Also:  "the trays stand before beds and seats as well",
	},
}

// manySlide has so many trays slide rearwards under the roof for a mode of its own, the first of them past a post.
func manySlide(n int) string {
	var fittings, take []string
	for i := range n {
		fittings = append(fittings, fmt.Sprintf(`"tray-%d": {"make": "shelf", "at": {"x": 300, "y": %d, "z": 1450}, "size": {"x": 60, "y": 40, "z": 20}, "mass": 0.2,
			"moves": {"back": {"slide": "x", "by": 300}}, "positions": {"gone": {"back": "full"}}}`, i, -500+90*i))
		take = append(take, fmt.Sprintf(`"tray-%d": "gone"`, i))
	}
	fittings = append(fittings, `"post": {"make": "shelf", "at": {"x": 450, "y": -500, "z": 1400}, "size": {"x": 30, "y": 40, "z": 120}, "mass": 0.2}`)
	return `{"fittings": {` + strings.Join(fittings, ", ") + `}, "modes": {"work": {"take": {` + strings.Join(take, ", ") + `}}}}`
}
