package conduction

import "fmt"

// Accuracy says how good an answer must be. At least one of the two must be asked for.
type Accuracy struct {
	Coupling float64 // greatest relative error of the heat flow, say 0.005; 0 does not ask
	// Temperature is the greatest error of temperatures, as a share of the difference between the warmest and the
	// coldest surroundings; 0 does not ask. Heat flow is a sum and comes right sooner: who wants temperatures must
	// ask for them.
	Temperature float64
	Points      []Point // where Temperature holds, besides the coldest and warmest spot of each boundary
}

// Missed is the error of a section that could not be solved as accurately as asked with MostPoints. The result that
// comes with it is sound and says how accurate it is.
type Missed struct {
	Asked       Accuracy
	Coupling    float64 // reached, relative
	Temperature float64 // reached, K; 0 when it was not come to
}

func (m *Missed) Error() string {
	return fmt.Sprintf("section: heat flow is known to %.2g and temperature to %.2g K with %d points, asked for %.2g and a share of %.2g",
		m.Coupling, m.Temperature, MostPoints, m.Asked.Coupling, m.Asked.Temperature)
}

// MostPoints is how many points a mesh may have.
const MostPoints = 25_000

// fewest is the number of columns and of rows to begin with.
const fewest = 6

// Solve works out the steady state of a section. Errors: *Fault when the section cannot be solved, *Missed when what
// was asked is out of reach.
//
// The mesh is refined where the two networks differ until the heat flow is known well enough. Where temperatures are
// asked for all cells are then halved; when that moves them by more than their error may be, refining goes on. Errors
// fall faster than the size of the cells, so what is left is less than what the last halving moved.
func Solve(s Section, want Accuracy) (Result, error) {
	if err := s.check(); err != nil {
		return Result{}, err
	}
	if !(want.Coupling > 0 || want.Temperature > 0) {
		return Result{}, &Fault{"section", "no accuracy is asked for"}
	}
	x, y := baseLines(s)
	if len(x)*len(y) > MostPoints {
		return Result{}, &Fault{"section", fmt.Sprintf("its edges cross %d times, more than %d", len(x)*len(y), MostPoints)}
	}
	m := newMesh(s, x, y)
	if err := m.check(s); err != nil {
		return Result{}, err
	}
	endless := m.checkJumps(s)
	if want.Coupling > 0 && endless != nil {
		return Result{}, endless
	}
	m = newMesh(s, atLeast(x, fewest), atLeast(y, fewest))
	return search(s, m, want, endless == nil)
}

// firstCoupling is how well the heat flow must be known before temperatures are looked at, where it is not asked for
// itself.
const firstCoupling = 0.01

const rounding = 1e-9 // K

// search refines the mesh until what is wanted is met. finite says that there is no endless heat flow, so that the
// networks' difference tells where to refine; each time that temperatures still move the flow is asked for more exactly.
func search(s Section, m mesh, want Accuracy, finite bool) (Result, error) {
	cold, warm := s.extremes()
	coupling := want.Coupling
	if !(coupling > 0) {
		coupling = firstCoupling
	}
	now, moved := s.at(m), 0.0
	for {
		for finite && now.result.CouplingError > coupling {
			if m = m.refined(s, now.above, now.streams); m.points() > MostPoints {
				return missed(want, now.result, moved)
			}
			now = s.at(m)
		}
		if !(want.Temperature > 0) {
			return now.result, nil
		}
		finer := m.halved(s)
		if finer.points() > MostPoints {
			return missed(want, now.result, moved)
		}
		next := s.at(finer)
		moved = next.result.moved(now.result, want.Points)
		next.result.TemperatureError = moved
		if moved <= want.Temperature*(warm-cold)+rounding {
			return next.result, nil
		}
		if finite && now.result.CouplingError > 0 {
			coupling = now.result.CouplingError / 3
		} else {
			m, now = finer, next
		}
	}
}

func missed(want Accuracy, r Result, moved float64) (Result, error) {
	r.TemperatureError = moved
	return r, &Missed{want, r.CouplingError, moved}
}
