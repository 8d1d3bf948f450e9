package draw

import (
	"math"
	"strconv"
)

// Ruler is the ordinate scale beside a view: ticks at full metres with figures, shorter ones
// between.
type Ruler struct {
	Zero     Point // where 0 m lies on the paper
	Along    Direction
	Metre    float64 // millimetres on paper for one metre; negative runs the other way
	From, To float64 // metres
	Flip     bool    // ticks and figures on the other side of the line
	Bare     bool    // ticks only
	Size     float64 // 0 means SizeSmall
}

// Marks draws the ruler.
func (r Ruler) Marks() []Mark {
	a := r.Along.axes(Point{}, Point{})
	zero, t := a.local(r.Zero)
	side := 1.0
	if r.Flip {
		side = -1
	}
	var ticks Path
	var out []Mark
	for h := math.Ceil(r.From*2 - 1e-9); h <= r.To*2+1e-9 && len(ticks.steps) < 400; h++ {
		s := zero + h/2*r.Metre*a.sense()
		tall := 2.2
		if math.Mod(h, 2) != 0 {
			tall = 1.1
		} else if !r.Bare {
			out = append(out, r.figure(a, s, t, side, h/2))
		}
		ticks = ticks.And(Line(a.paper(s, t), a.paper(s, t+side*tall)))
	}
	return append([]Mark{Stroke(PenDimension, ticks)}, out...)
}

// sense is -1 where reading runs against the paper's axis: a vertical ruler with positive
// Metre counts downwards like y.
func (a axes) sense() float64 {
	if a.along.Y < 0 {
		return -1
	}
	return 1
}

func (r Ruler) figure(a axes, s, t, side, metres float64) Lettering {
	l := Lettering{Text: strconv.Itoa(int(metres)), Size: r.Size, Ink: InkQuiet, Anchor: Middle, Level: Midline}
	l.At = a.paper(s, t+side*(3.2+l.height()/2))
	return l
}
