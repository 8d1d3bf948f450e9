package finding_test

import (
	"testing"

	"tumblehome/trade/finding"
)

func TestANameThatEndsInAFigureIsSetOff(t *testing.T) {
	for name, want := range map[string]string{"box 1": "“box 1”", "galley": "galley", "2 lockers": "2 lockers", "": ""} {
		if got := finding.SetOff(name); got != want {
			t.Errorf("%q is said as %q, not %q", name, got, want)
		}
	}
}
