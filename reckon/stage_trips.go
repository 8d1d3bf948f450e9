package reckon

import (
	"tumblehome/build"
	"tumblehome/trade/trips"
)

// workTrips says who is where in which hour, and how often.
func (m *Machine) workTrips(doc *build.Document) (trips.Result, Digest) {
	in := trips.Inputs{People: build.SortedKeys(doc.People), Habits: doc.Use.Habits}
	for _, pose := range doc.Modes["night"].People {
		if pose.Lies != "" {
			in.Beds++
		}
	}
	for _, id := range build.SortedKeys(doc.Use.Trips) {
		t := doc.Use.Trips[id]
		in.Trips = append(in.Trips, trips.Trip{ID: id, Months: t.Months, Often: t.Often, Nights: t.Nights, Aboard: t.Aboard,
			Driving: t.Driving, Keep: t.Keep, HookUp: valueOf(t.HookUp)})
	}
	return work(m, "trips", 2, trips.Work, in)
}
