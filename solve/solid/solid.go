package solid

import "math"

// Solid is a union of prisms. Volume, Middle and SharedVolume count what lies in two of them twice; the prisms of a sweep may overlap.
type Solid []Prism

// Bounds is the box about the whole.
func (s Solid) Bounds() Bounds {
	b := Nothing
	for _, p := range s {
		b = b.Join(p.Bounds())
	}
	return b
}

// Moved is the solid elsewhere.
func (s Solid) Moved(dx, dy, dz float64) Solid {
	if dx == 0 && dy == 0 && dz == 0 {
		return s
	}
	n := 0
	for _, p := range s {
		n += len(p.Outline)
	}
	points, moved := make([]Point, 0, n), make(Solid, len(s))
	for i, p := range s {
		from := len(points)
		for _, v := range p.Outline {
			points = append(points, Point{v.X + dx, v.Y + dy})
		}
		moved[i] = Prism{points[from:len(points):len(points)], p.Low + dz, p.High + dz}
	}
	return moved
}

// Turned is the solid turned counter-clockwise seen from +z, by an angle in radians about an upright axis.
func (s Solid) Turned(about Point, angle float64) Solid {
	turned := make(Solid, len(s))
	for i, p := range s {
		turned[i] = p.Turned(about, angle)
	}
	return turned
}

// Volume of the whole.
func (s Solid) Volume() float64 {
	sum := 0.0
	for _, p := range s {
		sum += p.Volume()
	}
	return sum
}

// Middle is the centre of volume; of a solid without volume it is the middle of its bounds.
func (s Solid) Middle() (x, y, z float64) {
	sum := 0.0
	for _, p := range s {
		px, py, pz := p.Middle()
		v := p.Volume()
		x, y, z, sum = x+v*px, y+v*py, z+v*pz, sum+v
	}
	if sum > 0 {
		return x / sum, y / sum, z / sum
	}
	b := s.Bounds()
	return (b.MinX + b.MaxX) / 2, (b.MinY + b.MaxY) / 2, (b.MinZ + b.MaxZ) / 2
}

// SharedVolume is the volume that two solids have in common.
func (s Solid) SharedVolume(o Solid) float64 {
	sum := 0.0
	for _, p := range s {
		for _, q := range o {
			sum += SharedVolume(p, q)
		}
	}
	return sum
}

// Distance between two solids; 0 if they touch or overlap.
func (s Solid) Distance(o Solid) float64 {
	least := math.Inf(1)
	for _, p := range s {
		for _, q := range o {
			if least = min(least, Distance(p, q)); least == 0 {
				return 0
			}
		}
	}
	return least
}
