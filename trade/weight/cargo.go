package weight

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"tumblehome/quantity"
	"tumblehome/trade/takeoff"
)

const (
	defaultFuel = quantity.Share(0.9) // mass in running order, Regulation (EU) 1230/2012 article 2(4)
	diesel      = 0.84                // kg/l, from memory: 0.83 to 0.845
	petrol      = 0.74                // kg/l, from memory
	cabSeat     = 1050                // mm from the front axle to people in front where no seat is given, typical, from memory
)

// cargo is what stands in the van in one case, apart from the bare van.
type cargo struct {
	fixed   []takeoff.Line // of the van; shared, never changed
	today   bool           // only those that are in today
	without []string       // pointers of what is left at home
	extra   []takeoff.Line // fuel, people, fillings, gear
}

// each visits every line aboard.
func (c cargo) each(visit func(takeoff.Line)) {
	for _, l := range c.fixed {
		if (c.today && !l.Fitted) || c.leaves(l) {
			continue
		}
		visit(l)
	}
	for _, l := range c.extra {
		visit(l)
	}
}

func (c cargo) leaves(l takeoff.Line) bool {
	for _, w := range c.without {
		if l.IsAbout(w) {
			return true
		}
	}
	return false
}

// cargo loads the van for a case.
func (in *Inputs) cargo(c Case) cargo {
	out := cargo{fixed: in.Lines, without: leftBehind(c.Without)}
	fuel := defaultFuel
	if c.Fuel != nil {
		fuel = *c.Fuel
	}
	out.take(in.fuel(fuel)...)
	out.take(in.seated(c.People)...)
	for _, t := range in.Tanks {
		if share := c.Fill[t.ID]; share > 0 {
			out.take(t.filled(share))
		}
	}
	if c.Gear {
		out.take(in.Gear...)
	}
	return out
}

func (c *cargo) take(lines ...takeoff.Line) {
	for _, l := range lines {
		if !c.leaves(l) {
			c.extra = append(c.extra, l)
		}
	}
}

// leftBehind turns ids and dotted paths into pointers; an id may be that of a fitting or of gear.
func leftBehind(without []string) []string {
	var out []string
	for _, w := range without {
		if strings.ContainsAny(w, "./") {
			out = append(out, "/"+strings.TrimPrefix(strings.ReplaceAll(w, ".", "/"), "/"))
			continue
		}
		out = append(out, "/fittings/"+w, "/use/gear/"+w)
	}
	return out
}

// fuel is what stands in the vehicle's tank.
func (in *Inputs) fuel(share quantity.Share) []takeoff.Line {
	t := in.FuelTank
	if t == nil || share <= 0 {
		return nil
	}
	litres := share.Float() * t.Holds.Float()
	return []takeoff.Line{{
		Pointer: "/vehicle/tank", Of: t.Fuel, Net: litres, Unit: "l", Mass: litres * t.density(),
		At: [3]float64{t.X.Float(), 0, 0}, Group: "fuel", Fitted: true,
	}}
}

func (t *FuelTank) density() float64 {
	if t.Fuel == "petrol" {
		return petrol
	}
	return diesel
}

func (t Tank) filled(share quantity.Share) takeoff.Line {
	density := t.Density
	if density == 0 {
		density = 1
	}
	litres := share.Float() * t.Holds.Float()
	return takeoff.Line{
		Pointer: "/fittings/" + t.ID, Net: litres, Unit: "l", Mass: litres * density, At: t.At, Group: "filling", Fitted: true,
	}
}

// seated puts people on the seats from the front; those left over sit where the last seat is.
func (in *Inputs) seated(ids []string) []takeoff.Line {
	seats := slices.Clone(in.Seats)
	slices.SortStableFunc(seats, func(a, b Seat) int { return cmp.Compare(a.X, b.X) })
	var out []takeoff.Line
	for i, id := range ids {
		at := [3]float64{cabSeat - in.Datum.Float(), 0, 0}
		if len(seats) > 0 {
			s := seats[min(i, len(seats)-1)]
			at = [3]float64{s.X.Float(), s.Y.Float(), 0}
		}
		for _, p := range in.People {
			if p.ID == id {
				out = append(out, takeoff.Line{Pointer: "/people/" + id, Mass: p.Mass, Dev: p.Dev, At: at, Group: "person", Fitted: true})
			}
		}
	}
	return out
}

// everything is the case taken where the document states none. The heaviest sit in front.
func (in *Inputs) everything() Case {
	c := Case{assumed: true, ID: "everything", Title: "everybody aboard, tanks full", Gear: true, Fill: map[string]quantity.Share{}}
	people := slices.Clone(in.People)
	slices.SortStableFunc(people, func(a, b Person) int { return cmp.Compare(b.Mass, a.Mass) })
	for _, p := range people {
		c.People = append(c.People, p.ID)
	}
	for _, t := range in.Tanks {
		if !t.Waste {
			c.Fill[t.ID] = 1
		}
	}
	return c
}

// name says what a case is called, for use within a sentence.
func (c Case) name() string {
	if c.Title != "" {
		return c.Title
	}
	return strings.ReplaceAll(c.ID, "-", " ")
}

// label says what a line is, in the builder's own ids.
func label(l takeoff.Line) string {
	name := thingName(l.Pointer)
	if l.Group == "fuel" {
		name = "fuel"
	}
	if l.Group == "filling" {
		return fmt.Sprintf("%.0f l in %s", l.Net, name)
	}
	if l.Of != "" {
		name += " (" + l.Of + ")"
	}
	return name
}

// thingName says what a pointer points at: a fitting with its part, a layer, or else its last word.
func thingName(pointer string) string {
	parts := strings.Split(strings.TrimPrefix(pointer, "/"), "/")
	name := parts[len(parts)-1]
	switch {
	case parts[0] == "lining" && len(parts) > 2:
		return fmt.Sprintf("lining of the %s, layer %s", parts[1], layerNumber(parts[2]))
	case parts[0] == "fittings" && len(parts) > 2:
		name = strings.Join(parts[1:], " ")
	}
	return strings.ReplaceAll(name, "-", " ")
}

// layerNumber counts layers from one.
func layerNumber(index string) string {
	var n int
	if _, err := fmt.Sscanf(index, "%d", &n); err != nil {
		return index
	}
	return fmt.Sprint(n + 1)
}
