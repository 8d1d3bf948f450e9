package faultcase_test

import (
	"fmt"
	"strings"
	"testing"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/internal/faultcase"
	"tumblehome/quantity"
	"tumblehome/reckon"
	"tumblehome/trade/cables"
	"tumblehome/trade/finding"
)

// aboutCables are the beginnings of the codes of cables.
var aboutCables = []string{"power.fuse.", "power.cable.", "power.part.", "power.current.", "power.drop", "power.collapse", "power.battery.load"}

// What is proposed for a cable must not make another unsafe, least of all by a fuse that its cable does not stand.
func TestNoProposalForACableMakesAnotherUnsafe(t *testing.T) {
	machine := reckon.NewMachine()
	for _, c := range faultcase.All() {
		if !strings.Contains(c.Patch, `"power"`) || c.Refused != "" {
			continue
		}
		doc, err := c.Document()
		if err != nil {
			t.Fatal(err)
		}
		was := machine.Reckon(doc, quantity.Date{})
		for _, f := range was.Findings {
			if !isAboutCables(f.Code) {
				continue
			}
			for _, p := range f.Proposals {
				patch, err := tree.ParsePatch(p.Patch)
				if err != nil {
					t.Fatal(err)
				}
				other, err := build.Apply(doc, patch, catalogue.Builtin())
				if err != nil {
					t.Errorf("%s: %s: %v", c.Name, p.Patch, err)
					continue
				}
				is := machine.Reckon(other, quantity.Date{})
				said := fmt.Sprintf("%s: %s proposes %s", c.Name, f.Code, p.Patch)
				for key, g := range grave(is.Findings) {
					if old, ok := grave(was.Findings)[key]; !ok || g.Severity > old.Severity {
						t.Errorf("%s: then there is %s", said, faultcase.Told(g))
					}
				}
				for key, g := range unprotected(is.Cables.Cables) {
					if _, ok := unprotected(was.Cables.Cables)[key]; !ok {
						t.Errorf("%s: then %s", said, g)
					}
				}
			}
		}
	}
}

func isAboutCables(code string) bool {
	for _, begins := range aboutCables {
		if strings.HasPrefix(code, begins) {
			return true
		}
	}
	return false
}

func grave(all []finding.Finding) map[string]finding.Finding {
	out := map[string]finding.Finding{}
	for _, f := range all {
		if f.Severity >= finding.Fault {
			out[fmt.Sprint(f.Code, f.About[0])] = f
		}
	}
	return out
}

// unprotected are the cables that stand less than their fuse lets pass.
func unprotected(all []cables.Cable) map[string]string {
	out := map[string]string{}
	for _, c := range all {
		if c.Role != cables.Bond && c.Fuse.Amps > c.Rating.Amps*(1+1e-9) {
			out[string(c.Role)+c.Bank+c.ID] = fmt.Sprintf("%s has a fuse of %g A and stands %.1f A", c.Title, c.Fuse.Amps, c.Rating.Amps)
		}
	}
	return out
}
