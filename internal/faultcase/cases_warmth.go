package faultcase

var warmthCases = []Case{
	{
		Name:  "A portable gas heater stands where one with a flue was",
		On:    "dipper",
		Patch: `{"fittings": {"heater": {"buy": "heater-gas-portable-1500"}}}`,
		Finds: []string{"danger warmth.heater.unflued /fittings/heater", "close warmth.heater.none /use/trips/winter-hills/keep"},
	}, {
		Name:  "No opening stays open at night but a fan ajar",
		Patch: `{"air": {"always-open": []}}`,
		Finds: []string{"fault warmth.air.fixed /air", "note warmth.co2 /air"},
	}, {
		Name:  "Nothing at all is open where spirit burns in the van",
		On:    "dipper",
		Patch: `{"air": {"always-open": []}}`,
		Finds: []string{"danger warmth.air.fixed /air", "note warmth.co2 /air"},
	}, {
		Name:  "The low vent is too small for a flame in the van",
		On:    "dipper",
		Patch: `{"shell": {"openings": {"low-vent": {"free-area": "0.0008 m2"}}}}`,
		Finds: []string{"fault warmth.air.fixed /air", "note warmth.co2 /air"},
	}, {
		Name:  "The low vent is a hair too small for a flame in the van",
		On:    "dipper",
		Patch: `{"shell": {"openings": {"low-vent": {"free-area": "0.00095 m2"}}}}`,
		Finds: []string{"close warmth.air.fixed /air", "note warmth.co2 /air"},
	}, {
		Name:  "Nobody has said what stays open at night",
		Patch: `{"air": null}`,
		Finds: []string{"note warmth.air.unsaid /shell/openings"},
	}, {
		Name:  "Three sleep where two had air enough",
		Patch: `{"people": {"cy": {"stature": 1700, "mass": 90}, "dan": {"stature": 1700, "mass": 90}}, "modes": {"night": {"people": null}}, "use": {"trips": {"weekends": {"aboard": ["ada", "ben", "cy", "dan"]}}}}`,
		Finds: []string{"close warmth.co2 /air"},
	}, {
		Name:  "The heater gives a third of a kilowatt",
		On:    "dipper",
		Patch: `{"catalogue": {"heater-diesel-2kw": {"kind": "appliance", "heat": 300}}}`,
		Finds: []string{"fault warmth.heater.small /fittings/heater"},
	}, {
		Name:  "The heater would warm a house",
		On:    "dipper",
		Patch: `{"catalogue": {"heater-diesel-2kw": {"kind": "appliance", "heat": 9000}}}`,
		Finds: []string{"note warmth.heater.large /fittings/heater"},
	}, {
		Name:  "Sixteen degrees are wanted at night, and there is no heater",
		Patch: `{"use": {"trips": {"weekends": {"keep": 16}}}}`,
		Finds: []string{"close warmth.heater.none /use/trips/weekends/keep"},
	}, {
		Name:  "The rear doors have glass",
		Patch: `{"shell": {"openings": {"rear": {"glazed": "0.5 m2"}}}}`,
		Finds: []string{"close warmth.glass.runs /shell/openings/rear"},
	}, {
		Name:  "The doors are left as bare steel",
		Patch: `{"lining": {"doors": null}}`,
		Finds: []string{"note warmth.surface.wet /shell/openings/rear"},
	}, {
		Name: "Somebody lives the winter through behind wool and nothing else",
		Patch: `{"lining": {"sides": [{"lay": "wool-sheep-50"}, {"lay": "ply-poplar-5-5"}]},
			"use": {"climate": "sodankyla", "trips": {"weekends": {"months": [1, 2, 3, 4, 10, 11, 12], "often": "30 /month", "nights": 1}}}}`,
		Finds: []string{"note warmth.winter.water /lining/sides/0"},
	}, {
		Name:  "Wet clothes hang in the van",
		Patch: `{"use": {"trips": {"weekends": {"wet": 1.5}}}}`,
		Finds: []string{"note warmth.clothes.wet /use/trips/weekends/wet"},
	},
}
