package reckon_test

import (
	"math"
	"testing"

	"tumblehome/reckon"
	"tumblehome/trade/working"
)

func TestEveryFigureIsNamedCountedAndHasAState(t *testing.T) {
	eachBuild(t, func(t *testing.T, b tried) {
		seen := map[string]bool{}
		for _, f := range b.Figures {
			if f.Code == "" || f.Label == "" || f.Unit == "" {
				t.Errorf("figure %+v lacks a code, a label or a unit", f)
			}
			if f.State != working.Current && f.State != working.Assumed {
				t.Errorf("%s is in the state %q", f.Code, f.State)
			}
			if (f.P50 == nil) != (f.P80 == nil) || f.P80 != nil && *f.P80 < *f.P50-1e-9 {
				t.Errorf("%s has one of the two values of its spread, or the high one below the likely one", f.Code)
			}
			if seen[f.Code] {
				t.Errorf("two figures are called %s", f.Code)
			}
			seen[f.Code] = true
			if found, ok := b.Figure(f.Code); !ok || found.Value != f.Value {
				t.Errorf("%s is not found by its code", f.Code)
			}
		}
		if len(b.Figures) == 0 {
			t.Error("there are no figures")
		}
	})
}

func TestTheLastLineOfEveryWorkingIsItsFigure(t *testing.T) {
	eachBuild(t, func(t *testing.T, b tried) {
		for _, f := range b.Figures {
			w, ok := b.Working(f.Code)
			switch {
			case !ok:
				t.Errorf("nobody shows how %s came about", f.Code)
			case len(w.Lines) == 0 || differ(w.Last(), f.Value, 1e-9):
				t.Errorf("%s is %.12g, its working ends in %.12g", f.Code, f.Value, w.Last())
			case w.Code != f.Code || w.Label != f.Label:
				t.Errorf("the working of %s is that of %s, %q", f.Code, w.Code, w.Label)
			case w.Formula == "" || w.Source.Text == "" || w.Source.Sure == "":
				t.Errorf("the working of %s lacks a formula or a source", f.Code)
			case w.Lines[len(w.Lines)-1].Unit != f.Unit:
				t.Errorf("%s is in %s, its working ends in %s", f.Code, f.Unit, w.Lines[len(w.Lines)-1].Unit)
			}
			for _, l := range w.Lines {
				if l.Label == "" || l.Unit == "" {
					t.Errorf("%s: a line of the working lacks a label or a unit: %+v", f.Code, l)
				}
			}
		}
	})
}

func TestWhatNobodyWorkedOutHasNoWorking(t *testing.T) {
	eachDemo(t, func(t *testing.T, b tried) {
		for _, code := range []string{"", "weight", "weight.", "stock.buy.", "stock.buy.nothing", "fit.bed.length.nobody", "no.such"} {
			if _, ok := b.Working(code); ok {
				t.Errorf("there is a working of %q", code)
			}
		}
	})
}

func TestEveryCodeIsExplained(t *testing.T) {
	codes := reckon.Codes()
	if len(codes) == 0 {
		t.Fatal("there are no codes")
	}
	for i, code := range codes {
		e, ok := reckon.Explain(code)
		if !ok || e.Code != code || e.Meaning == "" || e.Why == "" || e.Clear == "" {
			t.Errorf("%s is explained by %+v", code, e)
		}
		if i > 0 && codes[i-1] >= code {
			t.Errorf("%s stands after %s", code, codes[i-1])
		}
	}
	eachBuild(t, func(t *testing.T, b tried) {
		for _, f := range b.Findings {
			if _, ok := reckon.Explain(f.Code); !ok {
				t.Errorf("nobody explains %s", f.Code)
			}
		}
	})
}

// differ says whether two numbers differ by more than a share of the greater, or of one where both are less.
func differ(a, b, share float64) bool {
	return !(math.Abs(a-b) <= share*math.Max(1, math.Max(math.Abs(a), math.Abs(b))))
}
