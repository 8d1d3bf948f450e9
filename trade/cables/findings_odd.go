package cables

import (
	"fmt"
	"math"

	"tumblehome/trade/finding"
)

// touchVolts of direct current may harm by touch (IEC 61140, from memory).
const touchVolts = 60.0

var oddSource = finding.Source{Text: "what is sold for a van's battery is for 12 or 24 V; common practice, no source", Sure: finding.Practice}

// bankOdd finds a bank that makes neither 12 nor 24 V: its batteries stand side by side, and give together what one of them gives.
func bankOdd(s Supply) (finding.Finding, bool) {
	blocks := s.blocks()
	if blocks == 1 || blocks == 2 {
		return finding.Finding{}, false
	}
	volts := s.Batteries[0].Volts
	f := finding.Finding{Code: "power.battery.volts", Severity: finding.Fault, About: []string{s.About, s.Batteries[0].About}, Source: oddSource, Measured: measure(volts, "V"), Limit: measure(12, "V"),
		Title: fmt.Sprintf("The battery gives %s V, and a van's things want 12 or 24 V", digits(volts, 3)),
		Words: "Batteries of one bank are reckoned side by side, plus to plus: so joined they give no more volts than one of them. "}
	switch row := 1 / blocks; {
	case volts > touchVolts:
		f.Severity, f.Caution, f.Limit = finding.Danger, touchCaution, measure(24, "V")
		f.Words = "So much can kill, and nothing for 12 or 24 V lives on it. If it is a slip of the pen, correct the volts of its row."
	case blocks > 2:
		f.Limit = measure(24, "V")
		f.Words = "Chargers, fuses and things for 12 or 24 V do not bear it. If it is a slip of the pen, correct the volts of its row."
	case math.Abs(row-math.Round(row)) < 1e-6:
		f.Words += fmt.Sprintf("%.0f batteries of %s V one after the other make 12 V: the document cannot say that yet. Give such a row as one battery of 12 V, with the ampere-hours of one of them.", math.Round(row), digits(volts, 3))
	default:
		f.Words += "If batteries stand one after the other, plus to minus, give the row as one battery of 12 V, with the ampere-hours of one of them: the document cannot say a row yet."
	}
	return f, true
}

const touchCaution = "From 60 V of direct current on, touching both poles can kill. Leave it to an electrician."
