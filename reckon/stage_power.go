package reckon

import (
	"tumblehome/build"
	"tumblehome/quantity"
	"tumblehome/trade/climate"
	"tumblehome/trade/power"
	"tumblehome/trade/trips"
	"tumblehome/trade/warmth"
)

const (
	powerVersion = 2
	powerYears   = 200
	roughYears   = 50 // where the weather is that of a place nobody named
	powerSeed    = 1
)

// workPower finds out whether the lights stay on. Nothing in its inputs tells where a fitting stands. Like warmth, with a reckoning from before it works
// out nothing new.
func (m *Machine) workPower(w *stages, r *Reckoning, before *Reckoning) (result power.Result, older bool) {
	in := w.powerInputs(r.Trips, r.Climate, r.Warmth)
	if m.Years > 0 {
		in.Years = min(in.Years, m.Years)
	}
	if before != nil {
		if result, ok := known[power.Result](m, "power", digestOf("power", powerVersion, in)); ok {
			return result, false
		}
		return before.Power, true
	}
	result, _ = work(m, "power", powerVersion, power.Work, in)
	return result, false
}

// PowerChart tries batteries and panels of many sizes for this build. It takes a second or two; progress, if not nil, is told how far it is.
func (r *Reckoning) PowerChart(progress func(done, of int)) power.Chart {
	return power.Draw(r.Power.Inputs(), powerYears, progress)
}

func (w *stages) powerInputs(journeys trips.Result, weather climate.Result, warm warmth.Result) power.Inputs {
	in := power.Inputs{Habit: w.doc.Use.Habits, About: "/power", Years: powerYears, Seed: powerSeed, Sky: skies.make}
	if w.doc.Power == nil {
		in.About = "/fittings"
	}
	in.Things, in.Battery = w.electrics(), w.houseBattery()
	in.Second, in.Unknown = w.secondBanks(in.Battery), w.unknownSources()
	in.Sources, in.Mains = w.chargers(in.Battery), w.inlet()
	if p := w.doc.Power; p != nil {
		in.AtHome, in.Promise = p.AtHome, valueOf(p.MayFail).Float()
		in.Readings = metered(p.Read, in.Battery)
	}
	if w.doc.Water != nil {
		for _, use := range build.SortedKeys(w.doc.Water.AHead) {
			if rate := w.doc.Water.AHead[use]; rate.Unit == "l" && rate.Per == quantity.Daily {
				in.Litres += rate.Amount
			}
		}
	}
	w.journeysOf(&in, journeys)
	in.Cabin, in.Heater = warm.Year.Cabin, warm.Year.Heater
	if h := warm.Told(); h.Heater {
		in.HeaterPower = h.Power
	}
	in.Place, in.PlaceAssumed, in.Climate = weather.Place.Name, weather.StandIn, climateOf(weather)
	in.Shop, in.Chargers = w.shop(), w.engineChargers()
	if in.PlaceAssumed {
		in.Years = roughYears
	}
	return in
}

func climateOf(weather climate.Result) power.Climate {
	c := power.Climate{Latitude: float64(weather.Place.Lat), Longitude: float64(weather.Place.Lon), Offset: weather.Place.Offset}
	for m, month := range weather.Months {
		c.Mean[m], c.Low[m], c.High[m] = month.Mean.Float(), month.Low.Float(), month.High.Float()
		c.Spread[m], c.Sun[m] = month.Spread, month.Sun
	}
	return c
}
