package conduction

import (
	"cmp"
	"slices"
)

// mismatch measures, for each column and each row of cells, how far the two networks are from agreeing there.
//
// Where the temperature of the network above and the heat flow of the one below obeyed Fourier's law exactly both would
// be exact (Prager and Synge 1947). Within a cell the flow along x varies along x only, and the slope of temperature
// along x varies along y only; so the variation along x asks for a halving of the column, that along y of the row.
func (m mesh) mismatch(t []float64, q streams) (columns, rows []float64) {
	nx := len(m.x)
	columns, rows = make([]float64, nx-1), make([]float64, len(m.y)-1)
	for c, k := range m.conductivity {
		if k == 0 {
			continue
		}
		i, j := c%(nx-1), c/(nx-1)
		p := m.point(i, j)
		dx, dy := m.x[i+1]-m.x[i], m.y[j+1]-m.y[j]
		twist := t[p] - t[p+1] - t[p+nx] + t[p+nx+1]
		gainX, gainY := q.x[p+1]-q.x[p], q.y[p+nx]-q.y[p]
		columns[i] += gainX*gainX/k*dx/dy + k*twist*twist*dx/dy
		rows[j] += gainY*gainY/k*dy/dx + k*twist*twist*dy/dx
	}
	return columns, rows
}

// bulk is the share of the mismatch that is attacked at once, alike how near two rewards are to be treated alike, so
// that a symmetric section keeps a symmetric mesh.
const bulk, alike = 0.7, 1 - 1e-6

// A strip is a column or a row of cells.
type strip struct{ mismatch, reward float64 } // reward: mismatch per node that halving it would add

// refined halves those columns and rows that hold the bulk of the mismatch, the most rewarding first.
func (m mesh) refined(s Section, t []float64, q streams) mesh {
	columns, rows := m.mismatch(t, q)
	var strips []strip
	for _, v := range columns {
		strips = append(strips, strip{v, v / float64(len(rows))})
	}
	for _, v := range rows {
		strips = append(strips, strip{v, v / float64(len(columns))})
	}
	least := cut(strips)
	x := split(m.x, func(i int) bool { return strips[i].reward >= least })
	y := split(m.y, func(j int) bool { return strips[len(columns)+j].reward >= least })
	return newMesh(s, x, y)
}

// cut is the reward from which strips are halved.
func cut(strips []strip) float64 {
	order := slices.Clone(strips)
	slices.SortFunc(order, func(a, b strip) int { return cmp.Compare(b.reward, a.reward) })
	var all, sum float64
	for _, s := range order {
		all += s.mismatch
	}
	for _, s := range order {
		if sum += s.mismatch; sum >= bulk*all {
			return alike * s.reward
		}
	}
	return 0
}

// halved halves every column and row.
func (m mesh) halved(s Section) mesh { return newMesh(s, split(m.x, every), split(m.y, every)) }
