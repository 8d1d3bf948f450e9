package warmth

import (
	"fmt"
	"strings"

	"tumblehome/quantity"
	"tumblehome/trade/working"
)

var months = [...]string{"January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"}

var groupLabels = map[string]string{Floor: "the floor", Sides: "the sides", Roof: "the roof", Doors: "the doors", Front: "the partition"}

// oneInFive is how many standard deviations above its mean one value in five of a normal distribution lies.
const oneInFive = 0.8416

// Figures are the numbers of warmth.
func (r Result) Figures() []working.Figure {
	state := working.Current
	if r.in.PlaceAssumed || r.in.TripsAssumed || !r.in.AirSaid {
		state = working.Assumed
	}
	n := r.usual()
	night := "a usual night in " + months[n.Month-1]
	figure := func(code, label, unit, words string, value float64) working.Figure {
		return working.Figure{Code: "warmth." + code, Label: label, Unit: unit, Value: value, State: state, Words: words}
	}
	out := []working.Figure{r.lossFigure(state)}
	for _, s := range r.Surfaces {
		f := figure("u."+s.Group, "Heat through "+groupLabels[s.Group], "W/m2K", "ribs and all", s.U)
		f.State = working.Current
		out = append(out, f)
	}
	low := figure("night.low", "Lowest temperature at night", "°C", night, n.Low)
	if r.in.Keep != nil {
		keep := *r.in.Keep
		low.Limit, low.Least = &keep, true
	}
	out = append(out, low,
		figure("heater", "Heat wanted from the heater", "kWh", night, n.Heat),
		figure("condensed", "Most water on glass, steel and linings at once", "g", night, 1000*n.Condensed()),
		figure("co2.peak", "Carbon dioxide while people sleep, at most", "ppm", night, n.CO2),
		figure("winter.water", "Water behind the lining after the winter", "g/m2", "where most gathers", r.worst().Most))
	if r.in.Wet > 0 {
		out = append(out, figure("clothes.dried", "Dried out of wet clothes by morning", "g", night, 1000*n.dried()))
	}
	return out
}

func (r *Result) lossFigure(state working.State) working.Figure {
	p50, p80 := r.Loss, r.Loss+oneInFive*r.Unsure
	return working.Figure{Code: "warmth.loss", Label: "Heat lost for each degree", Unit: "W/K", Value: r.Loss, State: state, P50: &p50, P80: &p80,
		Words: fmt.Sprintf("at 20 K warmer than outside %s W", quantity.Parted(20*r.Loss))}
}

// worst is the build-up behind which most water gathers.
func (r *Result) worst() Winter {
	worst := Winter{Field: -1}
	for _, w := range r.Winters {
		if worst.Field < 0 || w.Most > worst.Most {
			worst = w
		}
	}
	return worst
}

// Working shows how a figure came about.
func (r Result) Working(code string) (working.Working, bool) {
	return working.Of(code, "warmth", r.Figures, r.workingOf)
}

func (r *Result) workingOf(short string) working.Working {
	if group, ok := strings.CutPrefix(short, "u."); ok {
		return r.workingOfU(group)
	}
	switch short {
	case "loss":
		return r.workingOfLoss()
	case "night.low":
		return r.workingOfLow()
	case "heater":
		return r.workingOfHeater()
	case "condensed":
		return r.workingOfWater()
	case "co2.peak":
		return r.workingOfCO2()
	case "clothes.dried":
		return r.workingOfClothes()
	}
	return r.workingOfWinter()
}
