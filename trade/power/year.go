package power

import "tumblehome/solve/weather"

// walk goes with a battery through the years.
type walk struct {
	in      *Inputs
	sky     *Sky
	plan    plan
	days    [][]taken
	k       kit
	rooms   [12]room
	home    string
	up      int     // hour at which days of trips begin
	missing float64 // Ah from full
	tally   tally
	log     *[]Night // every night of the trips; nil where nobody asks
}

// room is the cabin of a month: how far an hour follows the weather of its day, which it does not while it is heated.
type room struct {
	follows [24]float64
	mean    float64 // °C
	share   float64 // of the day that follows
}

func (in *Inputs) rooms() (all [12]room) {
	for m := range all {
		for h := range 24 {
			if in.Heater[m][h] <= 0 {
				all[m].follows[h] = 1
			}
			all[m].mean += in.Cabin[m][h] / 24
			all[m].share += all[m].follows[h] / 24
		}
	}
	return all
}

// through spends all the years. The first begins with a full battery, every other as the one before left it.
func (w *walk) through() tally {
	for y := range min(len(w.plan), w.sky.Years) {
		day := 0
		for i := range w.plan[y] {
			s := &w.plan[y][i]
			w.stand(y, day, s.first)
			w.travel(y, s)
			day = s.first + s.nights
		}
		w.stand(y, day, weather.Days)
	}
	return w.tally
}

// travel spends the nights of a trip.
func (w *walk) travel(y int, s *stay) {
	m := w.in.Journeys[s.journey].Months[s.month].Number - 1
	for n := range s.nights {
		w.night(y, s.first+n, m, s, s.mains(n))
	}
}

// night is 24 hours from getting up. Numbers are those of the package's overview: load, panel, engine, mains, then the battery.
func (w *walk) night(y, day, m int, s *stay, mains bool) {
	k, t := &w.k, &w.tally
	use, hours := &w.days[s.journey][s.month], &w.in.Journeys[s.journey].Months[s.month].Day
	room := &w.rooms[m]
	off := w.sky.mean(y, day) - w.in.Climate.Mean[monthOfDay[day]]
	warmth := k.at(room.mean + room.share*off)
	if k.outside {
		warmth = k.at(w.sky.mean(y, day))
	}
	bottom, allowed := k.bottom(warmth), k.allowed(warmth)
	freezing := !k.lead && !k.cutOff && warmth < 0
	w.missing += k.leak(w.missing, warmth)
	flat, most := false, w.missing
	at := 24*day + w.up
	for i := range 24 {
		h := (w.up + i) % 24
		load := use.base[h]
		if len(use.coolers) > 0 {
			cabin := w.in.Cabin[m][h] + off*room.follows[h]
			for c := range use.coolers {
				load += use.coolers[c].takes(cabin)
			}
		}
		gain := 0.0
		if k.sunny {
			gain = w.sky.sun(y, at+i, &k.roof)
		}
		if d := hours[h].Driving; d > 0 {
			gain += d * k.engine * k.takes
			t.engine[m] += d * k.engine * k.takes
		}
		if mains && hours[h].Asleep+hours[h].Awake > 0 && (h >= supper || h < w.up) {
			gain += k.shore * k.takes
		}
		if net := gain - load; net >= 0 {
			w.missing = k.fill.after(w.missing, min(net/k.takes, allowed), 1)
			if freezing && net > 0 {
				t.cold++
			}
		} else {
			was := w.missing
			w.missing += drained(-net/k.gives, k.rated, k.nature.peukert)
			if w.missing > bottom {
				w.missing = max(was, bottom)
				if !flat {
					t.cuts[h]++
				}
				flat = true
			}
		}
		most = max(most, w.missing)
		if t.states != nil {
			t.states[m][h][min(states, max(0, int(states*(1-w.missing/k.holds)+1e-9)))]++
		}
	}
	t.nights[m]++
	t.warmth[m] += warmth
	if flat {
		t.flat[m]++
	}
	if w.log != nil {
		*w.log = append(*w.log, Night{Day: day, Lowest: 1 - most/k.holds, Morning: 1 - w.missing/k.holds, Flat: flat, Mains: mains})
	}
}

// supper is the hour from which a van on the mains is plugged in.
const supper = 18

// sun is what the panel gives in an hour of a year [W]; hours beyond its end are those of its first day.
func (s *Sky) sun(y, hour int, p *panel) float64 {
	if hour >= weather.Hours {
		hour -= weather.Hours
	}
	i := y*weather.Hours + hour
	light := s.light[i]
	if light == 0 {
		return 0
	}
	return p.gives(float64(light)*lightStep, float64(s.air[i])*airStep)
}

// mean is the mean temperature of a day [°C].
func (s *Sky) mean(y, day int) float64 { return float64(s.day[y*weather.Days+day]) * airStep }
