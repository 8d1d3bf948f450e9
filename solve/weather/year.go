package weather

import (
	"math"
	"math/rand/v2"
)

// A Maker draws years of one climate. It is not changed by drawing and may serve several at once.
type Maker struct {
	days   []day
	months [12]month
	steady bool
	course []float64 // temperature without noise of every hour, °C
	noise  []float64 // standard deviation of the noise of every hour, K
}

// A Year is drawn weather, mean of each of the Hours.
type Year struct {
	Sunlight    []float64 // global irradiance on a level plane, W/m²
	Temperature []float64 // °C
}

// Year draws one year. The same climate, seed and number give the same year.
func (k *Maker) Year(seed, number uint64) Year {
	y := Year{Sunlight: make([]float64, Hours), Temperature: make([]float64, Hours)}
	k.Fill(y, seed, number)
	return y
}

// Fill draws the year into the slices of y, each of the length Hours, to spare memory where many years are gone through.
func (k *Maker) Fill(y Year, seed, number uint64) {
	const golden = 0x9e3779b97f4a7c15 // spreads small numbers over all bits
	r := rand.New(rand.NewPCG(seed, (number+1)*golden))
	var clear, spare [Days]float64
	k.clearness(r, clear[:], spare[:])
	for i := range k.days {
		k.days[i].hours(y.Sunlight[24*i:24*i+24], clear[i], r)
	}
	kept := math.Exp(-fading / 24)
	fresh := math.Sqrt(1 - kept*kept)
	z := r.NormFloat64()
	for h := range y.Temperature {
		y.Temperature[h] = k.course[h] + k.noise[h]*z
		z = kept*z + fresh*r.NormFloat64()
	}
}
