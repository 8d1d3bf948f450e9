package trips

import "tumblehome/quantity"

// The modes in which an hour is spent, as the document names them.
const (
	Drive = "drive"
	Home  = "day"
	Night = "night"
)

// An Hour is one hour of a typical day. The heads aboard are asleep, awake in the parked van, away, or in the cab, all of them alike.
type Hour struct {
	Mode                      string
	Asleep, Awake, Away, Cabs int                  // heads; Cabs are in the cab of a van on the road
	Driving                   float64              // share of the hour on the road; the rest of it is a stop
	Cooking                   quantity.Duration    // with the stove alight, within this hour
	Heated                    bool                 // whether warmth is wanted in the cabin at all
	Wanted                    quantity.Temperature // how much, if it is
	Wet                       quantity.Mass        // water in wet clothes hung up at the beginning of the hour
}

// dayOf sets out the typical day of a month: heads people, driving hours on the road, keep the temperature wanted at night.
func dayOf(h Habit, month, heads int, driving float64, keep quantity.Temperature) [24]Hour {
	var day [24]Hour
	back := backLight
	if dark(month) {
		back = backDark
	}
	left, out := driving, false
	for i := range day {
		hour := &day[i]
		switch {
		case i < h.Up || i >= h.ToBed:
			*hour = Hour{Mode: Night, Asleep: heads, Heated: true, Wanted: keep}
		case i > h.Up && left > 0:
			share := min(1, left)
			left -= share
			*hour = Hour{Mode: Drive, Cabs: heads, Driving: share}
		case i > h.Up && i < back:
			*hour, out = Hour{Mode: Home, Away: heads}, true
		default:
			*hour = Hour{Mode: Home, Awake: heads, Heated: true, Wanted: h.Sitting}
		}
	}
	cook(&day, h)
	if out {
		day[back].hangUp(month, heads)
	}
	return day
}

// cook lights the stove: on getting up, at noon and in the evening. Nobody cooks on the road: a meal that falls there waits for the stop, until
// the next meal is due. One that falls where everybody is away is eaten cold.
func cook(day *[24]Hour, h Habit) {
	for _, meal := range []struct {
		at, until int
		long      quantity.Duration
	}{{h.Up, h.Up + 1, h.Breakfast}, {lunchAt, supperAt, h.Lunch}, {supperAt, h.ToBed, h.Supper}} {
		at := meal.at
		for at < meal.until && day[at].Mode == Drive {
			at++
		}
		if at < meal.until && day[at].Awake > 0 {
			day[at].Cooking = meal.long
		}
	}
}

func (h *Hour) hangUp(month, heads int) {
	each := wetLight
	if dark(month) {
		each = wetDark
	}
	h.Wet = each * quantity.Mass(heads)
}
