package reckon

import (
	"slices"
	"sync"

	"tumblehome/trade/power"
)

// mostSkies is how many climates are kept: 200 years of one take 5.5 MB.
const mostSkies = 4

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
	if i := slices.Index(d.keys, key); i >= 0 {
		sky := d.all[i]
		d.keys, d.all = append(slices.Delete(d.keys, i, i+1), key), append(slices.Delete(d.all, i, i+1), sky)
		return sky, nil
	}
	sky, err := power.NewSky(c, years, seed)
	if err != nil {
		return nil, err
	}
	if len(d.keys) == mostSkies { // the one not asked for longest goes
		d.keys, d.all = slices.Delete(d.keys, 0, 1), slices.Delete(d.all, 0, 1)
	}
	d.keys, d.all = append(d.keys, key), append(d.all, sky)
	return sky, nil
}
