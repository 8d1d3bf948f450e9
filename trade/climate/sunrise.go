package climate

import (
	"math"

	places "tumblehome/catalogue/climate"
	"tumblehome/quantity"
)

// middays are the days of the year, 1 to 365, whose sun stands for their month's (Klein 1977, as printed by Duffie and Beckman).
var middays = [12]float64{17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344}

// sunrise is when the sun rises and when it stands highest in a month, January 0, in hours of standard time. By Cooper's declination,
// centre of the disc at -0.833° as in almanacs, without the equation of time: within half an hour below 60° of latitude, which moves a
// night by less than its own scatter. Where it never rises or never sets, half the day is taken as 3 or 10 hours.
func sunrise(p places.Place, month int) (rise, noon float64) {
	noon = solarNoon(p.Lon, p.Offset)
	return noon - halfDay(float64(p.Lat), middays[month]), noon
}

// solarNoon is when the sun stands highest on the mean day of a year, in hours of a clock so far ahead of UTC [h].
func solarNoon(lon quantity.Angle, offset float64) float64 { return 12 - float64(lon)/15 + offset }

// halfDay is the time from sunrise to noon on a day of the year [h].
func halfDay(lat, day float64) float64 {
	const degree = math.Pi / 180
	declination := 23.45 * degree * math.Sin(2*math.Pi*(284+day)/365)
	φ := lat * degree
	cos := (math.Sin(-0.833*degree) - math.Sin(φ)*math.Sin(declination)) / (math.Cos(φ) * math.Cos(declination))
	half := math.Acos(max(-1, min(1, cos))) / (15 * degree)
	return max(3, min(10, half))
}
