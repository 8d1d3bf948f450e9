package offsets

// A Form is the shape of a body without its size: a table whose lengths are
// shares of a length, a height and a half-breadth. One form scaled by a few
// measurements stands in for a table not yet read.
type Form struct {
	Heights  []float64   // shares of the height
	Stations []float64   // shares of the length
	Half     [][]float64 // shares of the half-breadth, by station then height
	Crown    []float64   // shares of the height, by station
	Doubt    float64     // how far a body of this kind may be off the form, share of the half-breadth
}

// Scale returns the table of a body of this form: length, height and
// half-breadth are what 1 stands for, reading is how well they were read.
func (f Form) Scale(length, height, half, reading float64) Table {
	t := Table{Reading: reading, Form: f.Doubt * half, Heights: scaled(f.Heights, height)}
	for i, x := range f.Stations {
		t.Stations = append(t.Stations, Station{X: x * length, Half: scaled(f.Half[i], half), Crown: f.Crown[i] * height})
	}
	return t
}

func scaled(shares []float64, by float64) []float64 {
	out := make([]float64, len(shares))
	for i, s := range shares {
		out[i] = s * by
	}
	return out
}
