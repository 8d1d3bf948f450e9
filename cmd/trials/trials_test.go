package main

import (
	"strings"
	"testing"
)

func TestTrialsAreListedAndUnknownOnesRefused(t *testing.T) {
	var out strings.Builder
	if err := run(&out, nil); err != nil || !strings.Contains(out.String(), "conduction") {
		t.Errorf("got %q, %v, want a list", out.String(), err)
	}
	if err := run(&out, []string{"alchemy"}); err == nil || !strings.Contains(err.Error(), "alchemy") {
		t.Errorf("got %v, want an error that names alchemy", err)
	}
}

func TestTheConductionTrialFindsNoFigureTooFarOff(t *testing.T) {
	t.Chdir("../..")
	var out strings.Builder
	if err := printCases(&out); err != nil {
		t.Fatal(err)
	}
	if strings.Contains(out.String(), "TOO FAR") || strings.Count(out.String(), "ISO 10211 case") < 2 {
		t.Error(out.String())
	}
}
