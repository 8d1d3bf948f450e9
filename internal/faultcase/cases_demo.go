package faultcase

// demoCases clear what was planted in the demonstration builds by what clears it in life, and show what else it does.
var demoCases = []Case{
	{
		Name:   "Dipper gets new rear tyres",
		On:     "dipper",
		Patch:  `{"vehicle": {"tyres": {"rear": {"made": "2026-08-03"}}}}`,
		Clears: []string{"close weight.tyre.age /vehicle/tyres/rear"},
	}, {
		Name:   "In Dipper the tall one sleeps at home",
		On:     "dipper",
		Patch:  `{"modes": {"night": {"people": {"tall": null}}}}`,
		Finds:  []string{"note trips.beds /use/trips/long-summer", "note trips.beds /use/trips/winter-hills"},
		Clears: []string{"close fit.bed.length /people/tall in night"},
	}, {
		Name:  "In Dipper the settle and the bed upon it are made 60 too short",
		On:    "dipper",
		Patch: `{"fittings": {"settle": {"at": {"x": "1055..2895"}}}}`,
		Finds: []string{"fault fit.bed.length /people/tall in night"},
	}, {
		Name:  "In Dipper the cushions are not laid out over the slats at night",
		On:    "dipper",
		Patch: `{"modes": {"night": {"take": {"cushions": null}}}}`,
		Finds: []string{"close fit.bed.bare /fittings/pullout in night"},
	}, {
		Name:   "In Dipper the coolbox is strapped down",
		On:     "dipper",
		Patch:  `{"fittings": {"coolbox": {"held": "strapped"}}}`,
		Clears: []string{"fault fit.loose /fittings/coolbox in drive"},
	}, {
		Name:   "In Twite the head flap is left at home",
		On:     "twite",
		Patch:  `{"fittings": {"flap": null}, "modes": {"two-up": null}, "spending": null}`,
		Clears: []string{"note fit.way-out.blocked /fittings/flap in night"},
	}, {
		Name:   "Dipper is given a high roof",
		On:     "dipper",
		Patch:  `{"shell": {"offsets": {"stations": {"s0": {"crown": 2008}, "s1": {"crown": 2026}, "s2": {"crown": 2034}, "s3": {"crown": 2024}, "s4": {"crown": 1984}}}}}`,
		Clears: []string{"note fit.headroom.stand /people/tall"},
	}, {
		Name:   "In Twite a child sits on the bed",
		On:     "twite",
		Patch:  `{"people": {"solo": {"stature": 1350}}}`,
		Clears: []string{"fault fit.headroom.sit /fittings/foam in day"},
		Finds:  []string{"note fit.headroom.stand /people/solo"},
	}, {
		Name:   "In Twite the boxes are cut down by half and solo sits leaning",
		On:     "twite",
		Patch:  `{"people": {"solo": {"stature": 1600}}, "fittings": {"toilet": {"in": null, "at": "undecided"}, "box-1": {"size": {"z": 215}}, "box-2": {"size": {"z": 215}}, "box-3": {"size": {"z": 215}}}}`,
		Clears: []string{"fault fit.headroom.sit /fittings/foam in day"},
		Finds:  []string{"close fit.headroom.sit /fittings/foam in day", "fault fit.sticks-out /fittings/foam"}, // now the mattress lies lower than the wheel arch
	}, {
		Name:   "In Godwit the bicycles go inside: the rear axle is only just under its plate",
		On:     "godwit",
		Takes:  "bikes-inside",
		Clears: []string{"fault weight.rear-axle.over /vehicle/cases/four-water-bikes"},
		Finds:  []string{"close weight.rear-axle.close /vehicle/cases/four-water-bikes"},
	}, {
		Name:   "In Godwit the fresh tank goes forward",
		On:     "godwit",
		Takes:  "fresh-forward",
		Clears: []string{"fault weight.rear-axle.over /vehicle/cases/four-water-bikes"},
		Finds:  []string{"close weight.rear-axle.close /vehicle/cases/four-water-bikes", "close fit.seat.knees /fittings/dinette in day"},
	}, {
		Name:   "In Godwit one light battery takes the place of two heavy ones",
		On:     "godwit",
		Takes:  "lithium",
		Clears: []string{"fault weight.rear-axle.over /vehicle/cases/four-water-bikes", "close weight.licence /vehicle/cases/four-water-bikes"},
		Finds: []string{"close weight.rear-axle.close /vehicle/cases/four-water-bikes", "close weight.total.close /vehicle/cases/four-water-bikes",
			"fault power.battery.charge /power/sources/engine", "fault power.battery.cold /fittings/battery-a"},
	}, {
		Name:   "Godwit travels with little water and no bicycles",
		On:     "godwit",
		Patch:  `{"vehicle": {"cases": {"two-water-bikes": null, "four-water-bikes": null, "waste-full-bikes": null, "four-water": {"fill": {"fresh": "10 %"}}}}}`,
		Clears: []string{"fault weight.rear-axle.over /vehicle/cases/four-water-bikes", "close weight.rear-axle.close /vehicle/cases/two-water-bikes", "close weight.licence /vehicle/cases/four-water-bikes"},
		Finds:  []string{"close weight.total.close /vehicle/cases/four-water"},
	},
}
