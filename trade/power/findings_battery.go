package power

import (
	"fmt"

	"tumblehome/trade/finding"
)

// smaller is the share of what is printed from which a test counts as news.
const smaller = 0.9

func (r *Result) tested(b *Battery) (finding.Finding, bool) {
	return finding.Finding{Code: "power.battery.tested", Severity: finding.Note, About: []string{b.About + "/tested", b.Fitting},
		Title:    fmt.Sprintf("The battery holds %s of its %s Ah", fine(b.Tested), fine(b.Rated)),
		Words:    "It is reckoned with what the test found. A battery that has lost so much goes on losing: test it again before each season.",
		Measured: &finding.Measure{Value: b.Tested, Unit: "Ah"}, Limit: &finding.Measure{Value: b.Rated, Unit: "Ah"}, Source: practice, Caution: careBattery,
	}, b.Tested > 0 && b.Tested < smaller*b.Rated
}

// larger is the share of what is printed from which a test is not believed.
const larger = 1.1

func (r *Result) testedMore(b *Battery) (finding.Finding, bool) {
	return finding.Finding{Code: "power.battery.tested-more", Severity: finding.Close, About: []string{b.About + "/tested", b.Fitting},
		Title:    fmt.Sprintf("A test found %s Ah in a battery of %s Ah", fine(b.Tested), fine(b.Rated)),
		Words:    "No battery holds much more than is printed on it. It is reckoned with what the test found, so nights may look better than they are: look at the test again, and at what stands in the catalogue.",
		Measured: &finding.Measure{Value: b.Tested, Unit: "Ah"}, Limit: &finding.Measure{Value: larger * b.Rated, Unit: "Ah"}, Source: practice, Caution: careBattery,
	}, b.Rated > 0 && b.Tested > larger*b.Rated
}

func (r *Result) deep(b *Battery) (finding.Finding, bool) {
	deepest := natures[b.Chemistry].deepest
	return finding.Finding{Code: "power.battery.deep", Severity: finding.Close, About: []string{b.Fitting}, Title: "A lead battery is emptied too far",
		Words:    fmt.Sprintf("%.0f %% of it may be taken as it is said here. Lead that is often emptied to four fifths lasts half as many times as lead emptied to one half.", 100*b.usable()),
		Measured: &finding.Measure{Value: 100 * b.usable(), Unit: "%"}, Limit: &finding.Measure{Value: 100 * deepest, Unit: "%"},
		Source: finding.Source{Text: "cycle lives of golf-cart batteries: 225 at 80 %, 750 at 50 %; rule of a motor-home manual", Sure: finding.Read}, Caution: careBattery,
	}, b.Chemistry.Lead() && b.usable() > deepest+1e-9
}

// lowVoltage is that of a battery nearly empty and loaded, at which an inverter draws most: common practice, no source.
func (b *Battery) lowVoltage() float64 {
	if b.Chemistry.Lead() {
		return 11 * b.series()
	}
	return 12 * b.series()
}

// tooStrong finds the load that draws more than the battery should give.
func (r *Result) tooStrong(b *Battery) (f finding.Finding, found bool) {
	limit := natures[b.Chemistry].rate * b.holds()
	for i := range r.in.Things {
		t := &r.in.Things[i]
		watts := t.Watts
		if t.Kind == Inverter {
			watts = InverterInput(t.Watts, t.Watts)
		}
		if i := watts / b.lowVoltage(); t.Kind != OnMains && i > limit && (!found || i > f.Measured.Value) {
			found = true
			f = finding.Finding{Code: "power.battery.rate", Severity: finding.Fault, About: []string{t.About, b.About}, Title: "One thing draws more than the battery should give",
				Words:    fmt.Sprintf("At full power it draws about %.0f A from a battery nearly empty; this one should give no more than %s A for long. Its voltage falls, and the low-voltage cut takes the lights with it.", i, fine(limit)),
				Measured: &finding.Measure{Value: i, Unit: "A"}, Limit: &finding.Measure{Value: limit, Unit: "A"}, Source: practice, Caution: careBattery}
		}
	}
	return f, found
}

func (r *Result) noSource(b *Battery) (finding.Finding, bool) {
	any := r.in.AtHome == AtHomeMains
	any = any || r.charged(r.in.Sources)
	return finding.Finding{Code: "power.source.none", Severity: finding.Fault, About: []string{b.About}, Title: "Nothing charges the battery",
		Words: "Neither sun, engine nor mains is said to charge it. Once empty it stays so, and a battery left empty is spoilt.", Source: practice, Caution: careCharge}, !any
}
