package web

// wrongFields are the fields of this screen with something wrong beside them, in the order in which they stand.
func (v startView) wrongFields() []tapeReading {
	asked := append(append([]tapeReading{}, tapeReadings...), plateNumbers...)
	asked = append(asked, tapeReading{"wheelbase", "Wheelbase"})
	for i := 1; i <= mostSleepers; i++ {
		asked = append(asked, tapeReading{"name-" + count(i), "Name in row " + count(i)}, tapeReading{"stature-" + count(i), "How tall, in row " + count(i)})
	}
	asked = append(asked, tapeReading{"title", "What the van is called"}, tapeReading{"budget", "Money for the conversion"}, tapeReading{"weekends", "Weekends"})
	var out []tapeReading
	for _, f := range asked {
		if v.Wrong[f.Field] != "" {
			out = append(out, f)
		}
	}
	return out
}
