package warmth

import (
	"math"

	"tumblehome/solve/zone"
)

// delta is the vapour permeability of still air [kg/(m·s·Pa)], ISO 13788.
const delta = 2.0e-10

// Slice is one layer that vapour passes: its resistance to heat [m2K/W] and, as metres of still air, to vapour.
type Slice struct{ R, Sd float64 }

// Wet is what vapour does to a build-up of slices, the outermost first: water that lies at the faces between them, month after month. Face 0 is
// the outer surface of the first slice, face n the inner one of the last.
type Wet struct {
	Layers   []Slice
	Rse, Rsi float64
	Tight    bool // nothing passes outwards: steel lies outermost, and face 0 is on it

	Water []float64 // kg/m2 at each face
}

// Climate is what stands on both sides, °C and Pa.
type Climate struct{ Outside, OutsideVapour, Inside, InsideVapour float64 }

// Temperatures are those of the faces [°C].
func (w *Wet) Temperatures(c Climate) []float64 {
	total := w.Rse + w.Rsi
	for _, l := range w.Layers {
		total += l.R
	}
	out := make([]float64, len(w.Layers)+1)
	at := w.Rse
	for i := range out {
		if i > 0 {
			at += w.Layers[i-1].R
		}
		out[i] = c.Outside + (c.Inside-c.Outside)*at/total
	}
	return out
}

// Rates are how fast water gathers at each face [kg/(m2·s)], below nought where it dries: ISO 13788, Glaser. Between the faces where vapour is
// saturated its pressure runs straight over sd; a face is saturated where it would else be over-saturated, or where water lies.
func (w *Wet) Rates(c Climate) []float64 {
	n := len(w.Layers) + 1
	limit, at := make([]float64, n), make([]float64, n)
	for i, t := range w.Temperatures(c) {
		limit[i] = zone.Saturation(t)
		if i > 0 {
			at[i] = at[i-1] + w.Layers[i-1].Sd
		}
	}
	held := make([]bool, n)
	for i := range n - 1 {
		held[i] = w.lies(i)
	}
	for range 4 * n {
		p := w.pressures(c, at, limit, held)
		rates := w.rates(p, at, held)
		if i := over(p, limit, held); i >= 0 {
			held[i] = true
			continue
		}
		i := least(rates, func(k int) bool { return held[k] && !w.lies(k) })
		if i < 0 || rates[i] >= 0 {
			return rates
		}
		held[i] = false
	}
	return w.rates(w.pressures(c, at, limit, held), at, held)
}

func (w *Wet) lies(i int) bool { return i < len(w.Water) && w.Water[i] > 1e-9 }

// pressures run straight between the ends and the faces held at saturation; where nothing passes outwards they are level beyond the outermost of those.
func (w *Wet) pressures(c Climate, at, limit []float64, held []bool) []float64 {
	n := len(at)
	p := make([]float64, n)
	p[n-1] = c.InsideVapour
	last := n - 1 // the known face inside of those to fill
	fill := func(k int) {
		for i := k + 1; i < last; i++ {
			part := (at[i] - at[k]) / (at[last] - at[k])
			p[i] = p[k] + (p[last]-p[k])*part
		}
		last = k
	}
	for k := n - 2; k >= 0; k-- {
		switch {
		case held[k]:
			p[k] = limit[k]
			fill(k)
		case k == 0 && !w.Tight:
			p[0] = c.OutsideVapour
			fill(0)
		case k == 0:
			for i := range last {
				p[i] = p[last]
			}
		}
	}
	return p
}

func (w *Wet) rates(p, at []float64, held []bool) []float64 {
	out := make([]float64, len(p))
	for i := range len(p) - 1 {
		if !held[i] {
			continue
		}
		out[i] = delta * (p[i+1] - p[i]) / math.Max(at[i+1]-at[i], thinnestSd)
		if i > 0 {
			out[i] -= delta * (p[i] - p[i-1]) / math.Max(at[i]-at[i-1], thinnestSd)
		}
	}
	return out
}

const thinnestSd = 1e-4 // m

// over is the face that is most over-saturated, or -1. Outermost and innermost are surfaces, unless steel is outermost.
func over(p, limit []float64, held []bool) int {
	worst, at := 1e-6, -1
	for i := range len(p) - 1 {
		if excess := p[i] - limit[i]; !held[i] && excess > worst {
			worst, at = excess, i
		}
	}
	return at
}

func least(rates []float64, of func(int) bool) int {
	at := -1
	for i := range rates {
		if of(i) && (at < 0 || rates[i] < rates[at]) {
			at = i
		}
	}
	return at
}

// Spend lets a climate act for a time [s]. What dries up before its end dries no more.
func (w *Wet) Spend(c Climate, seconds float64, parts int) {
	if w.Water == nil {
		w.Water = make([]float64, len(w.Layers)+1)
	}
	for range parts {
		for i, g := range w.Rates(c) {
			w.Water[i] = math.Max(0, w.Water[i]+g*seconds/float64(parts))
		}
	}
}

// Total is all the water that lies in the build-up, kg/m2.
func (w *Wet) Total() float64 {
	sum := 0.0
	for _, m := range w.Water {
		sum += m
	}
	return sum
}
