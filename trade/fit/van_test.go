package fit_test

import (
	"encoding/json"
	"fmt"
	"math"
	"strings"
	"testing"

	"tumblehome/solve/solid"
	"tumblehome/trade/finding"
	"tumblehome/trade/fit"
	"tumblehome/trade/working"
)

// room has sides at ±half that lean in by lean above 600 and a roof that falls by drop from its middle to the sides.
type room struct{ half, lean, roof, drop, floor, rear float64 }

func (r room) Right(x, z float64) float64 { return r.half - r.lean*math.Max(0, z-600) }
func (r room) Left(x, z float64) float64  { return -r.Right(x, z) }
func (r room) Roof(x, y float64) float64  { return r.roof - r.drop*(y/r.half)*(y/r.half) }
func (r room) Floor() float64             { return r.floor }
func (r room) Front() float64             { return 0 }
func (r room) Rear() float64              { return r.rear }

var flat = room{half: 900, roof: 1700, floor: 40, rear: 2900}

var high = room{half: 900, roof: 2000, floor: 40, rear: 2900}

// van gathers inputs one fitting at a time.
type van struct {
	in    fit.Inputs
	boxes []solid.Bounds
}

func in(r room) *van { return &van{in: fit.Inputs{Room: r, Error: 4, Partition: true}} }

func box(x0, x1, y0, y1, z0, z1 float64) solid.Bounds {
	return solid.Bounds{MinX: x0, MaxX: x1, MinY: y0, MaxY: y1, MinZ: z0, MaxZ: z1}
}

func (v *van) put(f fit.Fitting, b solid.Bounds) *van {
	v.in.Fittings = append(v.in.Fittings, f)
	v.boxes = append(v.boxes, b)
	return v
}

func (v *van) person(id string, stature float64) *van {
	v.in.People = append(v.in.People, fit.Person{ID: id, Stature: stature})
	return v
}

// mode adds a mode in which all rests but what is given by number.
func (v *van) mode(name string, moved map[int]solid.Bounds, poses ...fit.Pose) *van {
	m := fit.Mode{Name: name, Poses: poses}
	for i, b := range v.boxes {
		s := fit.Standing{Solid: solid.Solid{solid.Box(b)}, Box: b}
		if to, ok := moved[i]; ok {
			s = fit.Standing{Solid: solid.Solid{solid.Box(to)}, Box: to, Moved: true}
		}
		m.Standings = append(m.Standings, s)
	}
	v.in.Modes = append(v.in.Modes, m)
	return v
}

// told is a result in a form that tests can read: "close fit.foul a b [night] 12".
func told(r fit.Result) string {
	var lines []string
	for _, f := range r.Findings {
		about := make([]string, len(f.About))
		for i, p := range f.About {
			about[i] = p[strings.LastIndexByte(p, '/')+1:]
		}
		line := fmt.Sprintf("%s %s %s", f.Severity, f.Code, strings.Join(about, " "))
		if f.Mode != "" {
			line += " [" + f.Mode + "]"
		}
		if f.Measured != nil {
			line += fmt.Sprintf(" %.0f", f.Measured.Value)
		}
		lines = append(lines, line)
	}
	return strings.Join(lines, "\n")
}

func figure(t *testing.T, r fit.Result, code string) working.Figure {
	t.Helper()
	for _, f := range r.Figures {
		if f.Code == code {
			return f
		}
	}
	t.Fatalf("no figure %s", code)
	return working.Figure{}
}

// sound holds for every result: workings end in their figures, codes are explained, nothing is no number.
func sound(t *testing.T, r fit.Result) {
	t.Helper()
	for _, f := range r.Figures {
		w, ok := r.Working(f.Code)
		if !ok || w.Last() != f.Value || len(w.Lines) == 0 || w.Formula == "" || w.Source.Text == "" {
			t.Errorf("%s = %g, its working ends in %g", f.Code, f.Value, w.Last())
		}
		if math.IsNaN(f.Value) || math.IsInf(f.Value, 0) {
			t.Errorf("%s is no number", f.Code)
		}
	}
	explained := map[string]bool{}
	for _, e := range fit.Explanations {
		explained[e.Code] = true
	}
	for _, f := range r.Findings {
		if !explained[f.Code] || f.Title == "" || f.Words == "" || f.Source.Text == "" || len(f.About) == 0 {
			t.Errorf("finding %+v says too little", f)
		}
		for _, p := range f.Proposals {
			if !json.Valid(p.Patch) {
				t.Errorf("patch %s", p.Patch)
			}
		}
	}
	_ = finding.Note
}
