package runs

import (
	"cmp"
	"fmt"
	"slices"

	"tumblehome/solve/solid"
)

// Offer is a way that the cable of one circuit could take: one that is written, or a new one.
type Offer struct {
	Way     string // that is written; empty for a new one
	Path    Path   // of a new one
	Corners []Corner
	Length  float64  // of the cable one way, to the farthest of what it feeds [mm]
	Meets   []string // what the way fouls, in words
	barred  bool     // it lies across a door or where one walks
}

// mostOffered is how many ways are offered for a cable, and worthDetour by how much longer than along the surfaces, beside a loop, a written
// way may make it: practice.
const (
	mostOffered = 4
	worthDetour = 1.5
)

// Offers are the ways that a circuit or source without one could take, the best first: what crosses no door and no floor that is walked on, then what fouls least, written ways before new ones, then the
// shortest.
func (r *Result) Offers(id string, source bool) []Offer {
	route := r.Route(id, source)
	if route == nil || !route.Known || len(route.Circuit.Along) > 0 {
		return nil
	}
	var out []Offer
	for i := range r.Ways {
		if l := &r.Ways[i]; len(l.At) > 1 {
			tried := r.trying(route.Circuit, l.Way)
			if tried.laid() > loop && tried.Reckoned < worthDetour*route.Reckoned+loop {
				lines := tried.Assumed
				for _, part := range tried.On {
					lines = append(lines, part.Points)
				}
				under := r.underfoot(lines, route.Circuit.fittings())
				out = append(out, Offer{Way: l.ID, Length: tried.Reckoned, Meets: under, barred: len(under) > 0})
			}
		}
	}
	from, to := r.ends(route)
	for _, p := range Paths {
		corners := r.Lay(p, MannerFor(route.Circuit.Section), from, to)
		if len(corners) < 2 {
			continue
		}
		tried := r.trying(route.Circuit, Way{ID: newWay, At: At(corners)})
		if tried.laid() < length(At(corners))/2 {
			continue // the cable would hardly use it
		}
		meets, barred := r.meets(At(corners), route.Circuit.fittings())
		for _, m := range r.Underfoot(&tried) {
			if !slices.Contains(meets, m) {
				meets, barred = append(meets, m), true
			}
		}
		out = append(out, Offer{Path: p, Corners: corners, Length: tried.Reckoned, Meets: meets, barred: barred})
	}
	slices.SortStableFunc(out, func(a, b Offer) int {
		return cmp.Or(one(a.barred)-one(b.barred), cmp.Compare(len(a.Meets), len(b.Meets)), one(a.Way == "")-one(b.Way == ""), cmp.Compare(a.Length, b.Length))
	})
	if len(out) > 0 {
		most := worthDetour*out[0].Length + loop
		out = slices.DeleteFunc(out, func(o Offer) bool { return o.Length > most })
	}
	return out[:min(len(out), mostOffered)]
}

// one is 1 of what holds.
func one(holds bool) int {
	if holds {
		return 1
	}
	return 0
}

// newWay stands for the id of a way that is only tried.
const newWay = "the new way"

// MannerFor is the usual conduit for one circuit of this section: the smallest on offer that it fills to no more than it should.
func MannerFor(section float64) Manner {
	for _, m := range Manners {
		if d := Diameter(section); m.Bore > 0 && Fill([]float64{d, d}, m.Bore) <= mostFull {
			return m
		}
	}
	return Manners[0]
}

// trying is the route of a circuit if it took a way.
func (r *Result) trying(c *Circuit, way Way) Route {
	in, with := r.in, *c
	in.Ways, with.Along = append(slices.Clone(in.Ways), way), []string{way.ID}
	return (&worker{in: in}).route(&with)
}

// ends are where a route begins, and the place to which most cable leads.
func (r *Result) ends(route *Route) (from, to Spot) {
	c := route.Circuit
	from = r.spotOf(*c.Start)
	from.Bare = from.Bare || c.Start.Fitting == ""
	far := 0
	for i := range c.Ends {
		if distance(c.Ends[i].At, c.Start.At) > distance(c.Ends[far].At, c.Start.At) {
			far = i
		}
	}
	return from, r.spotOf(c.Ends[far])
}

func (r *Result) spotOf(e End) Spot {
	for i := range r.in.Things {
		if t := &r.in.Things[i]; t.ID == e.Fitting {
			return Spot{Name: t.Name, Box: t.Box}
		}
	}
	return Spot{Name: e.Name, Box: pointBox(e.At)}
}

func pointBox(p Point) solid.Bounds {
	return solid.Bounds{MinX: p[0], MaxX: p[0], MinY: p[1], MaxY: p[1], MinZ: p[2], MaxZ: p[2]}
}

// Spot is where a fitting stands, if it has a place in the van.
func (r *Result) Spot(fitting string) (Spot, bool) {
	for i := range r.in.Things {
		if t := &r.in.Things[i]; t.ID == fitting {
			return Spot{Name: t.Name, Box: t.Box}, true
		}
	}
	return Spot{}, false
}

// Front is the front end of the living space, where a way may begin or end without anything standing there.
func (r *Result) Front() Spot { return r.barely(r.in.Room.Front(), "the front of the living space") }

// Rear is its other end.
func (r *Result) Rear() Spot { return r.barely(r.in.Room.Rear(), "the rear doors") }

func (r *Result) barely(x float64, name string) Spot {
	return Spot{Name: name, Box: pointBox(Point{x, 0, r.in.Room.Floor()}), Bare: true}
}

// Meets says in a few words each what a line would foul.
func (r *Result) Meets(corners []Corner) []string {
	out, _ := r.meets(At(corners), nil)
	return out
}

// meets says it of a line that leads to these fittings, and whether it lies across a door or where one walks.
func (r *Result) meets(line []Point, own []string) (out []string, barred bool) {
	w := &worker{in: r.in}
	for _, f := range w.fouls(line, own) {
		name := f.ID
		barred = barred || f.Kind == Gangway || f.Kind == Hole
		for i := range r.in.Things {
			if t := &r.in.Things[i]; t.ID == f.ID && (f.Kind == Through || f.Kind == GasAt) {
				name = t.Name
			}
		}
		out = append(out, fmt.Sprintf(meetWords[f.Kind], cmp.Or(name, f.Surface)))
	}
	return out, barred
}

// Underfoot says whether what of a route is only guessed would lie on floor that is walked on or across a door.
func (r *Result) Underfoot(route *Route) []string {
	return r.underfoot(route.Assumed, route.Circuit.fittings())
}

func (r *Result) underfoot(lines [][]Point, own []string) []string {
	w := &worker{in: r.in}
	var out []string
	for _, line := range lines {
		for _, f := range w.fouls(line, own) {
			if said := fmt.Sprintf(meetWords[f.Kind], cmp.Or(f.ID, f.Surface)); (f.Kind == Gangway || f.Kind == Hole) && !slices.Contains(out, said) {
				out = append(out, said)
			}
		}
	}
	return out
}

var meetWords = map[Kind]string{
	Skin: "leaves the body through the %s", RibKind: "leads through the rib %s", ArchAt: "leads through the wheel arch %s", Hole: "crosses the opening %s",
	Through: "leads through %s", Bed: "leads over the bed %s", GasAt: "leads past the gas: %s", Gangway: "lies on the open %s, where one walks",
}
