package weather

import (
	"math"
	"math/rand/v2"
)

// solarConstant, W/m², turns light outside into the sine of the sun's height, to within the 3.4 % by which the
// distance of the sun moves it.
const solarConstant = 1367

// tag is the model of Aguiar and Collares-Pereira 1992 for one day; letters as there.
type tag struct{ lambda, epsilon, kappa, a, b, phi float64 }

func tagOf(kt float64) tag {
	return tag{
		lambda:  -0.19 + 1.12*kt + 0.24*math.Exp(-8*kt),
		epsilon: 0.32 - 1.6*(kt-0.5)*(kt-0.5),
		kappa:   0.19 + 2.27*kt*kt - 2.51*kt*kt*kt,
		a:       0.14 * math.Exp(-20*(kt-0.35)*(kt-0.35)),
		b:       3*(kt-0.45)*(kt-0.45) + 16*kt*kt*kt*kt*kt,
		phi:     0.38 + 0.06*math.Cos(7.4*kt-2.5),
	}
}

// mean and deviation of an hour's clearness by the sine of the sun's height.
func (t tag) mean(sine float64) float64      { return t.lambda + t.epsilon*math.Exp(-t.kappa/sine) }
func (t tag) deviation(sine float64) float64 { return t.a * math.Exp(t.b*(1-sine)) }

// dimmest is the least clearness of an hour: the noise would go below nought.
const dimmest = 0.01

// hours draws the light of the day's 24 hours, W/m², whose sum is kt of that outside.
func (d *day) hours(into []float64, kt float64, r *rand.Rand) {
	if d.light == 0 || kt == 0 {
		clear(into)
		return
	}
	t := tagOf(kt)
	fresh := math.Sqrt(1 - t.phi*t.phi)
	y := r.NormFloat64()
	for h, o := range d.outside {
		if o == 0 {
			into[h] = 0
			continue
		}
		sine := math.Min(o/solarConstant, 1)
		into[h] = o * min(max(t.mean(sine)+t.deviation(sine)*y, dimmest), d.clearest(h))
		y = t.phi*y + fresh*r.NormFloat64()
	}
	d.fit(into, kt*d.light)
}

// clearest is the clearness of an hour without a cloud, falling from noon to both sides (TAG).
func (d *day) clearest(h int) float64 {
	return max(0.3, 0.88*math.Cos(math.Pi/30*(float64(h)+0.5-d.noon)))
}

// fit brings the day's sum to what is wanted. Hours stop at a clear sky and the others take their part; what a day
// clearer than a clear sky still lacks is laid on every hour by what is left of the light outside.
func (d *day) fit(light []float64, wanted float64) {
	for range 4 {
		sum := total(light)
		if math.Abs(sum-wanted) < 1e-9*wanted {
			return
		}
		for h, g := range light {
			if g > 0 {
				light[h] = min(g*wanted/sum, d.clearest(h)*d.outside[h])
			}
		}
	}
	sum := total(light)
	part := (wanted - sum) / (d.light - sum)
	for h, g := range light {
		light[h] += part * (d.outside[h] - g)
	}
}

func total(values []float64) (sum float64) {
	for _, v := range values {
		sum += v
	}
	return sum
}
