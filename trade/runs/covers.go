package runs

// Cover is what hides a part of a way, or what it is inside of.
type Cover struct {
	How      string  // lining, inside, behind
	Pointer  string  // of the layer or the fitting
	Name     string  // of it
	From, To float64 // along the way [mm]
}

// How a way is covered.
const (
	UnderLining = "lining"
	Inside      = "inside"
	Behind      = "behind"
)

// reach is how far before a surface a fitting still hides what lies on it [mm]: practice, an arm's length would reach further.
const reach = 600

// covers says what lies over a way: layers of the lining, fittings it is led through, fittings that stand before it.
func (w *worker) covers(line []Point) []Cover {
	var out []Cover
	along := lengths(line)
	for i := 0; i+1 < len(line); i++ {
		a, b, from, long := line[i], line[i+1], along[i], along[i+1]-along[i]
		add := func(how, pointer, name string, s stretch) {
			if (s.to-s.from)*long > grazed {
				out = extended(out, Cover{how, pointer, name, from + s.from*long, from + s.to*long})
			}
		}
		w.underLining(a, b, add)
		surface, _ := w.surfaceAt(between(a, b, 0.5))
		for k := range w.in.Things {
			t := &w.in.Things[k]
			var within []stretch
			if t.Hollow && !inBox(a, b, t.Box).empty() {
				within = inSolid(a, b, t.Solid)
			}
			for _, s := range within {
				add(Inside, "/fittings/"+t.ID, t.Name, s)
			}
			if s := t.behind(a, b, surface); len(within) == 0 && !s.empty() {
				add(Behind, "/fittings/"+t.ID, t.Name, s)
			}
		}
	}
	return out
}

// extended adds a cover, as the continuation of one that ends where it begins if there is such a one.
func extended(all []Cover, c Cover) []Cover {
	for i := range all {
		if d := &all[i]; d.How == c.How && d.Pointer == c.Pointer && c.From <= d.To+1 {
			d.To = max(d.To, c.To)
			return all
		}
	}
	return append(all, c)
}

// underLining asks in the middle of a leg, or of each metre of it, which layers lie nearer to the room.
func (w *worker) underLining(a, b Point, add func(how, pointer, name string, s stretch)) {
	if w.in.Laid == nil {
		return
	}
	const every = 250
	n := int(distance(a, b)/every) + 1
	for k := range n {
		s := stretch{float64(k) / float64(n), float64(k+1) / float64(n)}
		p := between(a, b, s.middle())
		surface, before := w.surfaceAt(p)
		if surface == "" || before > -sheet || w.inCab(p) {
			continue
		}
		for _, l := range w.in.Laid(surface, p, -before) {
			add(UnderLining, l.Pointer, l.Name, s)
		}
	}
}

// behind is the stretch of a leg on a surface that a fitting stands before: seen square to the surface.
func (t *Thing) behind(a, b Point, surface string) stretch {
	none := stretch{}
	box := t.Box
	switch surface {
	case left:
		box.MinY -= reach
	case right:
		box.MaxY += reach
	case roof:
		box.MaxZ += reach
	case floor:
		box.MinZ -= reach
	default:
		return none
	}
	s := inBox(a, b, box)
	if s.empty() || !t.nextTo(surface, between(a, b, s.middle())) {
		return none
	}
	return s
}

// nextTo says whether a thing stands within an arm's length before a place on a surface.
func (t *Thing) nextTo(surface string, p Point) bool {
	gap := map[string]float64{left: t.Box.MinY - p[1], right: p[1] - t.Box.MaxY, roof: p[2] - t.Box.MaxZ, floor: t.Box.MinZ - p[2]}[surface]
	return gap < reach && gap > -near-sheet
}
