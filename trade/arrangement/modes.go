package arrangement

import (
	"maps"
	"slices"

	"tumblehome/build"
	"tumblehome/solve/solid"
)

// inMode is where everything is when each fitting takes the position the mode gives it, carried by what carries it.
func (w *worker) inMode(name string, m build.Mode) Mode {
	mode := Mode{Name: name, All: w.rest}
	changes := make(map[int]change)
	for _, id := range slices.Sorted(maps.Keys(m.Take)) {
		i, ok := w.place[id]
		if !ok || w.rest[i].Undecided != "" {
			continue
		}
		if c, changed := w.position(i, m.Take[id]); changed {
			changes[i] = c
			mode.Movers = append(mode.Movers, w.mover(i, m.Take[id], c))
		}
	}
	if len(changes) == 0 {
		return mode
	}
	mode.All = slices.Clone(w.rest)
	for i := range mode.All {
		w.carry(&mode.All[i], i, changes)
	}
	return mode
}

// position is what a named position does to a fitting: its moves in the order of their ids.
func (w *worker) position(i int, name string) (change, bool) {
	s := &w.rest[i]
	thing := w.in.Things[s.ID]
	amounts := thing.Positions[name]
	if len(amounts) == 0 {
		return change{}, false
	}
	moves := w.moves(s, thing)
	var sum change
	for _, id := range slices.Sorted(maps.Keys(amounts)) {
		m, ok := moves[id]
		share := shareOf(amounts[id], m.by)
		if !ok || share == 0 {
			continue
		}
		one := m.change(share, s.own, bodies[thing.Make], thing.Board).turnedBy(s.askew, middleOf(s.own))
		sum.steps = append(sum.steps, one.steps...)
		sum.adds = append(sum.adds, one.adds...)
		sum.through = append(sum.through, one.through...)
		sum.off = sum.off || one.off
		if one.stow != nil {
			sum.stow = one.stow
		}
	}
	return sum, true
}

// carry moves a fitting by its own position and then by those of what carries it, nearest first.
func (w *worker) carry(s *Standing, i int, changes map[int]change) {
	if s.Undecided != "" {
		return
	}
	for range len(w.rest) + 1 { // a ring of carriers was refused; never go round
		if c, ok := changes[i]; ok {
			w.apply(s, i, c)
		}
		if i = w.carrier[i]; i < 0 {
			return
		}
	}
}

// apply changes s by what happens to fitting i, which is s itself or carries it.
func (w *worker) apply(s *Standing, i int, c change) {
	if c.off {
		s.Off, s.Moved, s.Solid = true, true, nil
		return
	}
	steps := c.steps
	if c.stow != nil {
		steps = append(slices.Clone(steps), w.stowed(i, *c.stow))
	}
	if len(c.adds) > 0 && s.ID == w.rest[i].ID {
		s.Moved = true
		s.Solid = append(slices.Clip(s.Solid), c.adds...)
		s.Box = s.Box.Join(c.adds.Bounds())
	}
	for _, step := range steps {
		s.Moved = true
		s.Solid, s.Box = step.apply(s.Solid), step.box(s)
	}
	if len(s.Solid) > 0 {
		s.Middle[0], s.Middle[1], s.Middle[2] = middle(s.Solid)
	}
}

func middle(s solid.Solid) (x, y, z float64) { return s.Middle() }

// stowed is the shift from where a fitting rests to where it is stowed.
func (w *worker) stowed(i int, r rules) motion {
	s := w.rest[i]
	thing := w.in.Things[s.ID]
	from := s.Box
	w.stand(&s, thing, r)
	return motion{kind: shifts, shift: [3]float64{s.Box.MinX - from.MinX, s.Box.MinY - from.MinY, s.Box.MinZ - from.MinZ}}
}
