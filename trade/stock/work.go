package stock

import (
	"cmp"
	"math"
	"slices"

	"tumblehome/quantity"
	"tumblehome/trade/takeoff"
)

// Line is one material or thing: all of it as planned, and what is still to be bought.
type Line struct {
	Of       string // material, row, or the thing's pointer
	Pointers []string
	Unit     string
	Plan     Purchase // for the whole build, as if nothing had been bought
	Buy      Purchase // still to come
	Unpriced bool     // something of it has no known price
}

// Purchase is whole packs of one row.
type Purchase struct {
	Row    string
	Each   string
	Net    float64 // without waste [Line.Unit]
	InHand float64 // of that, what the workshop holds [Line.Unit]
	Waste  quantity.Share
	Holds  float64 // of one pack [Line.Unit]
	Packs  int
	Stated *Price // of one pack; nil if nobody knows
	Price  Amount // of one pack
	Cost   Amount
}

// Left is what remains of the packs beyond the net need, offcuts included [unit of the line].
func (p Purchase) Left() float64 { return max(0, float64(p.Packs)*p.Holds-(p.Net-p.InHand)) }

// Result is what there is to buy, materials first, each in the order of their names.
type Result struct {
	Lines []Line
	in    Inputs
}

// Work chooses what to buy. Equal inputs give equal results.
func Work(in Inputs) Result {
	r := Result{in: in}
	for _, s := range takeoff.ByMaterial(in.byMeasure()) {
		r.Lines = append(r.Lines, in.material(s))
	}
	things := slices.Clone(in.Things)
	slices.SortStableFunc(things, func(a, b Thing) int { return cmp.Compare(a.Pointer, b.Pointer) })
	shelf := map[string]float64{}
	for _, h := range in.InHand {
		shelf[h.Row] += h.Have
	}
	for _, t := range things {
		r.Lines = append(r.Lines, in.thing(t, shelf))
	}
	return r
}

// byMeasure are the needs that no thing's own price covers.
func (in *Inputs) byMeasure() []takeoff.Line {
	var out []takeoff.Line
	for _, l := range in.Needs {
		covered := slices.ContainsFunc(in.Things, func(t Thing) bool { return l.IsAbout(t.Pointer) })
		if l.Of != "" && l.Net > 0 && !covered {
			out = append(out, l)
		}
	}
	return out
}

// material buys one material for all its lines.
func (in *Inputs) material(s takeoff.Sum) Line {
	line := Line{Of: s.Name, Unit: s.Unit}
	var toCome float64
	for _, l := range s.Of {
		if !slices.Contains(line.Pointers, l.Pointer) {
			line.Pointers = append(line.Pointers, l.Pointer)
		}
		if !l.Fitted && !slices.ContainsFunc(in.Settled, l.IsAbout) {
			toCome += l.Net
		}
	}
	slices.Sort(line.Pointers)
	line.Plan = in.cheapest(s, s.Net, 0)
	line.Buy = in.cheapest(s, toCome, in.inHand(s))
	line.Unpriced = line.Plan.Stated == nil
	return line
}

// offers of a material in the unit of its lines.
func (in *Inputs) offers(s takeoff.Sum) []Offer {
	var out []Offer
	for _, o := range in.Offers {
		if (o.Of == s.Name || o.Row == s.Name) && o.Unit == s.Unit && o.Holds > 0 {
			out = append(out, o)
		}
	}
	return out
}

// inHand is how much of a material lies in the workshop [its unit].
func (in *Inputs) inHand(s takeoff.Sum) float64 {
	held := map[string]float64{}
	for _, o := range in.offers(s) {
		held[o.Row] = o.Holds
	}
	var sum float64
	for _, h := range in.InHand {
		sum += h.Have * held[h.Row]
	}
	return sum
}

// cheapest buys a net need, less what is in hand, in the stock size that costs least; a size without a price comes last.
func (in *Inputs) cheapest(s takeoff.Sum, net, inHand float64) Purchase {
	best := Purchase{Net: net, InHand: min(net, inHand)}
	found := false
	for _, o := range in.offers(s) {
		p := in.purchase(o, best.Net, best.InHand)
		if !found || cheaper(p, best) {
			best, found = p, true
		}
	}
	return best
}

func cheaper(a, b Purchase) bool {
	if (a.Stated == nil) != (b.Stated == nil) {
		return a.Stated != nil
	}
	return cmp.Or(cmp.Compare(a.Cost.Likely, b.Cost.Likely), cmp.Compare(a.Packs, b.Packs), cmp.Compare(a.Row, b.Row)) < 0
}

// A need this much larger than whole packs is rounding, not another pack [share of a pack].
const roundingOfPacks = 1e-9

// purchase rounds up to whole packs: ⌈(net − in hand)·(1 + waste)/holds⌉.
func (in *Inputs) purchase(o Offer, net, inHand float64) Purchase {
	p := Purchase{Row: o.Row, Each: o.Each, Net: net, InHand: inHand, Waste: o.Waste, Holds: o.Holds}
	p.Packs = int(math.Ceil(max(0, (net-inHand)*(1+o.Waste.Float())/o.Holds-roundingOfPacks)))
	price, known := in.amount(o.Price)
	if known {
		p.Price, p.Stated = price, o.Price
		p.Cost = price.times(float64(p.Packs))
	}
	return p
}

// thing buys a thing as a whole, unless it is settled or can be taken from the shelf.
func (in *Inputs) thing(t Thing, shelf map[string]float64) Line {
	price, known := in.amount(t.Price)
	known = known || t.Found
	plan := Purchase{Row: t.Row, Each: "piece", Net: 1, Holds: 1, Packs: 1, Price: price, Cost: price, Stated: t.Price}
	if t.Found {
		plan.Price, plan.Cost = Amount{}, Amount{}
	}
	line := Line{Of: cmp.Or(t.Row, t.Pointer), Pointers: []string{t.Pointer}, Unit: "piece", Plan: plan, Buy: plan, Unpriced: !known}
	settled := in.settled(t)
	if !settled && t.Row != "" && shelf[t.Row] >= 1 {
		shelf[t.Row]--
		settled = true
	}
	if settled {
		line.Buy.Net, line.Buy.Packs, line.Buy.Cost = 0, 0, Amount{}
	}
	return line
}

// settled tells whether a thing is fitted, found or paid for.
func (in *Inputs) settled(t Thing) bool {
	paid := t.Price != nil && (t.Price.Standing == "paid" || t.Price.Standing == "free")
	return t.Fitted || t.Found || paid || slices.ContainsFunc(in.Settled, takeoff.Line{Pointer: t.Pointer}.IsAbout)
}
