package fit

import "math"

// far is the greatest distance that is told apart, in cells.
const far = 40

// distances are, for every cell, the squared distance in cells from its middle to the middle of the nearest cell that is not free; 0
// for one that is not. First along each row, then across the rows by the lower envelope of parabolas: Felzenszwalb and
// Huttenlocher, Distance transforms of sampled functions, Theory of Computing 8 (2012) 415-428. Beyond the grid nothing stands.
func distances(free []bool, nx, ny int) []int32 {
	d := make([]int32, len(free))
	for i := range nx {
		alongRow(free[i*ny:(i+1)*ny], d[i*ny:(i+1)*ny])
	}
	e := envelope{f: make([]int32, nx), at: make([]int, nx), from: make([]float64, nx+1)}
	for j := range ny {
		most := int32(0)
		for i := range nx {
			e.f[i] = d[i*ny+j]
			most = max(most, e.f[i])
		}
		if most == 0 {
			continue
		}
		e.lower()
		for i, k := 0, 0; i < nx; i++ {
			for e.from[k+1] < float64(i) {
				k++
			}
			if d[i*ny+j] > 0 {
				step := int32(i - e.at[k])
				d[i*ny+j] = min(far*far, step*step+e.f[e.at[k]])
			}
		}
	}
	return d
}

// alongRow is the squared distance within a row.
func alongRow(free []bool, d []int32) {
	since := int32(far)
	for j, ok := range free {
		since = min(far, since+1)
		if !ok {
			since = 0
		}
		d[j] = since
	}
	since = far
	for j := len(free) - 1; j >= 0; j-- {
		since = min(since+1, d[j])
		d[j] = since * since
	}
}

// envelope is the lowest of the parabolas f(at) + (x - at)², one after the other, each from one place to the next.
type envelope struct {
	f    []int32
	at   []int
	from []float64
}

func (e *envelope) lower() {
	k := 0
	e.at[0], e.from[0], e.from[1] = 0, math.Inf(-1), math.Inf(1)
	for q := 1; q < len(e.f); q++ {
		s := e.meet(q, e.at[k])
		for s <= e.from[k] {
			k--
			s = e.meet(q, e.at[k])
		}
		k++
		e.at[k], e.from[k], e.from[k+1] = q, s, math.Inf(1)
	}
}

// meet is where the parabolas of q and of p before it are equally high.
func (e *envelope) meet(q, p int) float64 {
	return float64(int(e.f[q])+q*q-int(e.f[p])-p*p) / float64(2*(q-p))
}

// roomAt is how far a squared distance in cells leaves free about the middle of a cell [mm]: the nearest thing begins half a cell
// before the middle of its first cell.
func roomAt(d int32) float64 { return max(0, cell*(math.Sqrt(float64(d))-0.5)) }
