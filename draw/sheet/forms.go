package sheet

import "math"

// form is a person as shares of stature, seen three ways: from above (ahead, aside), from the front (aside, up) and in profile
// (ahead, up); each of several outlines, laid one over the other. They are our own drawing after the mean proportions of
// catalogue/people; good for a picture, not for a chair.
type form struct{ above, front, profile [][]place }

// hollow is how far the hollow of the knee of who sits lies ahead of the seat's point, a share of stature.
const hollow = 0.2

var forms = map[string]form{
	// The crown at 0, 0; ahead is towards the feet, up from what is lain on.
	"lies": {
		above: [][]place{
			mirrored(1, []place{
				{0.135, 0.032}, {0.165, 0.085}, {0.195, 0.122}, {0.30, 0.136}, {0.40, 0.134}, {0.475, 0.118}, {0.50, 0.104}, {0.62, 0.092},
				{0.74, 0.066}, {0.84, 0.062}, {0.945, 0.042}, {0.985, 0.055}, {1.0, 0.04}, {0.985, 0.015}, {0.90, 0.010}, {0.70, 0.008},
			}),
			ellipse(0.068, 0, 0.068, 0.048),
		},
		front: [][]place{ellipse(0, 0.085, 0.046, 0.055), ellipse(0, 0.052, 0.125, 0.052)},
		profile: [][]place{
			{
				{0.14, 0.10}, {0.20, 0.125}, {0.28, 0.135}, {0.40, 0.118}, {0.52, 0.112}, {0.64, 0.098}, {0.74, 0.088}, {0.86, 0.058}, {0.945, 0.06},
				{0.965, 0.135}, {0.99, 0.145}, {1.0, 0.05}, {0.985, 0.0}, {0.88, 0.004}, {0.74, 0.012}, {0.54, 0.0}, {0.30, 0.0}, {0.17, 0.015}, {0.135, 0.045},
			},
			ellipse(0.066, 0.078, 0.066, 0.055),
		},
	},
	// The seat's point under the hips at 0, 0.
	"sits": {
		above: [][]place{
			limb(place{0.02, 0.055}, place{0.3, 0.06}, 0.046, 0.034), limb(place{0.02, -0.055}, place{0.3, -0.06}, 0.046, 0.034),
			limb(place{0.3, 0.06}, place{0.36, 0.065}, 0.025, 0.02), limb(place{0.3, -0.06}, place{0.36, -0.065}, 0.025, 0.02),
			limb(place{0.0, 0.115}, place{0.15, 0.105}, 0.03, 0.024), limb(place{0.0, -0.115}, place{0.15, -0.105}, 0.03, 0.024),
			ellipse(-0.005, 0, 0.068, 0.125), ellipse(0.0, 0, 0.056, 0.044),
		},
		front: [][]place{
			mirrored(0, []place{{0.03, 0.39}, {0.075, 0.37}, {0.108, 0.34}, {0.1, 0.25}, {0.082, 0.14}, {0.095, 0.05}, {0.1, 0.0}, {0.04, -0.01}}),
			limb(place{0.118, 0.325}, place{0.132, 0.17}, 0.026, 0.022), limb(place{-0.118, 0.325}, place{-0.132, 0.17}, 0.026, 0.022),
			limb(place{0.132, 0.17}, place{0.085, 0.09}, 0.022, 0.018), limb(place{-0.132, 0.17}, place{-0.085, 0.09}, 0.022, 0.018),
			limb(place{0.06, -0.24}, place{0.07, -0.242}, 0.018, 0.016), limb(place{-0.06, -0.24}, place{-0.07, -0.242}, 0.018, 0.016),
			limb(place{0.066, 0.045}, place{0.058, -0.23}, 0.046, 0.026), limb(place{-0.066, 0.045}, place{-0.058, -0.23}, 0.046, 0.026),
			ellipse(0, 0.455, 0.045, 0.064),
		},
		profile: [][]place{
			{
				{-0.07, 0.012}, {-0.082, 0.08}, {-0.066, 0.17}, {-0.078, 0.29}, {-0.045, 0.37}, {-0.01, 0.395}, {0.025, 0.375}, {0.055, 0.30}, {0.062, 0.18}, {0.085, 0.10},
				{0.18, 0.09}, {0.27, 0.08}, {0.298, 0.04}, {0.29, -0.08}, {0.272, -0.205}, {0.345, -0.242}, {0.35, -0.258}, {0.225, -0.258}, {0.232, -0.17}, {0.212, -0.08},
				{0.2, -0.004}, {0.1, 0.0}, {0.0, 0.0},
			},
			limb(place{-0.01, 0.32}, place{0.015, 0.17}, 0.03, 0.024), limb(place{0.015, 0.16}, place{0.15, 0.11}, 0.024, 0.018),
			ellipse(0.0, 0.455, 0.056, 0.064),
		},
	},
	// The soles at 0, 0.
	"stands": {
		above: [][]place{ellipse(0, 0, 0.068, 0.125), limb(place{0.0, 0.11}, place{0.14, 0.09}, 0.028, 0.02), limb(place{0.0, -0.11}, place{0.14, -0.09}, 0.028, 0.02), ellipse(0.005, 0, 0.056, 0.044)},
		front: [][]place{
			mirrored(0, []place{
				{0.03, 0.87}, {0.08, 0.845}, {0.108, 0.82}, {0.1, 0.74}, {0.08, 0.64}, {0.093, 0.54}, {0.095, 0.45}, {0.078, 0.30}, {0.066, 0.22}, {0.05, 0.05},
				{0.062, 0.008}, {0.045, 0.0}, {0.025, 0.005}, {0.02, 0.2}, {0.008, 0.46},
			}),
			limb(place{0.118, 0.805}, place{0.132, 0.64}, 0.026, 0.022), limb(place{-0.118, 0.805}, place{-0.132, 0.64}, 0.026, 0.022),
			limb(place{0.132, 0.64}, place{0.135, 0.48}, 0.022, 0.018), limb(place{-0.132, 0.64}, place{-0.135, 0.48}, 0.022, 0.018),
			ellipse(0, 0.935, 0.045, 0.064),
		},
		profile: [][]place{
			{
				{-0.032, 0.865}, {-0.075, 0.78}, {-0.062, 0.66}, {-0.045, 0.60}, {-0.078, 0.51}, {-0.05, 0.36}, {-0.052, 0.20}, {-0.03, 0.06}, {-0.045, 0.006},
				{0.03, 0.0}, {0.105, 0.004}, {0.085, 0.03}, {0.025, 0.06}, {0.02, 0.18}, {0.035, 0.28}, {0.05, 0.40}, {0.058, 0.52}, {0.056, 0.62}, {0.068, 0.74}, {0.05, 0.82}, {0.022, 0.858},
			},
			limb(place{-0.005, 0.8}, place{0.0, 0.64}, 0.03, 0.024), limb(place{0.0, 0.63}, place{0.14, 0.62}, 0.024, 0.018),
			ellipse(0.008, 0.935, 0.056, 0.064),
		},
	},
	// The knees at 0, 0.
	"kneels": {
		above: [][]place{
			limb(place{0.02, 0.06}, place{-0.24, 0.06}, 0.045, 0.025), limb(place{0.02, -0.06}, place{-0.24, -0.06}, 0.045, 0.025),
			ellipse(0, 0, 0.068, 0.125), limb(place{0.0, 0.11}, place{0.14, 0.09}, 0.028, 0.02), limb(place{0.0, -0.11}, place{0.14, -0.09}, 0.028, 0.02), ellipse(0.005, 0, 0.056, 0.044),
		},
		front: [][]place{
			limb(place{0.055, 0.24}, place{0.065, 0.03}, 0.045, 0.03), limb(place{-0.055, 0.24}, place{-0.065, 0.03}, 0.045, 0.03),
			mirrored(0, []place{{0.03, 0.62}, {0.08, 0.595}, {0.108, 0.57}, {0.1, 0.49}, {0.08, 0.39}, {0.093, 0.29}, {0.095, 0.2}, {0.04, 0.19}}),
			limb(place{0.118, 0.555}, place{0.132, 0.39}, 0.026, 0.022), limb(place{-0.118, 0.555}, place{-0.132, 0.39}, 0.026, 0.022),
			ellipse(0, 0.685, 0.045, 0.064),
		},
		profile: [][]place{
			limb(place{0.01, 0.035}, place{-0.22, 0.025}, 0.035, 0.022), limb(place{-0.01, 0.25}, place{0.015, 0.04}, 0.06, 0.038),
			{
				{-0.032, 0.615}, {-0.075, 0.53}, {-0.062, 0.41}, {-0.045, 0.35}, {-0.078, 0.26}, {-0.05, 0.2}, {0.05, 0.2}, {0.058, 0.27}, {0.056, 0.37}, {0.068, 0.49}, {0.05, 0.57}, {0.022, 0.608},
			},
			limb(place{-0.005, 0.55}, place{0.0, 0.39}, 0.03, 0.024), limb(place{0.0, 0.38}, place{0.14, 0.37}, 0.024, 0.018),
			ellipse(0.008, 0.685, 0.056, 0.064),
		},
	},
	// On the floor with crossed legs, the hips at 0, 0.
	"squats": {
		above: [][]place{
			limb(place{0.02, 0.06}, place{0.16, 0.18}, 0.05, 0.036), limb(place{0.02, -0.06}, place{0.16, -0.18}, 0.05, 0.036),
			limb(place{0.16, 0.18}, place{0.19, -0.05}, 0.034, 0.024), limb(place{0.16, -0.18}, place{0.2, 0.05}, 0.034, 0.024),
			limb(place{0.0, 0.115}, place{0.15, 0.105}, 0.03, 0.024), limb(place{0.0, -0.115}, place{0.15, -0.105}, 0.03, 0.024),
			ellipse(-0.005, 0, 0.068, 0.125), ellipse(0.0, 0, 0.056, 0.044),
		},
		front: [][]place{
			mirrored(0, []place{{0.03, 0.39}, {0.075, 0.37}, {0.108, 0.34}, {0.1, 0.25}, {0.082, 0.14}, {0.095, 0.05}, {0.1, 0.01}, {0.04, 0.005}}),
			limb(place{0.06, 0.05}, place{0.18, 0.07}, 0.045, 0.034), limb(place{-0.06, 0.05}, place{-0.18, 0.07}, 0.045, 0.034),
			limb(place{0.18, 0.06}, place{-0.04, 0.03}, 0.032, 0.024), limb(place{-0.18, 0.06}, place{0.04, 0.03}, 0.032, 0.024),
			limb(place{0.118, 0.325}, place{0.132, 0.17}, 0.026, 0.022), limb(place{-0.118, 0.325}, place{-0.132, 0.17}, 0.026, 0.022),
			ellipse(0, 0.455, 0.045, 0.064),
		},
		profile: [][]place{
			{
				{-0.07, 0.012}, {-0.082, 0.08}, {-0.066, 0.17}, {-0.078, 0.29}, {-0.045, 0.37}, {-0.01, 0.395}, {0.025, 0.375}, {0.055, 0.30}, {0.062, 0.18}, {0.085, 0.11},
				{0.15, 0.11}, {0.2, 0.08}, {0.22, 0.03}, {0.2, 0.004}, {0.1, 0.0}, {0.0, 0.0},
			},
			limb(place{-0.01, 0.32}, place{0.015, 0.17}, 0.03, 0.024), limb(place{0.015, 0.16}, place{0.15, 0.15}, 0.024, 0.018),
			ellipse(0.0, 0.455, 0.056, 0.064),
		},
	},
}

// mirrored completes one half of an outline with the other, on the far side of one of its axes.
func mirrored(axis int, half []place) []place {
	out := append([]place{}, half...)
	for i := len(half) - 1; i >= 0; i-- {
		p := half[i]
		p[axis] = -p[axis]
		out = append(out, p)
	}
	return out
}

func ellipse(u, v, a, b float64) []place {
	const n = 10
	out := make([]place, n)
	for i := range out {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / n)
		out[i] = place{u + a*cos, v + b*sin}
	}
	return out
}

// limb is an arm or a leg: round ends of two radii about two places.
func limb(a, b place, ra, rb float64) []place {
	along := math.Atan2(b[1]-a[1], b[0]-a[0])
	var out []place
	for i := range 5 {
		sin, cos := math.Sincos(along + math.Pi/2 + math.Pi*float64(i)/4)
		out = append(out, place{a[0] + ra*cos, a[1] + ra*sin})
	}
	for i := range 5 {
		sin, cos := math.Sincos(along - math.Pi/2 + math.Pi*float64(i)/4)
		out = append(out, place{b[0] + rb*cos, b[1] + rb*sin})
	}
	return out
}
