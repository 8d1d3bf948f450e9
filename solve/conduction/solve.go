package conduction

import "fmt"

// Accuracy says how good an answer must be. At least one of the two must be asked for.
type Accuracy struct {
	Coupling    float64 // greatest relative error of the heat flow, say 0.005; 0 does not ask
	Temperature float64 // greatest error of temperatures, as a share of the difference between warmest and coldest surroundings; 0 does not ask
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

// Solve works out the steady state of a section. Errors: *Fault when the section cannot be solved, *Missed when it is
// not reached what was asked.
//
// The mesh is refined where the two networks differ until the heat flow is known well enough, and then halved
// throughout until temperatures are (see Accuracy): halving moves them by no more than their error was, and in the
// regular case by three quarters of it.
func Solve(s Section, want Accuracy) (Result, error) {
	if err := s.check(); err != nil {
		return Result{}, err
	}
	if !(want.Coupling > 0 || want.Temperature > 0) {
		return Result{}, &Fault{"section", "no accuracy is asked for"}
	}
	x, y := baseLines(s)
	m := newMesh(s, x, y)
	if err := m.check(s); err != nil {
		return Result{}, err
	}
	if want.Coupling > 0 {
		if err := m.checkJumps(s); err != nil {
			return Result{}, err
		}
	}
	m = newMesh(s, atLeast(split(x, every), fewest), atLeast(split(y, every), fewest))
	return search(s, m, want)
}

// search refines the mesh until what is wanted is met.
func search(s Section, m mesh, want Accuracy) (Result, error) {
	cold, warm := s.extremes()
	now := s.at(m)
	for want.Coupling > 0 && now.result.CouplingError > want.Coupling {
		finer := m.refined(s, now.above, now.streams)
		if finer.points() > MostPoints {
			return now.result, missed(want, now.result)
		}
		m, now = finer, s.at(finer)
	}
	for want.Temperature > 0 {
		finer := m.halved(s)
		if finer.points() > MostPoints {
			return now.result, missed(want, now.result)
		}
		before := now.result
		m, now = finer, s.at(finer)
		now.result.TemperatureError = now.result.moved(before, want.Points)
		if now.result.TemperatureError <= want.Temperature*(warm-cold) {
			break
		}
	}
	return now.result, nil
}

func missed(want Accuracy, r Result) error {
	return &Missed{want, r.CouplingError, r.TemperatureError}
}
