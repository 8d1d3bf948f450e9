package fit

import (
	"math/rand/v2"
	"testing"
)

// A cell is kept when the whole square about it is open, and has the same number as another when one is flooded from the other: both
// looked up cell by cell.
func TestSquaresAndPartsOfAGridAreThoseLookedUpCellByCell(t *testing.T) {
	random := rand.New(rand.NewPCG(3, 1))
	for range 12 {
		nx, ny := 1+random.IntN(18), 1+random.IntN(18)
		open := make([]bool, nx*ny)
		for c := range open {
			open[c] = random.Float64() < 0.75
		}
		for _, side := range []int{1, 3, 4, 15} {
			for c, is := range whole(open, nx, ny, side) {
				if want := squareOpen(open, nx, ny, c, side/2); is != want {
					t.Fatalf("%d by %d, side %d: cell %d is %v, want %v", nx, ny, side, c, is, want)
				}
			}
		}
		part := connected(open, nx, ny)
		for c := range open {
			seen := flooded(open, nx, ny, c)
			for d := range open {
				if together := part[c] != 0 && part[c] == part[d]; together != seen[d] {
					t.Fatalf("%d by %d: cells %d and %d hang together: %v", nx, ny, c, d, together)
				}
			}
		}
	}
}

func squareOpen(open []bool, nx, ny, c, half int) bool {
	for i := max(0, c/ny-half); i <= min(nx-1, c/ny+half); i++ {
		for j := max(0, c%ny-half); j <= min(ny-1, c%ny+half); j++ {
			if !open[i*ny+j] {
				return false
			}
		}
	}
	return true
}

func flooded(open []bool, nx, ny, from int) []bool {
	seen := make([]bool, len(open))
	if seen[from] = open[from]; !open[from] {
		return seen
	}
	for next := []int{from}; len(next) > 0; next = next[1:] {
		c := next[0]
		for i := max(0, c/ny-1); i <= min(nx-1, c/ny+1); i++ {
			for j := max(0, c%ny-1); j <= min(ny-1, c%ny+1); j++ {
				if n := i*ny + j; open[n] && !seen[n] {
					seen[n], next = true, append(next, n)
				}
			}
		}
	}
	return seen
}
