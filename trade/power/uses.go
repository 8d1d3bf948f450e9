package power

import "math"

// taken is what all things take on the day of one journey in one month.
type taken struct {
	base    line
	coolers []cooler
}

// always is what runs between trips too [W].
func (in *Inputs) always() (watts float64) {
	for i := range in.Things {
		if t := &in.Things[i]; t.Kind == Standby {
			watts += t.Watts
		}
	}
	return watts
}

// listed is all that takes something, with what nobody lists at the end. What is not known is filled in and said.
func (in *Inputs) listed() []Use {
	var out []Use
	things := make([]Thing, 0, len(in.Things)+1)
	for _, t := range in.Things {
		if t.Kind == Nothing {
			continue
		}
		u := Use{ID: t.ID, Name: t.Name, About: t.About, Kind: t.Kind, Always: t.Kind == Standby}
		u.Assumed = fill(&t)
		u.Watts = t.Watts
		things, out = append(things, t), append(out, u)
	}
	in.Things = append(things, Thing{ID: "unlisted", Name: "what nobody lists", About: in.About, Kind: Unlisted})
	return append(out, Use{ID: "unlisted", Name: "what nobody lists", About: in.About, Kind: Unlisted, Watts: unlisted[Usual],
		Assumed: "own use of chargers, regulators and indicator lights"})
}

// usualWatts are taken where neither row nor circuit says any: middles of the usual; common practice, no source.
var usualWatts = map[Kind]float64{Lamp: 3, Bedside: 2, Fridge: 50, Freezer: 55, Thermo: 48, Absorber: 120, Pump: 50, RoofFan: 35, SmallFan: 4, AirHeater: 20,
	Standby: monitorOwn, Inverter: 300, Heating: 200, Other: 10}

// fill takes what nobody said, and says it.
func fill(t *Thing) string {
	switch {
	case t.Watts > 0 || t.Kind == OnMains || t.Kind == USB || t.Kind == Socket:
		if t.Circuit == "" && t.Kind != OnMains {
			return "on no circuit; taken to be fed by the battery"
		}
		return ""
	case t.Amps > 0 && t.Kind != AirHeater && t.Kind != Standby: // a heater's circuit is laid for its glow plug, a monitor's for nothing
		t.Watts = 12 * t.Amps
		return "no power is known; taken from the current of its circuit"
	}
	t.Watts = usualWatts[t.Kind]
	return "no power is known; the usual is taken"
}

// spend works out every use in every month, and what each day of each journey takes in the way of living that is reckoned with.
func (r *Result) spend() [][]taken {
	in := &r.in
	r.Uses = in.listed()
	days := make([][]taken, len(in.Journeys))
	for j, journey := range in.Journeys {
		days[j] = make([]taken, len(journey.Months))
		for i, m := range journey.Months {
			d := in.dayOf(m)
			share := 0.0
			if all := r.Months[d.month].Nights; all > 0 {
				share = m.Trips * float64(journey.Nights) / all
			}
			days[j][i] = r.spendDay(&d, share)
		}
	}
	r.sumUses()
	return days
}

func (r *Result) spendDay(d *aDay, share float64) (out taken) {
	for i := range r.Uses {
		u, t := &r.Uses[i], &r.in.Things[i]
		for habit := range Habits {
			var l line
			var how string
			if cold := t.Kind == Fridge || t.Kind == Freezer; cold {
				c := coolerOf(*t, d.heads, habit)
				for h := range l {
					l[h] = c.takes(r.in.Cabin[d.month][h])
				}
				how = "by the warmth of the cabin, and warm food put in"
				if habit == r.Habit {
					out.coolers = append(out.coolers, c)
				}
			} else if l, how = d.take(t, habit); habit == r.Habit {
				for h := range l {
					out.base[h] += l[h]
				}
			}
			if habit == r.Habit {
				u.How = how
			}
			u.Wh[d.month][habit] += share * l.sum()
		}
	}
	return out
}

// sumUses makes the means of the year and the sums of the months.
func (r *Result) sumUses() {
	nights := 0.0
	for m := range r.Months {
		nights += r.Months[m].Nights
	}
	for i := range r.Uses {
		u := &r.Uses[i]
		for m := range r.Months {
			for habit := range Habits {
				r.Months[m].Use[habit] += u.Wh[m][habit]
				if nights > 0 {
					u.Mean[habit] += u.Wh[m][habit] * r.Months[m].Nights / nights
				}
			}
		}
	}
}

// The builder's readings correct what is uncertain: all but what is always on. Scales beyond these say that something is not listed at all, or listed twice.
const (
	leastScale = 0.2
	mostScale  = 5.0
)

// readings finds the scale: the mean over the readings of (read − always on)/(reckoned − always on), each in its own month.
func (r *Result) readings() {
	r.Scale = 1
	sum, n := 0.0, 0
	r.listedUse = [12]float64{}
	for m := range r.Months {
		r.listedUse[m] = r.Months[m].Use[r.Habit]
	}
	for i := range r.in.Readings {
		if says := r.says(&r.in.Readings[i]); !math.IsNaN(says) {
			sum += max(leastScale, min(mostScale, says))
			n++
		}
	}
	if n == 0 {
		return
	}
	certain := 24 * r.in.always()
	r.Scale = sum / float64(n)
	for m := range r.Months {
		for habit, use := range r.Months[m].Use {
			if use > 0 {
				r.Months[m].Use[habit] = certain + r.Scale*(use-certain)
			}
		}
	}
	for i := range r.Uses {
		if u := &r.Uses[i]; !u.Always {
			u.scale(r.Scale)
		}
	}
}

// says is by how much one reading moves the use as it is listed; not a number where nobody travels in its month, so that there is nothing to compare.
func (r *Result) says(read *Reading) float64 {
	certain := 24 * r.in.always()
	use := r.listedUse[read.Month-1]
	if use-certain <= 0 {
		return math.NaN()
	}
	return (read.Wh - certain) / (use - certain)
}

func (u *Use) scale(by float64) {
	for habit := range Habits {
		u.Mean[habit] *= by
		for m := range u.Wh {
			u.Wh[m][habit] *= by
		}
	}
}

// scale moves what a day takes but for what is always on [W].
func (t *taken) scale(by, always float64) {
	for h := range t.base {
		t.base[h] = always + by*(t.base[h]-always)
	}
	for i := range t.coolers {
		c := &t.coolers[i]
		c.slope, c.food, c.most = by*c.slope, by*c.food, by*c.most
	}
}
