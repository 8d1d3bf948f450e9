package power

// wornTo is the share of what it holds that a battery is planned with in its later years: common practice, no source.
func wornTo(c Chemistry) float64 {
	if c.Lead() {
		return 0.85
	}
	return 0.9
}

// dullDays are so many days in a row without sun or drive that a battery is usually planned for.
const dullDays = 2

// Needed is the battery [Ah] that gives so many Wh a day for so many days: C = E·N/(U·d·kT·ka), with its mean voltage, the share that may be taken, what
// cold leaves and what age leaves.
func Needed(wh, days, volts, usable, cold, age float64) float64 {
	return wh * days / (volts * usable * cold * age)
}

// needed is that for two days of the darkest month, with a battery of the van's own kind.
func (r *Result) needed() (ah float64, k kit, cold, age float64) {
	b := r.in.Battery
	k = r.in.kitOf(b)
	cold, age = along(k.nature.capacity, r.Months[r.Darkest-1].Battery), wornTo(b.Chemistry)
	return Needed(r.Months[r.Darkest-1].Use[r.Habit], dullDays, k.gives, b.usable(), cold, age), k, cold, age
}
