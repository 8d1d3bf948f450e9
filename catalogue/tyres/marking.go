package tyres

import (
	"fmt"
	"strconv"
	"strings"

	"tumblehome/quantity"
)

// A Marking is what stands on the side of a tyre: 215/70 R15C 109/107 S.
type Marking struct {
	Width  int    // of the section [mm]
	Aspect int    // height of the section as a percentage of its width
	Rim    int    // diameter of the rim [in]
	Light  bool   // the C of a light commercial tyre stands behind the rim
	Single int    // load index for single wheels
	Paired int    // load index for wheels in pairs; 0 where none stands
	Speed  string // letter of the speed class; "" where none stands
}

// Parse reads a marking. Blanks may be left out, letters may be small. The
// error says what was looked for.
func Parse(text string) (Marking, error) {
	r := reader{rest: strings.ToUpper(strings.Join(strings.Fields(text), ""))}
	var m Marking
	m.Width = r.number("the width in mm", 105, 455)
	r.sign("/")
	m.Aspect = r.number("the height as a share of the width", 25, 100)
	r.sign("R")
	m.Rim = r.number("the rim in inches", 10, 24)
	m.Light = r.may("C")
	r.may("P") // CP: the kind made for campers
	m.Single = r.number("the load index", First, Last)
	if r.may("/") {
		m.Paired = r.number("the load index for paired wheels", First, Last)
	}
	m.Speed = r.rest
	if r.fault == "" && m.Speed != "" && (len(m.Speed) > 1 || m.Speed < "A" || m.Speed > "Z") {
		r.fault = fmt.Sprintf("%q is not a speed letter", m.Speed)
	}
	if r.fault != "" {
		return Marking{}, fmt.Errorf("tyre %q: %s; write it as on the tyre, for example 215/70 R15C 109/107", text, r.fault)
	}
	return m, nil
}

// One is the mass one tyre may carry on a single wheel [kg].
func (m Marking) One() quantity.Mass {
	mass, _ := Load(m.Single)
	return mass
}

// Axle is the mass two tyres may carry on an axle of single wheels [kg].
func (m Marking) Axle() quantity.Mass { return 2 * m.One() }

// Diameter is the height of the unloaded tyre [mm]: the rim and two side walls.
func (m Marking) Diameter() quantity.Length {
	return quantity.Length(25.4*float64(m.Rim) + 2*float64(m.Width)*float64(m.Aspect)/100)
}

// String is the marking as it stands on the tyre.
func (m Marking) String() string {
	var b strings.Builder
	fmt.Fprintf(&b, "%d/%d R%d", m.Width, m.Aspect, m.Rim)
	if m.Light {
		b.WriteByte('C')
	}
	fmt.Fprintf(&b, " %d", m.Single)
	if m.Paired > 0 {
		fmt.Fprintf(&b, "/%d", m.Paired)
	}
	if m.Speed != "" {
		b.WriteString(" " + m.Speed)
	}
	return b.String()
}

// reader eats a marking from the left and keeps the first fault.
type reader struct{ rest, fault string }

func (r *reader) may(sign string) bool {
	rest, found := strings.CutPrefix(r.rest, sign)
	r.rest = rest
	return found
}

func (r *reader) sign(sign string) {
	if !r.may(sign) && r.fault == "" {
		r.fault = fmt.Sprintf("%q was expected before %q", sign, r.rest)
	}
}

// number takes at most as many digits as the highest has: blanks are gone, so
// R15 95 arrives as R1595.
func (r *reader) number(what string, low, high int) int {
	end := 0
	for end < len(r.rest) && end < len(strconv.Itoa(high)) && r.rest[end] >= '0' && r.rest[end] <= '9' {
		end++
	}
	n, err := strconv.Atoi(r.rest[:end])
	if r.fault == "" && (err != nil || n < low || n > high) {
		r.fault = fmt.Sprintf("%s, %d to %d, was expected at %q", what, low, high, r.rest)
	}
	r.rest = r.rest[end:]
	return n
}
