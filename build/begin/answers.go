package begin

import (
	"slices"

	"tumblehome/quantity"
)

// Answers is what was said in the first hour. The zero value of each means that nothing was said.
type Answers struct {
	Title    string
	Rules    string // gb, eu, us
	Currency string // GBP, EUR, USD

	Body        string // id of one of the nine
	Readings    Readings
	Plate       Plate
	Wheelbase   *quantity.Length
	Sleepers    []Sleeper
	Wishes      []string // ids of wishes, in the order of the cards
	Budget      *quantity.Money
	Weekends    *int
	Arrangement string // id of a starting arrangement; empty before one is picked
}

// Readings are the six readings of the tape [mm] and the side of the sliding door.
type Readings struct {
	Length, Knee, Arches, Height, DoorWidth, DoorHeight *quantity.Length
	DoorSide                                            string // left, right, none
}

// Plate are the four numbers of the maker's plate [kg].
type Plate struct{ Gross, Front, Rear, Train *quantity.Mass }

// Sleeper is somebody who sleeps in the van.
type Sleeper struct {
	ID      string          // as in people
	Name    string          // as it was typed; empty where the id says it
	Stature quantity.Length // without shoes [mm]
}

// Called is what people call the sleeper.
func (s Sleeper) Called() string { return orText(s.Name, s.ID) }

// A Wish is a card of the first hour.
type Wish struct{ ID, Name, Says string }

// Wishes are the cards in their order.
func Wishes() []Wish { return slices.Clone(wishes) }

var wishes = []Wish{
	{"kitchen", "A place to cook", "worktop, cooker, water"},
	{"fixed-bed", "A bed that is always made", "nothing to fold out at night"},
	{"seats-table", "Seats and a table", "rainy days indoors"},
	{"toilet", "A toilet", "a portable one, out of sight"},
	{"fridge", "A fridge", "a cool box that runs off a battery"},
	{"heating", "Heating", "nights below freezing"},
	{"garage", "Bicycles or much gear", "room beneath the bed"},
	{"work-desk", "A desk", "a working day in the van"},
	{"cheap", "As cheap as can be", "simple boards, little bought"},
	{"removable", "Out again in an hour", "a van for work on weekdays"},
}

// wishIDs are the ids among some that are cards, each once, in the order of the cards.
func wishIDs(ids []string) []string {
	var out []string
	for _, w := range wishes {
		if slices.Contains(ids, w.ID) {
			out = append(out, w.ID)
		}
	}
	return out
}

func (a Answers) wants(wish string) bool { return slices.Contains(a.Wishes, wish) }

// body is the outline said, or the one assumed.
func (a Answers) body() Body { return BodyOf(a.Body) }

// length is that of the load floor, as read or typical.
func (a Answers) length() quantity.Length { return orElse(a.Readings.Length, a.body().Length) }

// sleepers are those said, or the two assumed.
func (a Answers) sleepers() []Sleeper {
	if len(a.Sleepers) > 0 {
		return a.Sleepers
	}
	return []Sleeper{{"first", "the taller sleeper", 1750}, {"second", "the other sleeper", 1650}}
}

// doorSide is the kerb's where nothing was said.
func (a Answers) doorSide() string {
	switch {
	case a.Readings.DoorSide != "":
		return a.Readings.DoorSide
	case a.rules() == "gb":
		return "left"
	}
	return "right"
}

func (a Answers) rules() string { return orText(a.Rules, "gb") }

func (a Answers) currency() string {
	return orText(a.Currency, map[string]string{"gb": "GBP", "eu": "EUR", "us": "USD"}[a.rules()])
}

func orElse[T any](given *T, usual T) T {
	if given == nil {
		return usual
	}
	return *given
}

func orText(given, usual string) string {
	if given == "" {
		return usual
	}
	return given
}
