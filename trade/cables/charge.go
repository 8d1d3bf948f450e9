package cables

// charges lays out the cable of each source. Each is by itself: what charges does not load what is fed.
func (r *Result) charges() {
	for _, s := range r.in.Sources {
		i := r.supplyOf(s.To)
		if i < 0 {
			continue
		}
		r.Cables = append(r.Cables, r.charge(s, r.Supplies[i]))
	}
}

// charging is what all sources of a bank send through its main cable together [A]. A relay joins the batteries themselves, past it.
func (r *Result) charging(b Bank) float64 {
	sum := 0.0
	for _, s := range r.in.Sources {
		if s.Kind != Split && (s.To == b.ID || s.To == "" && b.ID == r.in.Banks[0].ID) {
			sum += s.amps(b.supply())
		}
	}
	return sum
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
	c := Cable{ID: s.ID, About: s.About, Bank: to.ID, Role: Charge, Source: s.Kind, Title: s.Title, Loads: s.Is, Length: s.Length, way: s.Way, Body: s.Body}
	if c.Length.MM == 0 {
		c.Length = Length{MM: usualRoute, Known: Assumed}
	}
	c.Volts, c.Current = s.volts(to), s.amps(to)
	c.own = c.Current
	c.Drop.Limit, c.Drop.Aim = chargeLimit, chargeLimit
	c.From, c.To = s.ends(to)
	if s.Kind == Sun {
		c.way.Hot = true // it lies under a dark roof
	}
	c.choose()
	c.Drop.Own = c.Current * c.ohms()
	c.Drop.Joints = c.Current * (fuseOhms(c.Fuse.Amps) + joints)
	r.fuseEnds(&c, s, to)
	c.Drop.At = c.Volts - c.Drop.Own - c.Drop.Joints
	c.Drop.Alone = c.Drop.Own + c.Drop.Joints
	return c
}

// volts is what drives a line; shares of loss are of it.
func (s Source) volts(to Supply) float64 {
	switch {
	case s.Kind == Sun && s.Volts > houseVolts:
		return s.Volts
	case s.Kind == Sun:
		return panelVolts
	case s.Kind == Shore:
		return shoreVolts * to.Volts / houseVolts
	}
	return lineVolts
}

const (
	brightSun   = 1.25 // of a panel's current beside snow or clouds
	usualCharge = 20.0 // A of a source of which nothing is known
)

// amps is the greatest current in a source's cable: what is written, unless far more is certain, else what its rows say.
func (s Source) amps(to Supply) float64 {
	if s.Most > 0 && !low(s.Most, s.certain(to)) {
		return s.Most
	}
	sum := 0.0
	for _, l := range s.Is {
		if s.Kind != Split && l.Amps > 0 {
			sum += l.Amps
		} else {
			sum += l.Watts / s.volts(to)
		}
	}
	switch {
	case sum == 0:
		return usualCharge
	case s.Kind == Sun:
		return brightSun * sum
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
		return one, End{Fitting: s.By, Words: "the solar controller", Symbol: SymbolRegulator}
	case Shore:
		one.Symbol = SymbolCharger
		return one, to.board()
	case Split:
		one.Symbol = SymbolRelay
		return End{Words: "the starter battery", Symbol: SymbolStarter}, to.end()
	}
	return End{Words: "the starter battery", Symbol: SymbolStarter}, one
}

// fuseEnds puts the fuse where the current of a short comes from: at both ends of a line between two batteries, else at the end of the house battery.
func (r *Result) fuseEnds(c *Cable, s Source, to Supply) {
	house := to.AtBoard
	where := "at the fuse board, where the line joins it"
	if s.Kind == Split || house == 0 {
		house, where = to.Fault, "within 200 mm of the house battery's post"
	}
	if s.Kind == Sun || s.Kind == Shore {
		c.Fuse.End, c.Fuse.Where, c.Fault = "to", where, [2]float64{0, house}
		c.Fuse.Meets = house
		return
	}
	starter := full[Flooded] / starterOhms
	c.Fault = [2]float64{starter, full[Flooded] / (starterOhms + c.ohms() + fuseOhms(c.Fuse.Amps))}
	c.Fuse.Meets, c.Fuse.Where = starter, "within 200 mm of the starter battery's post"
	far := c.Fuse
	far.End, far.Meets, far.Where = "to", house, where
	c.FarFuse = &far
	c.Ends = s.Both
	c.Drop.Joints += c.Current * fuseOhms(far.Amps)
}

// bonds joins each bank's negative to the body once.
func (r *Result) bonds() {
	for _, s := range r.Supplies {
		i := r.trunkOf(s.ID)
		if i < 0 {
			continue
		}
		trunk := r.Cables[i]
		c := Cable{About: s.About, Bank: s.ID, Role: Bond, Title: "negative to the body", Length: s.BondLength, Volts: s.Volts,
			From: End{Words: "the negative busbar", Symbol: SymbolBoard}, To: End{Words: "clean bare metal of the body", Symbol: SymbolBody}}
		if c.Length.MM == 0 {
			c.Length = Length{MM: usualTrunk, Known: Assumed}
		}
		need := max(leastBond, trunk.Section.MM2)
		c.Section = Section{MM2: need, Need: need, Rule: RuleShort, Steps: []Demand{{Rule: RuleShort, MM2: need, Words: "no thinner than the battery's own cable, and at least 10 mm2", Source: bondSource}}}
		if s.Bond > 0 {
			c.Section.MM2, c.Section.Said = s.Bond, true
		}
		c.Rating = c.way.rating(c.Section.MM2)
		r.Cables = append(r.Cables, c)
	}
}
