package weight

import (
	"math"

	"tumblehome/solve/conditioning"
	"tumblehome/trade/takeoff"
)

// model holds what all cases share while one set of inputs is worked out.
type model struct {
	in    *Inputs
	keys  keys
	lever lever
	bare  bare
	parts conditioning.Parts
	offs  []off // what each weighing but the base said
}

// off is how far a weighing was from the estimate.
type off struct {
	weighing int
	estimate form    // of the total, before any correction
	by       float64 // read less estimated [kg]
	dev      float64 // standard deviation of that difference as the spreads have it [kg]
}

func newModel(in *Inputs) *model {
	m := &model{in: in, keys: make(keys, len(in.Lines)+16), lever: lever{in.Wheelbase.Float(), in.Datum.Float()}}
	m.keys.takeLines(in.Lines)
	m.keys.takeLines(in.Gear)
	for _, p := range in.People {
		m.keys.take("/people/" + p.ID)
	}
	for _, w := range in.Weighings {
		m.keys.takeLines(in.aboard(w))
		m.keys.take("scale front " + w.ID)
		m.keys.take("scale rear " + w.ID)
	}
	m.keys.take("bare mass")
	m.keys.take("bare split")
	if base := chooseBase(in.Weighings); base >= 0 {
		m.bare = m.weighed(base)
	} else {
		m.bare = m.guessed()
	}
	m.learn()
	return m
}

func (m *model) newForm() form { return newForm(len(m.keys)) }

// load is what lines do to the van.
func (m *model) load(lines []takeoff.Line) burden {
	b := newBurden(len(m.keys))
	for _, l := range lines {
		b.add(l, m.keys.of(l), m.lever.share(l.At[0]), 1)
	}
	return b
}

// learn corrects the guesses by the weighings other than the base.
func (m *model) learn() {
	var readings []conditioning.Reading
	for i, w := range m.in.Weighings {
		if i == m.bare.base {
			continue
		}
		load := m.load(m.in.aboard(w))
		total, rear := m.bare.total.plus(load.total, 1), m.bare.rear.plus(load.rear, 1)
		front := total.plus(rear, -1)
		noise := w.noise() * w.noise()
		readings = append(readings,
			conditioning.Reading{Of: front.dev, Value: w.Front.Float() - front.mean, Noise: noise},
			conditioning.Reading{Of: rear.dev, Value: w.Rear.Float() - rear.mean, Noise: noise})
		m.offs = append(m.offs, off{
			weighing: i, estimate: total,
			by:  w.Front.Float() + w.Rear.Float() - total.mean,
			dev: math.Sqrt(dot(total.dev, total.dev) + 2*noise),
		})
	}
	n := len(m.keys)
	ones := make([]float64, n)
	for k := range ones {
		ones[k] = 1
	}
	// A scale without a step that repeats another to the gram teaches nothing more: then the estimates stay as they are.
	parts, err := conditioning.Condition(make([]float64, n), ones, readings)
	if err != nil {
		parts, _ = conditioning.Condition(make([]float64, n), ones, nil)
	}
	m.parts = parts
}

func dot(a, b []float64) float64 {
	var sum float64
	for k := range a {
		sum += a[k] * b[k]
	}
	return sum
}

// figure is a form after all weighings: its mean, its deviation, and what the weighings moved it by [kg].
func (m *model) figure(f form) Load {
	moved := m.parts.Value(f.dev)
	return Load{Mean: f.mean + moved, Dev: m.parts.Dev(f.dev), moved: moved}
}
