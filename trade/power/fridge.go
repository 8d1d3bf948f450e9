package power

import "math"

// cooler is a fridge as the hours see it: it takes slope W for each degree of the cabin above inside, and no more than most.
type cooler struct{ slope, inside, most, food float64 }

// What keeps a fridge cold. The conductance lies within 0.7 to 1.0 W/K usual for a chest of 40 l and 1.0 to 1.6 for an upright of 80 to 100 l, and grows
// with the surface; the coefficient within 1.2 to 1.6: common practice, no source.
const (
	chestUA   = 0.9 // W/K at 40 l
	uprightUA = 1.1 // W/K at 50 l
	coldCOP   = 1.3
	chilled   = 5.0   // °C
	frozen    = -18.0 // °C
	warmFood  = 17.0  // Wh to cool a kilogram by 20 K: 4.2 kJ/kgK over the coefficient
)

// food is what a head puts in warm in a day [kg], by habit: common practice, no source.
var food = [3]float64{1, 1.5, 2}

// FridgePower is what a fridge takes on average [W] with so much conductance [W/K], in a room and at an inside temperature [°C], at a
// coefficient of performance: UA (Ta − Ti)/COP.
func FridgePower(conductance, room, inside, performance float64) float64 {
	return max(0, conductance*(room-inside)/performance)
}

// coolerOf is a fridge with what people put in.
func coolerOf(t Thing, heads, habit int) cooler {
	c := cooler{inside: chilled, most: t.Watts, food: warmFood * food[habit] * float64(heads) / 24}
	litres := t.Litres
	if litres <= 0 {
		litres = 40
	}
	ua := chestUA * math.Pow(litres/40, 2./3)
	if containsAny(t.Row+" "+t.Name, []string{"front", "upright", "fridge-"}) {
		ua = uprightUA * math.Pow(litres/50, 2./3)
	}
	if t.Kind == Freezer {
		c.inside = frozen
	}
	c.slope = ua / coldCOP
	return c
}

// takes is its mean power [W] in a cabin so warm: never more than all the time.
func (c cooler) takes(cabin float64) float64 {
	return min(c.most, max(0, c.slope*(cabin-c.inside))+c.food)
}
