package begin

import (
	"fmt"
	"math"

	"tumblehome/build"
	"tumblehome/quantity"
)

// nobodySaid marks people who are only assumed.
const nobodySaid = "Assumed until you say who sleeps here."

// people are the sleepers with masses guessed from their stature.
func (a Answers) people() (map[string]build.Person, error) {
	out := map[string]build.Person{}
	for _, s := range a.sleepers() {
		if _, twice := out[s.ID]; twice {
			return nil, fmt.Errorf("two sleepers are called %s", s.ID)
		}
		p := build.Person{Called: s.Name, Stature: s.Stature, Mass: massOf(s.Stature)}
		if len(a.Sleepers) == 0 {
			p.Note = nobodySaid
		}
		out[s.ID] = p
	}
	return out, nil
}

// massOf guesses a clothed person's mass [kg] from stature: mass = index * stature² + 2 of clothes, the body mass index 25 for grown
// people (20 to 31) and less for children, down to 16 at 1100 mm. From memory of growth charts and health surveys.
func massOf(stature quantity.Length) quantity.Spread[quantity.Mass] {
	m := float64(stature) / 1000
	index := min(max(16+(m-1.1)*18, 16), 25)
	mass := func(index float64) quantity.Mass { return quantity.Mass(math.Round(index*m*m + 2)) }
	return quantity.Between(mass(0.8*index), mass(index), mass(1.24*index))
}

// gear is what is taken along, for each sleeper and for all: common practice, no source.
func (a Answers) gear() map[string]build.MassAt {
	n := quantity.Mass(len(a.sleepers()))
	about := func(kg quantity.Mass) build.MassAt { return build.MassAt{Mass: quantity.Around(kg, tenths(0.3*kg))} }
	gear := map[string]build.MassAt{
		"bedding": about(4 * n), "clothes": about(8 * n), "food": about(7 * n), "kitchen-things": about(4 + 2*n), "tools": about(8),
	}
	if a.wants("garage") {
		gear["outdoor-gear"] = about(15 * n)
	}
	return gear
}

func tenths(q quantity.Mass) quantity.Mass { return quantity.Mass(math.Round(float64(q)*10) / 10) }
