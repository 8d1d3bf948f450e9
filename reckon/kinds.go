package reckon

import (
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/trade/cables"
	"tumblehome/trade/power"
)

// What a thing is in the 12 V system is told by the words of its row and of what it is called, never by its id, which is the builder's to choose. Here
// stands what cables, runs and power all ask; what a thing does with electricity and what a battery is made of are asked of power.KindOf and
// power.ChemistryOf.

// text is all that says what a thing is, but its id.
func (t thing) text() string {
	text := t.Buy + " " + t.Called
	if t.row != nil {
		text += " " + t.row.Name
	}
	return strings.ToLower(text)
}

func (t thing) says(any []string) bool {
	text := t.text()
	return slices.ContainsFunc(any, func(word string) bool { return strings.Contains(text, word) })
}

// charging are the words by which a thing is told to charge from the sun, the engine or the mains, the first that fit.
var charging = []struct {
	is    cables.SourceKind
	words []string
}{
	{cables.Sun, []string{"solar-rigid", "solar-flex", "solar panel"}},
	{cables.Split, []string{"relay", "split charge"}},
	{cables.Engine, []string{"dcdc", "dc-dc", "alternator"}},
	{cables.Shore, []string{"charger-mains", "mains battery charger", "mains charger"}},
}

var (
	controllers = []string{"mppt", "pwm", "solar controller", "charge controller", "solar regulator", "charge regulator"}
	plain       = []string{"pwm"} // they pass the panels' current on as it is
)

func isController(t thing) bool { return t.says(controllers) }

func isPlain(t thing) bool { return t.says(plain) }

// charges is how a thing charges a battery; "" where its words do not say.
func (t thing) charges() cables.SourceKind {
	for _, c := range charging {
		if t.says(c.words) {
			return c.is
		}
	}
	return ""
}

// kindOf is that of a source, by the first of its things whose words say.
func (w *stages) kindOf(s build.Source) cables.SourceKind {
	for _, id := range s.Is {
		if is := w.things[id].charges(); is != "" {
			return is
		}
	}
	return ""
}

// controllerOf is what controls panels: what is named for it, else the controller among what the source is.
func (w *stages) controllerOf(s build.Source) string {
	for _, id := range append([]string{s.By}, s.Is...) {
		if t, there := w.things[id]; there && !t.later() && isController(t) {
			return id
		}
	}
	return s.By
}

// chemistry is what a battery is made of, for its cables.
func chemistry(t thing) cables.Chemistry {
	is, told := power.ChemistryOf(t.text(), "")
	if !told {
		return cables.Unknown
	}
	return map[power.Chemistry]cables.Chemistry{power.Lithium: cables.Lithium, power.AGM: cables.AGM, power.Gel: cables.Gel, power.Flooded: cables.Flooded}[is]
}

// appliances are what cables ask of a thing, by what it does with electricity.
var appliances = map[power.Kind]cables.Appliance{
	power.Fridge: cables.Fridge, power.Freezer: cables.Fridge, power.Thermo: cables.Fridge, power.Absorber: cables.Fridge, power.Pump: cables.Pump,
	power.RoofFan: cables.Fan, power.SmallFan: cables.Fan, power.AirHeater: cables.Heater, power.USB: cables.Socket, power.Socket: cables.Socket,
	power.Inverter: cables.Inverter, power.Bedside: cables.Light, power.Lamp: cables.Light,
}

func appliance(t thing) cables.Appliance {
	watts := 0.0
	if t.row != nil {
		watts = valueOf(t.row.Watts).Float()
	}
	if is := appliances[power.KindOf(t.text(), watts, 12, true)]; is != "" {
		return is
	}
	return cables.Other
}
