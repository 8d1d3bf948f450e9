package paper_test

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"tumblehome/draw"
	"tumblehome/draw/paper"
	"tumblehome/draw/sample"
)

func write(t testing.TB, o paper.Options, scenes ...draw.Scene) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := paper.Write(&b, scenes, o); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func TestTheSameDrawingGivesTheSameBytes(t *testing.T) {
	o := paper.Options{Title: "A made-up van", Date: time.Date(2026, 3, 14, 18, 20, 0, 0, time.FixedZone("CET", 3600))}
	if !bytes.Equal(write(t, o, sample.Sheet()), write(t, o, sample.Sheet())) {
		t.Error("two runs differ")
	}
	later := o
	later.Date = o.Date.Add(time.Hour)
	if bytes.Equal(write(t, o, sample.Sheet()), write(t, later, sample.Sheet())) {
		t.Error("the date is not in the file: this test could not fail")
	}
}

func TestPagesHaveTheSizeOfTheSheet(t *testing.T) {
	got := write(t, paper.Options{}, draw.Scene{Size: draw.A3}, draw.Scene{Size: draw.A4}, draw.Scene{Size: draw.Size{Width: 210, Height: 297}})
	var boxes []string
	for _, m := range regexp.MustCompile(`/MediaBox \[([^\]]*)\]`).FindAllSubmatch(got, -1) {
		boxes = append(boxes, string(m[1]))
	}
	// 420 × 297 mm are 1190.55 × 841.89 pt, at 72 pt to 25.4 mm.
	for i, want := range []string{"0 0 1190.55 841.89", "0 0 841.89 595.28", "0 0 595.28 841.89"} {
		found := false
		for _, b := range boxes {
			found = found || b == want
		}
		if !found {
			t.Errorf("page %d should be [%s], pages are %q", i+1, want, boxes)
		}
	}
}

// readText gives the text of a PDF as poppler reads it.
func readText(t *testing.T, pdf []byte) string {
	t.Helper()
	program, err := exec.LookPath("pdftotext")
	if err != nil {
		t.Skip("pdftotext is not installed")
	}
	path := filepath.Join(t.TempDir(), "drawing.pdf")
	if err := os.WriteFile(path, pdf, 0o600); err != nil {
		t.Fatal(err)
	}
	out, err := exec.Command(program, "-layout", path, "-").Output()
	if err != nil {
		t.Fatal(err)
	}
	return string(out)
}

func TestTextStaysText(t *testing.T) {
	got := readText(t, write(t, paper.Options{}, sample.Sheet(), draw.Scene{Size: draw.A4, Marks: []draw.Mark{
		draw.Text(`U = λ / d ≤ 2 → 3 (a\b) <&> Ø 36 ½ "Küche"`, draw.Pt(20, 20), 3.5),
		draw.Text("\U0001F600 <script>\x00", draw.Pt(20, 40), 3.5),
	}}))
	for _, want := range []string{"What are we building?", "over-locker", "3 915 inside the lining", "headroom 1 846", `U = λ / d ≤ 2 → 3 (a\b) <&> Ø 36 ½ "Küche"`, "<script>"} {
		if !strings.Contains(got, want) {
			t.Errorf("the text of the PDF lacks %q:\n%s", want, got)
		}
	}
}

func TestVectorsStayVectors(t *testing.T) {
	if got := write(t, paper.Options{}, sample.Sheet()); bytes.Contains(got, []byte("/Subtype /Image")) {
		t.Error("the PDF holds a picture")
	}
}

func BenchmarkWrite(b *testing.B) {
	s := sample.Sheet()
	for b.Loop() {
		write(b, paper.Options{}, s)
	}
}
