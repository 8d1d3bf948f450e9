package faultcase

var cablesCases = []Case{
	{
		Name:  "Dipper has 24 V, and a charger that gives 12 V",
		On:    "dipper",
		Patch: `{"vehicle": {"volts": 24}}`,
		Finds: []string{"note power.volts.input /fittings/charger-engine"},
	}, {
		Name:  "A relay joins the vehicle's 24 V to the battery of Dipper",
		On:    "dipper",
		Patch: `{"vehicle": {"volts": 24}, "fittings": {"charger-engine": {"buy": "relay-split-140a"}}}`,
		Finds: []string{"danger power.volts /power/sources/engine"},
		Also:  "a relay limits nothing, and the lead was written for a charger beside the fuse board",
	}, {
		Name:  "Godwit has four panels side by side instead of two, and no fuse in their cables",
		On:    "godwit",
		Patch: `{"fittings": {"panel-3": {"buy": "solar-rigid-180w", "at": "undecided"}, "panel-4": {"buy": "solar-rigid-180w", "at": "undecided"}}, "power": {"sources": {"sun": {"is": ["panel-left", "panel-right", "panel-3", "panel-4"]}}}}`,
		Finds: []string{"fault power.fuse.string /power/sources/sun/is"},
		Also:  "twice the sun is more than controller and cables were planned for, and panels without a place bring notes",
	}, {
		Name:  "The fuses of four panels are larger than their label allows",
		On:    "godwit",
		Patch: `{"fittings": {"panel-3": {"buy": "solar-rigid-180w", "at": "undecided"}, "panel-4": {"buy": "solar-rigid-180w", "at": "undecided"}}, "power": {"sources": {"sun": {"is": ["panel-left", "panel-right", "panel-3", "panel-4"], "string-fuse": 30, "string-most": 20}}}}`,
		Finds: []string{"fault power.fuse.string /power/sources/sun/string-fuse"},
		Also:  "twice the sun is more than controller and cables were planned for, and panels without a place bring notes",
	}, {
		Name:  "The label of four panels allows less than any fuse carries",
		On:    "godwit",
		Patch: `{"fittings": {"panel-3": {"buy": "solar-rigid-180w", "at": "undecided"}, "panel-4": {"buy": "solar-rigid-180w", "at": "undecided"}}, "power": {"sources": {"sun": {"is": ["panel-left", "panel-right", "panel-3", "panel-4"], "string-most": 10}}}}`,
		Finds: []string{"fault power.fuse.string /power/sources/sun/is"},
		Also:  "twice the sun is more than controller and cables were planned for, and panels without a place bring notes",
	}, {
		Name:  "The fridge's fuse is left out of a circuit that has its cable",
		On:    "dipper",
		Patch: `{"power": {"circuits": {"coolbox": {"fuse": null}}}}`,
		Finds: []string{"fault power.fuse.none /power/circuits/coolbox"},
	}, {
		Name:  "It is written that the lights of Dipper have no fuse",
		On:    "dipper",
		Patch: `{"power": {"circuits": {"lights": {"fuse": "none"}}}}`,
		Finds: []string{"danger power.fuse.none /power/circuits/lights/fuse"},
	}, {
		Name:  "It is written that the solar controller has no fuse",
		On:    "dipper",
		Patch: `{"power": {"sources": {"sun": {"fuse": "none"}}}}`,
		Finds: []string{"danger power.fuse.none /power/sources/sun/fuse"},
	}, {
		Name:  "Dipper's battery has no main fuse",
		On:    "dipper",
		Patch: `{"power": {"batteries": {"house": {"main-fuse": "none", "fuse-kind": null}}, "circuits": {"main": {"fuse": null}}}}`,
		Finds: []string{"danger power.fuse.main /power/batteries/house/main-fuse"},
	}, {
		Name:  "No main fuse is planned for Dipper's battery",
		On:    "dipper",
		Patch: `{"power": {"batteries": {"house": {"main-fuse": null, "fuse-kind": null}}, "circuits": {"main": {"fuse": null}}}}`,
		Finds: []string{"fault power.fuse.main /power/batteries/house"},
	}, {
		Name:  "Twite's battery cable is fused at the starter battery only",
		On:    "twite",
		Patch: `{"power": {"sources": {"engine": {"fused": "source"}}}}`,
		Finds: []string{"danger power.fuse.ends /power/sources/engine"},
	}, {
		Name:  "Nobody says which ends of Twite's battery cable have the fuse",
		On:    "twite",
		Patch: `{"power": {"sources": {"engine": {"fused": null}}}}`,
		Finds: []string{"close power.fuse.ends /power/sources/engine"},
	}, {
		Name:  "Somebody takes a fuse of 30 A to stop the fan's from blowing, with 1 mm2 to the fan",
		On:    "dipper",
		Patch: `{"power": {"circuits": {"fan": {"fuse": 30, "cable": "1 mm2"}}}}`,
		Finds: []string{"danger power.fuse.great /power/circuits/fan/fuse", "fault power.fuse.slow /power/circuits/fan/fuse"},
	}, {
		Name:  "The fuse of the tap pump is a little more than its cable stands",
		On:    "dipper",
		Patch: `{"power": {"circuits": {"tap-pump": {"fuse": 20}}}}`,
		Finds: []string{"fault power.fuse.great /power/circuits/tap-pump/fuse"},
	}, {
		Name:  "Two reading lamps sit behind a fuse of 10 A",
		On:    "dipper",
		Patch: `{"power": {"circuits": {"reading": {"fuse": 10}}}}`,
		Finds: []string{"close power.fuse.absurd /power/circuits/reading/fuse"},
	}, {
		Name:  "The heater's load is doubled behind its old fuse",
		On:    "dipper",
		Patch: `{"power": {"circuits": {"heater": {"current": 20}}}}`,
		Finds: []string{"fault power.fuse.small /power/circuits/heater/fuse", "fault power.drop /power/circuits/heater/cable"},
	}, {
		Name:  "The heater draws a little more than suits its fuse",
		On:    "dipper",
		Patch: `{"power": {"circuits": {"heater": {"current": 13}}}}`,
		Finds: []string{"close power.fuse.small /power/circuits/heater/fuse"},
	}, {
		Name:  "Dipper's main fuse sits at the other end of its cable",
		On:    "dipper",
		Patch: `{"power": {"batteries": {"house": {"fuse-away": 480}}}}`,
		Finds: []string{"fault power.fuse.far /power/batteries/house/main-fuse"},
	}, {
		Name:  "Dipper's main fuse is a blade fuse",
		On:    "dipper",
		Patch: `{"power": {"batteries": {"house": {"fuse-kind": "maxi"}}}}`,
		Finds: []string{"danger power.fuse.breaking /power/batteries/house/main-fuse"},
	}, {
		Name:  "Nobody says how Godwit's main fuse is made",
		On:    "godwit",
		Patch: `{"power": {"batteries": {"house": {"fuse-kind": null}}}}`,
		Finds: []string{"note power.fuse.kind /power/batteries/house/main-fuse"},
	}, {
		Name:  "Dipper's main fuse is written at its circuit, and how it is made at the battery",
		On:    "dipper",
		Patch: `{"power": {"batteries": {"house": {"main-fuse": null}}}}`,
	}, {
		Name:  "The fuse of Twite's sockets is as large as its main fuse",
		On:    "twite",
		Patch: `{"power": {"circuits": {"sockets": {"fuse": 30, "cable": "4 mm2"}}}}`,
		Finds: []string{"close power.fuse.selective /power/circuits/sockets/fuse"},
	}, {
		Name:  "A lamp hangs at the end of forty metres of thin cable behind a large fuse",
		On:    "dipper",
		Patch: `{"power": {"circuits": {"reading": {"route": 40000, "fuse": 5, "along": null}}}}`,
		Finds: []string{"fault power.fuse.slow /power/circuits/reading/fuse"},
	}, {
		Name:  "The shunt of Dipper's monitor is made for half of the main fuse",
		On:    "dipper",
		Patch: `{"catalogue": {"shunt-monitor-500a": {"kind": "piece", "amps": 50}}}`,
		Finds: []string{"fault power.part.weak /fittings/monitor"},
	}, {
		Name:  "The cable of Godwit's heater is less than half of what it was",
		On:    "godwit",
		Patch: `{"power": {"circuits": {"heater": {"cable": "1.5 mm2"}}}}`,
		Finds: []string{"fault power.drop /power/circuits/heater/cable"},
	}, {
		Name:  "The sockets of Dipper are wired with what was left over from the lights, and draw 30 A",
		On:    "dipper",
		Patch: `{"power": {"circuits": {"sockets": {"cable": "1.5 mm2", "current": 30}}}}`,
		Finds: []string{"fault power.cable.thin /power/circuits/sockets/cable", "fault power.fuse.small /power/circuits/sockets/fuse", "fault power.collapse /power/circuits/sockets"},
	}, {
		Name:  "The reading lamps hang on bell wire",
		On:    "dipper",
		Patch: `{"power": {"circuits": {"reading": {"cable": "0.5 mm2"}}}}`,
		Finds: []string{"close power.cable.strand /power/circuits/reading/cable"},
	}, {
		Name:  "The cable of Dipper's panel is thinner than its plugs hold",
		On:    "dipper",
		Patch: `{"power": {"sources": {"sun": {"cable": "2 mm2"}}}}`,
		Finds: []string{"close power.cable.strand /power/sources/sun/cable", "close power.drop /power/sources/sun/cable"},
	}, {
		Name:  "The fan's negative goes through the body",
		On:    "dipper",
		Patch: `{"power": {"circuits": {"fan": {"return": "body"}}}}`,
		Finds: []string{"fault power.cable.body /power/circuits/fan/return"},
	}, {
		Name:  "The body is the negative of Dipper's main cable",
		On:    "dipper",
		Patch: `{"power": {"circuits": {"main": {"return": "body"}}}}`,
		Finds: []string{"fault power.cable.body /power/circuits/main/return"},
	}, {
		Name:  "A battery stands among the loads of a circuit",
		On:    "dipper",
		Patch: `{"power": {"circuits": {"fan": {"loads": ["fan", "battery"]}}}}`,
		Finds: []string{"danger power.battery.load /power/circuits/fan/loads"},
	}, {
		Name:  "The fuse of the lights breaks hardly anything",
		On:    "dipper",
		Patch: `{"power": {"circuits": {"lights": {"breaking": 10}}}}`,
		Finds: []string{"danger power.fuse.breaking /power/circuits/lights/fuse"},
	}, {
		Name:  "The main fuse is of 20 A in both places",
		On:    "dipper",
		Patch: `{"power": {"batteries": {"house": {"main-fuse": 20}}, "circuits": {"main": {"fuse": 20}}}}`,
		Finds: []string{"fault power.fuse.small /power/batteries/house/main-fuse"},
		Also:  "those behind it are hardly smaller, or greater",
	}, {
		Name:  "A fuse for more than the lead stands protects the charger's line",
		On:    "dipper",
		Patch: `{"power": {"sources": {"engine": {"most": 90, "fuse": 125, "cable": "50 mm2"}}}}`,
		Finds: []string{"danger power.fuse.great /power/sources/engine/fuse"},
		Also:  "it is no smaller than the main fuse, and its cable fills its conduit",
	}, {
		Name:  "The bond to the body is a thin one",
		On:    "dipper",
		Patch: `{"power": {"batteries": {"house": {"bond": "2.5 mm2"}}}}`,
		Finds: []string{"fault power.cable.bond /power/batteries/house/bond"},
	}, {
		Name:  "Mains cable goes through the conduit of the coolbox",
		On:    "dipper",
		Patch: `{"power": {"mains": {"by": "an electrician", "along": ["conduit-floor"]}}}`,
		Finds: []string{"danger power.cable.mains /power/circuits/coolbox/along", "danger power.cable.mains /power/circuits/tap-pump/along"},
	}, {
		Name:  "A circuit for the coolbox is planned and nothing of it chosen",
		On:    "dipper",
		Patch: `{"power": {"circuits": {"coolbox": {"fuse": null, "cable": null}}}}`,
		Finds: []string{"note power.cable.unchosen /power/circuits/coolbox"},
	}, {
		Name:  "A kettle of 30 kW hangs on Godwit's battery",
		On:    "godwit",
		Patch: `{"power": {"circuits": {"kettle": {"from": "house", "loads": ["inverter"], "current": 2000, "route": 1000, "cable": "120 mm2", "fuse": 400}}}}`,
		Finds: []string{"fault power.collapse /power/circuits/kettle"},
		Also:  "no cable and no fuse stands it either",
	}, {
		Name:  "No circuit names Dipper's coolbox any longer",
		On:    "dipper",
		Patch: `{"power": {"circuits": {"coolbox": null}}}`,
		Finds: []string{"note power.cable.unfed /fittings/coolbox"},
	}, {
		Name:  "The circuit of Dipper's coolbox lost its loads",
		On:    "dipper",
		Patch: `{"power": {"circuits": {"coolbox": {"loads": null}}}}`,
		Finds: []string{"fault power.cable.feeds-nothing /power/circuits/coolbox", "note power.cable.unfed /fittings/coolbox"},
	}, {
		Name:  "Nothing is named that the fan's circuit feeds, and the main cable of Dipper is not written",
		On:    "dipper",
		Patch: `{"power": {"circuits": {"main": null, "fan": {"loads": null}}}}`,
		Finds: []string{"fault power.cable.feeds-nothing /power/circuits/fan", "note power.cable.unfed /fittings/fan"},
	}, {
		Name:  "The main cable of Godwit is written for less than its circuits draw at once",
		On:    "godwit",
		Patch: `{"power": {"circuits": {"main": {"current": 30}}}}`,
		Finds: []string{"close power.current.low /power/circuits/main/current"},
	}, {
		Name:  "The coolbox is written with what it draws on average",
		On:    "dipper",
		Patch: `{"power": {"circuits": {"coolbox": {"current": 1}}}}`,
		Finds: []string{"fault power.current.low /power/circuits/coolbox/current"},
	}, {
		Name:  "The pump is written with a little less than its row says",
		On:    "dipper",
		Patch: `{"power": {"circuits": {"tap-pump": {"current": 2.5}}}}`,
		Finds: []string{"close power.current.low /power/circuits/tap-pump/current"},
	}, {
		Name:  "The panels of Dipper are written with what they give on a dull day",
		On:    "dipper",
		Patch: `{"power": {"sources": {"sun": {"most": 4}}}}`,
		Finds: []string{"fault power.current.low /power/sources/sun/most", "close power.fuse.small /power/sources/sun/fuse"},
	}, {
		Name:  "A third panel lies beside the two of Godwit on a thin cable, and the current is as it was written for two",
		On:    "godwit",
		Patch: `{"fittings": {"panel-3": {"buy": "solar-rigid-180w", "at": "undecided"}}, "power": {"sources": {"sun": {"is": ["panel-left", "panel-right", "panel-3"], "cable": "1.5 mm2"}}}}`,
		Finds: []string{"close power.current.low /power/sources/sun/most", "danger power.cable.thin /power/sources/sun/cable"},
		Also:  "three side by side want fuses, their controller passes less, and a panel without a place brings notes",
	}, {
		Name:  "The battery of Dipper is one of 24 V, all else as it was",
		On:    "dipper",
		Patch: `{"catalogue": {"battery-lfp-100ah": {"kind": "appliance", "volts": 25.6}}}`,
		Finds: []string{"danger power.volts /fittings/battery"},
		Also:  "half the current is drawn at twice the voltage",
	}, {
		Name:  "The battery of Dipper has 6 V",
		On:    "dipper",
		Patch: `{"catalogue": {"battery-lfp-100ah": {"kind": "appliance", "volts": 6}}}`,
		Finds: []string{"fault power.battery.volts /power/batteries/house"},
		Also:  "twice the current is drawn at half the voltage, and half as much is stored",
	}, {
		Name:  "The batteries of Godwit are of 6 V",
		On:    "godwit",
		Patch: `{"catalogue": {"battery-agm-100ah": {"kind": "appliance", "volts": 6, "amp-hours": 200}}}`,
		Finds: []string{"fault power.battery.volts /power/batteries/house"},
		Also:  "twice the current is drawn at half the voltage, and half as much is stored",
	}, {
		Name:  "The battery of Dipper has 1000 V",
		On:    "dipper",
		Patch: `{"catalogue": {"battery-lfp-100ah": {"kind": "appliance", "volts": 1000}}}`,
		Finds: []string{"danger power.battery.volts /power/batteries/house"},
		Also:  "hardly any current is drawn at so much",
	}, {
		Name:  "A coolbox for lorries hangs on 12 V",
		On:    "dipper",
		Patch: `{"catalogue": {"coolbox-compressor-35": {"kind": "appliance", "volts": 24}}}`,
		Finds: []string{"fault power.volts /fittings/coolbox"},
	}, {
		Name:  "The sockets of a circuit of 12 V are of the mains",
		On:    "dipper",
		Patch: `{"catalogue": {"socket-usb-12v": {"kind": "appliance", "volts": 230}}}`,
		Finds: []string{"danger power.volts /fittings/sockets"},
	}, {
		Name:  "The second battery of Godwit is of lithium",
		On:    "godwit",
		Patch: `{"fittings": {"battery-b": {"buy": "battery-lfp-100ah"}}}`,
		Finds: []string{"danger power.battery.mixed /fittings/battery-a"},
	}, {
		Name:  "The second battery of Godwit is of 24 V",
		On:    "godwit",
		Patch: `{"catalogue": {"battery-24v": {"name": "Lithium iron phosphate battery 25.6 V 100 Ah", "kind": "appliance", "group": "electrical", "volts": 25.6, "amp-hours": 100, "usable": "80 %", "size": {"x": 330, "y": 175, "z": 220}, "mass": 22, "each": "piece", "source": "from memory"}}, "fittings": {"battery-b": {"buy": "battery-24v"}}}`,
		Finds: []string{"danger power.volts /fittings/battery-a"},
	}, {
		Name:  "Dipper's main fuse is of 100 A at the battery and of 150 A at its circuit",
		On:    "dipper",
		Patch: `{"power": {"circuits": {"main": {"fuse": 150}}}}`,
		Finds: []string{"close power.fuse.twice /power/batteries/house/main-fuse"},
	}, {
		Name:  "The coolbox of Dipper stands outside, at the end of fifty metres of thin cable",
		On:    "dipper",
		Patch: `{"power": {"circuits": {"coolbox": {"route": 50000, "cable": "1 mm2"}}}}`,
		Finds: []string{"fault power.collapse /power/circuits/coolbox", "fault power.fuse.slow /power/circuits/coolbox/fuse"},
	}, {
		Name:  "Twite is to have a mains inlet, and nobody is named for it",
		On:    "twite",
		Patch: `{"power": {"mains": {"note": "An inlet on the left."}}}`,
		Finds: []string{"note power.mains.by /power/mains"},
	}, {
		Name:  "The engine's cable of Dipper is halved",
		On:    "dipper",
		Patch: `{"power": {"sources": {"engine": {"cable": "6 mm2"}}}}`,
		Finds: []string{"fault power.drop /power/sources/engine/cable"},
	}, {
		Name:  "The lead of Dipper's solar controller is of the cable of a lamp",
		On:    "dipper",
		Patch: `{"power": {"sources": {"sun": {"lead": {"cable": "1 mm2"}}}}}`,
		Finds: []string{"fault power.fuse.great /power/sources/sun/fuse"},
	}, {
		Name:  "Dipper's solar controller stands six metres from the fuse board, on thin cable",
		On:    "dipper",
		Patch: `{"power": {"sources": {"sun": {"lead": {"route": 6000, "cable": "2.5 mm2"}}}}}`,
		Finds: []string{"fault power.drop /power/sources/sun/lead/cable"},
	}, {
		Name:  "The lead of Dipper's solar controller is written shorter than it can be",
		On:    "dipper",
		Patch: `{"power": {"sources": {"sun": {"lead": {"route": 100}}}}}`,
		Finds: []string{"close runs.short /power/sources/sun/lead/route"},
	}, {
		Name:  "It is written that the lead of Godwit's charger from the engine has no fuse",
		On:    "godwit",
		Patch: `{"power": {"sources": {"engine": {"lead": {"fuse": "none"}}}}}`,
		Finds: []string{"danger power.fuse.none /power/sources/engine/lead/fuse"},
	}, {
		Name:  "The lead of Dipper's solar controller has a fuse for an inverter, and the cable for that",
		On:    "dipper",
		Patch: `{"power": {"batteries": {"house": {"main-fuse": 400}}, "circuits": {"main": {"cable": "120 mm2", "fuse": 400}}, "sources": {"sun": {"lead": {"cable": "50 mm2", "fuse": 150}}}}}`,
		Finds: []string{"close power.fuse.absurd /power/sources/sun/lead/fuse"},
		Also:  "the parts behind the main fuse are made for less",
	}, {
		Name:  "The lead of Dipper's charger from the engine has a fuse that is as large as the main fuse",
		On:    "dipper",
		Patch: `{"power": {"sources": {"engine": {"lead": {"cable": "25 mm2", "fuse": 100}}}}}`,
		Finds: []string{"close power.fuse.selective /power/sources/engine/lead/fuse"},
	}, {
		Name:  "Nothing is said of the lead of Dipper's solar controller",
		On:    "dipper",
		Patch: `{"power": {"sources": {"sun": {"lead": null}}}}`,
		Finds: []string{"note power.cable.unchosen /power/sources/sun"},
	}, {
		Name:  "Dipper's battery has no main fuse, and its solar controller a blade fuse",
		On:    "dipper",
		Patch: `{"power": {"batteries": {"house": {"main-fuse": "none", "fuse-kind": null}}, "circuits": {"main": {"fuse": null}}, "sources": {"sun": {"lead": {"fuse-kind": "blade"}}}}}`,
		Finds: []string{"danger power.fuse.main /power/batteries/house/main-fuse", "danger power.fuse.breaking /power/sources/sun/fuse"},
	}, {
		Name:  "The lead of Twite's relay is thinner than the fuse at the other end of its line allows",
		On:    "twite",
		Patch: `{"power": {"sources": {"engine": {"lead": {"cable": "2.5 mm2", "fuse": 30}}}}}`,
		Finds: []string{"fault power.fuse.great /power/sources/engine/fuse"},
		Also:  "30 A are all that so small a fuse lets pass",
	}, {
		Name:  "No fitting of Dipper stands for its cables any longer: they are counted by the metre",
		On:    "dipper",
		Patch: `{"power": {"counted-in": null, "circuits": {"fan": {"route": null}}}}`,
	},
}
