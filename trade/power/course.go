package power

// Night is one night of a drawn year, from getting up to getting up.
type Night struct {
	Day     int     // of the year on whose morning it begins, 0 to 364
	Lowest  float64 // state of charge, 0 to 1
	Morning float64 // state of charge at its end
	Flat    bool
	Mains   bool // spent on the mains
}

// Course is the nights of one of the drawn years, 0 the first; nil where there is no such year, or no battery.
func (r *Result) Course(year int) []Night {
	if r.Battery == nil || year < 0 || year >= r.Years {
		return nil
	}
	sky, err := r.in.Sky(r.in.Climate, r.in.Years, r.in.Seed)
	if err != nil {
		return nil
	}
	w := r.walk(sky)
	w.k = r.in.kitOf(r.in.Battery)
	w.plan = w.plan[:year+1]
	var all []Night
	w.log = &all
	w.through()
	nights := 0
	for i := range w.plan[year] {
		nights += w.plan[year][i].nights
	}
	return all[len(all)-nights:]
}
