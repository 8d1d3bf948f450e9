package sheet

import "math"

// form is the outline of a person as shares of stature, seen three ways: from above (ahead, aside), from the front (aside, up) and
// in profile (ahead, up). They are our own drawing after the mean proportions of catalogue/people; good for a picture, not for a chair.
type form struct {
	above, headAbove     []place
	front, headFront     []place
	profile, headProfile []place
}

// hollow is how far the hollow of the knee of who sits lies ahead of the seat's point, a share of stature.
const hollow = 0.2

var forms = map[string]form{
	// The crown at 0, 0; ahead is towards the feet, up from what is lain on.
	"lies": {
		above: mirrored(1, []place{
			{0.135, 0.032}, {0.165, 0.085}, {0.195, 0.122}, {0.30, 0.136}, {0.40, 0.134}, {0.475, 0.118}, {0.50, 0.104}, {0.62, 0.092},
			{0.74, 0.066}, {0.84, 0.062}, {0.945, 0.042}, {0.985, 0.055}, {1.0, 0.04}, {0.985, 0.015}, {0.90, 0.010}, {0.70, 0.008},
		}),
		headAbove: ellipse(0.068, 0, 0.068, 0.048),
		front:     ellipse(0, 0.066, 0.125, 0.064),
		headFront: ellipse(0, 0.088, 0.047, 0.055),
		profile: []place{
			{0.14, 0.10}, {0.20, 0.125}, {0.28, 0.135}, {0.40, 0.118}, {0.52, 0.112}, {0.64, 0.098}, {0.74, 0.088}, {0.86, 0.058}, {0.945, 0.06},
			{0.965, 0.135}, {0.99, 0.145}, {1.0, 0.05}, {0.985, 0.0}, {0.88, 0.004}, {0.74, 0.012}, {0.54, 0.0}, {0.30, 0.0}, {0.17, 0.015}, {0.135, 0.045},
		},
		headProfile: ellipse(0.066, 0.078, 0.066, 0.055),
	},
	// The seat's point under the hips at 0, 0.
	"sits": {
		above: []place{
			{-0.07, 0}, {-0.06, -0.11}, {0.0, -0.13}, {0.06, -0.105}, {0.2, -0.09}, {0.285, -0.075}, {0.34, -0.065}, {0.345, -0.03}, {0.28, -0.015}, {0.14, 0},
			{0.28, 0.015}, {0.345, 0.03}, {0.34, 0.065}, {0.285, 0.075}, {0.2, 0.09}, {0.06, 0.105}, {0.0, 0.13}, {-0.06, 0.11},
		},
		headAbove: ellipse(0.0, 0, 0.058, 0.046),
		front: mirrored(0, []place{
			{0.033, 0.385}, {0.085, 0.365}, {0.12, 0.335}, {0.137, 0.24}, {0.135, 0.13}, {0.118, 0.05}, {0.10, 0.0}, {0.082, -0.12}, {0.062, -0.22},
			{0.075, -0.255}, {0.03, -0.258}, {0.022, -0.15}, {0.012, 0.0},
		}),
		headFront: ellipse(0, 0.455, 0.046, 0.064),
		profile: []place{
			{-0.07, 0.012}, {-0.082, 0.08}, {-0.066, 0.17}, {-0.078, 0.29}, {-0.045, 0.37}, {-0.01, 0.395}, {0.025, 0.375}, {0.055, 0.30}, {0.062, 0.18}, {0.085, 0.10},
			{0.18, 0.09}, {0.27, 0.08}, {0.298, 0.04}, {0.29, -0.08}, {0.272, -0.205}, {0.345, -0.242}, {0.35, -0.258}, {0.225, -0.258}, {0.232, -0.17}, {0.212, -0.08},
			{0.2, -0.004}, {0.1, 0.0}, {0.0, 0.0},
		},
		headProfile: ellipse(0.0, 0.455, 0.056, 0.064),
	},
	// The soles at 0, 0.
	"stands": {
		above:     ellipse(0, 0, 0.07, 0.13),
		headAbove: ellipse(0.005, 0, 0.058, 0.046),
		front: mirrored(0, []place{
			{0.033, 0.865}, {0.085, 0.845}, {0.12, 0.815}, {0.138, 0.70}, {0.142, 0.58}, {0.138, 0.46}, {0.115, 0.445}, {0.105, 0.52}, {0.098, 0.40},
			{0.075, 0.26}, {0.062, 0.08}, {0.075, 0.012}, {0.055, 0.0}, {0.028, 0.004}, {0.018, 0.15}, {0.008, 0.44},
		}),
		headFront: ellipse(0, 0.935, 0.046, 0.064),
		profile: []place{
			{-0.032, 0.865}, {-0.075, 0.78}, {-0.062, 0.66}, {-0.045, 0.60}, {-0.078, 0.51}, {-0.05, 0.36}, {-0.052, 0.20}, {-0.03, 0.06}, {-0.045, 0.006},
			{0.03, 0.0}, {0.105, 0.004}, {0.085, 0.03}, {0.025, 0.06}, {0.02, 0.18}, {0.035, 0.28}, {0.05, 0.40}, {0.058, 0.52}, {0.056, 0.62}, {0.068, 0.74}, {0.05, 0.82}, {0.022, 0.858},
		},
		headProfile: ellipse(0.008, 0.935, 0.056, 0.064),
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
