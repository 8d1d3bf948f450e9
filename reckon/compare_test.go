package reckon_test

import (
	"testing"

	"tumblehome/reckon"
	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

func TestComparingTwoReckonings(t *testing.T) {
	bed := finding.Finding{Code: "fit.bed.length", Severity: finding.Close, About: []string{"/people/ada"}}
	worse := bed
	worse.Severity = finding.Fault
	from := &reckon.Reckoning{Findings: []finding.Finding{bed}, Figures: []working.Figure{
		{Code: "a.gone", Value: 1, Unit: "kg"}, {Code: "b.same", Value: 2, Unit: "mm"}, {Code: "c.moved", Value: 3, Unit: "kg"}, {Code: "d.paid", Value: 100, Unit: "GBP"},
	}}
	to := &reckon.Reckoning{Findings: []finding.Finding{worse}, Figures: []working.Figure{
		{Code: "b.same", Value: 2 + 1e-12, Unit: "mm"}, {Code: "c.moved", Value: 5, Unit: "kg"}, {Code: "d.paid", Value: 120, Unit: "EUR"}, {Code: "e.new", Value: 9, Unit: "1"},
	}}
	want := []reckon.Change{
		{Code: "a.gone", Unit: "kg", From: 1, Gone: true},
		{Code: "c.moved", Unit: "kg", From: 3, To: 5},
		{Code: "d.paid", Unit: "GBP", From: 100, Gone: true},
		{Code: "d.paid", Unit: "EUR", To: 120, New: true},
		{Code: "e.new", Unit: "1", To: 9, New: true},
	}
	d := reckon.Compare(from, to)
	if len(d.Changes) != len(want) {
		t.Fatalf("changes %+v, want %+v", d.Changes, want)
	}
	for i := range want {
		if d.Changes[i] != want[i] {
			t.Errorf("change %+v, want %+v", d.Changes[i], want[i])
		}
	}
	if len(d.Cleared) != 1 || len(d.Appeared) != 1 || d.Appeared[0].Severity != finding.Fault {
		t.Errorf("a finding that got worse is not told: %+v", d)
	}
	if same := reckon.Compare(from, from); len(same.Changes)+len(same.Cleared)+len(same.Appeared) != 0 {
		t.Errorf("a reckoning differs from itself: %+v", same)
	}
}
