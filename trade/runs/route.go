package runs

import (
	"math"
	"slices"
)

// trunk is what of a route has been followed so far.
type trunk struct {
	*worker
	route Route
	at    Point
	gone  float64
}

// reachedAt is a place that has current, and how much cable leads there.
type reachedAt struct {
	name string
	at   Point
	gone float64
	via  []Step
}

// route follows a circuit from where it begins along its ways to its loads.
func (w *worker) route(c *Circuit) Route {
	t := &trunk{worker: w, route: Route{Circuit: c}}
	if c.Start == nil || len(c.Ends) == 0 {
		return t.route
	}
	t.route.Known = true
	t.at = c.Start.At
	if c.Extra > 0 {
		t.step(Step{Words: "down and across before the living space", Length: c.Extra, Assumed: "a metre, practice"})
	}
	ways := t.knownWays()
	for i, line := range ways {
		line = t.enter(line, c.Along[i])
		if i+1 < len(ways) {
			t.leave(line, c.Along[i], ways[i+1])
			continue
		}
		t.joinLoads(line, c.Along[i])
		return t.route
	}
	t.joinLoads([]Point{t.at}, "")
	return t.route
}

// knownWays are the ways that a circuit takes; one that is not known ends the list.
func (t *trunk) knownWays() [][]Point {
	var out [][]Point
	for _, id := range t.route.Circuit.Along {
		i := slices.IndexFunc(t.in.Ways, func(w Way) bool { return w.ID == id })
		if i < 0 || len(t.in.Ways[i].At) < 2 {
			break
		}
		out = append(out, t.in.Ways[i].At)
	}
	return out
}

func (t *trunk) step(s Step) {
	t.route.Steps = append(t.route.Steps, s)
	t.gone += s.Length
}

const alongSurfaces = "along the surfaces, since no way is written"

// walk goes along the surfaces to a place.
func (t *trunk) walk(to Point, words string) {
	legs, long := t.legs(t.at, to)
	t.route.Assumed = append(t.route.Assumed, legs)
	t.step(Step{Words: words, Length: long, Assumed: alongSurfaces})
	t.at = to
}

// enter goes to the nearer end of a way and gives the way from there.
func (t *trunk) enter(line []Point, id string) []Point {
	_, first := t.legs(t.at, line[0])
	_, last := t.legs(t.at, line[len(line)-1])
	if last < first {
		line = slices.Clone(line)
		slices.Reverse(line)
	}
	t.walk(line[0], "from "+t.from()+" to the way "+id)
	return line
}

func (t *trunk) from() string {
	if len(t.route.On) == 0 {
		return t.route.Circuit.Start.Name
	}
	return "the way " + t.route.On[len(t.route.On)-1].Way
}

// awayCosts is how much rather a cable stays on a way that is written than leaves it for the surfaces: practice.
const awayCosts = 2

// leave follows a way as far as is best to go on to the next.
func (t *trunk) leave(line []Point, id string, next []Point) {
	best, leg, share := math.Inf(1), 0, 0.0
	along := lengths(line)
	for _, to := range []Point{next[0], next[len(next)-1]} {
		for i := 0; i+1 < len(line); i++ {
			s := nearestOn(line[i], line[i+1], to)
			_, off := t.legs(between(line[i], line[i+1], s), to)
			if all := along[i] + s*(along[i+1]-along[i]) + awayCosts*off; all < best-1e-6 {
				best, leg, share = all, i, s
			}
		}
	}
	part := append(slices.Clone(line[:leg+1]), between(line[leg], line[leg+1], share))
	t.route.On = append(t.route.On, Part{id, part})
	t.step(Step{Words: "along " + id, Way: id, Length: length(part)})
	t.at = part[len(part)-1]
}
