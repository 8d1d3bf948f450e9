package weight

import (
	"tumblehome/quantity"
	"tumblehome/trade/takeoff"
)

// z80 is the 80 % quantile of the standard normal distribution.
const z80 = 0.8416212335729143

// Load is a mass with its spread [kg].
type Load struct {
	Mean, Dev float64
	moved     float64 // part of Mean that weighings other than the base brought
}

// P80 is the value that the load passes one time in five.
func (l Load) P80() float64 { return l.Mean + z80*l.Dev }

// On is a van on its two axles.
type On struct {
	Total, Front, Rear Load
	Side               float64 // Σ m·y of all but the bare van [kg·mm]
	up, of             float64 // Σ m·z and Σ m of all but the bare van
	cargo              cargo
}

// CaseLoad is what one load case comes to.
type CaseLoad struct {
	Case
	On
}

// Result is what the van weighs.
type Result struct {
	Bare     On         // empty tank, nothing in it
	Today    On         // what is in today, nobody aboard, fuel as last weighed
	Finished On         // all that is planned, nobody aboard, fuel as last weighed
	Cases    []CaseLoad // in the order given
	in       Inputs
	base     int
	offs     []off
	governs  governs
	entries  []entry
}

// governs names the case that matters most for each limit: the greatest part of it, or the greatest load where there is
// no limit; for side and front share the worst.
type governs struct{ total, front, rear, side, light int }

// Work weighs the van. Equal inputs give equal results.
func Work(in Inputs) Result {
	if len(in.Cases) == 0 {
		in.Cases = []Case{in.everything()}
	}
	m := newModel(&in)
	r := Result{in: in, base: m.bare.base, offs: m.offs}
	standing := cargo{fixed: in.Lines}
	standing.take(in.fuel(in.standingFuel(m.bare.base))...)
	now := standing
	now.today = true
	r.Bare, r.Finished, r.Today = m.on(cargo{}), m.on(standing), m.on(now)
	for _, c := range in.Cases {
		r.Cases = append(r.Cases, CaseLoad{Case: c, On: m.on(in.cargo(c))})
	}
	r.governs = r.govern()
	r.enter()
	return r
}

// standingFuel is the fuel of the van as it stands: that of its base weighing.
func (in *Inputs) standingFuel(base int) quantity.Share {
	if base >= 0 && in.Weighings[base].Fuel != nil {
		return *in.Weighings[base].Fuel
	}
	return unknownFuel
}

// on puts a cargo into the bare van.
func (m *model) on(c cargo) On {
	b := newBurden(len(m.keys))
	c.each(func(l takeoff.Line) { b.add(l, m.keys.of(l), m.lever.share(l.At[0]), 1) })
	total, rear := m.bare.total.plus(b.total, 1), m.bare.rear.plus(b.rear, 1)
	return On{
		Total: m.figure(total), Rear: m.figure(rear), Front: m.figure(total.plus(rear, -1)),
		Side: b.side, up: b.up, of: b.of, cargo: c,
	}
}

func (r *Result) govern() governs {
	var g governs
	for i := range r.Cases {
		if r.Cases[i].Total.Mean > r.Cases[g.total].Total.Mean {
			g.total = i
		}
		if r.Cases[i].Front.Mean > r.Cases[g.front].Front.Mean {
			g.front = i
		}
		if r.Cases[i].Rear.Mean > r.Cases[g.rear].Rear.Mean {
			g.rear = i
		}
		if abs(r.sideShare(r.Cases[i].On)) > abs(r.sideShare(r.Cases[g.side].On)) {
			g.side = i
		}
		if r.Cases[i].frontShare() < r.Cases[g.light].frontShare() {
			g.light = i
		}
	}
	return g
}

// frontShare is the part of the van's mass on its front axle [%].
func (o On) frontShare() float64 {
	if !(o.Total.Mean > 0) {
		return 0
	}
	return 100 * o.Front.Mean / o.Total.Mean
}

// sideShare is what the right wheels carry more than the left, as part of the whole: 2·Σ(m·y)/t / Σm [%]. It is 0
// without a track.
func (r *Result) sideShare(o On) float64 {
	t := r.track()
	if !(t > 0) || !(o.Total.Mean > 0) {
		return 0
	}
	return 100 * 2 * o.Side / t / o.Total.Mean
}

const trackOfWidth = 0.85 // track as part of the overall width, from memory

// track is the distance between the wheels of an axle [mm], measured or else from the width; 0 if neither is known.
func (r *Result) track() float64 {
	if r.in.Track > 0 {
		return r.in.Track.Float()
	}
	return trackOfWidth * r.in.Body.Width.Float()
}

// centre is where the middle of the van's mass lies: x behind the datum by the axle loads, y by what was added [mm].
func (r *Result) centre(o On) (x, y float64) {
	if !(o.Total.Mean > 0) {
		return 0, 0
	}
	return r.in.Wheelbase.Float()*o.Rear.Mean/o.Total.Mean - r.in.Datum.Float(), o.Side / o.Total.Mean
}

func abs(v float64) float64 { return max(v, -v) }
