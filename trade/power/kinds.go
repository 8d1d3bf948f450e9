package power

import "strings"

// Kind is what a thing does with electricity.
type Kind string

// Kinds of things.
const (
	Lamp      Kind = "lamp"
	Bedside   Kind = "reading lamp"
	Fridge    Kind = "fridge"
	Freezer   Kind = "freezer"
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
	Unlisted  Kind = "unlisted"
	Other     Kind = "other"
	Nothing   Kind = ""
)

// named is what words in an id or a name mean, the first that fits. A thing that uses nothing stands before what its words also hold.
var named = []struct {
	kind  Kind
	words []string
}{
	{Standby, []string{"monitor", "alarm", "detector"}},
	{Nothing, []string{"passive", "foot pump", "pump-foot", "grille", "battery", "solar", "mppt", "pwm", "dcdc", "dc-dc", "relay", "charger", "fuse", "busbar", "isolator", "consumer", "inlet", "hookup"}},
	{Thermo, []string{"thermoelectric", "peltier"}},
	{Absorber, []string{"absorption", "three-way", "3-way"}},
	{Freezer, []string{"freezer"}},
	{Fridge, []string{"fridge", "coolbox", "cool box", "cool-box", "refrigerator"}},
	{Pump, []string{"pump"}},
	{RoofFan, []string{"fan-roof", "roof fan", "vent-roof"}},
	{SmallFan, []string{"fan"}},
	{Heating, []string{"kettle", "blanket", "seat pad"}},
	{AirHeater, []string{"heater"}},
	{USB, []string{"usb"}},
	{Inverter, []string{"inverter"}},
	{Socket, []string{"socket"}},
	{Bedside, []string{"reading", "led-read"}},
	{Lamp, []string{"led-", "led ", "lamp", "light", "strip"}},
}

// strong is the power [W] from which a heater heats by electricity.
const strong = 100

// KindOf tells what a thing does by the words that name it: its row's id and name, what it is called. Nothing is what uses no electricity: of what has no
// watts, all but a monitor and what a circuit feeds.
func KindOf(words string, watts, volts float64, fed bool) Kind {
	text := strings.ToLower(words)
	kind := Other
	for _, n := range named {
		if containsAny(text, n.words) {
			kind = n.kind
			break
		}
	}
	switch {
	case kind == Nothing, watts <= 0 && !fed && !(kind == Standby && strings.Contains(text, "monitor")):
		return Nothing
	case kind == Socket && volts >= 100:
		return Nothing
	case kind == AirHeater && watts >= strong:
		kind = Heating
	}
	if volts >= 100 && kind != Inverter {
		return OnMains
	}
	return kind
}

func containsAny(text string, words []string) bool {
	for _, w := range words {
		if strings.Contains(text, w) {
			return true
		}
	}
	return false
}
