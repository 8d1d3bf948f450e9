package cables

import (
	"math"

	"tumblehome/trade/finding"
)

// What a single copper cable carries for good, alone in air of 30 °C, by the temperature that its insulation stands. Of two tables the lower counts.

// law is 33 CFR 183.425 table 5, amperes, by American gauge: read in full.
var law = ratings{
	columns: []float64{60, 75, 80, 90, 105, 125, 200},
	rows: []ratingRow{
		{gauge(18), []float64{10, 10, 15, 20, 20, 25, 25}}, {gauge(16), []float64{15, 15, 20, 25, 25, 30, 35}},
		{gauge(14), []float64{20, 20, 25, 30, 35, 40, 45}}, {gauge(12), []float64{25, 25, 35, 40, 45, 50, 55}},
		{gauge(10), []float64{40, 40, 50, 55, 60, 70, 70}}, {gauge(8), []float64{55, 65, 70, 70, 80, 90, 100}},
		{gauge(6), []float64{80, 95, 100, 100, 120, 125, 135}}, {gauge(4), []float64{105, 125, 130, 135, 160, 170, 180}},
		{gauge(3), []float64{120, 145, 150, 155, 180, 195, 210}}, {gauge(2), []float64{140, 170, 175, 180, 210, 225, 240}},
		{gauge(1), []float64{165, 195, 210, 210, 245, 265, 280}}, {gauge(0), []float64{195, 230, 245, 245, 285, 305, 325}},
		{gauge(-1), []float64{225, 265, 285, 285, 330, 355, 370}}, {gauge(-2), []float64{260, 310, 330, 330, 385, 410, 430}},
		{gauge(-3), []float64{300, 360, 385, 385, 445, 475, 510}},
	},
}

// iso is ISO 10133:2012 table A.1, amperes, by mm2: from memory. Its column for 85 to 90 °C is taken from 85 on.
var iso = ratings{
	columns: []float64{60, 70, 85, 105, 125, 200},
	rows: []ratingRow{
		{0.75, []float64{8, 10, 12, 16, 20, 25}}, {1, []float64{12, 14, 18, 20, 25, 35}}, {1.5, []float64{16, 18, 21, 25, 30, 40}},
		{2.5, []float64{20, 25, 30, 35, 40, 45}}, {4, []float64{30, 35, 40, 45, 50, 55}}, {6, []float64{40, 45, 50, 60, 70, 75}},
		{10, []float64{60, 65, 70, 90, 100, 120}}, {16, []float64{80, 90, 100, 130, 150, 170}}, {25, []float64{110, 120, 140, 170, 185, 200}},
		{35, []float64{140, 160, 185, 210, 225, 240}}, {50, []float64{180, 210, 230, 270, 300, 325}}, {70, []float64{220, 265, 285, 330, 360, 375}},
		{95, []float64{260, 310, 330, 390, 410, 430}}, {120, []float64{300, 360, 400, 450, 480, 520}}, {150, []float64{350, 380, 430, 475, 520, 560}},
	},
}

var (
	lawSource = finding.Source{Text: "33 CFR 183.425 table 5, single cable in air of 30 °C", Sure: finding.Read}
	isoSource = finding.Source{Text: "ISO 10133:2012 table A.1, single cable in air of 30 °C (from memory; withdrawn, agrees with the US table where sizes are close)", Sure: finding.Memory}
)

type ratings struct {
	columns []float64 // °C of the insulation
	rows    []ratingRow
}

type ratingRow struct {
	area float64 // mm2
	amps []float64
}

// at reads the row at or below a cross-section and the column at or below a temperature; false where the table does not go down so far.
func (r ratings) at(area, insulation float64) (float64, bool) {
	column, amps := -1, 0.0
	for i, t := range r.columns {
		if t <= insulation {
			column = i
		}
	}
	for _, row := range r.rows {
		if column >= 0 && row.area <= area*(1+1e-9) {
			amps = row.amps[column]
		}
	}
	return amps, amps > 0
}

// tableRating is the lower of the two tables [A], and which that is. Thinner than both tables go it falls with the cross-section.
func tableRating(area, insulation float64) (float64, finding.Source) {
	if thinnest := iso.rows[0].area; area < thinnest {
		amps, source := tableRating(thinnest, insulation)
		return amps * area / thinnest, source
	}
	amps, ok := iso.at(area, insulation)
	other, also := law.at(area, insulation)
	if also && (!ok || other <= amps) {
		return other, lawSource
	}
	return amps, isoSource
}

// gauge is the cross-section of American wire gauge n [mm2]; 0 stands for 1/0, -1 for 2/0 and so on: d = 0.127 mm · 92^((36 − n)/39), A = π·d²/4.
func gauge(n int) float64 {
	d := 0.127 * math.Pow(92, float64(36-n)/39)
	return math.Pi * d * d / 4
}
