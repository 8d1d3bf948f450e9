package catalogue

// meant maps a word a beginner types to the beginnings of the ids it usually
// means, the usual one first.
var meant = map[string][]string{
	"fridge": {"fridge-compressor", "coolbox-compressor", "coolbox-passive"}, "refrigerator": {"fridge-compressor", "coolbox-compressor"},
	"coolbox": {"coolbox-compressor", "coolbox-passive"}, "cooler": {"coolbox-compressor", "coolbox-passive"}, "freezer": {"coolbox-compressor"},
	"water": {"container-20", "container-10", "container-25", "container-30", "tank-fixed", "pump-submersible", "pump-diaphragm", "tap-", "container-grey"},
	"tank":  {"tank-fixed", "tank-under", "container"}, "can": {"container"}, "canister": {"container"}, "jerrycan": {"container"},
	"waste": {"container-grey", "tank-under"}, "grey": {"container-grey", "tank-under"}, "wastewater": {"container-grey", "tank-under"},
	"tap": {"tap-micro-switch", "tap-simple"}, "faucet": {"tap-micro-switch", "tap-simple"}, "pump": {"pump-submersible", "pump-diaphragm", "pump-foot"},
	"sink": {"sink-round", "sink-rect", "sink-bowl", "sink-lid"}, "basin": {"sink-bowl", "sink-round"}, "shower": {"shower-handset"},
	"battery": {"battery-lfp-100ah", "battery-agm", "battery-leisure", "battery-lfp-200ah", "battery-box"},
	"lithium": {"battery-lfp"}, "solar": {"solar-rigid-180w", "solar-rigid", "solar-flex", "mppt"}, "panel": {"solar-rigid", "solar-flex"},
	"controller": {"mppt", "pwm"}, "charger": {"dcdc", "charger-mains"}, "inverter": {"inverter"}, "fuses": {"fusebox", "fuse"}, "fusebox": {"fusebox"},
	"light": {"led-spot", "led-read", "led-strip"}, "lights": {"led-spot", "led-read", "led-strip"}, "lamp": {"led-read", "led-spot"}, "lighting": {"led-spot", "led-strip"},
	"fan": {"fan-roof", "fan-clip", "fan-pc"}, "ventilator": {"fan-roof", "vent-roof"}, "vent": {"vent-mushroom", "vent-grille-floor", "vent-roof"},
	"hatch": {"vent-roof"}, "rooflight": {"vent-roof"}, "skylight": {"vent-roof"}, "window": {"window-acrylic", "window-glass"},
	"toilet": {"toilet-portable", "toilet-bucket"}, "loo": {"toilet-portable", "toilet-bucket"}, "wc": {"toilet-portable", "toilet-bucket"},
	"hob": {"hob-gas-2", "hob-gas-1", "hob-induction", "stove"}, "cooker": {"hob-gas-2", "stove-portable-2", "stove-alcohol", "hob-gas-1", "hob-induction"},
	"stove": {"stove-portable-2", "stove-alcohol", "stove-cartridge", "hob-gas"}, "spirit": {"stove-alcohol"}, "induction": {"hob-induction"},
	"heater": {"heater-diesel-2kw", "heater"}, "heating": {"heater"}, "gas": {"gas-bottle-5", "gas-bottle", "gas-locker", "gas-regulator", "hob-gas"},
	"alarm": {"alarm-co", "alarm-smoke", "alarm-gas"}, "fire": {"extinguisher-1kg", "blanket-fire", "alarm-smoke"}, "extinguisher": {"extinguisher"},
	"safety": {"extinguisher", "alarm", "blanket-fire", "first-aid"}, "seat": {"seat-double-belted", "seat-swivel"}, "belts": {"seat-double-belted"},
	"swivel": {"seat-swivel", "table-swivel"}, "bikes": {"carrier-rear"}, "bicycles": {"carrier-rear"}, "bicycle": {"carrier-rear"}, "bike": {"carrier-rear"}, "cycle": {"carrier-rear"}, "cycles": {"carrier-rear"}, "rack": {"carrier-rear"}, "step": {"step-entry"},
	"socket": {"socket-usb", "socket-12v", "mains-socket"}, "usb": {"socket-usb"}, "mains": {"mains", "charger-mains"}, "hookup": {"mains-inlet", "mains-hookup"},
	"insulation": {"xps", "pir", "foam-xlpe", "wool-sheep", "fleece", "foam-nbr", "eps"}, "wool": {"wool-sheep", "wool-mineral"}, "ply": {"ply-poplar", "ply-birch", "ply"},
	"plywood": {"ply-poplar", "ply-birch", "ply"}, "batten": {"pse-20-5x44", "batten", "pse"}, "battens": {"pse-20-5x44", "batten", "pse"},
	"mattress": {"foam-pu"}, "lino": {"linoleum"}, "flooring": {"vinyl", "linoleum", "rubber-stud", "floor-cork"}, "deadening": {"sound-butyl"},
}
