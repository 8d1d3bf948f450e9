package power

import (
	"math"
	"sync"
)

// Chart is the risk of a flat night over batteries and panels of many sizes, at the same weather and the same trips. A larger battery or panel never has
// a greater risk.
type Chart struct {
	AmpHours []float64   // of the columns, rising
	Watts    []float64   // of the rows, rising
	Share    [][]float64 // of nights that are flat, by row and column
	Nights   int         // that each was counted over
	Error    float64     // largest standard error of a share
	Smoothed float64     // the most by which a share was lowered so that more never is worse
	Promise  float64
	Own      [2]float64 // Ah and W of the van itself
	OwnShare float64
	Kit      *Kit // cheapest of the catalogue that keeps the promise and bears the van's chargers; nil if none does
}

// Kit is batteries and panels to buy.
type Kit struct {
	Battery, Panel    Offer
	Batteries, Panels int
	Price, Share      float64
}

// chartSize is how many batteries, and panels, are tried.
const chartSize = 12

// Draw works a chart out, for a battery of the van's own kind, or lithium where it has none. Two work at it at once; progress, if not nil, is told how far
// they are, by one of them at a time. Nights are those of the years given.
func Draw(in Inputs, years int, progress func(done, of int)) Chart {
	in.Years = years
	r := Result{in: in.complete()}
	r.begin()
	if r.in.Battery == nil {
		r.in.Battery = &Battery{Chemistry: Lithium, Rated: 100}
	}
	r.live()
	c := r.axes()
	sky, err := r.in.Sky(r.in.Climate, r.in.Years, r.in.Seed)
	if err != nil || len(r.in.Journeys) == 0 {
		return c
	}
	d := drawing{r: &r, sky: sky, plan: r.in.planOf(sky.Years), progress: progress, of: chartSize*chartSize + 1}
	c.Nights = d.nights()
	d.grid(&c)
	c.level()
	c.OwnShare = d.share(r.in.Battery, c.Own[1])
	d.cheapest(&c)
	for _, row := range c.Share {
		for _, share := range row {
			c.Error = max(c.Error, chance(int(math.Round(share*float64(c.Nights))), c.Nights).Error)
		}
	}
	return c
}

// axes reach from little to three times what the van has, and at least to 300 Ah and 400 W.
func (r *Result) axes() Chart {
	c := Chart{Promise: r.in.Promise, Own: [2]float64{r.in.Battery.holds(), 0}}
	for _, s := range r.in.Sources {
		if s.Kind == Sun {
			c.Own[1] += s.Watts
		}
	}
	ah, watts := math.Ceil(max(300, 2*c.Own[0])/chartSize/5)*5, math.Ceil(max(440, 2*c.Own[1])/(chartSize-1)/10)*10
	for i := range chartSize {
		c.AmpHours, c.Watts = append(c.AmpHours, ah*float64(i+1)), append(c.Watts, watts*float64(i))
		c.Share = append(c.Share, make([]float64, chartSize))
	}
	return c
}

// drawing is a chart being worked out.
type drawing struct {
	r        *Result
	sky      *Sky
	plan     plan
	mu       sync.Mutex
	progress func(done, of int)
	done, of int
}

func (d *drawing) nights() (n int) {
	for _, year := range d.plan {
		for i := range year {
			n += year[i].nights
		}
	}
	return n
}

func (d *drawing) tell() {
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.done++; d.progress != nil {
		d.progress(d.done, d.of)
	}
}

// grid goes through every cell, even rows and odd ones side by side: each cell is by itself, so their order does not matter.
func (d *drawing) grid(c *Chart) {
	var both sync.WaitGroup
	for first := range 2 {
		both.Add(1)
		go func() {
			defer both.Done()
			for i := first; i < chartSize; i += 2 {
				for j := range chartSize {
					b := *d.r.in.Battery
					b.Rated, b.Tested = c.AmpHours[j], 0
					c.Share[i][j] = d.share(&b, c.Watts[i])
					d.tell()
				}
			}
		}()
	}
	both.Wait()
}

// share of nights that are flat with a battery and so much panel on the van's own controller, or one that suits.
func (d *drawing) share(b *Battery, watts float64) float64 {
	w := walk{in: &d.r.in, sky: d.sky, plan: d.plan, days: d.r.days, rooms: d.r.in.rooms(), home: d.r.in.AtHome, up: d.r.up()}
	w.k = d.r.in.kitOf(b)
	w.k.sunny, w.k.roof = false, panel{}
	if watts > 0 {
		s := d.panels(watts)
		if s.tooFewVolts(w.k.takes) { // others are bought
			s.PanelVolts = 0
		}
		w.k.addPanel(panelOf(s, w.k.takes))
	}
	t := w.through()
	return t.share()
}

// panels are those of the van, brought to other watts; the controller is as much larger.
func (d *drawing) panels(watts float64) *Source {
	s := Source{Kind: Sun, Panels: 1}
	for _, own := range d.r.in.Sources {
		if own.Kind == Sun {
			s = own
			break
		}
	}
	s.Watts, s.Amps = watts, 0
	return &s
}

// level lowers what lies above a smaller kit's risk: what is left after the same weather for all are single nights that a larger battery, emptied further,
// takes over into the next trip.
func (c *Chart) level() {
	for i := range c.Share {
		for j := range c.Share[i] {
			low := c.Share[i][j]
			if i > 0 {
				low = min(low, c.Share[i-1][j])
			}
			if j > 0 {
				low = min(low, c.Share[i][j-1])
			}
			c.Smoothed = max(c.Smoothed, c.Share[i][j]-low)
			c.Share[i][j] = low
		}
	}
}
