package conduction

import "fmt"

// check gives the first fault that shows once the section is cut up.
func (m mesh) check(s Section) error {
	seen := map[face]int{}
	for _, f := range m.faces {
		where := named("boundaries", f.boundary, s.Boundaries[f.boundary].Name)
		at := fmt.Sprintf("at (%g, %g)", m.x[f.i], m.y[f.j])
		if f.cell < 0 {
			return &Fault{where, at + " it is not on a surface: there must be material on one side and none on the other"}
		}
		key := face{i: f.i, j: f.j, upright: f.upright}
		if other, taken := seen[key]; taken {
			return &Fault{where, fmt.Sprintf("%s it lies on boundaries[%d]", at, other)}
		}
		seen[key] = f.boundary
	}
	return m.regionFault(s)
}

// regionFault finds a region that others hide, and one that is joined to no boundary.
func (m mesh) regionFault(s Section) error {
	joined, visible := m.joined(), make([]bool, len(s.Regions))
	for c, k := range m.owner {
		if k < 0 {
			continue
		}
		visible[k] = true
		if !joined[c] {
			return &Fault{named("regions", k, s.Regions[k].Name), "no boundary is joined to it, so it has no temperature"}
		}
	}
	for k, shown := range visible {
		if !shown {
			return &Fault{named("regions", k, s.Regions[k].Name), "later regions hide all of it: list what lies on top last"}
		}
	}
	return nil
}

// joined marks the cells from which heat has a way to a boundary.
func (m mesh) joined() []bool {
	joined := make([]bool, len(m.owner))
	var queue []int
	reach := func(c int) {
		if c >= 0 && !joined[c] {
			joined[c] = true
			queue = append(queue, c)
		}
	}
	for _, f := range m.faces {
		reach(f.cell)
	}
	for len(queue) > 0 {
		i, j := queue[0]%(len(m.x)-1), queue[0]/(len(m.x)-1)
		queue = queue[1:]
		reach(m.solid(i-1, j))
		reach(m.solid(i+1, j))
		reach(m.solid(i, j-1))
		reach(m.solid(i, j+1))
	}
	return joined
}

// checkJumps finds where two surfaces held at different temperatures meet: no heat flow is finite there.
func (m mesh) checkJumps(s Section) error {
	holder := map[int]int{}
	for _, f := range m.faces {
		b := s.Boundaries[f.boundary]
		if b.Resistance != 0 {
			continue
		}
		p, q := m.ends(f)
		for _, point := range []int{p, q} {
			other, held := holder[point]
			if held && s.Boundaries[other].Temperature != b.Temperature {
				return &Fault{named("boundaries", f.boundary, b.Name), fmt.Sprintf(
					"at (%g, %g) it meets boundaries[%d], held at another temperature: heat flow is endless there, so ask for temperatures only",
					m.x[point%len(m.x)], m.y[point/len(m.x)], other)}
			}
			holder[point] = f.boundary
		}
	}
	return nil
}
