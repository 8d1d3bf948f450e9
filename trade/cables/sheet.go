package cables

// Terminal is what is crimped on.
type Terminal struct {
	Words string // "ring M8, 16 mm2", "blue push-on"
	Count int
	At    string // in words: "the fuse board"
	Row   string // of the catalogue; "" has none
}

// Item is a line of the bill.
type Item struct {
	Row    string // of the catalogue; "" has none
	Words  string
	Count  float64
	Unit   string   // "m", "piece"
	Price  float64  // in all; 0 is not known
	Cables []string // numbers that it is for
	Once   bool     // already among the fittings: it is listed, not bought again
}
