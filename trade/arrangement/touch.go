package arrangement

import "tumblehome/solve/solid"

// step is the widest spacing [mm] at which curved surfaces are looked at, besides where the room is known to step or bend.
const step = 150

// reach is how far the prism must move along the surface's axis so that its first point touches it, or with last its last point.
func reach(p solid.Prism, f *frame, s side, last bool) float64 {
	sign := 1.0
	if high(s) {
		sign = -1
	}
	if !f.curved[s] || !last {
		return sign * p.ExcessAt(f, s, step)
	}
	b := p.Bounds()
	xs, heights := solid.Steps(f)
	along := solid.Places(nil, b.MinX, b.MaxX, step, xs)
	up := solid.Places(nil, b.MinZ, b.MaxZ, step, heights)
	switch s {
	case left:
		return -solid.Greatest(along, up, func(x, z float64) float64 {
			low, _ := p.Across(x)
			return low - f.Left(x, z)
		})
	case right:
		return solid.Greatest(along, up, func(x, z float64) float64 {
			_, high := p.Across(x)
			return f.Right(x, z) - high
		})
	}
	return solid.Greatest(along, solid.Places(nil, b.MinY, b.MaxY, step, nil), func(x, y float64) float64 {
		return f.Roof(x, y) - p.High
	})
}

// faceAt is where a face lies for the prism: for a curved one where the prism would touch first.
func faceAt(p solid.Prism, f *frame, s side, last bool) float64 {
	if !f.curved[s] {
		return f.faces[s]
	}
	b := p.Bounds()
	switch s {
	case left:
		return b.MinY + reach(p, f, s, last)
	case right:
		return b.MaxY + reach(p, f, s, last)
	}
	return p.High + reach(p, f, s, last)
}
