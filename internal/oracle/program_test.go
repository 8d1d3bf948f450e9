package oracle_test

import (
	"strings"
	"testing"

	"tumblehome/internal/oracle"
	"tumblehome/internal/proof"
)

// One case for each program whose answer is plain by hand, so that the way it is
// run is known to be right.

func TestPythonAnswersInJSON(t *testing.T) {
	var got struct{ Area float64 }
	oracle.Decode(t, oracle.Python, "testdata/overlap.py", &got)
	want(t, "area that two squares share", got.Area, 1, "m2")
}

func TestMiniZincReadsItsDataFile(t *testing.T) {
	text := string(oracle.Ask(t, oracle.MiniZinc, "testdata/queue.mzn", "testdata/queue.dzn"))
	if !strings.Contains(text, `{"done": 7}`) || !strings.Contains(text, "==========") {
		t.Errorf("two jobs of 3 and 4 days on one pair of hands: %q, want a proven 7", text)
	}
}

func TestGLPSolAnswersWhatAModelPrints(t *testing.T) {
	var got struct{ Gain, X, Y float64 }
	oracle.Decode(t, oracle.GLPSol, "testdata/mix.mod", &got)
	want(t, "best mix of two goods", got.Gain, 11, "1")
}

func TestGLPSolAnswersWithDualsForAnLP(t *testing.T) {
	text := string(oracle.Ask(t, oracle.GLPSol, "testdata/duals.lp"))
	if !strings.Contains(text, "s bas 2 2 f f 11") {
		t.Errorf("the solution file does not state the optimum 11:\n%s", text)
	}
}

func TestNGSpiceWorksOutADivider(t *testing.T) {
	text := string(oracle.Ask(t, oracle.NGSpice, "testdata/divider.cir"))
	if !strings.Contains(text, "v(b) = 9.000000e+00") {
		t.Errorf("12 V over 1 and 3 ohm: no 9 V in\n%s", text)
	}
}

func TestGetDPSolvesARodOnAGivenMesh(t *testing.T) {
	text := string(oracle.Ask(t, oracle.GetDP, "testdata/rod.pro", "testdata/rod.msh"))
	if !strings.HasPrefix(text, "15 4  0.3 0 0  0 0 0   0.3") {
		t.Errorf("a rod between 0 and 1 degree: no 0.3 at 0.3 in %q", text)
	}
}

func want(t *testing.T, name string, got, byHand float64, unit string) {
	t.Helper()
	if fault := (proof.Case{
		Name: name, Source: "by hand", Expected: byHand, Got: got, Tolerance: 1e-9, Unit: unit,
	}).Fault(); fault != "" {
		t.Error(fault)
	}
}
