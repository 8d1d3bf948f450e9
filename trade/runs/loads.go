package runs

import (
	"math"
	"slices"
)

// joinLoads leads from the last way, or from where it begins, to all loads: again and again the load is joined that is nearest to a place
// that has current already (Prim's way to a shortest tree). The route is that to the farthest.
func (t *trunk) joinLoads(line []Point, id string) {
	if len(line) == 1 {
		line = []Point{line[0], line[0]}
	}
	trunkTo, base := 0.0, t.gone
	left := slices.Clone(t.route.Circuit.Ends)
	for len(left) > 0 {
		which, from, long := t.nearestLoad(line, id, base, left)
		load := left[which]
		left = slices.Delete(left, which, which+1)
		legs, _ := t.legs(from.at, load.At)
		t.route.Assumed = append(t.route.Assumed, legs)
		t.route.Cable += long
		if from.name == id {
			trunkTo = max(trunkTo, from.gone-base)
		}
		via := append(slices.Clone(from.via), Step{Words: "from " + t.placeName(from.name, id) + " to " + load.Name, Length: long, Assumed: alongSurfaces})
		t.route.reached = append(t.route.reached, reachedAt{load.Name, load.At, from.gone + long, via})
	}
	t.route.Cable += base + trunkTo
	if id != "" && trunkTo > 0 {
		t.route.On = append(t.route.On, Part{id, upTo(line, trunkTo)})
	}
	t.farthest()
}

func (t *trunk) placeName(name, way string) string {
	if name == way && way != "" {
		return "the way"
	}
	if name == "" {
		return t.route.Circuit.Start.Name
	}
	return name
}

// nearestLoad is the load that takes least cable from anywhere on the last way or from a load that is joined already.
func (t *trunk) nearestLoad(line []Point, id string, base float64, loads []End) (which int, from reachedAt, long float64) {
	long = math.Inf(1)
	take := func(i int, r reachedAt) {
		if _, d := t.legs(r.at, loads[i].At); d < long-1e-6 || d < long+1e-6 && r.gone < from.gone-1e-6 {
			which, from, long = i, r, d
		}
	}
	along := lengths(line)
	for i := range loads {
		for k := 0; k+1 < len(line); k++ {
			share := nearestOn(line[k], line[k+1], loads[i].At)
			gone := along[k] + share*(along[k+1]-along[k])
			r := reachedAt{name: id, at: between(line[k], line[k+1], share), gone: base + gone}
			if id != "" {
				r.via = []Step{{Words: "along " + id, Way: id, Length: gone}}
			}
			take(i, r)
		}
		for _, r := range t.route.reached {
			take(i, r)
		}
	}
	return which, from, long
}

// farthest makes the route that to the load with most cable to it.
func (t *trunk) farthest() {
	far := -1
	for i, r := range t.route.reached {
		if far < 0 || r.gone > t.route.reached[far].gone+1e-6 {
			far = i
		}
	}
	t.route.Steps = append(t.route.Steps, t.route.reached[far].via...)
	t.route.Reckoned, t.route.Straight = t.route.reached[far].gone, distance(t.route.Circuit.Start.At, t.route.reached[far].at)
}

// upTo is a line as far as a length along it.
func upTo(line []Point, long float64) []Point {
	along := lengths(line)
	out := []Point{line[0]}
	for i := 0; i+1 < len(line); i++ {
		if along[i+1] >= long {
			share := 0.0
			if along[i+1] > along[i] {
				share = (long - along[i]) / (along[i+1] - along[i])
			}
			return append(out, between(line[i], line[i+1], share))
		}
		out = append(out, line[i+1])
	}
	return out
}
