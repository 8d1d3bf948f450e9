package draw_test

import (
	"fmt"
	"strings"
	"testing"

	"tumblehome/draw"
	"tumblehome/draw/sample"
	"tumblehome/internal/golden"
)

func TestTheSamplesAreAsTheyWereLookedAt(t *testing.T) {
	s := sample.Sheet()
	golden.Equal(t, "testdata/sheet.golden.svg", svg(t, s, draw.SVGOptions{Standalone: true}))
	golden.Equal(t, "testdata/sheet.golden.txt", s.String())
	golden.Equal(t, "testdata/card.golden.svg", svg(t, sample.Card(), draw.SVGOptions{}))
	golden.Equal(t, "testdata/drawing.golden.css", draw.Stylesheet())
}

func TestTheSamplesWouldPassADraughtsman(t *testing.T) {
	for _, s := range []draw.Scene{sample.Sheet(), sample.Card()} {
		for _, f := range s.Check() {
			t.Errorf("%s: %v", s.Title, f)
		}
	}
}

func TestCheckFindsWhatADraughtsmanWouldSendBack(t *testing.T) {
	text := func(s string, x, y, size float64) draw.Lettering { return draw.Text(s, draw.Pt(x, y), size) }
	turned := text("galley", 100, 100, 3)
	turned.Turn = 45
	for _, c := range []struct {
		name  string
		size  draw.Size
		marks []draw.Mark
		want  string
	}{
		{"a sound drawing", draw.A3, []draw.Mark{text("galley", 20, 20, 2.5), text("bed", 60, 20, 2.5)}, ""},
		{"small lettering", draw.A3, []draw.Mark{text("galley", 20, 20, 2.4)}, "small lettering"},
		{"lettering that is small once an A2 sheet is printed on A3", draw.Size{Width: 594, Height: 420}, []draw.Mark{text("galley", 20, 20, 3.5)}, "small lettering"},
		{"an A4 sheet is not enlarged", draw.A4, []draw.Mark{text("galley", 20, 20, 2.5)}, ""},
		{"a sheet standing up", draw.Size{Width: 297, Height: 420}, []draw.Mark{text("galley", 20, 20, 2.5)}, ""},
		{"texts over each other", draw.A3, []draw.Mark{text("galley", 20, 20, 2.5), text("bed", 25, 21, 2.5)}, "texts collide"},
		{"turned texts whose upright boxes overlap but which do not", draw.A3, []draw.Mark{turned, text("bed", 108, 101, 3)}, ""},
		{"a text off the sheet", draw.A3, []draw.Mark{text("galley", 415, 20, 2.5)}, "text outside the sheet"},
		{"one id for two things", draw.A3, []draw.Mark{draw.Group{ID: "a"}, draw.Group{ID: "a"}}, "id used twice"},
		{"groups without id", draw.A3, []draw.Mark{draw.Group{}, draw.Group{}}, ""},
		{"a line to nowhere", draw.A3, []draw.Mark{draw.Stroke(draw.PenFine, draw.Line(draw.Pt(0, 0), draw.Pt(1, 0).Mul(1/zero())))}, "not a number"},
		{"an empty text takes no room", draw.A3, []draw.Mark{text("galley", 20, 20, 2.5), text("", 20, 20, 1)}, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			var kinds []string
			for _, f := range (draw.Scene{Size: c.size, Marks: c.marks}).Check() {
				kinds = append(kinds, string(f.Kind))
			}
			if got := strings.Join(kinds, ", "); got != c.want {
				t.Errorf("got %q, want %q", got, c.want)
			}
		})
	}
}

func zero() float64 { return 0 }

func TestGrowingASceneLeavesTheOldOneAlone(t *testing.T) {
	a := draw.Scene{}.With(draw.Group{ID: "one"})
	b, c := a.With(draw.Group{ID: "two"}), a.With(draw.Group{ID: "three"})
	if len(a.Marks) != 1 || b.Marks[1].(draw.Group).ID != "two" || c.Marks[1].(draw.Group).ID != "three" {
		t.Errorf("scenes share their marks: %v %v %v", a, b, c)
	}
}

func TestFiguresAreTabular(t *testing.T) {
	for _, strong := range []bool{false, true} {
		want := draw.Measure("0", 3, strong)
		for _, figure := range "123456789" {
			if got := draw.Measure(string(figure), 3, strong); got != want {
				t.Errorf("%c is %g wide, 0 is %g", figure, got, want)
			}
		}
	}
}

func TestLettersOurFaceLacksAreTakenFromTheSpareOne(t *testing.T) {
	l := draw.Text("U = λ / d, Кухня → ☃", draw.Pt(0, 10), 2.5)
	var faces []string
	for _, r := range l.Runs() {
		faces = append(faces, fmt.Sprintf("%d:%s", r.Face, r.Text))
	}
	if got, want := strings.Join(faces, "|"), "0:U = |2:λ|0: / d, |2:Кухня|0: → ☃"; got != want {
		t.Errorf("got %s, want %s", got, want)
	}
}

func TestAViewCarriesBothWays(t *testing.T) {
	for _, up := range []bool{false, true} {
		v := draw.View{Origin: draw.Pt(40, 250), Scale: 20, Up: up}
		if x, y := v.Back(v.At(1234, 567)); fmt.Sprintf("%.6f %.6f", x, y) != "1234.000000 567.000000" {
			t.Errorf("up %v: got %g, %g back", up, x, y)
		}
	}
	if got := (draw.View{Origin: draw.Pt(40, 250), Scale: 20, Up: true}).Box(0, 0, 200, 400); got != draw.Box(40, 230, 10, 20) {
		t.Errorf("got %v", got)
	}
}

func TestTheCheckLineIsExactlyAHundredMillimetres(t *testing.T) {
	for _, along := range []draw.Direction{draw.Horizontal, draw.Vertical} {
		line := draw.CheckLine{From: draw.Pt(20, 200), Along: along}.Marks()[0].(draw.Shape)
		run := line.Path.Flatten(1)[0]
		if d := run[0].Distance(run[1]); d != 100 {
			t.Errorf("direction %d: %g mm", along, d)
		}
	}
}

func TestTheScaleBarMeasuresAMetre(t *testing.T) {
	bar := draw.ScaleBar{At: draw.Pt(20, 200), Scale: 25, Metres: 3}.Marks()[0].(draw.Shape)
	if w := bar.Path.Bounds().Width(); w != 120 {
		t.Errorf("3 m at 1 : 25 are %g mm long, want 120", w)
	}
}

func TestEverySeverityHasItsOwnShapeWithinItsSquare(t *testing.T) {
	corners := map[draw.Severity]int{draw.Danger: 8, draw.Fault: 3, draw.Close: 4}
	for _, s := range []draw.Severity{draw.Danger, draw.Fault, draw.Close, draw.Note} {
		p := s.Outline(draw.Pt(50, 50), draw.FlagSize)
		if n := len(p.Flatten(0.01)[0]) - 1; corners[s] != 0 && n != corners[s] {
			t.Errorf("%s has %d corners, want %d", s, n, corners[s])
		}
		if b := p.Bounds(); !b.Within(draw.Box(50, 50, 0, 0).Inset(-draw.FlagSize * 0.56)) {
			t.Errorf("%s reaches %v", s, b)
		}
	}
}
