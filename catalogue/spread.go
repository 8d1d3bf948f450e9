package catalogue

import "strings"

// Half-widths of masses as shares of the mass. A row's own spread comes first,
// then the longest beginning of its id in this table, then its group, then its
// kind.
//
// Source: the ranges of published densities about the figure chosen, where a
// range is written beside it; otherwise common practice, from memory: panels
// 7 % (birch) to 20 % (mixed core), foam and wool 25 %, bought things 25 %.
var (
	massSpreadByBeginning = map[string]float64{
		"ply-birch":          0.07, // read: 650 to 710 kg/m3
		"ply-poplar":         0.15, // read: 426 to 550 about 440
		"ply-hardwood":       0.20, // memory: 480 to 650 with the core
		"ply-softwood":       0.15, // read: 460 to 650 about 520
		"ply-marine-light":   0.12, // read: 400 to 600 about 450
		"mdf":                0.10, // read: 680 to 830 about 750
		"chipboard":          0.08, // memory: 600 to 700 about 650
		"osb3":               0.07, // memory: 580 to 650 about 620
		"acrylic-sheet":      0.10,
		"alu":                0.10,
		"steel":              0.10,
		"cable":              0.15, // copper is fixed, insulation is not
		"tile-ceramic":       0.15,
		"container":          0.20,
		"battery":            0.10,
		"solar-rigid":        0.10,
		"gas-bottle":         0.10,
		"sound-butyl":        0.15, // memory: 3.0 to 3.6 kg/m2 at 2 mm
		"linoleum":           0.10,
		"pir":                0.15, // read: 28 to 36 about 32
		"xps":                0.20, // read: 28 to 45 about 32
		"worktop":            0.08,
		"vinyl":              0.15,
		"screw":              0.15,
		"bolt":               0.15,
		"seat-double-belted": 0.15,
	}
	massSpreadByGroup = map[string]float64{
		"plywood": 0.15, "board": 0.12, "insulation": 0.25, "timber": 0.20, // softwood 370 to 550 about 480
		"metal": 0.10, "soft": 0.25, "lining": 0.25, "floor": 0.15, "finish": 0.15, "bodywork": 0.15,
		"sealant": 0.15, "adhesive": 0.15,
	}
)

const massSpreadOtherwise = 0.25

// MassSpread is how far off a row's mass may be either way, as a share of it.
func MassSpread(id string, r Row) float64 {
	if r.Spread != nil {
		return r.Spread.Float()
	}
	for beginning := id; beginning != ""; {
		if s, ok := massSpreadByBeginning[beginning]; ok {
			return s
		}
		beginning = beginning[:max(0, strings.LastIndexByte(beginning, '-'))]
	}
	if s, ok := massSpreadByGroup[r.Group]; ok {
		return s
	}
	return massSpreadOtherwise
}

// PriceSpread is the least and the most a price of this standing (guess, quote,
// paid, free) may turn out to be, as multiples of it. A guess from memory runs
// low more often than high. Source: common practice of renovation budgets, from
// memory; a quote is given as good to 5 %.
func PriceSpread(standing string) (low, high float64) {
	switch standing {
	case "paid", "free":
		return 1, 1
	case "quote":
		return 0.95, 1.05
	}
	return 0.70, 1.50
}
