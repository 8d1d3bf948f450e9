package sheet

import (
	"math"

	"tumblehome/catalogue/people"
	"tumblehome/draw"
	"tumblehome/trade/fit"
)

// floorOf is the walkable floor of the mode, or of the day where the mode has none.
func (d *drawing) floorOf() *fit.Floor {
	if d.Mode == Today { // the floor was reckoned with all that is planned
		return nil
	}
	var day *fit.Floor
	for i := range d.r.Fit.Floors {
		switch f := &d.r.Fit.Floors[i]; f.Mode {
		case d.Mode:
			return f
		case "day":
			day = f
		}
	}
	return day
}

// wayOver draws the ways out of beds and seats, and marks the narrowest place of the way in, as wide as it is.
func (d *drawing) wayOver(taken *[]draw.Rect) []draw.Mark {
	f := d.floorOf()
	if f == nil {
		return nil
	}
	s := sketch{view: d.views[Plan]}
	for _, r := range d.r.Fit.Routes() {
		if r.Mode == d.Mode {
			s.wayOut(r)
		}
	}
	if at, wide, is := d.narrow(f); is {
		s.area(draw.PenSweep, draw.NoFill, ring(at[0], at[1], wide/2))
		s.text(over("narrowest "+fives(wide), s.view.At(at[0], at[1]), taken))
	}
	if len(s.marks) == 0 {
		return nil
	}
	return []draw.Mark{s.group("plan-way", "overlay", "the way in", nil)}
}

// narrow is where the way is narrowest, and how wide it is there: by day of the ways in; by night, when one crawls over what one walks around by
// day, of the ways out, unless all of them are wide.
func (d *drawing) narrow(f *fit.Floor) (at place, wide float64, is bool) {
	if f.Mode == "day" {
		w, found := narrowest(d.r.Fit.Ways, f.Mode)
		return place{w.X, w.Y}, w.Width, found
	}
	out := fit.Route{Width: math.Inf(1)}
	for _, r := range d.r.Fit.Routes() {
		if r.Mode == d.Mode && r.Width < out.Width {
			out = r
		}
	}
	return place{out.X, out.Y}, out.Width, out.Width < fit.Roomy
}

// wayOut is the line of a way out, with an arrow at its end.
func (s *sketch) wayOut(r fit.Route) {
	line := make([]draw.Point, len(r.Line))
	for i, p := range r.Line {
		line[i] = s.view.At(p.X, p.Y)
	}
	if len(line) < 2 {
		return
	}
	s.put(draw.PenFollowed, draw.NoFill, draw.Polyline(line...))
	end := line[len(line)-1]
	along := end.Sub(line[len(line)-2]).Unit()
	back := end.Sub(along.Mul(2))
	s.put(draw.PenFollowed, draw.NoFill, draw.Polyline(back.Add(along.Left().Mul(0.9)), end, back.Sub(along.Left().Mul(0.9))))
}

// narrowest is the narrowest of the ways from the main door, which stands first, in a mode; none where one does not get everywhere on foot, as under a bed let down for the night.
func narrowest(ways []fit.Way, mode string) (fit.Way, bool) {
	least, found, door := fit.Way{Width: math.Inf(1)}, false, ""
	for _, w := range ways {
		if w.Mode == mode && w.Width < least.Width && (door == "" || w.Door == door) {
			least, found, door = w, w.Width > 0, w.Door
		}
	}
	return least, found
}

// uprightOver says how high it is where it is highest.
func (d *drawing) uprightOver(taken *[]draw.Rect) []draw.Mark {
	f := d.floorOf()
	if f == nil {
		return nil
	}
	at, best := f.Most()
	if at < 0 {
		return nil
	}
	s := sketch{view: d.views[Plan]}
	x, y := f.X+f.Cell*float64(at/f.NY), f.Y+f.Cell*float64(at%f.NY)
	s.text(over("most headroom "+fives(best), s.view.At(x, y), taken))
	return []draw.Mark{s.group("plan-headroom", "overlay", "where one can stand upright", nil)}
}

// statures are those of the tallest and the shortest aboard, in shoes; nobody can stand where nobody is.
func (d *drawing) statures() (tall, short float64) {
	short = math.Inf(1)
	for _, p := range d.r.Document.People {
		tall, short = max(tall, p.Stature.Float()+people.Shoes), min(short, p.Stature.Float()+people.Shoes)
	}
	if tall == 0 {
		tall = short
	}
	return tall, short
}

// walked is the floor on which one can walk in the van.
func (d *drawing) walked(f *fit.Floor) [][]place {
	return cellRuns(f, func(c int) bool { return f.Free[c] && d.inside(f, c) })
}

// inside says whether a cell lies in the van: the steps outside would be drawn over the measures.
func (d *drawing) inside(f *fit.Floor, c int) bool {
	x, y := f.X+f.Cell*float64(c/f.NY), f.Y+f.Cell*float64(c%f.NY)
	return x >= d.r.Body.Start() && x <= d.r.Body.End() && math.Abs(y) <= d.r.Body.Half(x, d.level)
}

// stands says of a cell whether somebody so tall can stand there.
func (d *drawing) stands(f *fit.Floor, need float64) func(c int) bool {
	return func(c int) bool { return f.Free[c] && f.Headroom[c/f.NY][c%f.NY] >= need }
}

// cellRuns are the cells of a floor that are wanted, those in a row along the van as one.
func cellRuns(f *fit.Floor, want func(c int) bool) [][]place {
	var out [][]place
	for j := range f.NY {
		y0, y1 := f.Y+(float64(j)-0.5)*f.Cell, f.Y+(float64(j)+0.5)*f.Cell
		for i := 0; i < f.NX; i++ {
			if !want(i*f.NY + j) {
				continue
			}
			from := i
			for i+1 < f.NX && want((i+1)*f.NY+j) {
				i++
			}
			x0, x1 := f.X+(float64(from)-0.5)*f.Cell, f.X+(float64(i)+0.5)*f.Cell
			out = append(out, []place{{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}})
		}
	}
	return out
}
