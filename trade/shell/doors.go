package shell

// A Door is a door of the load space, as something that can be lined: the
// opening less its glass and the openings in it.
type Door struct {
	ID       string
	Surface  string
	From, To float64 // along x on a side, along y in front or rear
	Low, Up  float64 // heights
	Net      float64 // m2
	Centre   [3]float64
}

// Doors are the doors through sides, front and rear, by surface and id.
func (b *Body) Doors() []Door {
	var doors []Door
	for _, surface := range []string{Left, Right, Front, Rear} {
		for _, o := range b.counted(surface) {
			along, across, ok := o.window()
			if o.Door == "" || !ok {
				continue
			}
			p := b.opening(o, -far, far, -far, far)
			door := Door{ID: o.ID, Surface: surface, From: along[0], To: along[1], Low: across[0], Up: across[1], Centre: [3]float64{p.X, p.Y, p.Z}}
			door.Net = max(0, p.Area/1e6-b.glass(o))
			doors = append(doors, door)
		}
	}
	return doors
}

// glass is the glazed area of a door in m2 with that of the openings in it.
func (b *Body) glass(door Opening) float64 {
	area := float64(door.Glazed)
	for _, o := range b.openings {
		if o.In == door.ID && o.ID != door.ID {
			area += b.opening(o, -far, far, -far, far).Area / 1e6
		}
	}
	return area
}
