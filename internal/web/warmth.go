package web

import (
	"fmt"
	"math"
	"time"

	"tumblehome/build"
	"tumblehome/internal/words"
	"tumblehome/trade/warmth"
)

// usualNight is the night that the page answers for: a usual one of the coldest month of the trips.
func (v view) usualNight() *warmth.Night { return &v.Warmth.Nights[v.Warmth.Usual] }

// nightsKnown says whether there is anything to show.
func (v view) nightsKnown() bool { return len(v.Warmth.Nights) > 0 && v.Warmth.Usual >= 0 }

// warmthAnswer answers the question of the page in a few sentences.
func warmthAnswer(v view) []string {
	n, told := v.usualNight(), v.Warmth.Told()
	out := []string{coldWords(v, n, told), heaterWords(n, told), glassWords(n)}
	if told.Sleepers > 0 {
		out = append(out, airWords(n, told))
	}
	return append(out, liningWords(v))
}

func coldWords(v view, n *warmth.Night, told warmth.Told) string {
	text := fmt.Sprintf("On a usual night in %s it is %s outside and %s inside at the coldest", monthWords(n.Month), celsius(lowestOutside(n)), celsius(n.Low))
	if told.Keep != nil && n.Low < *told.Keep-0.5 {
		text += fmt.Sprintf("; %s are wanted", celsius(*told.Keep))
	}
	if cold := v.Warmth.Nights[v.Warmth.Coldest]; cold.Cold {
		text += fmt.Sprintf(". On one night in ten in %s it is %s outside or less, and %s inside", monthWords(cold.Month), celsius(lowestOutside(&cold)), celsius(cold.Low))
	}
	return text + "."
}

func heaterWords(n *warmth.Night, told warmth.Told) string {
	switch {
	case told.Warmed && n.Heat < 0.05:
		return "The heater is not needed."
	case told.Warmed:
		return fmt.Sprintf("The heater gives %s for that, %s of what it could.", kilowattHours(n.Heat), percent(n.Share))
	case told.Heater:
		return "The heater has no flue: it must not burn while anybody sleeps, and is left out here."
	}
	return "Nothing warms the van at night but the people in it."
}

// dryEnough is water that nobody sees, in g.
const dryEnough = 5

func glassWords(n *warmth.Night) string {
	switch all := 1000 * n.Condensed(); {
	case all < dryEnough:
		return "Glass, steel and linings stay dry."
	case all < warmth.Cupful:
		return fmt.Sprintf("At most %s of water lie on glass, steel and linings, at %s: a cloth takes it up.", grams(all), n.WettestHour())
	default:
		return fmt.Sprintf("Glass and steel run with water: at most %s on them and on linings, at %s.", grams(all), n.WettestHour())
	}
}

func airWords(n *warmth.Night, told warmth.Told) string {
	if !told.AirSaid {
		return "Nothing says yet which openings let in air at night."
	}
	said := fmt.Sprintf(" (carbon dioxide rises to %s).", words.Amount(math.Round(n.CO2/100)*100, "ppm"))
	switch {
	case n.CO2 > warmth.Disturbed:
		return "The air grows so stale that sleep is disturbed" + said
	case n.CO2 > warmth.Stale:
		return "The air grows stale" + said
	}
	return "The air stays good" + said
}

func liningWords(v view) string {
	w, ok := dampest(v.Warmth.Winters)
	switch {
	case !ok:
		return "No lining covers the steel yet, so nothing gathers behind one."
	case w.Most < dryEnough:
		return "Behind the linings it stays dry all winter."
	case w.Left < dryEnough:
		return fmt.Sprintf("Behind the linings up to %s of water gather on a square metre by the end of %s; the summer dries it.", grams(w.Most), monthWords(w.MostIn))
	}
	return fmt.Sprintf("Behind the linings up to %s of water gather on a square metre, and the summer leaves %s of it.", grams(w.Most), grams(w.Left))
}

// dampest is the build-up behind which most water gathers.
func dampest(all []warmth.Winter) (out warmth.Winter, ok bool) {
	for _, w := range all {
		if !ok || w.Most > out.Most {
			out, ok = w, true
		}
	}
	return out, ok
}

func lowestOutside(n *warmth.Night) float64 {
	low := math.Inf(1)
	for _, h := range n.Hours {
		low = math.Min(low, h.Outside)
	}
	return low
}

func monthWords(month int) string { return time.Month(month).String() }

// celsius, grams, kilowattHours and watts round to what one can tell.
func celsius(t float64) string { return words.Amount(t, "°C") }

func kilowattHours(v float64) string { return fmt.Sprintf("%.1f kWh", v) }

func percent(share float64) string { return fmt.Sprintf("%.0f %%", 100*share) }

func grams(v float64) string {
	if v >= 20 {
		return words.Amount(v, "g")
	}
	return fmt.Sprintf("%.0f g", v)
}

// wattsPerKelvin is a loss to the watt; what is less than half a watt is some, not none.
func wattsPerKelvin(v float64) string {
	if v > 0 && v < 0.5 {
		return "under 1 W/K"
	}
	return fmt.Sprintf("%.0f W/K", v)
}

// tens writes a number to the ten.
func tens(v float64) string { return words.Amount(10*math.Round(v/10), "") }

// bayNames names the bays of a build-up, each once.
func bayNames(bays []string) string { return build.BayWords(bays...) }
