package solid

import "math"

// boxes is the number of prisms of a solid for whose bounds there is room without allocation.
const boxes = 24

// boxes appends the bounds of each prism.
func (s Solid) boxes(to []Bounds) []Bounds {
	for _, p := range s {
		to = append(to, p.Bounds())
	}
	return to
}

// exit is Exit for known bounds of each prism. It gives up at the limit, and answers that, when it has to go so far or further.
func (s Solid) exit(o Solid, mine, theirs []Bounds, d [3]float64, limit float64) float64 {
	var room [2 * boxes]stretch
	overlaps := room[:0]
	for i, p := range s {
		for j, q := range o {
			if !onTheWay(mine[i], theirs[j], d, limit) {
				continue
			}
			one := passage(p, q, d)
			if one.from < -hair && one.till >= limit {
				return limit
			}
			if one.till-one.from > 2*hair && one.till > hair && one.from < limit {
				overlaps = append(overlaps, one)
			}
		}
	}
	return free(overlaps, limit)
}

// stretch is where on its way one prism overlaps another.
type stretch struct{ from, till float64 }

// free is the first place, from 0 on, that is in no stretch.
func free(overlaps []stretch, limit float64) float64 {
	far := 0.0
	for again := true; again; {
		again = false
		for _, one := range overlaps {
			if one.from < far-hair && one.till > far+hair {
				far, again = one.till, true
			}
			if far >= limit {
				return limit
			}
		}
	}
	return far
}

// onTheWay says whether a box that goes along a direction, up to a limit, can meet another.
func onTheWay(b, c Bounds, d [3]float64, limit float64) bool {
	return reaches(b.MinX, b.MaxX, c.MinX, c.MaxX, d[0], limit) &&
		reaches(b.MinY, b.MaxY, c.MinY, c.MaxY, d[1], limit) &&
		reaches(b.MinZ, b.MaxZ, c.MinZ, c.MaxZ, d[2], limit)
}

// reaches says whether a length that goes with a speed, for a time, meets another.
func reaches(low, high, from, till, speed, time float64) bool {
	if speed > 0 {
		high += speed * time
	} else if speed < 0 {
		low += speed * time
	}
	return low < till && from < high
}

// passage is where on its way along a direction p overlaps q: between the last face that it comes in by and the first that it leaves by,
// after Cyrus and Beck (Computers and Graphics 3 (1978) 23-28).
func passage(p, q Prism, d [3]float64) stretch {
	if !(p.High > p.Low && q.High > q.Low) || len(p.Outline) < 3 || len(q.Outline) < 3 {
		return stretch{}
	}
	w := stretch{math.Inf(-1), math.Inf(1)}
	w.narrow(q.High-p.Low, d[2])
	w.narrow(p.High-q.Low, -d[2])
	w.edges(p.Outline, q.Outline, -d[0], -d[1])
	w.edges(q.Outline, p.Outline, d[0], d[1])
	return w
}

// narrow leaves of a stretch where a depth that lessens with a speed is still above nothing.
func (w *stretch) narrow(depth, speed float64) {
	switch {
	case math.Abs(speed) < 1e-12:
		if depth <= hair {
			w.till = math.Inf(-1)
		}
	case speed > 0:
		w.till = min(w.till, depth/speed)
	default:
		w.from = max(w.from, depth/speed)
	}
}

// edges narrows by the depth of q inside each edge of p, while q goes with a speed.
func (w *stretch) edges(p, q []Point, dx, dy float64) {
	v := p[len(p)-1]
	for _, u := range p {
		if w.till <= w.from {
			return
		}
		nx, ny := u.Y-v.Y, v.X-u.X
		if length := math.Sqrt(nx*nx + ny*ny); length > 0 {
			nx, ny = nx/length, ny/length
			w.narrow(nx*v.X+ny*v.Y-least(q, nx, ny), nx*dx+ny*dy)
		}
		v = u
	}
}
