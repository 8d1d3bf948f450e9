package reckon_test

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"strings"
	"testing"

	"tumblehome/internal/faultcase"
	"tumblehome/trade/finding"
	"tumblehome/trade/working"
)

func TestWhatThingsAreCalledChangesNoFigure(t *testing.T) {
	eachBuild(t, func(t *testing.T, b tried) {
		doc := again(t, b.doc)
		doc.Alternatives = nil // they hold paths as text, and are no part of what is reckoned
		r := newRenamer(doc)
		r.rename(doc)
		after := reckoned(again(t, doc))
		want := map[string]working.Figure{}
		for _, f := range b.Figures {
			want[r.code(f.Code)] = f
		}
		sameFigures(t, want, after.Figures, asItWas, exact)
		sameFindings(t, b.Findings, after.Findings, r.pointer, r.id)
	})
}

// codesWithIDs are the families of figure codes in which an id stands, where it stands marked by a star.
var codesWithIDs = []string{
	"weight.case.*.total", "weight.case.*.front", "weight.case.*.rear", "weight.weighing.*.off",
	"runs.way.*.length", "runs.way.*.supports", "runs.way.*.bore", "runs.way.*.fill", "runs.circuit.*.route", "runs.source.*.route", "runs.lead.*.route",
	"fit.bed.length.*", "fit.headroom.sit.*", "fit.headroom.stand.*", "fit.fouls.*", "fit.moves.*", "fit.ways-out.*", "fit.bed.above.*", "fit.seat.height.*", "fit.seat.knees.*", "fit.table.*", "fit.worktop.*",
	"power.drop.to.*", "power.drop.from.*", "power.drop.lead.*",
}

// code is the code of a figure after renaming.
func (r *renamer) code(code string) string {
	for _, family := range codesWithIDs {
		head, tail, _ := strings.Cut(family, "*")
		if id, ok := strings.CutPrefix(code, head); ok {
			if id, ok = strings.CutSuffix(id, tail); ok && !strings.Contains(id, ".") {
				return head + r.id(id) + tail
			}
		}
	}
	return code
}

// sameFigures compares figures by their codes; times says by what a value is multiplied on the way, near how much it may be off.
func sameFigures(t *testing.T, want map[string]working.Figure, got []working.Figure, times func(code string) float64, near float64) {
	t.Helper()
	left := maps.Clone(want)
	for _, f := range got {
		w, ok := want[f.Code]
		delete(left, f.Code)
		switch {
		case !ok:
			t.Errorf("%s is new: %g %s", f.Code, f.Value, f.Unit)
		case w.Unit != f.Unit || w.State != f.State || off(w.Value*times(f.Code), f.Value, near):
			t.Errorf("%s was %.9g %s and is %.9g %s", f.Code, w.Value, w.Unit, f.Value, f.Unit)
		case optional(w.Limit) != optional(f.Limit):
			t.Errorf("the limit of %s was %s and is %s", f.Code, optional(w.Limit), optional(f.Limit))
		case w.P80 != nil && f.P80 != nil && off(*w.P80*times(f.Code), *f.P80, near):
			t.Errorf("one in five that %s passes %.9g, not %.9g", f.Code, *f.P80, *w.P80)
		}
	}
	for code, f := range left {
		t.Errorf("%s is gone: %g %s", code, f.Value, f.Unit)
	}
}

// off says whether two numbers are further apart than near; rounding of the last digits does not count.
func off(a, b, near float64) bool {
	return differ(a, b, exact) && !(math.Abs(a-b) <= near)
}

// exact is a share of a number that only rounding loses.
const exact = 1e-9

func asItWas(string) float64 { return 1 }

func optional(v *float64) string {
	if v == nil {
		return "none"
	}
	return fmt.Sprintf("%.6g", *v)
}

// sameFindings compares findings by code, severity, mode and what they are about, in any order.
func sameFindings(t *testing.T, before, after []finding.Finding, pointer, mode func(string) string) {
	t.Helper()
	var want, got []string
	for _, f := range before {
		f.About = []string{sortedJoin(f.About, pointer)}
		f.Mode = mode(f.Mode)
		want = append(want, faultcase.Told(f))
	}
	for _, f := range after {
		f.About = []string{sortedJoin(f.About, func(p string) string { return p })}
		got = append(got, faultcase.Told(f))
	}
	for _, w := range want {
		if !slices.Contains(got, w) {
			t.Errorf("no longer found: %s", w)
		}
	}
	for _, g := range got {
		if !slices.Contains(want, g) {
			t.Errorf("newly found: %s", g)
		}
	}
}

func sortedJoin(pointers []string, through func(string) string) string {
	out := make([]string, len(pointers))
	for i, p := range pointers {
		out[i] = through(p)
	}
	slices.Sort(out)
	return strings.Join(out, " ")
}
