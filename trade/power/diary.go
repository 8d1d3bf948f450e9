package power

import (
	"fmt"
)

// line is what a thing takes [W] in each hour of a day, without what depends on the day's weather.
type line [24]float64

func (l *line) sum() (wh float64) {
	for _, w := range l {
		wh += w
	}
	return wh
}

// aDay is the day of one journey in one month, as loads see it.
type aDay struct {
	in    *Inputs
	month int // 0 to 11
	Month
	dark  [24]bool
	heads int
}

func (in *Inputs) dayOf(m Month) aDay {
	d := aDay{in: in, month: m.Number - 1, Month: m, dark: in.Climate.dark(m.Number)}
	for _, h := range m.Day {
		d.heads = max(d.heads, h.Asleep+h.Awake)
	}
	return d
}

// How much of a thing is on, and how long, by habit: common practice, no source.
var (
	lit       = [3]float64{0.5, 0.7, 1}    // of the lamps while people sit in the dark
	readHours = [3]float64{1, 1.5, 2}      // reading lamps before bed
	roofAir   = [3]float64{0.12, 0.2, 0.3} // of a roof fan's greatest power, asleep
	smallAir  = [3]float64{0.5, 0.75, 1}   // likewise of a small fan
	phones    = [3]float64{15, 20, 40}     // Wh a head into phones and tablets
	laptops   = [3]float64{0, 1, 2}        // hours of a laptop at a 12 V socket
	litres    = [3]float64{6, 10, 15}      // of water a head from the pump, where nobody says
	unlisted  = [3]float64{1, 2, 3}        // W of what nobody lists, all day
	others    = [3]float64{0.5, 1, 2}      // hours of what is of no known kind
	mainsTool = [3]float64{0.25, 0.5, 1}   // hours of what runs on an inverter, and of what heats at 12 V
)

const (
	intoPhones  = 0.85 // of a charger for phones
	intoLaptop  = 0.88
	flow        = 8.0   // l/min of a pump, between 7 and 10
	monitorOwn  = 0.3   // W that a battery monitor takes (0.1 to 0.5)
	glow        = 100.0 // W for glowFor to light a diesel heater (90 to 120 for 2 to 4 minutes)
	glowFor     = 3.0 / 60
	leastBurner = 0.5  // of its power that a heater takes at its lowest
	warmNight   = 16.0 // °C in the cabin under which nobody runs a fan for coolness
)

// take is what a thing takes, and why, for a habit. Fridges come apart: see coolerOf.
func (d *aDay) take(t *Thing, habit int) (l line, how string) {
	switch t.Kind {
	case Lamp:
		return d.while(t.Watts*lit[habit], func(h int) bool { return d.dark[h] && d.Day[h].Awake > 0 }),
			fmt.Sprintf("%.0f %% of it while people are up in the dark", 100*lit[habit])
	case Bedside:
		return d.before(t.Watts, readHours[habit]), fmt.Sprintf("%.1f h before sleep", readHours[habit])
	case RoofFan:
		return d.asleep(t.Watts * roofAir[habit]), fmt.Sprintf("%.0f %% of full power asleep", 100*roofAir[habit])
	case SmallFan:
		return d.while(t.Watts*smallAir[habit], func(h int) bool { return d.Day[h].Asleep > 0 && d.in.Cabin[d.month][h] > warmNight }),
			fmt.Sprintf("%.0f %% asleep, in nights over %.0f °C", 100*smallAir[habit], warmNight)
	case Pump:
		return d.meals(t.Watts * d.water(habit) / flow / 60), fmt.Sprintf("%.0f l a day at %.0f l a minute", d.water(habit), flow)
	case AirHeater:
		return d.burning(t.Watts), "as the heater burns, and its glow plug at each start"
	case USB:
		return d.awake(phones[habit] * float64(d.heads) / intoPhones), fmt.Sprintf("%.0f Wh a head into phones", phones[habit])
	case Socket:
		return d.awake(laptops[habit] * laptop / intoLaptop), fmt.Sprintf("a laptop for %.0f h", laptops[habit])
	case Inverter:
		return d.awake(inverterHours[habit] * InverterInput(laptop, t.Watts)), fmt.Sprintf("on for %.1f h with 60 W plugged in", inverterHours[habit])
	case Thermo, Standby:
		return d.while(t.Watts, func(int) bool { return true }), "all day"
	case Unlisted:
		return d.while(unlisted[habit], func(int) bool { return true }), "all day"
	case Absorber:
		return d.driven(t.Watts), "only on the road"
	case Heating:
		return d.awake(t.Watts * mainsTool[habit]), fmt.Sprintf("%.2g h", mainsTool[habit])
	case OnMains:
		return d.throughInverter(t, habit)
	case Other:
		return d.awake(t.Watts * others[habit]), fmt.Sprintf("%.1f h", others[habit])
	}
	return l, ""
}

// throughInverter is what a mains thing takes from the battery: nothing if it heats, or no inverter is large enough.
func (d *aDay) throughInverter(t *Thing, habit int) (line, string) {
	size := 0.0
	for i := range d.in.Things {
		if o := &d.in.Things[i]; o.Kind == Inverter {
			size = max(size, o.Watts)
		}
	}
	if t.Heats || size < t.Watts || t.Watts <= 0 {
		return line{}, "only where the van is on the mains"
	}
	wh := mainsTool[habit] * (InverterInput(t.Watts, size) - idleShare*size)
	return d.awake(wh), fmt.Sprintf("%.2g h through the inverter", mainsTool[habit])
}
