package cables

import "math"

// charges lays out the cables of each source: its line, and the lead from what controls or converts it. Each is by itself: what charges does not load what
// is fed.
func (r *Result) charges() {
	for _, s := range r.in.Sources {
		i := r.supplyOf(s.To)
		if i < 0 {
			continue
		}
		line := r.charge(s, r.Supplies[i])
		r.Cables = append(r.Cables, line)
		if s.Kind != Shore { // a charger's mains end is an electrician's
			r.Cables = append(r.Cables, r.lead(s, r.Supplies[i], line))
		}
	}
}

// charging is what all sources of a bank send through its main cable together [A]. A relay joins the batteries themselves, past it.
func (r *Result) charging(b Bank) float64 {
	sum := 0.0
	for _, s := range r.in.Sources {
		if s.Kind != Split && r.bankOf(s) == b.ID {
			sum += s.gives(b.supply())
		}
	}
	return sum
}

// bankOf is the bank that a source charges: the first where it names none.
func (r *Result) bankOf(s Source) string {
	if s.To == "" {
		return r.in.Banks[0].ID
	}
	return s.To
}

// supplyOf finds a bank; a source that names none charges the first.
func (r *Result) supplyOf(bank string) int {
	for i := range r.Supplies {
		if r.Supplies[i].ID == bank || bank == "" {
			return i
		}
	}
	return -1
}

func (r *Result) charge(s Source, to Supply) Cable {
	c := Cable{ID: s.ID, About: s.About, Bank: to.ID, Role: Charge, Source: s.Kind, Title: s.Title, Loads: s.Is, Length: s.Length, way: s.Way, Body: s.bare(), said: s.Number}
	if c.Length.MM == 0 {
		c.Length = Length{MM: usualRoute, Known: Assumed}
	}
	c.Volts, c.Current = s.volts(to), s.amps(to)
	c.own = c.Current
	c.Drop.Limit, c.Drop.Aim = chargeLimit, chargeLimit
	c.From, c.To = s.ends(to)
	if s.Kind == Sun {
		c.row = s.InRow
		c.way.Hot = true // it lies under a dark roof
		c.way.Fuse = Fuse{Said: true, None: true, Away: -1, About: s.About}
	}
	c.choose()
	switch s.Kind {
	case Sun:
		c.Fuse.Needless = true
		c.Fault = [2]float64{c.Current, c.Current} // panels give little more into a short than at work
	case Shore:
		c.fedByHouse(to)
	default:
		c.from = s.starter(to)
		c.fedByStarter(s)
	}
	c.settleCharge(0)
	return c
}

// bare says whether a source's cables have no negative: a relay has a plus stud on each side and no stud for minus; a black cable on one of them is a dead
// short. The body leads back, to which each battery's own minus is joined.
func (s Source) bare() bool { return s.Body || s.Kind == Split }

// fedByStarter puts the fuse of a line at the starter battery.
func (c *Cable) fedByStarter(s Source) {
	drive, inside := full[Flooded]*c.from, starterOhms*c.from
	starter := drive / inside
	c.Fault = [2]float64{starter, drive / (inside + c.ohms() + fuseOhms(c.Fuse.Amps))}
	c.Fuse.Meets, c.Fuse.Where = starter, "within 200 mm of the starter battery's post"
	c.Ends = s.fusedEnds()
	c.unfusedWhere("house")
}

// fusedEnds are the ends of a line between two batteries that have a fuse, as far as is said: two fuses that are written are at two ends.
func (s Source) fusedEnds() string {
	if s.Both == "" && s.Fuse.Amps > 0 && s.Lead.Fuse.Amps > 0 {
		return "both"
	}
	return s.Both
}

// unfusedWhere takes the fuse away where it is said to be at the other end only.
func (c *Cable) unfusedWhere(only string) {
	if c.Ends == only {
		c.Fuse.Amps, c.Fuse.None = 0, true
	}
}

// settleCharge says what a line or a lead loses, with what is lost before it [V].
func (c *Cable) settleCharge(before float64) {
	c.Drop.Own, c.Drop.Shared = c.Current*c.ohms(), before
	c.Drop.Joints = c.Current * (fuseOhms(c.Fuse.Amps) + joints)
	c.Drop.Alone = c.Drop.Cables() + c.Drop.Joints
	c.Drop.At = c.Volts - c.Drop.Alone
}

// starter is how many batteries of 12 V the vehicle's own one stands for. A relay joins only what is alike.
func (s Source) starter(to Supply) float64 {
	if s.Starter > 0 && s.Kind != Split {
		return math.Round(s.Starter / 12)
	}
	return max(1, math.Round(to.Volts/houseVolts))
}

// steps is by how much a converter raises the voltage, and takes more current than it gives; less than 1 where it lowers it.
func (s Source) steps(to Supply) float64 {
	if s.Kind != Engine {
		return 1
	}
	return to.Volts / houseVolts / s.starter(to)
}

// volts is what drives a line; shares of loss are of it.
func (s Source) volts(to Supply) float64 {
	switch {
	case s.Kind == Sun && s.Volts > 0:
		return s.Volts
	case s.Kind == Sun:
		return panelVolts
	case s.Kind == Shore:
		return shoreVolts * to.Volts / houseVolts
	}
	return lineVolts * s.starter(to)
}

const (
	brightSun   = 1.25 // of a panel's current beside snow or clouds
	usualCharge = 20.0 // A of a source of which nothing is known
)

// converts is what a converter on the engine is made to give [A]: it takes no less, whatever the engine may give, and more where it raises the voltage.
func (s Source) converts(to Supply) float64 {
	sum := 0.0
	if s.Kind == Engine {
		for _, l := range s.Is {
			sum += l.Amps
		}
	}
	return s.steps(to) * sum
}

// amps is the greatest current in a source's own cable: what is written, unless more is certain, else what its rows say.
func (s Source) amps(to Supply) float64 {
	if s.Most > 0 && !low(s.Most, s.certain()) {
		return max(s.Most, s.converts(to))
	}
	sum := brightSun * s.sends()
	if s.Kind != Sun {
		sum = s.drawn(to)
	}
	if sum == 0 {
		return usualCharge
	}
	return sum
}

// drawn is what chargers take through their line as their rows have it [A].
func (s Source) drawn(to Supply) float64 {
	sum := 0.0
	for _, l := range s.Is {
		if s.Kind != Split && l.Amps > 0 {
			sum += s.steps(to) * l.Amps
		} else {
			sum += l.Watts / s.volts(to)
		}
	}
	return sum
}

func (s Source) ends(to Supply) (from, end End) {
	one := End{Words: s.Title, Symbol: SymbolConverter}
	if len(s.Is) > 0 {
		one.Fitting, one.Words = s.Is[0].ID, s.Is[0].Name
	}
	switch s.Kind {
	case Sun:
		one.Symbol = SymbolPanel
		return one, End{Fitting: s.By.ID, Words: "the solar controller", Symbol: SymbolRegulator}
	case Shore:
		one.Symbol = SymbolCharger
		return one, to.board()
	case Split:
		one.Symbol = SymbolRelay
	}
	return End{Words: "the starter battery", Symbol: SymbolStarter}, one
}
