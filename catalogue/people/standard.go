package people

import "tumblehome/quantity"

// A Standard body is one of the six that show whom a place suits besides those who live there.
type Standard struct {
	Name string // "small woman"
	Body Body
}

// surveyed is a body read off the survey, dimension by dimension.
type surveyed struct {
	sex  Sex
	rank int // 5, 50 or 95 people in a hundred are no larger
}

func (s surveyed) size(d Dimension) quantity.Length {
	m := survey[key{d, s.sex}]
	switch s.rank {
	case 5:
		return quantity.Length(m.P5)
	case 95:
		return quantity.Length(m.P95)
	}
	return quantity.Length(m.P50)
}

// Standards are a small, a middling and a large woman and man of the survey: 5, 50 and 95 people in a hundred are no larger, in
// every dimension [mm]. Nobody is built so; each is for trying one dimension at a time, as a seat is tried by sitting height and a gap
// by the depth of the belly.
func Standards() []Standard {
	var all []Standard
	for _, sex := range []struct {
		Sex
		word string
	}{{Women, "woman"}, {Men, "man"}} {
		for _, size := range []struct {
			word string
			rank int
		}{{"small", 5}, {"middling", 50}, {"large", 95}} {
			s := surveyed{sex.Sex, size.rank}
			all = append(all, Standard{size.word + " " + sex.word, Body{s.size(Stature), &s}})
		}
	}
	return all
}
