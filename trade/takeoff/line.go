package takeoff

// Line is a net quantity of one thing at one place.
type Line struct {
	Pointer string     // JSON Pointer to what the line is for: /fittings/galley, /lining/floor/2
	Of      string     // catalogue row or material; "" for a thing that has none
	Net     float64    // net quantity in Unit, without waste
	Unit    string     // m2, m, piece, l
	Mass    float64    // mean mass [kg]; negative for what was taken out
	Dev     float64    // standard deviation of the mass [kg]
	Error   string     // lines that share this key share one error: a heavy batch of ply is heavy everywhere
	At      [3]float64 // centre of mass in document coordinates [mm]: x rearwards from the datum, y right, z up
	Group   string     // shell, lining, fitting, tank, gear, person, removed …
	Fitted  bool       // it is in the van today
	Guess   bool       // the mass is a guess, not a catalogue row or a reading
}

// Total sums the mass of lines [kg].
func Total(lines []Line) float64 {
	var sum float64
	for _, l := range lines {
		sum += l.Mass
	}
	return sum
}
