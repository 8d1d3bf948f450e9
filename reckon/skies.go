package reckon

import (
	"sync"

	"tumblehome/trade/power"
)

// mostSkies is how many climates are kept: 200 years of one take some 5 MB.
const mostSkies = 2

// skies keeps the drawn years of the last climates, for all machines of the program: they follow from the climate alone and many batteries go through them.
var skies = &drawn{}

type drawn struct {
	mu   sync.Mutex
	keys []Digest
	all  []*power.Sky
}

// make is power.NewSky with a memory. Whoever asks meanwhile waits: making the same years twice would take as long. What fails is not kept.
func (d *drawn) make(c power.Climate, years int, seed uint64) (*power.Sky, error) {
	key := digestOf("sky", 1, struct {
		power.Climate
		Years int
		Seed  uint64
	}{c, years, seed})
	d.mu.Lock()
	defer d.mu.Unlock()
	for i, k := range d.keys {
		if k == key {
			return d.all[i], nil
		}
	}
	sky, err := power.NewSky(c, years, seed)
	if err != nil {
		return nil, err
	}
	if len(d.keys) == mostSkies {
		d.keys, d.all = d.keys[1:], d.all[1:]
	}
	d.keys, d.all = append(d.keys, key), append(d.all, sky)
	return sky, nil
}
