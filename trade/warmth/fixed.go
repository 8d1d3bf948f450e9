package warmth

// Fixed is the free area of openings that nobody can close, and what is asked of it, in cm2.
type Fixed struct {
	High, Low         float64 // what there is
	WantHigh, WantLow float64 // what is asked; high counted as if in the roof
	Burner            bool    // something burns in the room that takes its air from it
}

// highShare is how far up the room an opening in its side must be to count as high, and low the same downwards. The inspection body asks for low openings
// within 100 mm of the floor, high ones as high as possible.
const (
	highShare = 0.7
	lowest    = 100.0 // mm above the floor
	elsewhere = 2.0   // an opening in the side counts as half of one in the roof
	cm2       = 1e4   // in a m2
)

// fixed compares the openings with EN 721, as quoted by an inspection body (leaflet 740, read in a forum): up to 5 m2 of floor with a burner 75 high and 10
// low, up to 10 m2 100 and 15; without one 15 in the roof, or 30 elsewhere high up, and 5 low. Check the current standard.
func (in *Inputs) fixed() Fixed {
	f := Fixed{WantHigh: 15, WantLow: 5}
	for _, b := range in.Burners {
		f.Burner = f.Burner || b.Inside
	}
	switch {
	case f.Burner && in.Plan <= 5:
		f.WantHigh, f.WantLow = 75, 10
	case f.Burner:
		f.WantHigh, f.WantLow = 100, 15
	}
	for _, v := range in.Vents {
		switch {
		case !v.Fixed:
		case v.Roof:
			f.High += v.Free * cm2
		case v.Z <= lowest:
			f.Low += v.Free * cm2
		case v.Z >= highShare*in.Top:
			f.High += v.Free * cm2 / elsewhere
		}
	}
	return f
}

// total is all fixed area wherever it is, in cm2.
func (in *Inputs) total() float64 {
	sum := 0.0
	for _, v := range in.Vents {
		if v.Fixed {
			sum += v.Free * cm2
		}
	}
	return sum
}
