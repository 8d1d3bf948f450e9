package runs

import "tumblehome/trade/finding"

// Result is where everything runs.
type Result struct {
	Ways   []Led
	Routes []Route // circuits, then sources

	in    Inputs // for what else could be led; without what is only asked of what is written
	found []finding.Finding
}

// Led is one way as it lies.
type Led struct {
	Way
	Length   float64
	Bends    []Bend
	Carries  []Carried
	Fill     float64 // share of the bore; 0 where the bore or the cables are not known
	Least    float64 // the smallest conduit on sale for what it carries [mm]; 0 is nothing to go by
	Every    float64 // how far apart it is held [mm]
	Supports int
	Covers   []Cover
	Fouls    []Foul
}

// Carried is a circuit whose cable takes a way.
type Carried struct {
	ID       string
	Source   bool
	Section  float64 // of one conductor [mm2]
	Diameter float64 // outer, of one conductor; there are two [mm]
}

// Route is how one circuit's cable goes from where it begins to its loads.
type Route struct {
	Circuit  *Circuit
	Known    bool        // whether a way to the loads could be followed
	Reckoned float64     // to the farthest load, one way [mm]
	Straight float64     // from its beginning to that load as the crow flies [mm]
	Steps    []Step      // to the farthest load
	Cable    float64     // one conductor, with the branches to all loads [mm]
	On       []Part      // what of it lies on ways
	Assumed  [][]Point   // legs along the surfaces where no way is written
	reached  []reachedAt // loads in the order in which they were joined
}

// Step is a piece of a route.
type Step struct {
	Words   string
	Way     string // empty where it is assumed along the surfaces
	Length  float64
	Assumed string
}

// Part is a piece of a way.
type Part struct {
	Way    string
	Points []Point
}

// Length is the route one way to the farthest load: as measured, else as followed; false if neither is known.
func (r *Route) Length() (float64, bool) {
	if r.Circuit.Written != nil {
		return *r.Circuit.Written, true
	}
	return r.Reckoned, r.Known
}

// Branches is what leads to further loads besides the route to the farthest, one way [mm].
func (r *Route) Branches() float64 { return max(0, r.Cable-r.Reckoned) }

// Route of a circuit, or of a source without its lead; or nil.
func (r *Result) Route(id string, source bool) *Route {
	return r.find(func(c *Circuit) bool { return c.ID == id && c.Source == source && !c.Lead })
}

// Lead of a source, or nil.
func (r *Result) Lead(id string) *Route {
	return r.find(func(c *Circuit) bool { return c.ID == id && c.Lead })
}

func (r *Result) find(is func(*Circuit) bool) *Route {
	for i := range r.Routes {
		if is(r.Routes[i].Circuit) {
			return &r.Routes[i]
		}
	}
	return nil
}

// Way of this id, or nil.
func (r *Result) Way(id string) *Led {
	for i := range r.Ways {
		if r.Ways[i].ID == id {
			return &r.Ways[i]
		}
	}
	return nil
}
