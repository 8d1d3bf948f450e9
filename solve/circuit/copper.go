package circuit

import "fmt"

// A Class is how a copper conductor is stranded, as IEC 60228 numbers it.
type Class int

const (
	Stranded       Class = iota // class 2, plain: for fixed wiring
	Flexible                    // class 5, plain
	FlexibleTinned              // class 5, strands tinned
)

// ColdCopper is the temperature that the table stands for, °C; alpha is how copper's resistance rises per K from there
// (IEC 60228 corrects by 254.5/(234.5 + t), which is the same to four digits).
const (
	coldCopper  = 20
	alpha       = 0.00393
	leastCopper = -100 // °C, and mostCopper: about where a straight line still serves
	mostCopper  = 300
)

// perKilometre is the largest resistance at 20 °C, Ω/km, by nominal cross-section, mm²: IEC 60228, tables 2 and 3, as two
// independent prints quote them. Class 2 is given as far as those prints go.
var perKilometre = []struct{ area, stranded, flexible, tinned float64 }{
	{0.5, 0, 39.0, 40.1}, {0.75, 0, 26.0, 26.7}, {1, 18.1, 19.5, 20.0}, {1.5, 12.1, 13.3, 13.7}, {2.5, 7.41, 7.98, 8.21},
	{4, 4.61, 4.95, 5.09}, {6, 3.08, 3.30, 3.39}, {10, 1.83, 1.91, 1.95}, {16, 1.15, 1.21, 1.24}, {25, 0.727, 0.780, 0.795},
	{35, 0.524, 0.554, 0.565}, {50, 0.387, 0.386, 0.393}, {70, 0, 0.272, 0.277}, {95, 0, 0.206, 0.210}, {120, 0, 0.161, 0.164},
	{150, 0, 0.129, 0.132},
}

// PerMetre is the largest resistance a copper conductor of a class may have, Ω/m, at a nominal cross-section, mm², and a
// conductor temperature, °C:
//
//	R = R20·(1 + 0.00393·(t − 20))
//
// A pair of supply and return has twice it for each metre of way. Only cross-sections of the standard's table are taken,
// and temperatures from −100 to 300 °C.
func PerMetre(class Class, area, celsius float64) (float64, error) {
	if outside(celsius, leastCopper, mostCopper) {
		return 0, &Fault{"temperature", fmt.Sprintf("%g is not between %d and %d °C", celsius, leastCopper, mostCopper)}
	}
	for _, row := range perKilometre {
		if row.area != area {
			continue
		}
		cold := class.choose(row.stranded, row.flexible, row.tinned)
		if cold > 0 {
			return cold / 1000 * (1 + alpha*(celsius-coldCopper)), nil
		}
	}
	return 0, &Fault{"area", fmt.Sprintf("no %s conductor of %g mm² is in the table", class, area)}
}

func (c Class) choose(stranded, flexible, tinned float64) float64 {
	switch c {
	case Stranded:
		return stranded
	case Flexible:
		return flexible
	case FlexibleTinned:
		return tinned
	}
	return 0
}

func (c Class) String() string {
	switch c {
	case Stranded:
		return "stranded (class 2)"
	case Flexible:
		return "flexible (class 5)"
	case FlexibleTinned:
		return "flexible tinned (class 5)"
	}
	return fmt.Sprintf("class numbered %d", int(c))
}
