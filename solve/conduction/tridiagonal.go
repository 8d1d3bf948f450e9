package conduction

// A tridiagonal matrix, kept after factorise as the factors of Gauss without exchanges, which diagonal dominance allows.
type tridiagonal struct{ below, diagonal, above []float64 }

func newTridiagonal(n int) tridiagonal {
	return tridiagonal{make([]float64, n), make([]float64, n), make([]float64, n)}
}

func (m tridiagonal) factorise() {
	for k := 1; k < len(m.diagonal); k++ {
		m.below[k] /= m.diagonal[k-1]
		m.diagonal[k] -= m.below[k] * m.above[k-1]
	}
}

// solve puts the solution in the place of b.
func (m tridiagonal) solve(b []float64) {
	last := len(b) - 1
	for k := 1; k <= last; k++ {
		b[k] -= m.below[k] * b[k-1]
	}
	b[last] /= m.diagonal[last]
	for k := last - 1; k >= 0; k-- {
		b[k] = (b[k] - m.above[k]*b[k+1]) / m.diagonal[k]
	}
}
