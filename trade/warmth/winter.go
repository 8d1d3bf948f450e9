package warmth

import (
	"fmt"
	"math"

	"tumblehome/solve/zone"
)

// Winter is what a year does behind one build-up, from October on, as every year does: water in g for each m2 at the end of each month.
type Winter struct {
	Field    int       // the first field with this build-up
	Bays     []string  // all of them
	Months   []int     // 10, 11, 12, 1 … 9
	Water    []float64 // g/m2 at their ends
	Most     float64   // g/m2
	MostIn   int       // month
	Left     float64   // g/m2 that never dry
	Sd       float64   // m of still air between room and steel
	ByAir    float64   // g/m2 that leaking air brought, our own extension
	ByVapour float64   // g/m2 that came through the layers
}

const (
	leakPast   = 0.02   // m3/h of room air behind each m2 of lining: assumed; our own extension of ISO 13788
	glued      = 1000.0 // vapour resistance from which a sheet on the steel is closed-cell and taken as glued to it
	monthLong  = 30.44  // days
	nightLong  = minutes * step
	idleWarmth = 1.0  // K that an empty van stands above outside over a day and night (sun); common practice, no source
	foggiest   = 0.95 // of saturation: no month is fog throughout; common practice, no source
	airSd      = 0.01 // m, of a layer of air however thick: ISO 13788 (from memory)
	fewParts   = 6    // steps of a month and state
)

// behind follows each distinct build-up of sides, roof and doors through a year.
func (in *Inputs) behind(nights []Night) []Winter {
	known := map[string]int{}
	var out []Winter
	for i := range in.Fields {
		f := &in.Fields[i]
		if f.Area <= 0 || f.Group == Floor || f.Group == Front || len(f.Courses) == 0 {
			continue
		}
		key := f.buildup()
		if k, ok := known[key]; ok {
			out[k].Bays = append(out[k].Bays, f.Bay)
			continue
		}
		known[key] = len(out)
		out = append(out, in.year(i, nights))
	}
	return out
}

func (f *Field) buildup() string {
	key := fmt.Sprint(f.Flow)
	for _, s := range f.inBay() {
		id := "air"
		if s.course != nil {
			id = s.course.Of.ID
		}
		key += fmt.Sprintf("|%s %.2f %.4f", id, s.to-s.from, s.mixed.even())
	}
	return key
}

// year follows one build-up through two years and tells of the second, so that it does not matter how dry it was at first.
func (in *Inputs) year(field int, nights []Night) Winter {
	f := &in.Fields[field]
	w, reach := f.wet()
	out := Winter{Field: field, Bays: []string{f.Bay}, Left: math.Inf(1)}
	for _, l := range w.Layers {
		out.Sd += l.Sd
	}
	for k := range 24 {
		number := (9+k)%12 + 1
		before := w.Total()
		air := in.month(w, reach, &in.Months[number-1], usualOf(nights, number))
		now := 1000 * w.Total()
		if k < 12 {
			continue
		}
		out.ByAir += air
		out.ByVapour += math.Max(0, now-1000*before-air)
		out.Months, out.Water = append(out.Months, number), append(out.Water, now)
		if now > out.Most {
			out.Most, out.MostIn = now, number
		}
		out.Left = math.Min(out.Left, now)
	}
	return out
}

// month spends first the nights with people, then the rest of a month with the van empty and shut. It tells how much water leaking air brought, g/m2.
func (in *Inputs) month(w *Wet, reach int, m *Month, n *Night) (byAir float64) {
	slept := math.Min(m.Nights, monthLong) * nightLong
	if n != nil && slept > 0 {
		c := Climate{Outside: mean(m.Usual.Outside[:]), OutsideVapour: m.Usual.Vapour, Inside: n.Mean, InsideVapour: n.Vapour}
		byAir += w.leak(c, reach, slept)
		w.Spend(c, slept, fewParts)
	}
	outdoors := math.Min(m.Usual.Vapour, foggiest*zone.Saturation(m.Mean))
	empty := Climate{Outside: m.Mean, OutsideVapour: outdoors, Inside: m.Mean + idleWarmth, InsideVapour: outdoors}
	rest := monthLong*86400 - slept
	byAir += w.leak(empty, reach, rest)
	w.Spend(empty, rest, fewParts)
	return byAir
}

// wet is the build-up as vapour meets it, and how far outwards leaking air comes: to the steel, or to a sheet glued to it.
func (f *Field) wet() (*Wet, int) {
	w := &Wet{Rse: outer, Rsi: inner(0), Tight: true}
	reach, firm := 0, true
	for i, s := range f.inBay() {
		sd := airSd
		if s.course != nil {
			sd = s.course.Of.Vapour * s.thick()
			firm = firm && s.course.Of.Vapour >= glued && s.mixed[0].Share == 1
		} else {
			firm = false
		}
		if firm {
			reach = i + 1
		}
		w.Layers = append(w.Layers, Slice{R: s.mixed.even(), Sd: math.Max(sd, thinnestSd)})
	}
	w.Water = make([]float64, len(w.Layers)+1)
	return w, min(reach, len(w.Layers)-1)
}

// leak lets room air pass behind the lining for a time and leave its water where it is coldest, or carry off what lies there [kg/m2, here g].
func (w *Wet) leak(c Climate, reach int, seconds float64) float64 {
	cold := w.Temperatures(c)[reach]
	gives := leakPast / 3600 * (density(c.Inside, c.InsideVapour) - zone.Vapour(cold, 1)) * seconds
	gives = math.Max(gives, -w.Water[reach])
	w.Water[reach] += gives
	return 1000 * math.Max(gives, 0)
}

// density is that of vapour at a pressure [kg/m3].
func density(temperature, pressure float64) float64 {
	return zone.Vapour(temperature, pressure/zone.Saturation(temperature))
}

func usualOf(nights []Night, month int) *Night {
	for i := range nights {
		if nights[i].Month == month && !nights[i].Cold {
			return &nights[i]
		}
	}
	return nil
}

func mean(all []float64) float64 {
	sum := 0.0
	for _, v := range all {
		sum += v
	}
	return sum / float64(len(all))
}
