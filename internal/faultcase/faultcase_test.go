package faultcase_test

import (
	"strings"
	"testing"

	"tumblehome/internal/faultcase"
	"tumblehome/quantity"
	"tumblehome/reckon"
)

func TestNothingIsFoundInTheSoundBuild(t *testing.T) {
	doc, err := faultcase.Case{}.Base()
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range reckon.NewMachine().Reckon(doc, quantity.Date{}).Findings {
		t.Errorf("%s: %s", faultcase.Told(f), f.Words)
	}
}

func TestEachFaultIsFoundAndNothingElse(t *testing.T) {
	machine := reckon.NewMachine()
	for _, c := range faultcase.All() {
		t.Run(c.Name, func(t *testing.T) {
			missed, err := c.Try(machine)
			if err != nil {
				t.Fatal(err)
			}
			for _, m := range missed {
				t.Error(m)
			}
		})
	}
}

func TestEveryCodeHasAFaultCase(t *testing.T) {
	tried := map[string]bool{}
	for _, c := range faultcase.All() {
		for _, told := range c.Finds {
			tried[strings.Fields(told)[1]] = true
		}
	}
	for _, code := range reckon.Codes() {
		if !tried[code] {
			t.Errorf("no fault case finds %s", code)
		}
	}
	for code := range tried {
		if _, known := reckon.Explain(code); !known {
			t.Errorf("a fault case finds %s, which nobody explains", code)
		}
	}
}

func TestNoTwoCasesAreCalledTheSame(t *testing.T) {
	seen := map[string]bool{}
	for _, c := range faultcase.All() {
		if seen[c.Name] {
			t.Errorf("two cases are called %q", c.Name)
		}
		seen[c.Name] = true
	}
}
