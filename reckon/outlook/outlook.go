package outlook

import (
	"cmp"
	"math"

	"tumblehome/build"
	"tumblehome/build/begin"
	"tumblehome/catalogue/people"
	"tumblehome/reckon"
	"tumblehome/solve/solid"
	"tumblehome/trade/fit"
)

// Reckoner works a document out.
type Reckoner func(*build.Document) *reckon.Reckoning

// First are the first answers.
type First struct {
	With      begin.Arrangement // the arrangement they were reckoned with
	Reckoning *reckon.Reckoning // of the whole build with it
	Room      Room
	People    []Person
	Left      Amount // that may still be taken along with all aboard, gear and water [kg]; the least of what the van and its axles allow
	LeftOn    string // what gives out first: the van, the front axle, the rear axle
	Money     Amount // for all that stands on the list, in the build's currency: cost.forecast
	Hours     Amount // of work [h]
	Weekends  Amount
}

// Amount is a likely value and the one that is passed one time in five; for Left the one it falls short of.
type Amount struct{ Likely, Late float64 }

// Room is the finished room in the three ways that matter [mm], and the free floor between the sides [m2].
type Room struct{ Along, Across, Up, Floor float64 }

// Person says how somebody fits, by the room that is over; negative is what is missing [mm].
type Person struct {
	ID      string
	Called  string // as people say it
	Stature float64
	Along   float64 // lying lengthwise, head and feet included
	Across  float64 // lying across the van where it is widest
	Up      float64 // standing in shoes
}

const (
	hoursOfWeekend = 10
	z80            = 0.8416
)

// Look works out the first answers. Without an arrangement the one that suits best is taken.
func Look(a begin.Answers, reckoner Reckoner) (First, error) {
	offer := chosen(a)
	a.Arrangement = offer.ID
	doc, _, err := begin.Document(a)
	if err != nil {
		return First{}, err
	}
	return Of(offer, reckoner(doc)), nil
}

func chosen(a begin.Answers) begin.Arrangement {
	offers := begin.Offers(a)
	for _, o := range offers {
		if o.ID == a.Arrangement {
			return o
		}
	}
	return offers[0]
}

// Of are the first answers that a reckoned build with an arrangement gives.
func Of(offer begin.Arrangement, r *reckon.Reckoning) First {
	f := First{With: offer, Reckoning: r, Room: roomOf(r)}
	for _, id := range build.SortedKeys(r.Document.People) {
		person := r.Document.People[id]
		stature := person.Stature
		body := people.Of(stature)
		f.People = append(f.People, Person{ID: id, Called: cmp.Or(person.Called, id), Stature: stature.Float(), Along: f.Room.Along - body.LyingLength().Float(),
			Across: across(r.Lining.Room, body) - body.LyingLength().Float(), Up: f.Room.Up - (stature.Float() + people.Shoes)})
	}
	f.Left, f.LeftOn = left(r)
	f.Money = amount(r, "cost.forecast")
	f.Hours = hours(r)
	f.Weekends = Amount{f.Hours.Likely / hoursOfWeekend, f.Hours.Late / hoursOfWeekend}
	return f
}

// A bed that somebody lies on across the van [mm]: common practice, no source.
const (
	bedWidth = 700
	bedTop   = 400 // over the load floor and so over the wheel arches, its mattress pressed down
)

// usual is the body by whose shoulders the room is told where nobody is meant [mm].
const usual = 1750

func roomOf(r *reckon.Reckoning) Room {
	in := r.Lining.Room
	room := Room{Along: in.Rear() - in.Front(), Across: across(in, people.Of(usual))}
	room.Up = amount(r, "shell.headroom").Likely
	room.Floor = amount(r, "lining.floor-area").Likely
	return room
}

// across is the width between the linings for somebody who lies across the van, where it is widest, by the rule that fit judges beds with.
func across(in solid.Region, body people.Body) float64 {
	widest := 0.0
	for x := in.Front() + bedWidth/2; x <= in.Rear()-bedWidth/2; x += 50 {
		left, right := fit.Linings(in, x, bedTop, body)
		widest = max(widest, right-left)
	}
	return widest
}

// left is what the limits leave, weight.margin.least, and which gives out first.
func left(r *reckon.Reckoning) (Amount, string) {
	least, on := Amount{math.Inf(1), math.Inf(1)}, ""
	for _, axis := range []struct{ code, name string }{{"total", "the van as a whole"}, {"front-axle", "the front axle"}, {"rear-axle", "the rear axle"}} {
		f, ok := r.Figure("weight." + axis.code)
		if !ok || f.Limit == nil {
			continue
		}
		if spare := *f.Limit - f.Value; spare < least.Likely {
			least, on = Amount{spare, spare}, axis.name
			if f.P80 != nil {
				least.Late = *f.Limit - *f.P80
			}
		}
	}
	if on == "" {
		return Amount{}, ""
	}
	return least, on
}

func amount(r *reckon.Reckoning, code string) Amount {
	f, ok := r.Figure(code)
	if !ok {
		return Amount{}
	}
	a := Amount{f.Value, f.Value}
	if f.P80 != nil {
		a.Late = *f.P80
	}
	return a
}
