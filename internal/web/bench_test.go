package web_test

import (
	"fmt"
	"testing"
)

func BenchmarkArrangementPage(b *testing.B)   { bench(b, "/arrangement?mode=night") }
func BenchmarkWarmthPage(b *testing.B)        { bench(b, "/warmth") }
func BenchmarkRegionOfFittings(b *testing.B)  { bench(b, "/region/fittings?mode=night") }
func BenchmarkRegionOfDrawing(b *testing.B)   { bench(b, "/region/drawing?mode=night") }
func BenchmarkRegionOfRevisions(b *testing.B) { bench(b, "/region/revisions?page=revisions") }

func bench(b *testing.B, address string) {
	w := open(b, dipper)
	size := 0
	for b.Loop() {
		size = w.answer(get(address)).Body.Len()
	}
	b.ReportMetric(float64(size), "bytes")
}

// One question of a drag: reckoned, compared, told.
func BenchmarkPreviewOfADrag(b *testing.B) {
	w := open(b, dipper)
	dx := 0
	for b.Loop() {
		dx++
		w.answer(postJSON("/preview", fmt.Sprintf(`{"revision": 1, "mode": "day", "moves": [{"fitting": "galley", "dx": %d}]}`, dx%100)))
	}
}
