package sheet

import "math"

// bend is how far [mm] a line may be off the curve that it follows.
const bend = 1.5

// follow samples a curve from one place to another: at even places not further apart than a step, and closer where it bends or jumps.
func follow(from, to, step float64, f func(float64) float64) []place {
	n := max(1, int(math.Ceil(math.Abs(to-from)/step)))
	u, v := from, f(from)
	out := []place{{u, v}}
	for i := 1; i <= n; i++ {
		u1 := from + (to-from)*float64(i)/float64(n)
		v1 := f(u1)
		out = closer(out, u, v, u1, v1, f)
		u, v = u1, v1
	}
	return thinned(out)
}

func closer(out []place, u0, v0, u1, v1 float64, f func(float64) float64) []place {
	if math.Abs(u1-u0) > 2 {
		if m := (u0 + u1) / 2; math.Abs(f(m)-(v0+v1)/2) > bend {
			v := f(m)
			out = closer(out, u0, v0, m, v, f)
			return closer(out, m, v, u1, v1, f)
		}
	}
	return append(out, place{u1, v1})
}
