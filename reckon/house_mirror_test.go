package reckon_test

import (
	"testing"

	"tumblehome/trade/arrangement"
	"tumblehome/trade/working"
)

// A scribed face is a chain of straight pieces that leaves out corners of less than half a millimetre, taken in order from the front on one
// side and from the rear on the other; what is cut so has its middle, and the axles their loads, to within a hundredth [mm, kg, %].
const scribed = 0.01

func TestAVanInAMirrorGivesItsResultsInAMirror(t *testing.T) {
	same := func(s string) string { return s }
	eachBuild(t, func(t *testing.T, b tried) {
		doc := again(t, b.doc)
		mirror(doc)
		after := reckoned(again(t, doc))
		want := map[string]working.Figure{}
		for _, f := range b.Figures {
			want[f.Code] = f
		}
		sameFigures(t, want, after.Figures, func(code string) float64 {
			if code == "weight.centre.y" || code == "weight.side" {
				return -1
			}
			return 1
		}, scribed)
		sameFindings(t, b.Findings, after.Findings, mirrorPointer, same)
		for m := range b.Places.Modes {
			mirrored(t, b.Places.Modes[m], after.Places.Modes[m])
		}
	})
}

// mirrored fails where something in a mode does not stand where its mirror image should.
func mirrored(t *testing.T, before, after arrangement.Mode) {
	t.Helper()
	for i, s := range before.All {
		is, want := after.All[i].Box, s.Box
		want.MinY, want.MaxY = -s.Box.MaxY, -s.Box.MinY
		for _, pair := range [][2]float64{{want.MinX, is.MinX}, {want.MaxX, is.MaxX}, {want.MinY, is.MinY}, {want.MaxY, is.MaxY}, {want.MinZ, is.MinZ}, {want.MaxZ, is.MaxZ}} {
			if differ(pair[0], pair[1], 1e-6) {
				t.Errorf("in the mode %s %s should stand at %+v and stands at %+v", before.Name, s.ID, want, is)
				break
			}
		}
	}
}
