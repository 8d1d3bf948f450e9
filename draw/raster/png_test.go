package raster_test

import (
	"bytes"
	"image"
	"image/color"
	"image/png"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"tumblehome/draw"
	"tumblehome/draw/paper"
	"tumblehome/draw/raster"
	"tumblehome/draw/sample"
)

func paint(t testing.TB, s draw.Scene, o raster.Options) image.Image {
	t.Helper()
	got, err := raster.Image(s, o)
	if err != nil {
		t.Fatal(err)
	}
	return got
}

// dots is per mm; with fewer, poppler widens thin lines to whole dots.
const dots = 8.0

// paintedByPoppler prints the scene to PDF and lets poppler make a picture of that: another
// program's opinion of the same drawing.
func paintedByPoppler(t *testing.T, s draw.Scene) image.Image {
	t.Helper()
	program, err := exec.LookPath("pdftoppm")
	if err != nil {
		t.Skip("pdftoppm is not installed")
	}
	var pdf bytes.Buffer
	if err := paper.Write(&pdf, []draw.Scene{s}, paper.Options{}); err != nil {
		t.Fatal(err)
	}
	path := filepath.Join(t.TempDir(), "drawing")
	if err := os.WriteFile(path+".pdf", pdf.Bytes(), 0o600); err != nil {
		t.Fatal(err)
	}
	if out, err := exec.Command(program, "-r", "203.2", "-png", "-singlefile", path+".pdf", path).CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	file, err := os.ReadFile(path + ".png")
	if err != nil {
		t.Fatal(err)
	}
	picture, err := png.Decode(bytes.NewReader(file))
	if err != nil {
		t.Fatal(err)
	}
	return picture
}

// greys averages the picture over squares of two millimetres, 0 black to 1 white, so that two
// ways of smoothing edges agree but a thing in another place does not.
func greys(p image.Image) [][]float64 {
	const side = int(2 * dots)
	b := p.Bounds()
	out := make([][]float64, b.Dy()/side)
	for y := range out {
		out[y] = make([]float64, b.Dx()/side)
		for x := range out[y] {
			sum := 0.0
			for i := range side * side {
				sum += float64(color.GrayModel.Convert(p.At(b.Min.X+x*side+i%side, b.Min.Y+y*side+i/side)).(color.Gray).Y)
			}
			out[y][x] = sum / 255 / float64(side*side)
		}
	}
	return out
}

// difference gives the worst and the mean difference of two pictures' greys.
func difference(a, b [][]float64) (worst, mean float64) {
	n := 0
	for y := range min(len(a), len(b)) {
		for x := range min(len(a[y]), len(b[y])) {
			d := a[y][x] - b[y][x]
			if d < 0 {
				d = -d
			}
			worst, mean, n = max(worst, d), mean+d, n+1
		}
	}
	return worst, mean / float64(n)
}

func TestPictureAndPrintShowTheSame(t *testing.T) {
	s := sample.Sheet()
	print := greys(paintedByPoppler(t, s))
	worst, mean := difference(greys(paint(t, s, raster.Options{DotsPerMM: dots, Theme: draw.Print})), print)
	t.Logf("worst square differs by %.3f, the mean by %.5f", worst, mean)
	if worst > 0.08 || mean > 0.003 {
		t.Errorf("worst square differs by %.3f, the mean by %.5f", worst, mean)
	}

	s.Marks = append([]draw.Mark{}, s.Marks[:len(s.Marks)-1]...) // one flag fewer must be noticed
	if worst, _ := difference(greys(paint(t, s, raster.Options{DotsPerMM: dots, Theme: draw.Print})), print); worst < 0.25 {
		t.Errorf("a flag left out makes a difference of only %.3f: this test could not fail", worst)
	}
}

func TestHolesStayOpenWhicheverWayTheyTurn(t *testing.T) {
	outer, hole := draw.Box(5, 5, 20, 20), draw.Box(10, 10, 10, 10)
	c := hole.Corners()
	for name, path := range map[string]draw.Path{
		"the same way":  draw.Rectangle(outer).And(draw.Rectangle(hole)),
		"the other way": draw.Rectangle(outer).And(draw.Polygon(c[3], c[2], c[1], c[0])),
		"with an island": draw.Rectangle(outer).And(draw.Rectangle(hole)).
			And(draw.Rectangle(draw.Box(12, 12, 2, 2))),
	} {
		got := paint(t, draw.Scene{Size: draw.Size{Width: 30, Height: 30}, Marks: []draw.Mark{draw.Shape{Path: path, Fill: draw.FillInk}}}, raster.Options{DotsPerMM: 2})
		ink, sheet := draw.Light.Colour(draw.TokenInk), draw.Light.Colour(draw.TokenSheet)
		for _, p := range []struct {
			x, y float64
			want color.RGBA
		}{{2, 2, sheet}, {7, 15, ink}, {18, 18, sheet}} {
			if c := got.At(int(p.x*2), int(p.y*2)); c != p.want {
				t.Errorf("%s: at %g, %g is %v, want %v", name, p.x, p.y, c, p.want)
			}
		}
	}
}

func TestAWindowShowsPartOfTheSheet(t *testing.T) {
	s := draw.Scene{Size: draw.A4, Marks: []draw.Mark{draw.Shape{Path: draw.Rectangle(draw.Box(100, 50, 10, 10)), Fill: draw.FillLead}}}
	got := paint(t, s, raster.Options{DotsPerMM: 1, Window: draw.Box(95, 45, 20, 20)})
	if size := got.Bounds().Size(); size != image.Pt(20, 20) {
		t.Fatalf("the picture is %v", size)
	}
	if c := got.At(10, 10); c != draw.Light.Colour(draw.TokenLead) {
		t.Errorf("the middle is %v", c)
	}
}

func TestTheSameSceneGivesTheSamePicture(t *testing.T) {
	var a, b bytes.Buffer
	for _, w := range []*bytes.Buffer{&a, &b} {
		if err := raster.PNG(w, sample.Sheet(), raster.Options{DotsPerMM: 2, Theme: draw.Dark}); err != nil {
			t.Fatal(err)
		}
	}
	if !bytes.Equal(a.Bytes(), b.Bytes()) {
		t.Error("two runs differ")
	}
}

func TestSizesThatAreNoPictureAreRefused(t *testing.T) {
	for _, s := range []draw.Size{{}, {Width: -1, Height: 5}, {Width: 1e9, Height: 1e9}, {Width: 0.1, Height: 100}} {
		if _, err := raster.Image(draw.Scene{Size: s}, raster.Options{}); err == nil {
			t.Errorf("a sheet of %v was painted", s)
		}
	}
}
