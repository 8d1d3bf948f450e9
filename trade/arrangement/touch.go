package arrangement

import "tumblehome/solve/solid"

// step is the widest spacing [mm] at which curved surfaces are looked at; narrower bumps that no corner meets are missed.
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
	along, up := solid.Every(b.MaxX-b.MinX, step), solid.Every(b.MaxZ-b.MinZ, step)
	switch s {
	case left:
		return -solid.Greatest(b.MinX, b.MaxX, b.MinZ, b.MaxZ, solid.Grid{U: along, V: up}, func(x, z float64) float64 {
			low, _ := p.Across(x)
			return low - f.Left(x, z)
		})
	case right:
		return solid.Greatest(b.MinX, b.MaxX, b.MinZ, b.MaxZ, solid.Grid{U: along, V: up}, func(x, z float64) float64 {
			_, high := p.Across(x)
			return f.Right(x, z) - high
		})
	}
	wide := solid.Every(b.MaxY-b.MinY, step)
	return solid.Greatest(b.MinX, b.MaxX, b.MinY, b.MaxY, solid.Grid{U: along, V: wide}, func(x, y float64) float64 {
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
