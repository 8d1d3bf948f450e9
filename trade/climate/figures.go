package climate

import (
	"fmt"

	places "tumblehome/catalogue/climate"
	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

var monthNames = [12]string{"January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"}

// Figures lists every figure, by code.
func (r Result) Figures() []working.Figure {
	state := working.Current
	if r.StandIn || len(r.in.Travel) == 0 {
		state = working.Assumed
	}
	usual, cold := r.Usual(r.Month), r.Cold(r.Month)
	when := fmt.Sprintf("the coldest of a night in %s, %s", monthNames[r.Month-1], r.where())
	return []working.Figure{
		{Code: "climate.night.cold", Value: float64(cold.Low), Unit: "°C", State: state, Label: "Outside, one night in ten is colder than", Words: when},
		{Code: "climate.night.usual", Value: float64(usual.Low), Unit: "°C", State: state, Label: "Outside on a usual night", Words: when},
		{Code: "climate.sun.least", Value: r.month(r.Darkest).Sun, Unit: "kWh/m2", State: state, Label: "Sunshine on the roof in a day",
			Words: fmt.Sprintf("in %s, %s; nothing casts a shadow", monthNames[r.Darkest-1], r.where())},
	}
}

// where names the place and, if it is not the place's own, the height.
func (r *Result) where() string {
	if r.Height == r.Place.Height {
		return r.Place.Name
	}
	return fmt.Sprintf("%s, %.0f m above the sea", r.Place.Name, r.Height)
}

// Working shows how a figure came about; false if there is no figure of that code.
func (r Result) Working(code string) (working.Working, bool) {
	for _, f := range r.Figures() {
		if f.Code == code {
			w := working.Working{Code: code, Label: f.Label, Notes: []string{"the weather of " + r.Place.Name + ": " + r.Place.Source}}
			switch code {
			case "climate.sun.least":
				return r.showSun(w), true
			case "climate.night.cold":
				return r.showCold(w), true
			}
			return r.showUsual(w), true
		}
	}
	return working.Working{}, false
}

var (
	atmosphere = finding.Source{Text: "International Standard Atmosphere, ISO 2533 and ICAO Doc 7488: 6.5 K a kilometre", Sure: finding.Memory}
	tenth      = finding.Source{Text: "normal distribution, one in ten below −1.2816 standard deviations; days' lows spread as their means", Sure: finding.Computed}
)

func (r *Result) showUsual(w working.Working) working.Working {
	m := r.given(r.Month)
	w.Formula, w.Source = "t = t₀ − 0.0065·(h − h₀)", atmosphere
	w.Lines = []working.Line{
		r.from("t₀", "lowest of a usual night in "+monthNames[r.Month-1], float64(m.Low), "°C"),
		r.from("h₀", "height of the place", r.Place.Height, "m"),
		r.height(),
		{Symbol: "t", Label: "lowest of a usual night at the camp", Value: float64(r.month(r.Month).Low), Unit: "°C", From: working.Origin{Here: true}},
	}
	return w
}

func (r *Result) showCold(w working.Working) working.Working {
	m := r.month(r.Month)
	w.Formula, w.Source = "t₁₀ = t − 1.2816·s", tenth
	w.Lines = []working.Line{
		{Symbol: "t", Label: "lowest of a usual night", Value: float64(m.Low), Unit: "°C", From: working.Origin{Figure: "climate.night.usual"}},
		r.from("s", "standard deviation of the days' mean temperatures", m.Spread, "K"),
		{Symbol: "t₁₀", Label: "one night in ten is colder", Value: float64(r.Cold(r.Month).Low), Unit: "°C", From: working.Origin{Here: true}},
	}
	w.Notes = append(w.Notes, "within 1 K where winters are ordinary; inland and in the far north the coldest nights are colder still")
	return w
}

func (r *Result) showSun(w working.Working) working.Working {
	w.Formula, w.Source = "least of the months", finding.Source{Text: r.Place.Source, Sure: finding.Read}
	for _, m := range r.in.months() {
		w.Lines = append(w.Lines, r.from("", monthNames[m-1], r.month(m).Sun, "kWh/m2"))
	}
	w.Lines = append(w.Lines, working.Line{Label: "the darkest: " + monthNames[r.Darkest-1], Value: r.month(r.Darkest).Sun, Unit: "kWh/m2", From: working.Origin{Here: true}})
	w.Notes = append(w.Notes, "on level ground; not changed with height")
	return w
}

func (r *Result) given(month int) places.Month { return r.Place.Months[month-1] }

// from is a line that holds what the place's table says.
func (r *Result) from(symbol, label string, value float64, unit string) working.Line {
	l := working.Line{Symbol: symbol, Label: label, Value: value, Unit: unit, From: working.Origin{Pointer: "/use/climate"}}
	switch {
	case r.StandIn:
		l.From = working.Origin{Assumption: "no place is known, so the weather of " + r.Place.Name + " stands in"}
	case r.Own:
		l.From.Pointer = "/use/weather/" + r.Place.ID
	}
	return l
}

func (r *Result) height() working.Line {
	l := working.Line{Symbol: "h", Label: "height of the camp", Value: r.Height, Unit: "m", From: working.Origin{Pointer: "/use/altitude"}}
	if r.in.Altitude == nil {
		l.From = working.Origin{Assumption: "as high as the place, since nobody said how high"}
	}
	return l
}
