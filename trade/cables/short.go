package cables

import "tumblehome/trade/finding"

// Heat of a short: the cable must live until its fuse has gone.

const pvcCopper = 115.0 // A·√s/mm2, PVC on copper from 70 to 160 °C

var shortSource = finding.Source{Text: "I²t ≤ k²S², k = 115 for PVC on copper (IEC 60364-4-43)", Sure: finding.Read}

// Withstands is the I²t that a cable of copper and PVC lives through [A2s], by its cross-section [mm2]: k²S², for at most 5 s.
func Withstands(area float64) float64 { return pvcCopper * pvcCopper * area * area }

// letsThrough is the greatest I²t that a fuse of a rating lets pass before it has opened, within the 5 s for which k²S² holds. Beyond the last
// point of its table it melts after the same I²t.
func letsThrough(kind Kind, rating float64) float64 {
	limits, most := makes[kind].limits, 0.0
	if limits == nil {
		limits = stripTimes
	}
	for _, l := range limits {
		if l.most <= 5 {
			most = max(most, l.share*l.share*rating*rating*l.most)
		}
	}
	return most
}
