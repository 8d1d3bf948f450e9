package warmth

import (
	"math"

	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

func (r *Result) weatherLine() line {
	n := r.usual()
	d := r.in.Months[n.Month-1].Usual
	from := origin{Assumption: "nobody said where the van will stand; " + r.in.Place + " stands in"}
	if !r.in.PlaceAssumed && r.in.PlaceAbout != "" {
		from = origin{Pointer: r.in.PlaceAbout}
	}
	return line{Symbol: "θe", Label: "coldest hour outside, " + months[n.Month-1], Value: lowest24(d), Unit: "°C", From: from}
}

func (r *Result) keepLine() line {
	from, keep := origin{Assumption: "nobody said what to keep at night; the habits of living do"}, r.in.Habit.Keep
	if r.in.Keep != nil {
		keep, from = *r.in.Keep, origin{Pointer: r.in.KeepAbout}
	}
	return line{Symbol: "θset", Label: "kept at night", Value: keep, Unit: "°C", From: from}
}

func (r *Result) heaterLine() line {
	h := r.in.burning()
	if h == nil {
		return line{Symbol: "Pmax", Label: "no heater that may burn at night", Value: 0, Unit: "W", From: origin{Assumption: "none is fitted with a flue"}}
	}
	if h.Row != "" {
		return line{Symbol: "Pmax", Label: "the heater gives at most", Value: h.Power, Unit: "W", From: origin{Row: h.Row}}
	}
	return line{Symbol: "Pmax", Label: "the heater gives at most", Value: h.Power, Unit: "W", From: origin{Pointer: h.About}}
}

func (r *Result) peopleLine() line {
	return line{Symbol: "n", Label: "who sleeps in the van", Value: float64(len(r.in.Sleepers)), Unit: "1", From: origin{Assumption: "who lies down in the night, else who comes along, else all"}}
}

func (r *Result) workingOfLow() working.Working {
	w := working.Working{Formula: "C·dθ/dt = Σ G·(θk − θ) + (L + ρc·Q)·(θe − θ) + Φ, from six in the evening in steps of 60 s", Source: balance}
	w.Lines = []line{r.weatherLine(), r.peopleLine(), {Symbol: "H", Label: "heat lost for each degree", Value: r.Loss, Unit: "W/K", From: origin{Figure: "warmth.loss"}}, r.heaterLine(), r.keepLine(),
		{Label: "hour in which it is coldest inside", Value: float64(r.usual().LowAt), Unit: "h", From: here},
		{Label: "lowest on a night that one in ten passes", Value: r.coldest().Low, Unit: "°C", From: here},
		{Symbol: "θ", Label: "lowest from bedtime on", Value: r.usual().Low, Unit: "°C", From: here}}
	w.Notes = []string{"People give 45 W each asleep. At six the van is 5 K warmer than outside."}
	return w
}

func (r *Result) workingOfHeater() working.Working {
	w := working.Working{Formula: "E = ∫ P dt, P = what holds θset, at most Pmax", Source: balance}
	n := r.usual()
	w.Lines = []line{r.weatherLine(), {Symbol: "H", Label: "heat lost for each degree", Value: r.Loss, Unit: "W/K", From: origin{Figure: "warmth.loss"}}, r.keepLine(), r.heaterLine(),
		{Symbol: "θeve", Label: "kept while people are up", Value: math.Max(r.in.Habit.Sitting, r.keepLine().Value), Unit: "°C", From: origin{Assumption: "of the habits of living; comfort is 18 to 21"}},
		{Label: "mean share of its power", Value: 100 * n.Share, Unit: "%", From: here},
		{Symbol: "E", Label: "from six to eight", Value: n.Heat, Unit: "kWh", From: here}}
	w.Notes = []string{"Heat, not fuel: a litre of diesel gives about 9.9 kWh, of which 75 to 85 % reach the room. A flat battery stops such a heater; that is for power to say."}
	return w
}

func (r *Result) workingOfWater() working.Working {
	w := working.Working{Formula: "V·dv/dt = Q·(ve − v) + S − Σ β·A·(v − vsat(θk)), β = hc/(ρ·cp)", Source: balance}
	n := r.usual()
	w.Lines = append([]line{r.weatherLine(), r.peopleLine()}, r.airLines()...)
	w.Lines = append(w.Lines, line{Symbol: "S", Label: "water that people and pots gave, all night", Value: 1000 * n.Gives, Unit: "g", From: origin{Assumption: "40 g an hour asleep, 55 awake, 120 a head for a meal; gas and spirit as they burn"}})
	w.Lines = append(w.Lines, line{Label: "hour of the clock when most lies", Value: float64(n.WettestAt), Unit: "h", From: here})
	for _, k := range []int{atLining, atRibs, atBare, atGlass} {
		w.Lines = append(w.Lines, line{Symbol: "m", Label: "then on " + lumpNames[k], Value: 1000 * n.Water[k], Unit: "g", From: here})
	}
	w.Lines = append(w.Lines, line{Symbol: "Σ m", Label: "in all at that time", Value: 1000 * n.Condensed(), Unit: "g", From: here})
	w.Notes = []string{"Cloth and bare timber take up some of it in the evening and give it back in the morning."}
	return w
}

func (r *Result) workingOfCO2() working.Working {
	w := working.Working{Formula: "C(t) = Ce + G/Q·(1 − e^(−Q·t/V)) + (C0 − Ce)·e^(−Q·t/V)", Source: finding.Source{Text: "balance of one room; 11 L/h measured of adults asleep (Indoor Air 31, 2021)", Sure: finding.Read}}
	w.Lines = append([]line{r.peopleLine(), {Symbol: "V", Label: "air in the room", Value: r.in.Volume, Unit: "m3", From: origin{Assumption: "measured within the linings"}},
		{Symbol: "G", Label: "an adult breathes out asleep", Value: 3.6e6 * asleep.co2, Unit: "l/h", From: origin{Assumption: "children less, by the two thirds power of their mass"}},
		{Symbol: "Ce", Label: "outside", Value: 1e6 * outdoorCO2, Unit: "ppm", From: origin{Assumption: "air of today"}}}, r.airLines()...)
	w.Lines = append(w.Lines, line{Symbol: "C", Label: "most in the night", Value: r.usual().CO2, Unit: "ppm", From: here})
	w.Notes = []string{"Carbon dioxide shows how stale the air is. Carbon monoxide is another danger, and not foretold by this."}
	return w
}

func (r *Result) workingOfClothes() working.Working {
	n := r.usual()
	return working.Working{Formula: "−dm/dt = β·A·(vsat(θcloth) − v)", Source: balance, Lines: []line{
		{Symbol: "m0", Label: "water in the clothes at six", Value: 1000 * r.in.Wet, Unit: "g", From: origin{Pointer: r.in.WetAbout}},
		{Symbol: "A", Label: "cloth in the air", Value: clothArea * r.in.Wet, Unit: "m2", From: origin{Assumption: "1.5 m2 for each kg of water, hung apart"}},
		{Label: "still in them at eight", Value: 1000 * (r.in.Wet - n.Dried), Unit: "g", From: here},
		{Symbol: "m", Label: "dried; nothing where more settles on them", Value: 1000 * n.dried(), Unit: "g", From: here}}}
}
