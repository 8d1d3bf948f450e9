package outlook

import (
	"strings"

	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/reckon"
	"tumblehome/trade/shell"
)

// Hours by kind of work for somebody who has done it before: from memory of amateur builds, no source.
const (
	beforehand   = 40.0 // measuring, weighing, stripping, cleaning, treating rust, sealing
	afterwards   = 20.0 // trying out, snags, weighing, papers
	firstTime    = 1.5  // a first build takes half as long again
	late         = 1.25 // one in five takes longer than this share of the likely hours
	wiring       = 14.0 // where there is a battery: fuses, cables, tests
	plumbing     = 4.0  // where there is water in tanks
	anyOtherMade = 6.0
	anyOtherPart = 0.5 // put in its place or screwed on
)

// hoursPerArea are hours for each m2 laid, all its layers together.
var hoursPerArea = []struct {
	surface string
	hours   float64
	laid    func(build.Lining) int
}{
	{shell.Floor, 4, func(l build.Lining) int { return len(l.Floor) }},
	{shell.Left, 4.5, func(l build.Lining) int { return len(l.Sides) + len(l.Left) }},
	{shell.Right, 4.5, func(l build.Lining) int { return len(l.Sides) + len(l.Right) }},
	{shell.Roof, 5.5, func(l build.Lining) int { return len(l.Roof) }},
	{shell.Rear, 4, func(l build.Lining) int { return len(l.Doors) }},
}

// hoursMade are hours for one made thing of usual size.
var hoursMade = map[string]float64{
	"carcass": 22, "bench": 12, "slat-bed": 10, "platform": 14, "overlocker": 14, "locker": 15, "table": 6, "worktop": 6, "drawer": 6, "shelf": 3,
	"cushions": 12, "curtains": 4, "blackout": 2, "box": 5, "seat-box": 8, "flap": 3, "bunk": 9, "lowered-bed": 20, "wardrobe": 18, "cubicle": 26,
	"partition": 8, "garage-floor": 4, "slide-out": 14, "splash": 2, "tiles": 8, "slatted-ceiling": 12, "arch-box": 4, "ladder": 3, "step": 3,
}

// hoursBought are hours to fit one bought thing, by how its row's name begins.
var hoursBought = []struct {
	begins string
	hours  float64
}{
	{"heater-", 10}, {"window-", 8}, {"fan-roof", 6}, {"solar-", 6}, {"seat-double", 8}, {"fridge-", 4}, {"battery-", 2}, {"hob-", 5}, {"mains-", 8},
	{"sink-", 3}, {"pump-", 2}, {"tap-", 2}, {"relay-", 2}, {"dcdc-", 4}, {"mppt-", 2}, {"seat-swivel", 3},
}

// hours are those of a whole build.
func hours(r *reckon.Reckoning) Amount {
	sum := beforehand + afterwards
	for _, one := range hoursPerArea {
		if one.laid(r.Document.Lining) > 0 {
			sum += one.hours * laidOn(r.Body, one.surface)
		}
	}
	water, battery := false, false
	for _, id := range build.SortedKeys(r.Document.Fittings) {
		f := r.Document.Fittings[id]
		sum += fittingHours(f)
		battery = battery || strings.HasPrefix(f.Buy, "battery-")
		row, _ := catalogue.Builtin().Row(f.Buy)
		water = water || row.Group == "water"
	}
	if battery {
		sum += wiring
	}
	if water {
		sum += plumbing
	}
	return Amount{sum * firstTime, sum * firstTime * late}
}

func fittingHours(f build.Fitting) float64 {
	if f.Make != "" {
		if h, ok := hoursMade[f.Make]; ok {
			return h
		}
		return anyOtherMade
	}
	for _, b := range hoursBought {
		if strings.HasPrefix(f.Buy, b.begins) {
			return b.hours
		}
	}
	return anyOtherPart
}

// laidOn is what is lined of a surface [m2]; at the rear these are the doors.
func laidOn(b *shell.Body, surface string) float64 {
	a := b.Areas(surface)
	if surface == shell.Rear {
		return a.Openings
	}
	return a.Net
}
