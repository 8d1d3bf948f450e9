package faultcase

// A body that cannot be drawn through its readings is replaced by a typical one, to which nothing was fitted.
const anotherBody = "a typical body stands in, to which the fittings were not fitted"

var shellCases = []Case{
	{
		Name:  "Two stations are written at the same place",
		Patch: `{"shell": {"offsets": {"stations": {"s2": {"x": 750}}}}}`,
		Finds: []string{"fault shell.table-unusable /shell/offsets/stations/s2"},
		Also:  anotherBody,
	}, {
		Name:  "The crown is read below the eaves",
		Patch: `{"shell": {"offsets": {"stations": {"s3": {"crown": 1700}}}}}`,
		Finds: []string{"fault shell.table-unusable /shell/offsets/stations/s3"},
		Also:  anotherBody,
	}, {
		Name:  "Half widths are read at one place only",
		Patch: `{"shell": {"offsets": {"stations": {"s1": null, "s2": null, "s3": null, "s4": null}}}}`,
		Finds: []string{"fault shell.table-unusable /shell/offsets"},
		Also:  anotherBody,
	}, {
		Name:  "Half widths are read at one height only",
		Patch: `{"shell": {"offsets": {"heights": [0], "stations": {"s0": {"half": [900]}, "s1": {"half": [902]}, "s2": {"half": [904]}, "s3": {"half": [902]}, "s4": {"half": [890]}}}}}`,
		Finds: []string{"fault shell.table-unusable /shell/offsets"},
		Also:  anotherBody,
	}, {
		Name:  "One half width is read to a rib and not to the skin",
		Patch: `{"shell": {"offsets": {"stations": {"s2": {"half": [904, 929, 894, 924, 884, 804]}}}}}`,
		Finds: []string{"close shell.reading-doubtful /shell/offsets/stations/s2/half/2"},
		Also:  "the bed is narrower there",
	}, {
		Name:  "The wheel arches are read further apart than the sides",
		Patch: `{"shell": {"offsets": null, "quick": {"body": "mid-high", "width-at-knee": 1500, "between-arches": 1600}}}`,
		Finds: []string{"fault shell.quick-contradiction /shell/quick/between-arches"},
		Also:  anotherBody,
	}, {
		Name:  "The side door is read higher than the van",
		Patch: `{"shell": {"offsets": null, "quick": {"body": "mid-high", "height": 1900, "door-height": 1950}}}`,
		Finds: []string{"fault shell.quick-contradiction /shell/quick/door-height"},
		Also:  anotherBody,
	}, {
		Name:  "The side door is read wider than the load floor is long",
		Patch: `{"shell": {"offsets": null, "quick": {"body": "mid-high", "length": 1500, "door-width": 1600}}}`,
		Finds: []string{"fault shell.quick-contradiction /shell/quick/door-width"},
		Also:  anotherBody,
	}, {
		Name:  "Only six readings are taken",
		Patch: `{"shell": {"offsets": null, "quick": {"body": "mid-high", "length": 3000, "height": 1910}}}`,
		Finds: []string{"note shell.quick /shell/quick"},
		Also:  anotherBody,
	}, {
		Name:  "Nothing is measured",
		Patch: `{"shell": {"offsets": null}}`,
		Finds: []string{"note shell.not-measured /shell"},
		Also:  anotherBody,
	}, {
		Name:  "A rib is written behind the rear doors",
		Patch: `{"shell": {"ribs": {"r5": {"x": 3100, "on": ["left", "right"], "depth": 45}}}}`,
		Finds: []string{"fault shell.rib-outside /shell/ribs/r5"},
	}, {
		Name:  "One rib is read twice",
		Patch: `{"shell": {"ribs": {"r2-again": {"x": 830, "on": ["right"], "depth": 45, "flange": 50}}}}`,
		Finds: []string{"close shell.ribs-overlap /shell/ribs/r2-again"},
	}, {
		Name:  "A wheel arch reaches out of the load space",
		Patch: `{"shell": {"arches": {"rear-wheels": {"x": "2400..3100"}}}}`,
		Finds: []string{"fault shell.arch-outside /shell/arches/rear-wheels"},
		Also:  "the fittings were not fitted to an arch there",
	}, {
		Name:  "The width between the arches is written as the arch",
		Patch: `{"shell": {"arches": {"rear-wheels": {"inward": 690, "x": "1700..2450"}, "third": {"on": ["left"], "x": "2600..2800", "inward": 650, "up": 20}}, "offsets": {"stations": {"s0": {"half": [600, 925, 935, 920, 880, 800]}, "s1": {"half": [602, 927, 937, 922, 882, 802]}, "s2": {"half": [604, 929, 939, 924, 884, 804]}, "s3": {"half": [602, 927, 937, 922, 882, 802]}, "s4": {"half": [590, 915, 925, 910, 870, 790]}}}}}`,
		Finds: []string{"fault shell.arch-too-wide /shell/arches/rear-wheels", "fault shell.arch-too-wide /shell/arches/third"},
		Also:  "nothing else has room beside such arches",
	}, {
		Name:  "A wheel arch is read as high as the side",
		Patch: `{"shell": {"arches": {"rear-wheels": {"up": 900}}, "offsets": {"heights": [0, 150, 300, 450, 600, 800]}}}`,
		Finds: []string{"fault shell.arch-too-high /shell/arches/rear-wheels"},
		Also:  "the sides of so low a van carry none of the fittings",
	}, {
		Name:  "A fan is planned whose width nobody has written down",
		Patch: `{"shell": {"openings": {"fan": {"y": null}}}}`,
		Finds: []string{"note shell.opening-unsized /shell/openings/fan"},
	}, {
		Name:  "The rear doors are read higher than the roof",
		Patch: `{"shell": {"openings": {"rear": {"z": "0..2000"}}}}`,
		Finds: []string{"fault shell.opening-outside /shell/openings/rear"},
	}, {
		Name:  "A window of the side reaches up into the curve of the roof",
		Patch: `{"shell": {"openings": {"window": {"through": "right", "x": "900..1300", "z": "1500..1850"}}}}`,
		Finds: []string{"fault shell.opening-outside /shell/openings/window"},
	}, {
		Name:  "A window of the side reaches below the floor",
		Patch: `{"shell": {"openings": {"window": {"through": "right", "x": "900..1300", "z": "-150..300"}}}}`,
		Finds: []string{"fault shell.opening-outside /shell/openings/window"},
	}, {
		Name:  "The hole of the fan is marked over a roof bow",
		Patch: `{"shell": {"openings": {"fan": {"x": "1300..1700"}}}}`,
		Finds: []string{"fault shell.opening-over-rib /shell/openings/fan", "close fit.covered /fittings/panel"},
	}, {
		Name:  "The hole of the fan has been cut through a roof bow",
		Patch: `{"shell": {"openings": {"fan": {"x": "1300..1700", "made": "2026-05-02"}}}}`,
		Finds: []string{"fault shell.opening-over-rib /shell/openings/fan", "close fit.covered /fittings/panel"},
	}, {
		Name:  "A window is cut where the sliding door is",
		Patch: `{"shell": {"openings": {"window": {"through": "left", "x": "400..1000", "z": "900..1300"}}}}`,
		Finds: []string{"fault shell.openings-overlap /shell/openings/side"},
	},
}
