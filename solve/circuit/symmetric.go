package circuit

import "math"

// A symmetric matrix, of which the lower triangle is kept row by row.
type symmetric struct {
	n     int
	lower []float64
}

func newSymmetric(n int) symmetric { return symmetric{n, make([]float64, n*(n+1)/2)} }

func (m symmetric) row(k int) []float64 { return m.lower[k*(k+1)/2 : k*(k+1)/2+k+1] }

// conduct adds a conductance between two rows; -1 stands for the reference.
func (m symmetric) conduct(a, b int, g float64) {
	if a >= 0 {
		m.row(a)[a] += g
	}
	if b >= 0 {
		m.row(b)[b] += g
	}
	if a >= 0 && b >= 0 {
		m.row(max(a, b))[min(a, b)] -= g
	}
}

// factorise puts Cholesky's lower factor in the matrix's place and says whether the matrix is positive definite.
func (m symmetric) factorise() bool {
	for k := range m.n {
		row := m.row(k)
		first := 0 // nothing fills in before the first entry of a row
		for first < k && row[first] == 0 {
			first++
		}
		for c := first; c < k; c++ {
			other := m.row(c)
			row[c] = (row[c] - dot(row[first:c], other[first:c])) / other[c]
		}
		rest := row[k] - dot(row[first:k], row[first:k])
		if !(rest > 0) {
			return false
		}
		row[k] = math.Sqrt(rest)
	}
	return true
}

// solve puts the solution in the place of b, after factorise.
func (m symmetric) solve(b []float64) {
	for k := range m.n {
		row := m.row(k)
		b[k] = (b[k] - dot(row[:k], b[:k])) / row[k]
	}
	for k := m.n - 1; k >= 0; k-- {
		row := m.row(k)
		b[k] /= row[k]
		for c, v := range row[:k] {
			b[c] -= v * b[k]
		}
	}
}

func dot(a, b []float64) (sum float64) {
	b = b[:len(a)]
	for i, v := range a {
		sum += v * b[i]
	}
	return sum
}
