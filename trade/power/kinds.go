package power

// Kind is what a thing does with electricity.
type Kind string

// Kinds of things.
const (
	Lamp      Kind = "lamp"
	Bedside   Kind = "reading lamp"
	Fridge    Kind = "fridge"
	Thermo    Kind = "thermoelectric box"
	Absorber  Kind = "absorption fridge"
	Pump      Kind = "pump"
	RoofFan   Kind = "roof fan"
	SmallFan  Kind = "fan"
	AirHeater Kind = "heater"
	USB       Kind = "usb socket"
	Socket    Kind = "socket"
	Inverter  Kind = "inverter"
	Standby   Kind = "always on"
	OnMains   Kind = "mains"
	Heating   Kind = "heating"
	Other     Kind = "other"
	Nothing   Kind = ""
)
