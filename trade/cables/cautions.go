package cables

// Cautions are what stands before any plan of wiring that is shown or printed.
var Cautions = []string{
	"A battery of 12 or 24 V gives no shock but thousands of amperes: rings and watches off, insulated tools, main fuse out, negative off first and on last.",
	"Fuse first: no cable leaves a battery without one. A fuse protects the cable, not the appliance. Never a larger one to stop it from blowing.",
	"No charging of lithium batteries below 0 °C, no two kinds of battery side by side, no vented lead battery in a closed living space.",
	"Strap batteries down: twice their weight in any direction may move them no more than 10 mm.",
	"Crimp with the tool that fits and tug every crimp. Covers on all live studs; no cable on a sharp edge, near the exhaust or through the gas locker.",
	"Before work near airbags and belts disconnect both batteries and wait as the vehicle's manual says. Never drill a pillar.",
	"First switching on: all fuses out, measure, then one circuit at a time. Tighten every joint again after 500 km and once a year.",
	"Solar panels give current whenever it is light: cover them, connect the battery first and the panel last.",
	MainsCaution,
}
