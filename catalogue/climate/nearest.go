package climate

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"tumblehome/quantity"
)

const earth = 6371.0 // km, mean radius (IUGG)

// Distance is the length of the great circle between two points, by the haversine formula on a sphere [km]. The earth is no sphere:
// it is within 0.6 %.
func Distance(lat1, lon1, lat2, lon2 quantity.Angle) float64 {
	φ1, φ2 := radians(lat1), radians(lat2)
	half := func(d float64) float64 { s := math.Sin(d / 2); return s * s }
	h := half(φ2-φ1) + math.Cos(φ1)*math.Cos(φ2)*half(radians(lon2-lon1))
	return 2 * earth * math.Asin(math.Sqrt(min(h, 1)))
}

func radians(a quantity.Angle) float64 { return float64(a) * math.Pi / 180 }

// Nearest is the place nearest to a point and how far away it is [km]. It may be on the other side of a mountain.
func Nearest(lat, lon quantity.Angle) (Place, float64) {
	away := func(p Place) float64 { return Distance(lat, lon, p.Lat, p.Lon) }
	places := slices.DeleteFunc(All(), func(p Place) bool { return p.Kind == Country })
	best := slices.MinFunc(places, func(a, b Place) int { return cmp.Compare(away(a), away(b)) })
	return best, away(best)
}

// Near are up to three ids that a word which is no place was perhaps meant to be: a slip of the pen, then ids that share a word with it.
// Own places stand before the built-in ones.
func Near(word string, own ...Place) []string {
	var ids, near []string
	for _, p := range slices.Concat(own, all()) {
		ids = append(ids, p.ID)
	}
	if slip := quantity.Near(word, ids); slip != "" {
		near = append(near, slip)
	}
	for _, id := range ids {
		if len(near) < 3 && !slices.Contains(near, id) && shareWord(word, id) {
			near = append(near, id)
		}
	}
	return near
}

// shareWord leaves out words of two letters: every British region begins with gb.
func shareWord(a, b string) bool {
	words := strings.Split(b, "-")
	return slices.ContainsFunc(strings.Split(a, "-"), func(w string) bool { return len(w) > 2 && slices.Contains(words, w) })
}
