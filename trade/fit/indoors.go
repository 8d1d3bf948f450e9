package fit

import (
	"fmt"
	"math"
	"slices"

	"tumblehome/quantity"
	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
)

var indoorsSource = finding.Source{Text: "when a rectangle goes into another, straight or tilted: Wetzel, Rectangles in rectangles, Mathematics Magazine 73 (2000) 204-211 (from memory)", Sure: finding.Memory}

// panelThick is the thickest a thing is that goes through a door slantwise [mm]: common practice, no source.
const panelThick = 50

// doorway is a door as it is once the lining is in.
type doorway struct {
	name       string
	wide, high float64
	deep       float64 // how far in one can go straight
	slant      float64 // how far in a thin panel can go, slanting towards the farther end of the room
}

// indoors finds what is bought or made and goes in through no door. What is in the van already went in; made things come in panels, of
// which the largest counts.
func (w *worker) indoors() {
	doors := w.doorways()
	if len(doors) == 0 {
		return
	}
	for i := range w.in.Fittings {
		f := &w.in.Fittings[i]
		s := w.resting(i)
		if s == nil || f.Today || f.Later || f.For != "" || f.isOutside() || f.Gives > 0 {
			continue
		}
		if short := tightest(doors, w.carried(f, s.Box)); short > touching {
			w.reportIndoors(i, doors, w.carried(f, s.Box), short)
		}
	}
}

// carried are the three sides of what has to go in, longest first.
func (w *worker) carried(f *Fitting, b solid.Bounds) [3]float64 {
	sides := []float64{b.MaxX - b.MinX, b.MaxY - b.MinY, b.MaxZ - b.MinZ}
	slices.Sort(sides)
	slices.Reverse(sides)
	if f.Make != "" && f.Board > 0 {
		sides[2] = min(sides[2], f.Board)
	}
	return [3]float64{sides[0], sides[1], sides[2]}
}

// doorways are the doors in the sides and behind, largest first.
func (w *worker) doorways() []doorway {
	r := w.in.Room
	var out []doorway
	for _, o := range w.in.Openings {
		x := (o.X[0] + o.X[1]) / 2
		d := doorway{name: o.called(), wide: o.X[1] - o.X[0], deep: r.Right(x, r.Floor()+waist) - r.Left(x, r.Floor()+waist)}
		d.slant = math.Hypot(d.deep, max(o.X[1]-r.Front(), r.Rear()-o.X[0]))
		if o.Through == "rear" {
			x = r.Rear()
			side := between(r, x, waist)
			d.wide, d.deep = min(o.Y[1], side.to)-max(o.Y[0], side.from), r.Rear()-r.Front()
			d.slant = d.deep
		}
		d.high = min(o.Z[1], r.Roof(x, 0)) - max(o.Z[0], r.Floor())
		if o.Door && (o.Through == "left" || o.Through == "right" || o.Through == "rear") && d.wide > 0 && d.high > 0 {
			out = append(out, d)
		}
	}
	slices.SortStableFunc(out, func(a, b doorway) int { return int(b.wide*b.high - a.wide*a.high) })
	return out
}

// tightest is by how much a thing is too large for the best of the doors, whichever of its sides goes first; 0 if it goes in.
func tightest(doors []doorway, sides [3]float64) float64 {
	best := math.Inf(1)
	for _, d := range doors {
		deep := d.deep
		if sides[2] <= panelThick {
			deep = d.slant
		}
		for first := range 3 {
			p, q := sides[(first+1)%3], sides[(first+2)%3]
			best = min(best, max(sides[first]-deep, oversize(max(p, q), min(p, q), max(d.wide, d.high), min(d.wide, d.high)), 0))
		}
	}
	return best
}

// oversize is by how much the rectangle p by q must shrink at its shorter side to go into a by b, straight or tilted, p ≥ q and a ≥ b: it goes in
// when p ≤ a and q ≤ b, or when b ≥ (2pqa + (p² − q²)·√(p² + q² − a²)) / (p² + q²). 0 if it goes in.
func oversize(p, q, a, b float64) float64 {
	if p <= a && q <= b {
		return 0
	}
	if p <= a {
		return q - b
	}
	fits := func(q float64) bool {
		return q <= b && b >= (2*p*q*a+(p*p-q*q)*math.Sqrt(max(0, p*p+q*q-a*a)))/(p*p+q*q)
	}
	if fits(q) {
		return 0
	}
	low, high := 0.0, q
	if !fits(0) {
		return p - math.Hypot(a, b) + q
	}
	for range 40 {
		if mid := (low + high) / 2; fits(mid) {
			low = mid
		} else {
			high = mid
		}
	}
	return q - low
}

func (w *worker) reportIndoors(i int, doors []doorway, sides [3]float64, short float64) {
	f := &w.in.Fittings[i]
	largest := doors[0]
	what, how := "It", "Take it apart, buy another, or bring it in before the lining."
	if f.Make != "" {
		what, how = "Its largest panel", "Make that panel of two pieces, joined inside."
	}
	out := finding.Finding{
		Code: "fit.door", Severity: finding.Fault, About: []string{pointer("fittings", f.ID)},
		Title: fmt.Sprintf("%s does not go in through any door", w.name(i)),
		Words: fmt.Sprintf("%s is %s by %s by %s mm. The largest door, %s, is %s wide and %s high inside the lining, and it does not go in tilted either: %s too much. %s",
			what, quantity.Parted(sides[0]), quantity.Parted(sides[1]), quantity.Parted(sides[2]), largest.name, about(largest.wide), about(largest.high), about(short), how),
		Measured: mm(short), Limit: mm(0), Source: indoorsSource, Proposals: w.smaller(i, doors),
	}
	if short <= w.in.Error {
		out.Severity = finding.Close
		out.Title = fmt.Sprintf("%s hardly goes in through any door", w.name(i))
	}
	w.find(out)
}
