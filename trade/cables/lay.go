package cables

import "strings"

const (
	usualTrunk  = 500.0 // mm from the battery to its fuse board; common practice
	usualRoute  = 3000.0
	usualLoad   = 5.0               // A of a circuit of which nothing is known
	converting  = 0.9               // of what an inverter takes that it gives; common practice
	inverterLow = 11.0 / houseVolts // of the voltage at which an inverter still works: there it draws most
)

// trunk is the cable from the battery to its fuse board: that of the bank's main circuit, or one that nobody wrote.
func (r *Result) trunk(b Bank, feeds []Circuit) Cable {
	c := Cable{About: b.About, Bank: b.ID, Role: Trunk, Title: "main cable", Volts: b.volts(), said: b.Number}
	c.From, c.To = b.end(), b.board()
	if f, ok := b.main(feeds); ok {
		c.ID, c.About, c.way, c.Current, c.Drop.Wanted, c.said = f.ID, f.About, f.Way, f.Current, f.Wanted, f.Number
		c.Body, c.also = f.Body, f.Fuse
	}
	c.Length = c.way.Length
	if c.Length.MM == 0 {
		c.Length = Length{MM: usualTrunk, Known: Assumed}
	}
	c.told = c.Current
	c.sum = r.throughAll(b.ID, c.ID, c.Volts)
	if c.Current == 0 {
		c.Current = usualLoad
	}
	c.Current = max(c.Current, c.sum, r.charging(b)) // all that hangs on it at once, as its losses are reckoned; all that charges goes the other way
	c.way.Fuse = b.mainFuse(c.way.Fuse)
	c.Drop.Limit, c.Drop.Aim = criticalLimit, criticalAim
	c.Drop.wish()
	return c
}

// wish lets what the builder wants be a limit where it is stricter.
func (d *Drop) wish() {
	if d.Wanted > 0 {
		d.Limit, d.Aim = min(d.Wanted, d.Limit), min(d.Wanted, d.Aim)
	}
}

// mainFuse is the bank's, with what the circuit to the fuse board says of it.
func (b Bank) mainFuse(also Fuse) Fuse {
	f := b.MainFuse
	if !f.Said && also.Said {
		f.Said, f.None, f.Amps, f.About = true, also.None, also.Amps, also.About
	}
	if f.Kind == Unsaid {
		f.Kind = also.Kind
	}
	if f.Breaking == 0 {
		f.Breaking = also.Breaking
	}
	if f.Away < 0 && also.Said {
		f.Away = also.Away
	}
	return f
}

// feed is a circuit's cable with its cross-section and fuse.
func (r *Result) feed(b Bank, f Circuit) Cable {
	c := Cable{ID: f.ID, About: f.About, Bank: b.ID, Role: Feed, Title: f.Title, Loads: f.Loads, Length: f.Length, Volts: b.volts(), way: f.Way, said: f.Number}
	c.From, c.To = b.board(), toLoads(f.Loads)
	c.own, c.Current = r.ownAmps(f, c.Volts), r.throughOf(f, c.Volts)
	if f.From != b.ID && f.From != r.Cables[r.trunkOf(b.ID)].ID {
		c.fed = f.From
	}
	if c.Length.MM == 0 {
		c.Length = Length{MM: usualRoute, Known: Assumed}
	}
	c.Body, c.Drop.Wanted = f.Body, f.Wanted
	c.Drop.Limit, c.Drop.Aim = limits(f.Loads)
	c.Drop.wish()
	c.choose()
	return c
}

func (r *Result) trunkOf(bank string) int {
	for i, c := range r.Cables {
		if c.Bank == bank && c.Role == Trunk {
			return i
		}
	}
	return -1
}

// amps is what a circuit draws with all of it on: what is written, else what its loads draw. What is written far below that is not believed.
func (f Circuit) amps(volts float64) float64 {
	if f.Current > 0 && !low(f.Current, f.certain(volts)) {
		return f.Current
	}
	sum := f.drawn(volts)
	if sum == 0 && len(f.Loads) > 0 {
		return usualLoad
	}
	return sum
}

// Losses that are borne: shares of the voltage, in cables.
const (
	criticalAim   = 0.03 // ISO 10133 for feeders and what safety hangs on
	criticalLimit = 0.05 // a general value in print for 12 V
	easyAim       = 0.05
	easyLimit     = 0.10 // ISO 10133 for everything else
	chargeLimit   = 0.03
)

// limits are what a circuit may lose at most, and what is aimed for where the program chooses.
func limits(loads []Load) (limit, aim float64) {
	for _, l := range loads {
		switch l.Kind {
		case Fridge, Pump, Heater, Inverter:
			return criticalLimit, criticalAim
		}
	}
	return easyLimit, easyAim
}

func (b Bank) end() End {
	e := End{Words: "the battery", Symbol: SymbolBattery}
	if len(b.Batteries) > 0 {
		e.Fitting = b.Batteries[0].ID
	}
	return e
}

func (b Bank) board() End {
	e := End{Words: "the fuse board", Symbol: SymbolBoard}
	if b.FuseBoard != nil {
		e.Fitting = b.FuseBoard.ID
	}
	return e
}

var symbols = map[Appliance]Symbol{Fridge: SymbolFridge, Pump: SymbolMotor, Fan: SymbolMotor, Heater: SymbolHeater, Light: SymbolLamp, Socket: SymbolSocket, Inverter: SymbolInverter}

func toLoads(loads []Load) End {
	if len(loads) == 0 {
		return End{Words: "its load", Symbol: SymbolLoad}
	}
	e := End{Fitting: loads[0].ID, Symbol: symbols[loads[0].Kind]}
	if e.Symbol == "" {
		e.Symbol = SymbolLoad
	}
	var names []string
	for _, l := range loads {
		names = append(names, l.Name)
	}
	e.Words = strings.Join(names, " and ")
	return e
}
