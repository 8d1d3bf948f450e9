package conduction

import "math"

// A band is a symmetric positive definite matrix of which only a band is not nought: row k keeps columns k-width to k.
type band struct {
	n, width int
	rows     []float64
}

func newBand(n, width int) band { return band{n, width, make([]float64, n*(width+1))} }

// add adds v at row k and column c, c not above k.
func (a band) add(k, c int, v float64) { a.rows[k*(a.width+1)+c-k+a.width] += v }

func (a band) diagonal(k int) float64 { return a.rows[k*(a.width+1)+a.width] }

// alone makes the diagonal of row k one; nothing else may be in its row and column.
func (a band) alone(k int) { a.rows[k*(a.width+1)+a.width] = 1 }

// from gives row k from column c to column k.
func (a band) from(k, c int) []float64 {
	return a.rows[k*(a.width+1)+c-k+a.width : (k+1)*(a.width+1)]
}

// factorise puts Cholesky's lower factor in the matrix's place, row by row, with the diagonal inverted. Nothing fills
// in outside the band. Work: n·width²/2 multiplications. Four columns are taken at once, so that each number of the row
// is fetched once for four products; what columns of one four owe each other is made up afterwards.
func (a band) factorise() {
	for k := range a.n {
		first := max(k-a.width, 0)
		row, last := a.from(k, first), k-first
		c := 0
		for ; c+4 <= last; c += 4 {
			p, q, r, s := a.from(first+c, first), a.from(first+c+1, first), a.from(first+c+2, first), a.from(first+c+3, first)
			sp, sq, sr, ss := dots(row[:c], p, q, r, s)
			v0 := (row[c] - sp) * p[c]
			v1 := (row[c+1] - sq - v0*q[c]) * q[c+1]
			v2 := (row[c+2] - sr - v0*r[c] - v1*r[c+1]) * r[c+2]
			v3 := (row[c+3] - ss - v0*s[c] - v1*s[c+1] - v2*s[c+2]) * s[c+3]
			row[c], row[c+1], row[c+2], row[c+3] = v0, v1, v2, v3
		}
		for ; c < last; c++ {
			other := a.from(first+c, first)
			row[c] = (row[c] - dot(row[:c], other)) * other[c]
		}
		row[last] = 1 / math.Sqrt(row[last]-dot(row[:last], row))
	}
}

// solve puts the solution in the place of b, after factorise.
func (a band) solve(b []float64) {
	for k := range a.n {
		first := max(k-a.width, 0)
		row := a.from(k, first)
		b[k] = (b[k] - dot(row[:k-first], b[first:k])) * row[k-first]
	}
	for k := a.n - 1; k >= 0; k-- {
		first := max(k-a.width, 0)
		row := a.from(k, first)
		b[k] *= row[k-first]
		for c, v := range row[:k-first] {
			b[first+c] -= v * b[k]
		}
	}
}

// dot is the scalar product of a and the beginning of b.
func dot(a, b []float64) (sum float64) {
	b = b[:len(a)]
	for i, v := range a {
		sum += v * b[i]
	}
	return sum
}

// dots gives the scalar products of a and the beginnings of four others.
func dots(a, p, q, r, s []float64) (sp, sq, sr, ss float64) {
	p, q, r, s = p[:len(a)], q[:len(a)], r[:len(a)], s[:len(a)]
	for i, v := range a {
		sp += v * p[i]
		sq += v * q[i]
		sr += v * r[i]
		ss += v * s[i]
	}
	return sp, sq, sr, ss
}
