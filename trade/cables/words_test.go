package cables_test

import (
	"regexp"
	"testing"

	"tumblehome/trade/cables"
)

// Nobody who builds a van reads 2e+03 A.
func TestNoNumberIsWrittenWithAPowerOfTen(t *testing.T) {
	power := regexp.MustCompile(`\de[+-]\d`)
	for _, amps := range []float64{999.6, 1000, 1999.6, 2000, 5000} {
		r := cables.Work(van(circuit("kettle", cables.Other, amps, 0.2, section(120), fuse(amps)), circuit("lamp", cables.Light, 2, 30, section(0.5), fuse(amps))))
		var told []string
		for _, f := range r.Findings() {
			told = append(told, f.Title, f.Words)
			for _, p := range f.Proposals {
				told = append(told, p.Words, string(p.Patch))
			}
		}
		for _, c := range r.Cables {
			told = append(told, c.Label(), c.Fuse.Words())
		}
		for _, one := range r.Tests {
			told = append(told, one.How, one.Expect)
		}
		for _, f := range r.Figures() {
			w, _ := r.Working(f.Code)
			told = append(append(told, f.Words), w.Notes...)
			for _, l := range w.Lines {
				told = append(told, l.Label, l.Sum)
			}
		}
		for _, words := range told {
			if power.MatchString(words) {
				t.Errorf("%g A: %s", amps, words)
			}
		}
	}
}
