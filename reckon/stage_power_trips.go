package reckon

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"tumblehome/build"
	"tumblehome/catalogue"
	"tumblehome/quantity"
	"tumblehome/trade/cables"
	"tumblehome/trade/power"
	"tumblehome/trade/trips"
)

// journeysOf are the trips as power wants them, in an order that what they are called does not change: when they fall is drawn in it.
func (w *stages) journeysOf(in *power.Inputs, journeys trips.Result) {
	planned := journeys.Trips
	if !slices.ContainsFunc(planned, func(p trips.Planned) bool { return p.NightsPerYear > 0 }) {
		in.TripsAssumed = true
		planned = w.usualTrips()
	}
	for _, p := range planned {
		j := power.Journey{ID: p.ID, About: "/use/trips/" + p.ID, Nights: p.Nights, HookUp: p.HookUp.Float()}
		for _, m := range p.Months {
			month := power.Month{Number: m.Number, Trips: math.Min(m.Trips, 31), Up: journeys.Habit.Up}
			for h, hour := range m.Day {
				month.Day[h] = power.Hour{Asleep: hour.Asleep, Awake: hour.Awake, Driving: hour.Driving, Cooking: hour.Cooking.Float()}
			}
			j.Months = append(j.Months, month)
		}
		in.Journeys = append(in.Journeys, j)
	}
	slices.SortStableFunc(in.Journeys, func(a, b power.Journey) int { return strings.Compare(content(a), content(b)) })
}

func content(j power.Journey) string { return fmt.Sprint(j.Nights, j.HookUp, j.Months) }

// usualTrips stand in where no nights are planned: two weekends a month from April to October, as most first builders have them: common practice,
// no source.
func (w *stages) usualTrips() []trips.Planned {
	often, nights := quantity.Rate{Amount: 2, Per: quantity.Monthly}, 2
	driving := quantity.Rate{Amount: 4, Unit: "h", Per: quantity.ATrip}
	return trips.Work(trips.Inputs{People: build.SortedKeys(w.doc.People), Habits: w.doc.Use.Habits,
		Trips: []trips.Trip{{Months: []int{4, 5, 6, 7, 8, 9, 10}, Often: &often, Nights: &nights, Driving: &driving}}}).Trips
}

// shop is what batteries and panels the catalogue has, cheapest first.
func (w *stages) shop() (out []power.Offer) {
	for _, id := range w.rows.RowIDs() {
		row, ok := w.rows.Row(id)
		if !ok {
			continue
		}
		o := power.Offer{Row: id, Name: row.Name, Usable: valueOf(row.Usable).Float()}
		switch {
		case valueOf(row.AmpHours) > 0:
			o.AmpHours = row.AmpHours.Float()
			o.Chemistry, _ = power.ChemistryOf(id, row.Name)
		case isPanel(id, &row):
			o.Watts, o.PanelVolts = row.Watts.Float(), valueOf(row.Volts).Float()
		default:
			continue
		}
		if price := w.price(id); price != nil {
			o.Price = price.Price.Mean().Float()
		}
		out = append(out, o)
	}
	slices.SortStableFunc(out, func(a, b power.Offer) int { return cmp.Compare(a.Price, b.Price) })
	return out
}

// engineChargers are those of the catalogue that charge from the engine.
func (w *stages) engineChargers() (out []power.Charger) {
	for _, id := range w.rows.RowIDs() {
		row, ok := w.rows.Row(id)
		t := thing{row: &row}
		t.Buy = id
		if ok && valueOf(row.Amps) > 0 && t.charges() == cables.Engine {
			out = append(out, power.Charger{Row: id, Name: row.Name, Amps: row.Amps.Float(), Volts: valueOf(row.Volts).Float()})
		}
	}
	return out
}

func isPanel(id string, row *catalogue.Row) bool {
	t := thing{row: row}
	t.Buy = id
	return valueOf(row.Watts) > 0 && t.charges() == cables.Sun
}
