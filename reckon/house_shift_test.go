package reckon_test

import (
	"testing"

	"tumblehome/trade/working"
)

func TestWhereTheTapeBeganChangesOnlyTheFigureThatCountsFromThere(t *testing.T) {
	const by = 130
	same := func(s string) string { return s }
	eachBuild(t, func(t *testing.T, b tried) {
		if b.Body.Assumed { // a typical body begins at x 0 wherever the tape began
			return
		}
		doc := again(t, b.doc)
		shift(doc, by)
		after := reckoned(again(t, doc))
		want := map[string]working.Figure{}
		for _, f := range b.Figures {
			if f.Code == "weight.centre.x" {
				f.Value -= by
			}
			want[f.Code] = f
		}
		sameFigures(t, want, after.Figures, asItWas, exact)
		sameFindings(t, b.Findings, after.Findings, same, same)
		for i, s := range b.Places.Rest {
			moved := after.Places.Rest[i].Box
			if s.Placed() && (differ(s.Box.MinX-by, moved.MinX, 1e-6) || differ(s.Box.MaxX-by, moved.MaxX, 1e-6) || differ(s.Box.MinY, moved.MinY, 1e-6) || differ(s.Box.MinZ, moved.MinZ, 1e-6)) {
				t.Errorf("%s stood at %+v and stands at %+v", s.ID, s.Box, moved)
			}
		}
	})
}
