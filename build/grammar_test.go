package build_test

import (
	"strings"
	"testing"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
)

// base is a small document that the fragments of the grammar table are merged into.
const base = `
tumblehome: 1
build: {title: Base, rules: gb, currency: GBP, rates: {EUR: 0.86}}
people: {tall: {stature: 1830, mass: 84}}
vehicle: {wheelbase: 3350, datum: 1290}
shell:
  openings: {side: {through: left, x: 150..1300}, vent: {through: floor}}
fittings:
  galley: {make: carcass, at: {x: 40, y: right}, size: {x: 950, y: 450, z: 880}}
  settle: {make: bench, at: {x: 1010..2910, y: right}, moves: {leaf: {slide: -y, by: 300}}, positions: {open: {lid: full}}}
  lamp: {buy: own-lamp, at: {x: 1500, y: left, z: roof - 150}}
power: {batteries: {house: {is: [lamp]}}}
catalogue: {own-lamp: {kind: piece, watts: 6}}
`

// hut is a weather of one's own.
const hut = "{lat: 57.1°, lon: -4.7°, altitude: 320, clock: 0, mean: [3, 3, 4, 6, 9, 11, 13, 13, 11, 8, 5, 3], low: [0, 0, 1, 2, 4, 7, 9, 9, 7, 5, 2, 0], " +
	"high: [6, 6, 7, 10, 14, 15, 17, 17, 15, 11, 8, 6], humidity: [86 %, 84 %, 81 %, 78 %, 77 %, 78 %, 79 %, 80 %, 82 %, 85 %, 86 %, 87 %], " +
	"sun: [1, 1, 2, 3.5, 4.5, 4.4, 4.1, 3.3, 2.3, 1.2, 0.5, 0.3], spread: [3, 3, 3, 3, 3, 2, 2, 2, 2, 3, 3, 3.5]}"

// with is the base with a fragment of YAML merged in.
func with(t testing.TB, fragment string) *tree.Node {
	t.Helper()
	return tree.Merge(parse(t, base), tree.Setting("", parse(t, fragment)))
}

func parse(t testing.TB, text string) *tree.Node {
	t.Helper()
	s, err := tree.Parse("f", []byte(text))
	if err != nil {
		t.Fatalf("%v\n%s", err, text)
	}
	return s.Root
}

// Each rule of the grammar has a document that is taken and one that is
// refused, with all that is said about it.
var grammarTable = []struct{ rule, takes, refuses, want string }{
	{"only known sections", "gas: none", "gaz: none", "unknown key `gaz`; did you mean `gas`?"},
	{"only known keys", "people: {tall: {note: x}}", "people: {tall: {notte: x}}",
		"people.tall: unknown key `notte`; expected called, stature, mass, stature-in, free, skills or note; did you mean `note`?"},
	{"needed keys are there", "people: {small: {stature: 1640, mass: 61}}", "people: {small: {mass: 61}}",
		"people.small: `stature` is missing; expected height without shoes"},
	{"ids are small letters, digits and dashes", "people: {the-2nd: {stature: 1640, mass: 61}}", "people: {Grand Ma: {stature: 1640, mass: 61}}",
		"people.Grand Ma: `Grand Ma` is no id; expected an id of small letters, digits and single dashes, at most 40 of them such as `settle` or `bench-2`; did you mean `grand-ma`?"},
	{"ids have at most 40 characters", "people: {a" + strings.Repeat("b", 39) + ": {stature: 1640, mass: 61}}", "people: {a" + strings.Repeat("b", 40) + ": {stature: 1640, mass: 61}}",
		"people.a" + strings.Repeat("b", 40) + ": `a" + strings.Repeat("b", 39) + "…` is too long for an id; expected an id of small letters, digits and single dashes, at most 40 of them such as `settle` or `bench-2`"},
	{"ids are not what YAML takes for values", "people: {yes: {stature: 1640, mass: 61}}", "people: {true: {stature: 1640, mass: 61}}",
		"people.true: `true` means something else and can not be an id; expected another id"},
	{"no fitting is called like a face", "fittings: {top-box: {mass: 1}}", "fittings: {top: {mass: 1}}",
		"fittings.top: `top` means something else and can not be an id; expected another id"},
	{"no move is called full or rest", "fittings: {settle: {moves: {flap: {off: yes}}}}", "fittings: {settle: {moves: {rest: {off: yes}}}}",
		"fittings.settle.moves.rest: `rest` means something else and can not be an id; expected another id"},
	{"no position is called full or rest", "fittings: {settle: {positions: {wide: {leaf: full}}}}", "fittings: {settle: {positions: {full: {leaf: full}}}}",
		"fittings.settle.positions.full: `full` means something else and can not be an id; expected another id"},
	{"null never stands in a document", "fittings: {galley: {mass: 20}}", "{fittings: {galley: {mass: \"\"}}}",
		"fittings.galley.mass: nothing is written here; expected one value such as `13`"},

	{"a bare number is in the unit of its field", "vehicle: {wheelbase: 4035}", "vehicle: {wheelbase: wide}",
		"vehicle.wheelbase: `wide` is not a length; expected a length such as `3350`, `3.35 m` or `7 ft 2 in`"},
	{"a unit may be named", "vehicle: {wheelbase: 13 ft 3 in}", "vehicle: {wheelbase: 4035 mmm}",
		"vehicle.wheelbase: `4035 mmm` has the unknown unit `mmm`; expected a length such as `3350`, `3.35 m` or `7 ft 2 in`; did you mean `mm`?"},
	{"the decimal mark is a point", "vehicle: {wheelbase: 4.035 m}", "{vehicle: {wheelbase: \"4,035 m\"}}",
		"vehicle.wheelbase: `4,035 m` has a comma; the decimal mark is a point; expected a length such as `3350`, `3.35 m` or `7 ft 2 in`; did you mean `4.035 m`?"},
	{"a number lies in the range of its field", "vehicle: {wheelbase: 1200}", "vehicle: {wheelbase: 335}",
		"vehicle.wheelbase: `335` is too little; expected 1200 to 6000"},
	{"a range is said in the unit of its field", "build: {contingency: 200 %}", "build: {contingency: 201 %}",
		"build.contingency: `201 %` is too much; expected 0 % to 200 %"},
	{"an area names its unit", "shell: {openings: {vent: {free-area: 40 cm2}}}", "shell: {openings: {vent: {free-area: 40}}}",
		"shell.openings.vent.free-area: `40` has no unit; expected an area with its unit such as `0.02 m2` or `40 cm2`; did you mean `40 m2`?"},
	{"a share has its sign", "build: {contingency: 12 %}", "build: {contingency: 0.12}",
		"build.contingency: `0.12` has no unit; expected a share with its sign such as `35 %` or `12.5 %`; did you mean `0.12 %`?"},
	{"an angle has its sign", "fittings: {galley: {turn: 30°}}", "fittings: {galley: {turn: 30}}",
		"fittings.galley.turn: `30` has no unit; expected an angle such as `95°` or `30°`; did you mean `30°`?"},
	{"a rate says per what", "use: {trips: {hills: {driving: 5 h/trip}}}", "use: {trips: {hills: {driving: 5 h}}}",
		"use.trips.hills.driving: `5 h` does not say per what; expected a rate such as `2 /month`, `1 h/day` or `2 l/day`"},
	{"money has at most two digits after the point", "build: {budget: 5200.50}", "build: {budget: 5200.505}",
		"build.budget: `5200.505` has more than two digits after the point; expected an amount such as `140`, `61.50` or `61.50 EUR`"},
	{"another currency needs a rate", "build: {budget: 5200 EUR}", "build: {budget: 5200 USD}",
		"build.budget: there is no rate for USD; expected the build's currency, or a rate in build.rates"},
	{"a date is a day of the calendar", "build: {begun: 2026-03-07}", "build: {begun: 2026-02-29}",
		"build.begun: `2026-02-29` is not in the calendar; expected a date such as `2026-03-07` or `2025-11-30`"},
	{"yes and no are words", "fittings: {galley: {found: true}}", "fittings: {galley: {found: on}}",
		"fittings.galley.found: `on` is neither yes nor no; expected yes or no"},
	{"a trip is counted by the month or the year", "use: {trips: {hills: {often: 1 /year}}}", "use: {trips: {hills: {often: 2 /day}}}",
		"use.trips.hills: `2 /day` does not say how often; expected a number per month or per year such as `2 /month` or `1 /year`"},
	{"driving is hours of a day or a trip", "use: {trips: {hills: {driving: 1 h/day}}}", "use: {trips: {hills: {driving: 2 l/day}}}",
		"use.trips.hills: `2 l/day` does not say how long one drives; expected hours per day or per trip such as `1 h/day` or `5 h/trip`"},
	{"a trip names each month once", "use: {trips: {hills: {months: [1, 2]}}}", "use: {trips: {hills: {months: [1, 1]}}}",
		"use.trips.hills: month 1 is named twice; expected each month once"},
	{"an own weather has twelve months", "use: {weather: {hut: " + hut + "}}", "use: {weather: {hut: " + strings.Replace(hut, "sun: [1, ", "sun: [", 1) + "}}",
		"use.weather.hut: `sun` has 11 months; expected 12, January first"},
	{"the temperatures of a month rise", "use: {weather: {hut: " + hut + "}}", "use: {weather: {hut: " + strings.Replace(hut, "low: [0, ", "low: [6, ", 1) + "}}",
		"use.weather.hut: in month 1 low, mean and high do not rise; expected the lowest, the mean, the highest"},
	{"a whole number has no point", "use: {trips: {hills: {nights: 2}}}", "use: {trips: {hills: {nights: 2.5}}}",
		"use.trips.hills.nights: `2.5` is not a whole number; expected a whole number"},
	{"a plain number has no unit", "stock: {ply: {have: 2.5}}", "stock: {ply: {have: 2 sheets}}",
		"stock.ply.have: `2 sheets` is not a plain number; expected a number such as `1.17`"},
	{"some words are a closed list", "build: {rules: eu}", "build: {rules: uk}",
		"build.rules: `uk` is not known here; expected gb, eu or us"},

	{"a guess is a number, even or of three values", "{fittings: {galley: {mass: 30 ± 25 %}, settle: {mass: {likely: 12, low: 9, high: 20}}}}", "fittings: {galley: {mass: {likely: 12, low: 9}}}",
		"fittings.galley.mass: a guess has three values, or one that is exact; expected {likely, low, high} or {exactly}"},
	{"the three values of a guess rise", "fittings: {galley: {mass: {likely: 12, low: 12, high: 20}}}", "fittings: {galley: {mass: {likely: 12, low: 15, high: 20}}}",
		"fittings.galley.mass: low, likely and high do not rise; expected the least, the most probable, the most"},
	{"the three values are of one currency", "prices: {own-lamp: {standing: guess, price: {likely: 9 EUR, low: 8 EUR, high: 12 EUR}}}", "prices: {own-lamp: {standing: guess, price: {likely: 9 EUR, low: 8, high: 12}}}",
		"prices.own-lamp.price: the three amounts are not of one currency; expected the same currency three times"},
	{"what was weighed is exact", "fittings: {galley: {mass: {exactly: 11.2}}}", "fittings: {galley: {mass: {exact: 11.2}}}",
		"fittings.galley.mass: unknown key `exact`; expected likely, low and high, or exactly; did you mean `exactly`?"},
	{"a guess stays in its range", "fittings: {galley: {mass: 10 ± 10}}", "fittings: {galley: {mass: 10 ± 11}}",
		"fittings.galley.mass: `10 ± 11` is too little; expected 0 to 1000"},

	{"a choice may be open", "fittings: {galley: {of: {undecided: [ply-poplar-12, ply-poplar-9]}}}", "fittings: {galley: {of: {undecided: ply-poplar-12}}}",
		"fittings.galley.of.undecided: `ply-poplar-12` is no choice; expected a list of the choices, the one to assume first"},
	{"nothing need be known of a choice", "fittings: {galley: {of: undecided}}", "fittings: {galley: {of: undecidded}}",
		"fittings.galley.of: `undecidded` is no material of the catalogue"},
	{"a layer of lining may be open", "lining: {floor: [{undecided: [{lay: xps-20}, {lay: ply-softwood-15}]}]}", "lining: {floor: [{undecided: [xps-20]}]}",
		"lining.floor.0.undecided.0: `xps-20` stands alone; expected {lay, thick, cover, times, …}"},
	{"none says that there is none", "gas: none", "gas: nothing", "gas: `nothing` is not known here; expected none, undecided or what there is"},

	{"a bare id leads into its collection", "power: {circuits: {lights: {from: house, loads: [lamp]}}}", "power: {circuits: {lights: {from: house, loads: [lamb]}}}",
		"power.circuits.lights.loads.0: `lamb` is not in fittings; did you mean `lamp`?"},
	{"openings are those of the shell", "air: {always-open: [vent]}", "air: {always-open: [galley]}", "air.always-open.0: `galley` is not in shell.openings; expected side or vent"},
	{"keys may refer as well", "modes: {night: {people: {tall: {lies: settle}}}}", "modes: {night: {people: {small: {lies: settle}}}}",
		"modes.night.people.small: `small` is not in people; expected tall"},
	{"a dotted path leads somewhere", "spending: {s-1: {date: 2026-03-07, paid: 5, for: fittings.galley}}", "spending: {s-1: {date: 2026-03-07, paid: 5, for: fittings.gally.at}}",
		"spending.s-1.for: `fittings.gally.at` leads nowhere: there is no `gally` in fittings; did you mean `fittings.galley.at`?"},
	{"what is bought is a row", "fittings: {galley: {make: carcass}, fan: {buy: own-lamp}}", "fittings: {fan: {buy: own-lamb}}",
		"fittings.fan.buy: `own-lamb` is no row of the catalogue; did you mean `own-lamp`?"},
	{"prices are of rows", "prices: {own-lamp: {price: 9, standing: guess}}", "prices: {own-lomp: {price: 9, standing: guess}}", "prices.own-lomp: `own-lomp` is no row of the catalogue; did you mean `own-lamp`?"},
	{"a material is the beginning that rows share", "fittings: {galley: {of: ply-poplar-12}}", "fittings: {galley: {of: ply-poplar}}", "fittings.galley.of: `ply-poplar` is no material of the catalogue; did you mean `ply-poplar-5`, `ply-poplar-9` or `ply-poplar-10`?"},
	{"what is made is a known setting-out", "fittings: {bed: {make: slat-bed}}", "fittings: {bed: {make: slatbed}}", "fittings.bed.make: `slatbed` is nothing that can be made here; did you mean `slat-bed`?"},
	{"a circuit is fed by a bank of batteries", "power: {sources: {sun: {is: [lamp], to: house}}}", "power: {sources: {sun: {is: [lamp], to: hause}}}",
		"power.sources.sun.to: `hause` is not in power.batteries; did you mean `house`?"},

	{"a circuit may begin where another ends", "power: {circuits: {lights: {from: house}, reading: {from: lights}}}", "power: {circuits: {lights: {from: reading}, reading: {from: lights}}}",
		"power.circuits.lights.from: `lights` feeds itself in the end; expected a circuit that begins at a battery\n" +
			"power.circuits.reading.from: `reading` feeds itself in the end; expected a circuit that begins at a battery"},
	{"a number is on one cable", "power: {batteries: {house: {number: 1}}, circuits: {lights: {from: house, loads: [lamp], number: 7}}}", "power: {batteries: {house: {bond-number: 7}}, circuits: {lights: {from: house, loads: [lamp], number: 7}}}",
		"power: the number 7 is on two cables: that of the bond of house and that of the circuit lights; expected another number for one of them"},
	{"a battery is in one bank", "power: {batteries: {second: {is: [settle]}}}", "power: {batteries: {second: {is: [lamp]}}}",
		"power.batteries.second.is.0: `lamp` is already in power.batteries.house; expected each battery once, in one bank"},
	{"a battery is in its bank once", "power: {batteries: {house: {is: [lamp, settle]}}}", "power: {batteries: {house: {is: [lamp, settle, lamp]}}}",
		"power.batteries.house.is.2: `lamp` is already in power.batteries.house; expected each battery once, in one bank"},
	{"a panel is in one source", "power: {sources: {sun: {is: [lamp]}, engine: {is: [settle]}}}", "power: {sources: {sun: {is: [lamp]}, engine: {is: [settle, lamp]}}}",
		"power.sources.engine.is.1: `lamp` is already in power.sources.sun; expected each panel or charger once, in one source"},
	{"a load is on one circuit", "power: {circuits: {lights: {from: house, loads: [lamp]}}}", "power: {circuits: {lights: {from: house, loads: [lamp]}, reading: {from: house, loads: [lamp]}}}",
		"power.circuits.reading.loads.0: `lamp` is already in power.circuits.lights; expected each load once, on one circuit"},
	{"a cable takes a way once", "runs: {side: {points: [{x: 0, y: 0, z: 0}]}}\npower: {circuits: {lights: {from: house, along: [side]}}}", "runs: {side: {points: [{x: 0, y: 0, z: 0}]}}\npower: {circuits: {lights: {from: house, along: [side, side]}}}",
		"power.circuits.lights.along.1: `side` stands here twice; expected each way once"},
	{"a name is no story", "fittings: {lamp: {called: " + strings.Repeat("é", 200) + "}}", "fittings: {lamp: {called: " + strings.Repeat("é", 201) + "}}",
		"fittings.lamp.called: `" + strings.Repeat("é", 40) + "…` is too long for a name; expected at most 200 letters"},
	{"a conduit has some room inside", "runs: {side: {points: [{x: 0, y: 0, z: 0}], bore: 20}}", "runs: {side: {points: [{x: 0, y: 0, z: 0}], bore: 0}}",
		"runs.side.bore: `0` is too little; expected 1 to 300"},
	{"what a battery was tested to hold is more than nought", "power: {batteries: {house: {tested: 60}}}", "power: {batteries: {house: {tested: 0}}}",
		"power.batteries.house.tested: `0` is too little; expected 0.1 to 5000"},
	{"a battery is said to take no charge in frost by yes or no", "power: {batteries: {house: {cut-off: yes}}}", "power: {batteries: {house: {cut-off: low-temperature}}}",
		"power.batteries.house.cut-off: `low-temperature` is neither yes nor no; expected yes or no"},
	{"a monitor counts more than nought", "power: {read: {june: {date: 2026-06-10, took: 45 Ah/day}}}", "power: {read: {june: {date: 2026-06-10, took: 0 Ah/day}}}", "power.read.june: `0 Ah/day` is nothing that a monitor counts in a day; expected more than nought, per day or h such as `45 Ah/day` or `560 Wh/day`"},
	{"and charge or energy", "power: {read: {june: {date: 2026-06-10, took: 560 Wh/day}}}", "power: {read: {june: {date: 2026-06-10, took: 2 l/day}}}", "power.read.june: `2 l/day` is nothing that a monitor counts in a day; expected more than nought, per day or h such as `45 Ah/day` or `560 Wh/day`"},
	{"a cable may be written to have no fuse", "power: {circuits: {lights: {from: house, fuse: none}}}", "power: {circuits: {lights: {from: house, fuse: nowhere}}}",
		"power.circuits.lights.fuse: `nowhere` is not a current; expected a current such as `5` or `20 A`"},
	{"a fuse is of a known kind", "power: {batteries: {house: {main-fuse: 100, fuse-kind: class-t}}}", "power: {batteries: {house: {fuse-kind: glass}}}",
		"power.batteries.house.fuse-kind: `glass` is not known here; expected blade, maxi, sf30, sf51, block, class-t or breaker"},
	{"a cable between two batteries says which ends have the fuse", "power: {sources: {engine: {is: [lamp], to: house, fused: both}}}", "power: {sources: {engine: {fused: ends}}}",
		"power.sources.engine.fused: `ends` is not known here; expected both, house or source"},
	{"insulation has a temperature", "power: {circuits: {lights: {from: house, insulation: 90 °C}}}", "power: {circuits: {lights: {from: house, insulation: 20}}}",
		"power.circuits.lights.insulation: `20` is too little; expected 60 to 200"},
	{"negative goes back by cable or body", "power: {circuits: {lights: {from: house, return: cable}}}", "power: {circuits: {lights: {from: house, return: frame}}}",
		"power.circuits.lights.return: `frame` is not known here; expected cable or body"},

	{"an axis rule is a length", "fittings: {galley: {at: {x: 1.2 m}}}", "fittings: {galley: {at: {x: middle}}}",
		"fittings.galley.at.x: `middle` is no face here; expected a length, a face with or without a length, or a rule with from, to, mid or .. such as `right - 30`, `from galley.front` or `front..rear`"},
	{"or a face of the frame", "fittings: {galley: {at: {y: right - 15}}}", "fittings: {galley: {at: {y: rihgt - 15}}}",
		"fittings.galley.at.y: `rihgt` is no face here; expected a length, a face with or without a length, or a rule with from, to, mid or .. such as `right - 30`, `from galley.front` or `front..rear`; did you mean `right - 15`?"},
	{"or a face of a fitting", "fittings: {settle: {at: {x: galley.rear + 10}}}", "fittings: {settle: {at: {x: gally.rear + 10}}}", "fittings.settle.at.x: `gally` is not in fittings; did you mean `galley`?"},
	{"a fitting has no floor and no roof", "fittings: {settle: {at: {z: galley.top}}}", "fittings: {settle: {at: {z: galley.roof}}}",
		"fittings.settle.at.z: `roof` is no face of a fitting; expected a length, a face with or without a length, or a rule with from, to, mid or .. such as `right - 30`, `from galley.front` or `front..rear`; did you mean `galley.top`?"},
	{"a face lies on its axis", "fittings: {galley: {at: {z: floor}}}", "fittings: {galley: {at: {x: left}}}",
		"fittings.galley.at.x: `left` does not lie along x; expected a face on this axis: front or rear"},
	{"from, to and mid take a point", "fittings: {settle: {at: {x: from galley.front + 20, y: mid 0}}}", "fittings: {settle: {at: {x: from}}}",
		"fittings.settle.at.x: nothing is written here; expected a length, a face with or without a length, or a rule with from, to, mid or .. such as `right - 30`, `from galley.front` or `front..rear`"},
	{"an extent rises", "fittings: {settle: {at: {x: 500..1200}}}", "fittings: {settle: {at: {x: 1200..500}}}",
		"fittings.settle.at.x: `1200..500` does not run from less to more; expected a length, a face with or without a length, or a rule with from, to, mid or .. such as `right - 30`, `from galley.front` or `front..rear`"},
	{"an opening's extent rises", "shell: {openings: {side: {x: 150..1300}}}", "shell: {openings: {side: {x: 1300..150}}}",
		"shell.openings.side.x: `1300..150` does not run from less to more; expected from and to such as `150..1300` or `-760..760`; did you mean `150..1300`?"},
	{"what reaches from face to face is turned by quarters only", "fittings: {settle: {turn: 90°}}", "fittings: {settle: {turn: 30°}}",
		"fittings.settle: it reaches from face to face (`1010..2910`) and is turned by 30°; expected one face that it stands against and a size, or a turn of 90, 180 or 270° such as `x: front + 900, size: {x: 600}`"},
	{"a size that an extent gives is left out", "fittings: {settle: {size: {y: 640}}}", "fittings: {settle: {size: {x: 1900}}}",
		"fittings.settle: `1010..2910` already gives its size along x; expected no size.x"},
	{"a place may be undecided", "fittings: {box: {mass: 3, at: undecided}}", "fittings: {box: {mass: 3, at: somewhere}}", "fittings.box.at: `somewhere` is no place; expected {x, y, z} or undecided"},
	{"a place says x and y", "fittings: {ceiling: {make: slatted-ceiling, at: {z: roof}}}", "fittings: {box: {mass: 3, at: {x: 40}}}", "fittings.box: its place does not say `y`; expected where it stands across it such as `y: right`"},
	{"a fitting has one frame", "fittings: {box: {in: settle}}", "fittings: {box: {in: settle, where: cab}}", "fittings.box: it stands in more than one frame; expected one of where, in, upon and for"},
	{"what hangs on a door is outside", "fittings: {box: {mass: 3, where: outside, on-door: side}}", "fittings: {box: {mass: 3, on-door: side}}",
		"fittings.box: it hangs on a door outside, and is not said to be outside; expected where: outside"},
	{"and on a door that there is", "fittings: {box: {mass: 3, where: outside, on-door: side}}", "fittings: {box: {mass: 3, where: outside, on-door: sode}}",
		"fittings.box.on-door: `sode` is not in shell.openings; did you mean `side`?"},
	{"faces form no ring", "fittings: {settle: {at: {x: galley.rear}}}", "fittings: {galley: {at: {x: settle.rear}}, settle: {at: {x: galley.rear}}}",
		"fittings.galley: fittings stand on one another in a ring: galley → settle → galley"},
	{"nor does what stands in or upon something", "fittings: {galley: {upon: settle}}", "fittings: {galley: {upon: settle}, settle: {in: galley}}",
		"fittings.galley: fittings stand on one another in a ring: galley → settle → galley"},
	{"a size may be given in order", "fittings: {galley: {size: [950, 450, 880]}}", "{fittings: {lamp: {size: [950, 450]}}}",
		"fittings.lamp.size: a list is no size; expected {x, y, z} such as `{x: 950, y: 450, z: 880}`"},
	{"so given it is held to the same bounds", "fittings: {lamp: {size: [1000, 100, 5]}}", "fittings: {lamp: {size: [90000, 0, 5]}}",
		"fittings.lamp.size: `90000` is too much; expected 0.1 to 8000\nfittings.lamp.size: `0` is too little; expected 0.1 to 3000"},
	{"a place is not off the road", "fittings: {galley: {at: {x: -19 m, y: right + 19 m}}}", "fittings: {galley: {at: {x: 20001, y: mid 0, z: roof - 21 m}}}",
		"fittings.galley.at.x: `20001` is too much; expected -20000 to 20000\nfittings.galley.at.z: `roof - 21 m` is too little; expected -20000 to 20000"},
	{"neither end of an extent is", "fittings: {settle: {at: {x: front..rear + 100}}}", "fittings: {settle: {at: {x: -30000..rear}}}",
		"fittings.settle.at.x: `-30000..rear` is too little; expected -20000 to 20000"},
	{"an opening is of this van", "shell: {openings: {side: {x: 150..19000}}}", "shell: {openings: {side: {x: 150..1300000000}}}",
		"shell.openings.side.x: `150..1300000000` is too much; expected -20000 to 20000"},
	{"a way is of this van", "runs: {way: {points: [{x: 40, y: right, z: 1500}]}}", "runs: {way: {points: [{x: 40 ft, y: right, z: 999999999999}]}}",
		"runs.way.points.0.z: `999999999999` is too much; expected -20000 to 20000"},
	{"a point of a run has three axes", "runs: {way: {points: [{x: 40, y: right, z: 1500}]}}", "runs: {way: {points: [{x: 40, y: right}]}}", "runs.way.points.0: `z` is missing; expected up"},
	{"or is the face of a fitting", "runs: {way: {points: [galley.top]}}", "runs: {way: {points: [galley.top + 20]}}", "runs.way.points.0: `galley.top + 20` is no point; expected {x, y, z} or a fitting's face such as `battery.top`"},
	{"layers at heights run from one to another", "lining: {sides: [{lay: xps-20, z: floor..1000}]}", "lining: {sides: [{lay: xps-20, z: 1000}]}",
		"lining.sides.0: `1000` does not say from where to where; expected two heights such as `floor..1000` or `1000..roof`"},
	{"bays are counted on a surface", "lining: {sides: [{lay: xps-20, bays: {left-2: {lay: xps-20}}}]}", "lining: {sides: [{lay: xps-20, bays: {west-2: {lay: xps-20}}}]}",
		"lining.sides.0.bays.west-2: unknown key `west-2`; expected a bay such as `left-2` or `roof-1`"},

	{"a move slides by a length", "fittings: {galley: {moves: {out: {slide: -y, by: 600}}}}", "fittings: {galley: {moves: {out: {slide: -y, by: 60°}}}}",
		"fittings.galley.moves.out: it slides, but not by how far; expected by: a length"},
	{"or turns by an angle", "fittings: {galley: {moves: {lid: {hinge: right top, by: 95°}}}}", "fittings: {galley: {moves: {lid: {hinge: right left, by: 95°}}}}",
		"fittings.galley.moves.lid.hinge: `right left` is no edge; expected two faces that meet such as `right top` or `front left`"},
	{"a move is not farther than a van", "fittings: {galley: {moves: {out: {slide: -y, by: 3 m}}}}", "fittings: {galley: {moves: {out: {slide: -y, by: 3001}}}}",
		"fittings.galley.moves.out.by: `3001` is too far to slide; expected at most 3000"},
	{"a move turns once round at most", "fittings: {galley: {moves: {lid: {hinge: right top, by: 360°}}}}", "fittings: {galley: {moves: {lid: {hinge: right top, by: -400°}}}}",
		"fittings.galley.moves.lid.by: `-400°` is more than a full turn; expected at most 360°"},
	{"what turns goes somewhere", "fittings: {galley: {moves: {lid: {hinge: right top, by: -5°}}}}", "fittings: {galley: {moves: {lid: {hinge: right top, by: 0°}}}}",
		"fittings.galley.moves.lid: `0°` turns it nowhere; expected more or less than nought"},
	{"a position is not farther either", "fittings: {settle: {positions: {wide: {leaf: 200}}}}", "fittings: {settle: {positions: {wide: {leaf: 20000}}}}",
		"fittings.settle.positions.wide.leaf: `20000` is too far to slide; expected at most 3000"},
	{"a move is of one kind", "fittings: {galley: {moves: {away: {stow: {x: rear}}}}}", "fittings: {galley: {moves: {away: {stow: {x: rear}, off: yes}}}}",
		"fittings.galley.moves.away: a move is of exactly one kind; expected one of slide, hinge, swivel, stow and off"},
	{"a position names moves", "fittings: {settle: {positions: {wide: {leaf: 200, lid: full}}}}", "fittings: {settle: {positions: {wide: {leave: 200}}}}",
		"fittings.settle.positions.wide.leave: `leave` is no move of settle; expected leaf or lid"},
	{"its amounts are of the move's kind", "fittings: {settle: {positions: {wide: {lid: 45°}}}}", "fittings: {settle: {positions: {wide: {lid: 45}}}}",
		"fittings.settle.positions.wide.lid: `45` does not fit the move; expected full or an angle"},
	{"a mode takes positions that there are", "modes: {night: {take: {settle: open, galley: rest}}}", "modes: {night: {take: {settle: opened}}}",
		"modes.night.take.settle: `opened` is no position of settle; expected open or rest; did you mean `open`?"},
	{"a person does one thing", "modes: {day: {people: {tall: {sits: settle}}}}", "modes: {day: {people: {tall: {sits: settle, cooks: galley}}}}",
		"modes.day.people.tall: a person does exactly one thing; expected one of lies, sits, stands and cooks"},
	{"lists are lists", "fittings: {galley: {scribe: [right]}}", "fittings: {galley: {scribe: right}}", "fittings.galley.scribe: `right` stands alone; expected a list; did you mean `[right]`?"},
	{"maps are maps", "people: {tall: {free: {saturday: 6 h}}}", "people: {tall: {free: 6 h}}", "people.tall.free: `6 h` stands alone; expected names with their values, `{name: …}`"},
	{"one value is one value", "people: {tall: {note: short}}", "people: {tall: {note: [short]}}", "people.tall.note: a list stands where one value should; expected a text"},
	{"alternatives change known things", "alternatives: {thin: {why: lighter, with: {fittings: {galley: {of: ply-poplar-9}}}}}", "alternatives: {thin: {why: lighter, with: {fittings: {galley: {off: ply-poplar-9}}}}}",
		"alternatives.thin.with.fittings.galley: unknown key `off`; did you mean `of`?"},
	{"alternatives leave out what there is", "alternatives: {dark: {why: cheap, without: [fittings.lamp]}}", "alternatives: {dark: {why: cheap, without: [fittings.lamps]}}",
		"alternatives.dark.without.0: `fittings.lamps` leads nowhere: there is no `lamps` in fittings; did you mean `fittings.lamp`?"},
}

func TestEachRuleTakesOneDocumentAndRefusesAnother(t *testing.T) {
	rows := catalogue.Builtin()
	for _, tt := range grammarTable {
		if _, err := build.DecodeTree(with(t, tt.takes), rows); err != nil {
			t.Errorf("%s: %s is refused:\n%v", tt.rule, tt.takes, err)
		}
		if _, err := build.DecodeTree(with(t, tt.refuses), rows); err == nil || err.Error() != tt.want {
			t.Errorf("%s: %s\n got %v\nwant %s", tt.rule, tt.refuses, err, tt.want)
		}
	}
}
