package trips

import "tumblehome/quantity"

// A Habit is a way of living in a van. Hours are of the clock, whole.
type Habit struct {
	Name             string
	Up, ToBed        int                  // when people get up and go to bed
	Keep             quantity.Temperature // wanted at night, where the trip does not say
	Sitting          quantity.Temperature // wanted while people sit in the van
	Breakfast, Lunch quantity.Duration    // with the stove alight
	Supper           quantity.Duration
}

// habits are common practice, no source; the temperatures lie in the ranges usually given for comfort, 18 to 21 °C sitting and 14 to 18 °C
// under covers (from memory), and below them for the frugal, who dress for it.
var habits = map[string]Habit{
	"frugal": {Name: "frugal", Up: 7, ToBed: 22, Keep: 10, Sitting: 16, Breakfast: 0.25, Supper: 0.5},
	"usual":  {Name: "usual", Up: 7, ToBed: 23, Keep: 14, Sitting: 18, Breakfast: 0.25, Lunch: 0.25, Supper: 0.75},
	"cosy":   {Name: "cosy", Up: 8, ToBed: 23, Keep: 17, Sitting: 20, Breakfast: 0.5, Lunch: 0.5, Supper: 1},
}

// Of the day, for everybody: common practice, no source.
const (
	lunchAt   = 12
	supperAt  = 18
	backDark  = 16 // when people come back from October to March
	backLight = 18 // and from April to September
)

// Water that each person brings home in wet clothes from a day out: two walkers hang up about 1.5 kg on a winter's day. Common practice,
// no source.
const (
	wetDark  quantity.Mass = 0.75
	wetLight quantity.Mass = 0.25
)

func habitOf(name string) Habit {
	if h, known := habits[name]; known {
		return h
	}
	return habits["usual"]
}

// dark says whether a month belongs to the dark half of the year, in the north.
func dark(month int) bool { return month <= 3 || month >= 10 }
