package build

import (
	"fmt"
	"slices"

	"tumblehome/quantity"
)

// Weather is a place of the builder's own, month by month, January first.
type Weather struct {
	Called   string                 `doc:"called" letters:"200" says:"plain name, if the id does not say it"`
	Lat      quantity.Angle         `doc:"lat,need" range:"-90..90" says:"how far north; south with a minus"`
	Lon      quantity.Angle         `doc:"lon,need" range:"-180..180" says:"how far east; west with a minus"`
	Altitude *int                   `doc:"altitude" range:"-450..9000" says:"height above the sea, in metres; left out, at the sea"`
	Clock    *float64               `doc:"clock" range:"-12..14" says:"hours that standard time is ahead of UTC; left out, by the longitude"`
	Mean     []quantity.Temperature `doc:"mean,need" range:"-60..50" says:"mean temperature of each month"`
	Low      []quantity.Temperature `doc:"low,need" range:"-70..50" says:"mean of the lowest of each day"`
	High     []quantity.Temperature `doc:"high,need" range:"-60..60" says:"mean of the highest of each day"`
	Humidity []quantity.Share       `doc:"humidity,need" range:"0.01..1" says:"relative humidity"`
	Sun      []float64              `doc:"sun,need" range:"0..12" says:"sunshine on level ground, kWh/m2 in a day"`
	Spread   []float64              `doc:"spread" range:"0..20" says:"how far the days' means stray from the month's, as a standard deviation in kelvin; left out, 3"`
	Note     string                 `doc:"note" says:"a remark"`
}

// check holds a weather to twelve months, and each month to its order.
func (w *Weather) check() *quantity.Fault {
	for _, list := range []struct {
		key   string
		count int
	}{{"mean", len(w.Mean)}, {"low", len(w.Low)}, {"high", len(w.High)}, {"humidity", len(w.Humidity)}, {"sun", len(w.Sun)}, {"spread", len(w.Spread)}} {
		if list.count != 12 && !(list.key == "spread" && list.count == 0) {
			return &quantity.Fault{Wrong: fmt.Sprintf("`%s` has %d months", list.key, list.count), Expected: "12, January first"}
		}
	}
	for m := range w.Mean {
		if w.Low[m] > w.Mean[m] || w.Mean[m] > w.High[m] {
			return &quantity.Fault{Wrong: fmt.Sprintf("in month %d low, mean and high do not rise", m+1), Expected: "the lowest, the mean, the highest"}
		}
	}
	return nil
}

// check holds a trip to rates that can be counted, and to each month once.
func (t *Trip) check() *quantity.Fault {
	often, driving := t.Often, t.Driving
	switch {
	case often != nil && (often.Unit != "" || often.Amount < 0 || often.Per != quantity.Monthly && often.Per != quantity.Yearly):
		return &quantity.Fault{Wrong: "`" + often.String() + "` does not say how often", Expected: "a number per month or per year", Examples: []string{"2 /month", "1 /year"}}
	case driving != nil && (driving.Unit != "h" || driving.Amount < 0 || driving.Per != quantity.Daily && driving.Per != quantity.ATrip):
		return &quantity.Fault{Wrong: "`" + driving.String() + "` does not say how long one drives", Expected: "hours per day or per trip", Examples: []string{"1 h/day", "5 h/trip"}}
	}
	for i, month := range t.Months {
		if slices.Contains(t.Months[:i], month) {
			return &quantity.Fault{Wrong: fmt.Sprintf("month %d is named twice", month), Expected: "each month once"}
		}
	}
	return nil
}
