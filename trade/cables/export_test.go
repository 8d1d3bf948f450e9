package cables

// What tests outside look at.
var Gauge = gauge

// TableRating is the lower of the two tables, A.
func TableRating(area, insulation float64) float64 {
	amps, _ := tableRating(area, insulation)
	return amps
}

// TimesOf are the opening times of a kind of fuse.
func TimesOf(k Kind) (shares, least, most []float64) {
	for _, l := range makes[k].limits {
		shares, least, most = append(shares, l.share), append(least, l.least), append(most, l.most)
	}
	return shares, least, most
}
