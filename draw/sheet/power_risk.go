package sheet

import (
	"cmp"
	"slices"

	"tumblehome/trade/power"
)

// equalRisk is the line through a chart along which so large a share of nights is flat, from small batteries to large ones: through each edge of the grid on
// which the share is passed. No share rises with a larger battery or panel, so that sorting these places makes the line.
func equalRisk(c power.Chart, share float64) []place {
	var line []place
	for i, watts := range c.Watts {
		for j, ah := range c.AmpHours {
			if j > 0 {
				if t, ok := passed(c.Share[i][j-1], c.Share[i][j], share); ok {
					line = append(line, place{c.AmpHours[j-1] + t*(ah-c.AmpHours[j-1]), watts})
				}
			}
			if i > 0 {
				if t, ok := passed(c.Share[i-1][j], c.Share[i][j], share); ok {
					line = append(line, place{ah, c.Watts[i-1] + t*(watts-c.Watts[i-1])})
				}
			}
		}
	}
	slices.SortFunc(line, func(a, b place) int { return cmp.Or(cmp.Compare(a[0], b[0]), cmp.Compare(b[1], a[1])) })
	return slices.Compact(line)
}

// passed is where between two places, from 0 to 1, a falling share passes a value; not where it begins on it, or a corner of the grid would be met twice.
func passed(before, after, share float64) (float64, bool) {
	if before <= share || after > share {
		return 0, false
	}
	return (before - share) / (before - after), true
}
