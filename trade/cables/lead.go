package cables

const (
	usualLead = 500.0 // mm from what controls or converts to the fuse board; common practice
	relayAim  = 0.01  // of the voltage, of the short end of a line that a relay joins; the whole line may lose chargeLimit
)

var leadTitles = map[SourceKind]string{Engine: "lead of the charger from the engine", Split: "lead of the relay", Sun: "lead of the solar controller"}

// lead is the cable from what controls or converts a source to the board, or from a relay to the house battery. A short on it is fed by the house battery:
// there is its fuse. What converts makes up for what its line loses, so that a lead may lose chargeLimit by itself; a relay does not, so that both
// count together.
func (r *Result) lead(s Source, to Supply, line Cable) Cable {
	c := Cable{ID: s.ID, About: s.Lead.About, Bank: to.ID, Role: Lead, Source: s.Kind, Title: leadTitles[s.Kind], Length: s.Lead.Length, Volts: s.leadVolts(to), way: s.Lead, Body: s.bare(), said: s.Lead.Number}
	if !s.leadWritten() {
		c.About = s.About
	}
	if c.Length.MM == 0 {
		c.Length = Length{MM: usualLead, Known: Assumed}
	}
	c.way.Fuse = s.leadFuse()
	c.From, c.To = line.To, to.board()
	if s.Kind == Split || to.AtBoard == 0 {
		c.To = to.end()
	}
	c.Current = s.gives(to)
	c.own = c.Current
	c.Drop.Limit, c.Drop.Aim = chargeLimit, chargeLimit
	before := 0.0
	if s.Kind == Split {
		before, c.Drop.Aim = line.Drop.Own, relayAim
	}
	c.choose()
	if s.Kind != Sun {
		c.Ends = s.fusedEnds()
		c.unfusedWhere("source")
	}
	c.fedByHouse(to)
	c.settleCharge(before)
	return c
}

// leadWritten says whether anything of a lead stands in the document.
func (s Source) leadWritten() bool {
	l := s.Lead
	return l.Length.Known == Measured || l.Section > 0 || l.Fuse.Said || l.Fuse.Kind != Unsaid
}

// leadFuse is that of the lead, with what is said of the source's where nothing else is.
func (s Source) leadFuse() Fuse {
	f := s.Lead.Fuse
	if !f.Said {
		f.Said, f.None, f.Amps, f.About = s.Fuse.Said, s.Fuse.None, s.Fuse.Amps, s.Fuse.About
	}
	if f.Kind == Unsaid {
		f.Kind, f.Breaking = s.Fuse.Kind, s.Fuse.Breaking
	}
	f.Away = -1
	if s.Kind == Sun { // it has no other fuse
		f.Away = s.Fuse.Away
	}
	return f
}

// leadVolts is that of a battery being charged.
func (s Source) leadVolts(to Supply) float64 { return lineVolts * to.Volts / houseVolts }

// gives is the greatest current in the lead [A]: what controls panels turns their voltage into more current, most into a battery that is low, but gives no
// more than it is made for; what converts gives no more than it is made for nor than it takes.
func (s Source) gives(to Supply) float64 {
	amps, made := s.amps(to), s.By.Amps
	switch s.Kind {
	case Sun:
		if !s.Plain {
			amps = s.turned(amps*s.volts(to)) / to.Volts
		}
	case Engine:
		amps, made = amps/s.steps(to), 0
		for _, l := range s.Is {
			made += l.Amps
		}
	default:
		return amps
	}
	if made > 0 {
		return min(amps, made)
	}
	return amps
}

// turned is the power [W] that a controller turns into current: where a current is written, no more than the watts of the panels. What is written is rounded
// up, and is that of the cable; times the volts of a panel of 36 V it would be far more than the panel has.
func (s Source) turned(watts float64) float64 {
	sum := 0.0
	for _, l := range s.Is {
		sum += l.Watts
	}
	if s.Most > 0 && sum > 0 && !low(s.Most, s.certain()) {
		return min(watts, sum)
	}
	return watts
}

// fedByHouse puts the fuse at the end of the house battery, where the current of a short comes from.
func (c *Cable) fedByHouse(to Supply) {
	house, where := to.AtBoard, "at the fuse board, where the line joins it"
	if c.Source == Split || house == 0 {
		house, where = to.Fault, "within 200 mm of the house battery's post"
	}
	c.Fuse.End, c.Fuse.Where, c.Fuse.Meets = "to", where, house
	c.Fault = [2]float64{to.Drive / (to.Drive/house + fuseOhms(c.Fuse.Amps) + joints + c.ohms()), house}
}
