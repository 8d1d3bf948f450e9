package climate

// MostLate is how far a year's sun may stand off its clock before the file's time labels are in doubt [h]. Four years whose labels are known
// stand 0.02 to 0.08 h off.
const MostLate = 0.3

// Late is by how much the middle of the year's radiation comes after solar noon, by the file's own clock and longitude [h]. Over a year the
// equation of time cancels; clouds that favour mornings or afternoons leave about a tenth of an hour. Files are known whose hours are
// labelled in another zone, or by their beginning instead of their end.
func (s *Series) Late() float64 {
	var sun, moment float64
	for _, h := range s.Hours {
		sun += h.Global
		moment += h.Global * (float64(h.Hour) + 0.5 + s.Moment)
	}
	if sun == 0 {
		return 0
	}
	return moment/sun - solarNoon(s.Lon, s.Offset)
}
