package offsets

// grid holds the readings and the slopes at them, each by station then height.
type grid struct {
	x, z         []float64
	y            [][]float64
	yx, yz, yxyz [][]float64 // slopes along x, along z, and the twist
}

// newGrid works out the slopes: along z at each station, along x at each
// height, and the twist as the mean of the two ways to get it.
func newGrid(t Table, x, z []float64) *grid {
	g := &grid{x: x, z: z}
	for _, s := range t.Stations {
		g.y = append(g.y, s.Half)
		g.yz = append(g.yz, slopes(z, s.Half))
	}
	g.yx = alongX(x, g.y)
	twist := alongX(x, g.yz)
	for i := range g.yx {
		other := slopes(z, g.yx[i])
		for j := range other {
			twist[i][j] = (twist[i][j] + other[j]) / 2
		}
	}
	g.yxyz = twist
	return g
}

// alongX returns the slopes along x of each column of f.
func alongX(x []float64, f [][]float64) [][]float64 {
	d := make([][]float64, len(f))
	for i := range d {
		d[i] = make([]float64, len(f[0]))
	}
	column := make([]float64, len(f))
	for j := range f[0] {
		for i := range f {
			column[i] = f[i][j]
		}
		for i, v := range slopes(x, column) {
			d[i][j] = v
		}
	}
	return d
}

// patch returns the bicubic of the cell whose low corner is station i, height j.
func (g *grid) patch(i, j int) patch {
	p := patch{dx: g.x[i+1] - g.x[i], dz: g.z[j+1] - g.z[j]}
	var rows [4][4]float64 // value at both stations, then slope along x; each as a cubic in v
	for k := range 2 {
		y, yx, yz, t := g.y[i+k], g.yx[i+k], g.yz[i+k], g.yxyz[i+k]
		rows[k] = cubic(y[j], y[j+1], yz[j]*p.dz, yz[j+1]*p.dz)
		rows[2+k] = cubic(yx[j]*p.dx, yx[j+1]*p.dx, t[j]*p.dx*p.dz, t[j+1]*p.dx*p.dz)
	}
	for q := range 4 {
		c := cubic(rows[0][q], rows[1][q], rows[2][q], rows[3][q])
		for r := range 4 {
			p.a[r][q] = c[r]
		}
	}
	return p
}

func cubic(f0, f1, m0, m1 float64) [4]float64 {
	a0, a1, a2, a3 := hermite(f0, f1, m0, m1)
	return [4]float64{a0, a1, a2, a3}
}
