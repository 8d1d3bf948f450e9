package weight

import (
	"math"

	"tumblehome/trade/takeoff"
)

// form is a mass that is linear in independent errors of mean 0 and variance 1: mean + Σ dev[k]·e[k] [kg].
type form struct {
	mean float64
	dev  []float64
}

func newForm(n int) form { return form{dev: make([]float64, n)} }

func (f *form) add(mean float64, key int, dev float64) {
	f.mean += mean
	if key >= 0 {
		f.dev[key] += dev
	}
}

// plus is f + times·g.
func (f form) plus(g form, times float64) form {
	sum := form{mean: f.mean + times*g.mean, dev: make([]float64, len(f.dev))}
	for k, d := range f.dev {
		sum.dev[k] = d + times*g.dev[k]
	}
	return sum
}

// keys gives each error of the inputs a number.
type keys map[string]int

// keyOf names the error of a line: its own key, or else what the line is for.
func keyOf(l takeoff.Line) string {
	if l.Error != "" {
		return l.Error
	}
	return l.Pointer
}

func (k keys) take(key string) int {
	n, known := k[key]
	if !known {
		n = len(k)
		k[key] = n
	}
	return n
}

func (k keys) takeLines(lines []takeoff.Line) {
	for _, l := range lines {
		if l.Dev != 0 {
			k.take(keyOf(l))
		}
	}
}

// of is the number of a line's error, or −1 if it has none.
func (k keys) of(l takeoff.Line) int {
	if l.Dev == 0 {
		return -1
	}
	n, known := k[keyOf(l)]
	if !known {
		return -1
	}
	return n
}

// burden is what a set of lines does to the van.
type burden struct {
	total, rear form
	side, up    float64 // Σ m·y and Σ m·z [kg·mm]
	of          float64 // mass of which side and up are known [kg]
}

func newBurden(n int) burden { return burden{total: newForm(n), rear: newForm(n)} }

// add takes up a line times over; −1 takes it off. share is the part of it that the rear axle carries.
func (b *burden) add(l takeoff.Line, key int, share, times float64) {
	m, dev := times*l.Mass, times*l.Dev
	b.total.add(m, key, dev)
	b.rear.add(m*share, key, dev*share)
	b.side += m * l.At[1]
	b.up += m * l.At[2]
	b.of += m
}

// lever is the geometry of the lever rule.
type lever struct{ wheelbase, datum float64 }

// share is the part of a mass at document x that the rear axle carries: (x + datum)/L. A van without a wheelbase shares evenly.
func (v lever) share(x float64) float64 {
	if !(v.wheelbase > 0) {
		return 0.5
	}
	return (x + v.datum) / v.wheelbase
}

// scaleDev is the standard deviation that a scale of this step leaves in the mean of several readings [kg]: step/√12/√times.
func scaleDev(step float64, times int) float64 {
	return step / math.Sqrt(12*float64(max(times, 1)))
}
