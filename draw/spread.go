package draw

import "sort"

// Spread moves points on a line apart until intervals of the given widths, centred on them, no
// longer overlap. It keeps their order and moves them as little as possible in the sense of
// least squares (pool adjacent violators: an isotonic regression of the points, each less the
// widths before it). Order of equal points is that of the input.
func Spread(at, width []float64) []float64 {
	n := len(at)
	order := make([]int, n)
	for i := range order {
		order[i] = i
	}
	sort.SliceStable(order, func(a, b int) bool { return at[order[a]] < at[order[b]] })
	type pool struct {
		sum   float64
		count int
	}
	var pools []pool
	offset := make([]float64, n) // of each point from the first, when packed
	for k, i := range order {
		if k > 0 {
			offset[k] = offset[k-1] + (width[order[k-1]]+width[i])/2
		}
		pools = append(pools, pool{at[i] - offset[k], 1})
		for len(pools) > 1 {
			a, b := pools[len(pools)-2], pools[len(pools)-1]
			if a.sum/float64(a.count) <= b.sum/float64(b.count) {
				break
			}
			pools = append(pools[:len(pools)-2], pool{a.sum + b.sum, a.count + b.count})
		}
	}
	out := make([]float64, n)
	k := 0
	for _, p := range pools {
		for range p.count {
			out[order[k]] = p.sum/float64(p.count) + offset[k]
			k++
		}
	}
	return out
}
