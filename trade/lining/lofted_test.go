package lining_test

import (
	"slices"

	"tumblehome/solve/offsets"
	"tumblehome/trade/lining"
)

// lofted is a bare van through a table of offsets, with two wheel arches and the openings that
// matter here taken off its surfaces.
type lofted struct {
	*offsets.Surface
	arch [4]float64                // from, to, |y| of the face, height
	cuts map[string][][4]float64   // by surface: x from, to, then z (roof: y) from, to
	ribs map[string][]float64      // x of ribs and bows, by surface
	deep func(string, int) float64 // depth of the i-th bay
	face float64                   // width of a rib
}

func (l *lofted) Floor() float64                     { return l.Base() }
func (l *lofted) Eaves() float64                     { return l.TopRow() }
func (l *lofted) RoofInside(x, y, d float64) float64 { return l.TopInside(x, y, d) }
func (l *lofted) piece(s string, x0, x1, lo, hi float64) offsets.Piece {
	switch s {
	case lining.Floor:
		return l.Level(x0, x1, lo, hi, l.Base())
	case lining.Roof:
		return l.Surface.Roof(x0, x1, lo, hi)
	case lining.Front:
		return l.Across(l.Start(), -1e6, 1e6, lo, hi)
	}
	p := l.Side(x0, x1, lo, hi)
	if s == lining.Left {
		p.Y = -p.Y
	}
	return p
}

func (l *lofted) Net(s string, x0, x1, lo, hi float64) (float64, [3]float64) {
	whole := l.piece(s, x0, x1, lo, hi)
	area, sum := whole.Area, [3]float64{whole.X * whole.Area, whole.Y * whole.Area, whole.Z * whole.Area}
	off := func(p offsets.Piece) {
		area -= p.Area
		for k, v := range []float64{p.X, p.Y, p.Z} {
			sum[k] -= v * p.Area
		}
	}
	for _, c := range l.cuts[s] {
		off(l.piece(s, max(x0, c[0]), min(x1, c[1]), max(lo, c[2]), min(hi, c[3])))
	}
	switch a := l.arch; {
	case a[1] == 0:
	case s == lining.Floor:
		off(l.piece(s, max(x0, a[0]), min(x1, a[1]), a[2], hi))
		off(l.piece(s, max(x0, a[0]), min(x1, a[1]), lo, -a[2]))
	case s == lining.Left || s == lining.Right:
		off(l.piece(s, max(x0, a[0]), min(x1, a[1]), lo, min(hi, a[3])))
	}
	if area <= 1 {
		return 0, [3]float64{}
	}
	return area / 1e6, [3]float64{sum[0] / area, sum[1] / area, sum[2] / area}
}

// inputs are the bays between the ribs and the arches of a lofted van under its layers.
func inputs(l *lofted, layers map[string][]lining.Layer) lining.Inputs {
	in := lining.Inputs{Body: l, Pressings: 8, Layers: layers}
	for _, s := range []string{lining.Left, lining.Right, lining.Roof} {
		edges := slices.Concat([]float64{l.Start()}, l.ribs[s], []float64{l.End()})
		for i := range len(edges) - 1 {
			steel := l.face
			if i == len(edges)-2 {
				steel /= 2
			}
			in.Bays = append(in.Bays, lining.Bay{ID: s + "-" + string(rune('1'+i)), Surface: s, From: edges[i], To: edges[i+1], Depth: l.deep(s, i), Steel: steel})
		}
	}
	if a := l.arch; a[1] > 0 {
		middle := (a[0] + a[1]) / 2
		for _, side := range []string{lining.Left, lining.Right} {
			sign := map[string]float64{lining.Left: -1, lining.Right: 1}[side]
			in.Arches = append(in.Arches, lining.Arch{ID: "rear-wheels", Side: side, From: a[0], To: a[1], Face: a[2], Up: a[3],
				Area: 0.574, Centre: [3]float64{middle, sign * 743, 205}})
		}
	}
	return in
}

func loft(heights []float64, stations ...offsets.Station) *offsets.Surface {
	s, err := offsets.New(offsets.Table{Heights: heights, Stations: stations})
	if err != nil {
		panic(err)
	}
	return s
}

// dipperBody is a van of middle length and height, invented. Its first side
// ribs are 60 deep, the others 45; the bows 32.
func dipperBody() *lofted {
	return &lofted{
		Surface: loft([]float64{0, 300, 600, 900, 1200, 1500, 1680},
			offsets.Station{X: 0, Half: []float64{896, 921, 931, 926, 902, 842, 744}, Crown: 1758},
			offsets.Station{X: 700, Half: []float64{902, 927, 937, 932, 908, 849, 752}, Crown: 1776},
			offsets.Station{X: 1475, Half: []float64{904, 929, 939, 934, 910, 851, 755}, Crown: 1784},
			offsets.Station{X: 2250, Half: []float64{898, 923, 933, 928, 904, 844, 746}, Crown: 1774},
			offsets.Station{X: 2950, Half: []float64{846, 874, 884, 878, 852, 790, 690}, Crown: 1734}),
		arch: [4]float64{1680, 2440, 670, 310},
		cuts: map[string][][4]float64{lining.Left: {{150, 1300, 0, 1430}}, lining.Roof: {{1030, 1430, -200, 200}}},
		ribs: map[string][]float64{lining.Left: {760, 1440, 2080, 2680}, lining.Right: {760, 1440, 2080, 2680}, lining.Roof: {420, 960, 1500, 2040, 2560}},
		deep: func(s string, i int) float64 {
			switch {
			case s == lining.Roof:
				return 32
			case i == 0 || s == lining.Left && i < 3:
				return 60
			}
			return 45
		},
		face: 50,
	}
}

// godwitBody is a long high van, invented.
func godwitBody() *lofted {
	ribs := []float64{690, 1420, 2020, 2640, 3240, 3920}
	return &lofted{
		Surface: loft([]float64{0, 400, 800, 1200, 1600, 1850, 1920},
			offsets.Station{X: 0, Half: []float64{945, 972, 982, 968, 930, 872, 812}, Crown: 1985},
			offsets.Station{X: 1000, Half: []float64{948, 975, 985, 972, 934, 877, 818}, Crown: 1999},
			offsets.Station{X: 2035, Half: []float64{948, 976, 986, 972, 934, 878, 820}, Crown: 2002},
			offsets.Station{X: 3000, Half: []float64{940, 968, 978, 964, 926, 869, 810}, Crown: 1992},
			offsets.Station{X: 4070, Half: []float64{880, 905, 915, 900, 862, 800, 735}, Crown: 1950}),
		ribs: map[string][]float64{lining.Left: ribs, lining.Right: ribs},
		deep: func(string, int) float64 { return 55 },
		face: 60,
	}
}
