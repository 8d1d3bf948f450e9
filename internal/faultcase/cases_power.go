package faultcase

var powerCases = []Case{
	{
		Name:  "A test finds half as much again as is printed on the battery",
		On:    "dipper",
		Patch: `{"power": {"batteries": {"house": {"tested": 150}}}}`,
		Finds: []string{"close power.battery.tested-more /power/batteries/house/tested"},
	}, {
		Name:  "A second bank is written that nothing charges",
		On:    "dipper",
		Patch: `{"fittings": {"spare": {"buy": "battery-leisure-110ah", "at": "undecided", "later": "no"}}, "catalogue": {"battery-leisure-110ah": {"kind": "appliance", "amp-hours": 30}}, "power": {"batteries": {"spare": {"is": ["spare"], "main-fuse": 50, "fuse-kind": "class-t"}}}}`,
		Finds: []string{"note power.battery.second /power/batteries/spare", "fault power.source.none /power/batteries/spare"},
		Also:  "a battery without a place brings notes of its own",
	}, {
		Name:  "A panel of too few volts charges a second bank",
		On:    "dipper",
		Patch: `{"fittings": {"spare": {"buy": "battery-leisure-110ah", "at": "undecided", "later": "no"}, "panel-2": {"buy": "solar-flex-100w", "at": "undecided", "later": "no"}, "controller-2": {"buy": "mppt-20a", "at": "undecided", "later": "no"}}, "catalogue": {"battery-leisure-110ah": {"kind": "appliance", "amp-hours": 30}, "solar-flex-100w": {"kind": "appliance", "volts": 12}}, "power": {"batteries": {"spare": {"is": ["spare"], "main-fuse": 50, "fuse-kind": "class-t"}}, "sources": {"second": {"is": ["panel-2"], "by": "controller-2", "to": "spare"}}}}`,
		Finds: []string{"fault power.panel.volts /power/sources/second"},
		Also:  "what has no place brings notes of its own",
	}, {
		Name:  "The panel of Dipper is joined to the battery without its controller",
		On:    "dipper",
		Patch: `{"power": {"sources": {"sun": {"by": null}}}}`,
		Finds: []string{"fault power.panel.uncontrolled /power/sources/sun"},
	}, {
		Name:  "The panel of Dipper is written with 12 V, as it is sold",
		On:    "dipper",
		Patch: `{"catalogue": {"solar-rigid-180w": {"kind": "appliance", "volts": 12}}}`,
		Finds: []string{"fault power.panel.volts /power/sources/sun"},
		Also:  "no sun is counted, and more current would flow at fewer volts",
	}, {
		Name:  "The panel of Dipper has 5 V",
		On:    "dipper",
		Patch: `{"catalogue": {"solar-rigid-180w": {"kind": "appliance", "volts": 5}}}`,
		Finds: []string{"fault power.panel.volts /power/sources/sun"},
		Also:  "no sun is counted, and more current would flow at fewer volts",
	}, {
		Name:  "The panel of 18 V charges a battery of 25.6 V",
		On:    "dipper",
		Patch: `{"catalogue": {"battery-lfp-100ah": {"kind": "appliance", "volts": 25.6}}}`,
		Finds: []string{"fault power.panel.volts /power/sources/sun"},
		Also:  "what hangs on the battery is for 12 V",
	}, {
		Name:  "The fuse box is named as what controls the panel",
		On:    "dipper",
		Patch: `{"power": {"sources": {"sun": {"by": "fuse-box"}}}}`,
		Finds: []string{"fault power.panel.uncontrolled /power/sources/sun"},
	}, {
		Name:  "The fuse box is named as a source",
		On:    "dipper",
		Patch: `{"power": {"sources": {"box": {"is": ["fuse-box"], "to": "house"}}}}`,
		Finds: []string{"close power.source.unknown /power/sources/box"},
		Also:  "its cable brings notes of its own",
	}, {
		Name:  "A mains charger is joined in a van without mains",
		On:    "dipper",
		Patch: `{"power": {"mains": "none", "sources": {"engine": {"most": null}}}, "fittings": {"charger-engine": {"buy": "charger-mains-20a"}}}`,
		Finds: []string{"close power.mains.none /power/sources/engine"},
		Also:  "nothing charges from the engine any more",
	}, {
		Name:  "The battery is charged from the mains at home, by nothing",
		On:    "dipper",
		Patch: `{"power": {"at-home": "mains"}}`,
		Finds: []string{"close power.mains.charger /power"},
	}, {
		Name:  "The monitor was read in a month without trips",
		On:    "dipper",
		Patch: `{"power": {"read": {"holiday": {"date": "2026-07-10", "took": "45 Ah/day"}}}}`,
		Finds: []string{"note power.read.unused /power/read/holiday"},
	}, {
		Name:  "Nobody has decided about the mains",
		Patch: `{"power": {"mains": "undecided"}}`,
		Finds: []string{"note power.mains /power/mains"},
	}, {
		Name:  "A lamp is bought before there is a battery",
		Patch: `{"fittings": {"battery": null, "lamp": {"buy": "led-spot-3w", "at": {"x": 2000, "y": "mid 0", "z": "roof"}, "held": "screwed"}}}`,
		Finds: []string{"note power.battery.none /fittings/lamp"},
	}, {
		Name:  "A test finds the battery half gone",
		On:    "dipper",
		Patch: `{"power": {"batteries": {"house": {"tested": 60}}}}`,
		Finds: []string{"note power.battery.tested /power/batteries/house/tested"},
	}, {
		Name:  "Four fifths of a lead battery are counted on",
		On:    "twite",
		Patch: `{"catalogue": {"battery-leisure-110ah": {"kind": "appliance", "usable": "80 %"}}}`,
		Finds: []string{"close power.battery.deep /fittings/battery"},
	}, {
		Name:  "The inverter is twice as large",
		On:    "godwit",
		Patch: `{"fittings": {"inverter": {"buy": "inverter-2000"}}}`,
		Finds: []string{"fault power.battery.rate /fittings/inverter"},
	}, {
		Name:  "Nothing charges the battery",
		On:    "twite",
		Patch: `{"power": {"sources": null}}`,
		Finds: []string{"fault power.source.none /power/batteries/house", "fault power.flat /power/batteries/house"},
	}, {
		Name:  "In winter the van drives but half an hour a day",
		On:    "dipper",
		Patch: `{"use": {"trips": {"winter-hills": {"driving": "0.5 h/day"}}}}`,
		Finds: []string{"close power.flat /power/batteries/house"},
	}, {
		Name:  "The coolbox takes twice as much, and the lights too, and nobody drives",
		On:    "dipper",
		Patch: `{"use": {"habits": "cosy", "trips": {"winter-hills": {"driving": "0 h/trip"}}}, "catalogue": {"strip-2000": {"watts": 60}}}`,
		Finds: []string{"fault power.flat /power/batteries/house", "fault power.current.low /power/circuits/lights/current", "fault power.drop /power/circuits/lights/cable", "fault power.fuse.small /power/circuits/lights/fuse"},
	}, {
		Name:  "The charger from the engine is half as large again, and set to it",
		On:    "dipper",
		Patch: `{"fittings": {"charger-engine": {"buy": "dcdc-50a"}}, "power": {"sources": {"engine": {"most": 50}}}}`,
		Finds: []string{"fault power.battery.charge /power/sources/engine", "fault power.fuse.small /power/sources/engine/fuse", "close power.drop /power/sources/engine/cable"},
	}, {
		Name:  "The charger from the engine draws more than the engine may give",
		On:    "dipper",
		Patch: `{"fittings": {"charger-engine": {"buy": "dcdc-50a"}}}`,
		Finds: []string{"fault power.engine.overload /power/sources/engine", "fault power.fuse.small /power/sources/engine/fuse", "close power.drop /power/sources/engine/cable"},
	}, {
		Name:  "A switch joins a lithium battery to the engine",
		On:    "dipper",
		Patch: `{"fittings": {"charger-engine": {"buy": "relay-split-140a"}}}`,
		Finds: []string{"fault power.engine.overload /power/sources/engine"},
		Also:  "the lead was written for a charger beside the fuse board",
	}, {
		Name:  "Nothing stops the charge of a lithium battery in frost",
		On:    "dipper",
		Patch: `{"power": {"batteries": {"house": {"cut-off": "no"}}}}`,
		Finds: []string{"fault power.battery.cold /fittings/battery"},
	}, {
		Name:  "A note speaks of a low-temperature cut-off, but nothing says that there is one",
		On:    "dipper",
		Patch: `{"fittings": {"battery": {"note": "It has no low-temperature cut-off and is not heated."}}, "power": {"batteries": {"house": {"cut-off": null}}}}`,
		Finds: []string{"fault power.battery.cold /fittings/battery"},
	}, {
		Name:  "The controller passes less than the panel gives",
		On:    "dipper",
		Patch: `{"catalogue": {"mppt-20a": {"kind": "piece", "amps": 10}}}`,
		Finds: []string{"close power.panel.current /power/sources/sun"},
	}, {
		Name:  "Half the winter nights are spent on the mains, to which nothing is joined",
		On:    "dipper",
		Patch: `{"use": {"trips": {"winter-hills": {"hook-up": "50 %"}}}}`,
		Finds: []string{"note power.hook-up /use/trips/winter-hills"},
	}, {
		Name:  "The monitor counts three times what is listed",
		On:    "dipper",
		Patch: `{"power": {"read": {"june": {"date": "2026-06-10", "took": "1 kWh/day"}}}}`,
		Finds: []string{"note power.read /power/read/june", "fault power.flat /power/batteries/house"},
	}, {
		Name:  "The coolbox has no compressor",
		On:    "dipper",
		Patch: `{"catalogue": {"coolbox-compressor-35": {"kind": "appliance", "name": "Thermoelectric coolbox 35 l", "watts": 48}}}`,
		Finds: []string{"close power.load.thermoelectric /fittings/coolbox", "fault power.flat /power/batteries/house"},
	}, {
		Name:  "The coolbox is an absorption fridge",
		On:    "dipper",
		Patch: `{"catalogue": {"coolbox-compressor-35": {"kind": "appliance", "name": "Absorption fridge 35 l", "watts": 120}}}`,
		Finds: []string{"close power.current.low /power/circuits/coolbox/current", "close power.fuse.small /power/circuits/coolbox/fuse", "close power.load.absorption /fittings/coolbox"},
	},
}
