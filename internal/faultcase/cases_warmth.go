package faultcase

import "strings"

// inUse makes the sound build one that is slept in from April to October.
const inUse = `"use": {"climate": "gb-midlands", "trips": {"weekends": {"months": [4, 5, 6, 7, 8, 9, 10], "often": "2 /month", "nights": 2, "aboard": ["ada", "ben"], "driving": "2 h/trip"}}}`

// inUseAnd is that with something more said of its trips.
func inUseAnd(more string) string { return strings.Replace(inUse, `"driving"`, more+`, "driving"`, 1) }

var warmthCases = []Case{
	{
		Name:  "A portable gas heater stands where one with a flue was",
		On:    "dipper",
		Patch: `{"fittings": {"heater": {"buy": "heater-gas-portable-1500"}}}`,
		Finds: []string{"danger warmth.heater.unflued /fittings/heater", "close warmth.heater.none /use/trips/winter-hills/keep"},
	}, {
		Name:  "No opening stays open at night but a fan ajar",
		Patch: `{"air": {"always-open": []}}`,
		Finds: []string{"fault warmth.air.fixed /air"},
	}, {
		Name:  "Nothing at all is open where spirit burns in the van",
		On:    "dipper",
		Patch: `{"air": {"always-open": []}}`,
		Finds: []string{"danger warmth.air.fixed /air", "fault warmth.co2 /air", "note warmth.surface.wet /lining/doors/2"},
	}, {
		Name:  "The low vent is too small for a flame in the van",
		On:    "dipper",
		Patch: `{"shell": {"openings": {"low-vent": {"free-area": "0.0008 m2"}}}}`,
		Finds: []string{"fault warmth.air.fixed /air", "close warmth.co2 /air", "note warmth.surface.wet /lining/doors/2"},
	}, {
		Name:  "The low vent is a hair too small for a flame in the van",
		On:    "dipper",
		Patch: `{"shell": {"openings": {"low-vent": {"free-area": "0.00095 m2"}}}}`,
		Finds: []string{"close warmth.air.fixed /air", "close warmth.co2 /air", "note warmth.surface.wet /lining/doors/2"},
	}, {
		Name:  "Nobody has said what stays open at night",
		Patch: `{"air": null}`,
		Finds: []string{"note warmth.air.unsaid /shell/openings"},
	}, {
		Name:  "Two sleep with the cab shut off, and nobody has said what stays open at night",
		Patch: `{"air": null, "lining": {"front": [{"lay": "ply-poplar-9"}]}, ` + inUse + `}`,
		Finds: []string{"close warmth.air.unsaid /shell/openings", "note warmth.surface.wet /lining/doors/0"},
	}, {
		Name:  "Two sleep in a van where only the low vent is open",
		Patch: `{"shell": {"openings": {"high-vent": {"free-area": "0.0015 m2"}}}, "air": {"asleep": null}, "lining": {"front": [{"lay": "ply-poplar-9"}]}, ` + inUse + `}`,
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
		Patch: `{` + inUseAnd(`"keep": 16`) + `}`,
		Finds: []string{"close warmth.heater.none /use/trips/weekends/keep"},
	}, {
		Name:  "It freezes hard inside, there is no heater, and nobody says how warm it should be",
		Patch: `{"use": {"climate": "own", "weather": {"own": {"lat": "68°", "lon": "25°", "mean": [-34, -34, -34, -34, -34, -34, -34, -34, -34, -34, -34, -34], "low": [-39, -39, -39, -39, -39, -39, -39, -39, -39, -39, -39, -39], "high": [-29, -29, -29, -29, -29, -29, -29, -29, -29, -29, -29, -29], "humidity": ["80 %", "80 %", "80 %", "80 %", "80 %", "80 %", "80 %", "80 %", "80 %", "80 %", "80 %", "80 %"], "sun": [1, 1, 2, 3, 4, 4, 4, 3, 2, 1, 1, 1]}}, "trips": {"weekends": {"months": [1], "often": "1 /month", "nights": 2, "aboard": ["ada", "ben"], "driving": "2 h/trip"}}}}`,
		Finds: []string{"fault warmth.heater.none /use/trips"},
		Also:  "water freezes on everything, and the battery is cold",
	}, {
		Name:  "Three come along where two lie down",
		Patch: `{"people": {"cia": {"stature": 1600, "mass": 60}}, ` + strings.Replace(inUse, `["ada", "ben"]`, `["ada", "ben", "cia"]`, 1) + `}`,
		Finds: []string{"note trips.beds /use/trips/weekends"},
	}, {
		Name:  "The rear doors have glass",
		Patch: `{"shell": {"openings": {"rear": {"glazed": "0.5 m2"}}}, ` + inUse + `}`,
		Finds: []string{"close warmth.glass.runs /shell/openings/rear"},
	}, {
		Name: "Somebody lives the winter through behind wool and nothing else",
		On:   "dipper",
		Patch: `{"lining": {"sides": [{"lay": "wool-sheep-50", "thick": 45}, {"lay": "pse-20-5x44", "cover": "24 %"}, {"lay": "ply-poplar-3-6"}]},
			"use": {"trips": {"winter-hills": {"often": "12 /month", "keep": 18}}}}`,
		Finds: []string{"close warmth.winter.water /lining/sides/0"},
		Also:  "the sides no longer weigh what the weighbridge said, and wheel arches are bare",
	}, {
		Name:  "Wet clothes hang in the van",
		Patch: `{` + inUseAnd(`"wet": 1.5`) + `}`,
		Finds: []string{"note warmth.clothes.wet /use/trips/weekends/wet"},
	},
}
