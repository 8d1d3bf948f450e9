package faultcase

var runsCases = []Case{
	{
		Name:  "A way along the right side goes straight through the wheel arch",
		Patch: `{"runs": {"side": {"points": [{"x": 1500, "y": "right", "z": 150}, {"x": 2700, "y": "right", "z": 150}]}}}`,
		Finds: []string{"fault runs.arch /runs/side"},
	}, {
		Name:  "A way under the roof crosses the hole of the fan",
		Patch: `{"runs": {"lights": {"points": [{"x": 700, "y": "mid 0", "z": "roof"}, {"x": 2000, "y": "mid 0", "z": "roof"}]}}}`,
		Finds: []string{"fault runs.opening /runs/lights"},
	}, {
		Name:  "A way is laid across the open floor between kitchen and door",
		Patch: `{"runs": {"across": {"points": [{"x": 980, "y": "right", "z": "floor + 60"}, {"x": 980, "y": "left + 200", "z": "floor + 60"}]}}}`,
		Finds: []string{"close runs.gangway /runs/across"},
	}, {
		Name:  "A way runs on the left side across the sliding door",
		Patch: `{"runs": {"front": {"points": [{"x": 100, "y": "left", "z": 900}, {"x": 1500, "y": "left", "z": 900}]}}}`,
		Finds: []string{"fault runs.opening /runs/front"},
	}, {
		Name:  "A way along the left side ends in the middle of the sliding door",
		Patch: `{"runs": {"front": {"points": [{"x": 100, "y": "left", "z": 900}, {"x": 800, "y": "left", "z": 900}]}}}`,
		Finds: []string{"fault runs.opening /runs/front"},
	}, {
		Name:  "Behind the lining a way is pressed so far outwards that it meets the rib",
		Patch: `{"runs": {"side": {"points": [{"x": 1300, "y": "right + 40", "z": 900}, {"x": 1650, "y": "right + 40", "z": 900}]}}}`,
		Finds: []string{"close runs.rib /runs/side"},
	}, {
		Name:  "A way leaves the body through the roof where there is no hole",
		Patch: `{"runs": {"gland": {"points": [{"x": 1900, "y": 0, "z": 1850}, {"x": 1900, "y": 0, "z": 1960}]}}}`,
		Finds: []string{"close runs.skin /runs/gland"},
	}, {
		Name:  "A digit too many puts a corner of a way nine metres before the van",
		Patch: `{"runs": {"far": {"points": [{"x": -9000, "y": 0, "z": 300}, {"x": -9000, "y": 0, "z": 400}]}}}`,
		Finds: []string{"fault runs.outside /runs/far"},
	}, {
		Name:  "A way has no corners",
		Patch: `{"runs": {"none": {"points": []}}}`,
		Finds: []string{"note runs.unknown /runs/none"},
	}, {
		Name:  "A way leads through the water can",
		Patch: `{"runs": {"low": {"points": [{"x": -100, "y": 690, "z": 250}, {"x": 700, "y": 690, "z": 250}]}}}`,
		Finds: []string{"fault runs.through /runs/low"},
	}, {
		Name:  "A cable hangs across the bed as it is made up for the night",
		Patch: `{"runs": {"over": {"points": [{"x": 1700, "y": "left", "z": 700}, {"x": 1700, "y": "right", "z": 700}]}}}`,
		Finds: []string{"close runs.sleeper /runs/over in night"},
	}, {
		Name: "A way leads through the box in which the gas bottle stands",
		Patch: `{"fittings": {"bottle": {"buy": "gas-bottle-5", "in": "left-box", "at": {"x": "front + 300", "y": "mid 0"}, "size": {"x": 200, "y": 200, "z": 300}, "mass": 8}},
			"gas": {"bottles": ["bottle"]}, "runs": {"low": {"points": [{"x": 1500, "y": -600, "z": 350}, {"x": 2900, "y": -600, "z": 350}]}}}`,
		Finds: []string{"danger runs.gas /runs/low"},
		Also:  "a gas bottle brings notes of its own",
	}, {
		Name: "Four thick cables are led through a conduit of 20",
		Patch: power(`"main": {"from": "house", "loads": ["fan-1"], "along": ["side"], "cable": "35 mm2"}, "second": {"from": "house", "along": ["side"], "cable": "35 mm2"}`) +
			`"runs": {"side": {"points": [{"x": 1200, "y": "right", "z": 900}, {"x": 2200, "y": "right", "z": 900}], "bore": 20}}}`,
		Finds: []string{"fault runs.fill /runs/side"},
		Also:  "cables bring notes of their own",
	}, {
		Name: "A conduit is somewhat fuller than it should be",
		Patch: power(`"main": {"from": "house", "loads": ["fan-1"], "along": ["side"], "cable": "16 mm2"}`) +
			`"runs": {"side": {"points": [{"x": 1200, "y": "right", "z": 900}, {"x": 2200, "y": "right", "z": 900}], "bore": 14}}}`,
		Finds: []string{"close runs.fill /runs/side"},
		Also:  "cables bring notes of their own",
	}, {
		Name: "A thick cable is led round two corners that are close together",
		Patch: power(`"main": {"from": "house", "loads": ["fan-1"], "along": ["side"], "cable": "35 mm2"}`) +
			`"runs": {"side": {"points": [{"x": 1200, "y": "right", "z": 900}, {"x": 1900, "y": "right", "z": 900}, {"x": 1900, "y": "right", "z": 930}, {"x": 2200, "y": "right", "z": 930}]}}}`,
		Finds: []string{"close runs.bend /runs/side"},
		Also:  "cables bring notes of their own",
	}, {
		Name: "A conduit goes up and down like a stair",
		Patch: `{"runs": {"stair": {"bore": 20, "points": [{"x": 1100, "y": "right", "z": 900}, {"x": 1300, "y": "right", "z": 900}, {"x": 1300, "y": "right", "z": 1100}, {"x": 1400, "y": "right", "z": 1100},
			{"x": 1400, "y": "right", "z": 900}, {"x": 1600, "y": "right", "z": 900}, {"x": 1600, "y": "right", "z": 1100}]}}}`,
		Finds: []string{"note runs.turns /runs/stair"},
	}, {
		Name:  "A way begins at a fitting that has no place yet",
		Patch: `{"fittings": {"battery": {"at": "undecided"}}, "runs": {"main": {"points": ["battery.top", {"x": 1500, "y": "right", "z": 900}]}}}`,
		Finds: []string{"note runs.unknown /runs/main"},
		Also:  "a fitting without a place brings notes of its own",
	}, {
		Name:  "A cable is written shorter than its ends lie apart",
		Patch: power(`"fan": {"from": "house", "loads": ["fan-1"], "cable": "2.5 mm2", "route": 400}`) + `"removed": {}}`,
		Finds: []string{"close runs.short /power/circuits/fan/route"},
		Also:  "cables bring notes of their own",
	}, {
		Name: "A cable is written twice as long as the way that it takes",
		Patch: power(`"fan": {"from": "house", "loads": ["fan-1"], "along": ["side"], "cable": "2.5 mm2", "route": 9000}`) +
			`"runs": {"side": {"points": [{"x": 1100, "y": "right", "z": 300}, {"x": 1100, "y": "right", "z": 1750}, {"x": 1400, "y": 300, "z": "roof"}]}}}`,
		Finds: []string{"note runs.route /power/circuits/fan/route"},
		Also:  "cables bring notes of their own",
	},
}

// power begins a patch that puts a fan at the ceiling, on circuits of the battery.
func power(circuits string) string {
	return `{"fittings": {"fan-1": {"buy": "fan-clip-12v", "at": {"x": 1400, "y": "mid 0", "z": "roof"}, "size": {"x": 100, "y": 100, "z": 60}, "mass": 0.4, "held": "screwed"}},
		"power": {"batteries": {"house": {"is": ["battery"], "main-fuse": 100}}, "circuits": {` + circuits + `}}, `
}
