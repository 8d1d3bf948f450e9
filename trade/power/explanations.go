package power

import "tumblehome/trade/finding"

// Explanations says what each code of this package means.
var Explanations = []finding.Explanation{
	{Code: "power.battery.charge", Meaning: "Chargers together push more current into the battery than is usual for one of its kind and size.",
		Why: "A battery charged too fast gets hot, and wears out early.", Clear: "Set the charger lower, take a smaller one, or a larger battery."},
	{Code: "power.battery.cold", Meaning: "A lithium battery would be charged while it is below 0 °C, and nothing is said to stop it.",
		Why: "Metal is laid down in its cells, and it is spoilt for good.", Clear: "Take a battery with a low-temperature cut-off or one that warms itself, and say so by cut-off: yes or heated: yes at its bank under power; or use lead. Say it only where the label does."},
	{Code: "power.battery.deep", Meaning: "More of a lead battery may be taken, as it is said, than does it good.",
		Why: "Emptied to four fifths it lasts half as many times as emptied to one half.", Clear: "Count on half of what is printed on it."},
	{Code: "power.battery.none", Meaning: "Something uses electricity, and no battery is named for it.",
		Why: "Nothing can be said about how long the lights stay on.", Clear: "Name the battery under power."},
	{Code: "power.battery.rate", Meaning: "One thing draws more current than the battery should give.",
		Why: "Its voltage falls, and what protects it cuts everything off.", Clear: "Take a smaller inverter, or a larger battery."},
	{Code: "power.battery.tested", Meaning: "A test found that the battery holds less than is printed on it.",
		Why: "All is reckoned with what the test found.", Clear: "Nothing is wrong; a newer battery would hold more."},
	{Code: "power.engine.overload", Meaning: "What charges from the engine draws more than the engine is said to give.",
		Why: "Alternator, cable and fuse run hot.", Clear: "Take a smaller charger, or one that can be set; put a charger in place of a switch."},
	{Code: "power.flat", Meaning: "The battery is flat in more nights than is wanted.",
		Why: "Then the lights are out, the fridge warms up and the heater stops.", Clear: "Use less, or have more battery, more panel or more charge from the engine: the finding says which helps most."},
	{Code: "power.hook-up", Meaning: "Nights are spent on the mains, but nothing charges the battery from it.",
		Why: "They do not fill the battery.", Clear: "Fit a mains charger and name it under power, or leave it."},
	{Code: "power.load.absorption", Meaning: "An absorption fridge is joined to the battery.",
		Why: "It takes more at 12 V than any battery in a van gives for a day.", Clear: "Run it at 12 V on the road only, or take one with a compressor."},
	{Code: "power.load.thermoelectric", Meaning: "A thermoelectric box runs off the battery.",
		Why: "It takes its full power all day and cools little.", Clear: "Take a box with a compressor, or one without any drive and ice."},
	{Code: "power.mains", Meaning: "Whether there will be a mains inlet is not decided.",
		Why: "It wants a place, a way for its cable and a licensed electrician.", Clear: "Decide; say none, or who fits it."},
	{Code: "power.panel.current", Meaning: "The panels can give more current than their controller passes.",
		Why: "The rest is lost, or the controller is spoilt.", Clear: "Take a larger controller."},
	{Code: "power.read", Meaning: "What the battery monitor showed is far from what the things listed would take.",
		Why: "Something is not listed, or the meter is not right; what follows rests on the readings.", Clear: "List what is missing, correct powers, set the meter to nought when the battery is full."},
	{Code: "power.source.none", Meaning: "Nothing is said to charge the battery.",
		Why: "Once empty it stays so.", Clear: "Name what charges it under power, or say that it is charged at home."},
}
