package sheet_test

import (
	"bytes"
	"fmt"
	"path/filepath"
	"strings"
	"testing"

	"tumblehome/draw"
	"tumblehome/draw/sheet"
	"tumblehome/internal/golden"
	"tumblehome/trade/warmth"
)

// damp is a winter in which water gathers and dries again.
var damp = warmth.Winter{
	Months: []int{10, 11, 12, 1, 2, 3, 4, 5, 6, 7, 8, 9},
	Water:  []float64{4, 38, 96, 168, 224, 241, 180, 62, 0, 0, 0, 0}, Most: 241, MostIn: 3,
}

func TestTheDrawingsOfWarmthAreFitToBeSeen(t *testing.T) {
	for _, name := range demos {
		r := demo(t, name)
		told := r.Warmth.Told()
		for _, width := range []float64{sheet.WideChart, sheet.Phone} {
			for i, n := range r.Warmth.Nights {
				t.Run(fmt.Sprintf("%s, night %d, %v wide", name, i, width), func(t *testing.T) { flawless(t, sheet.Night(n, told.Habit, told.Power, width)) })
			}
			for i, d := range r.Warmth.Details {
				t.Run(fmt.Sprintf("%s, rib %d, %v wide", name, i, width), func(t *testing.T) { flawless(t, sheet.RibDetail(r, d, width)) })
			}
			for i, w := range append(r.Warmth.Winters, damp) {
				t.Run(fmt.Sprintf("%s, winter %d, %v wide", name, i, width), func(t *testing.T) { flawless(t, sheet.Winter(w, width)) })
			}
		}
	}
}

func TestADetailThatWasNotWorkedOutIsEmpty(t *testing.T) {
	r := demo(t, "twite")
	for _, d := range []*warmth.Detail{nil, {Trouble: "no heat"}} {
		if s := sheet.RibDetail(r, d, sheet.Phone); len(s.Marks) != 0 {
			t.Errorf("%v: %d marks", d, len(s.Marks))
		}
	}
}

func TestANightSaysInWordsWhatItShows(t *testing.T) {
	r := demo(t, "dipper")
	n := r.Warmth.Nights[r.Warmth.Usual]
	with, without := sheet.Night(n, r.Warmth.Told().Habit, 2000, sheet.Phone), sheet.Night(n, r.Warmth.Told().Habit, 0, sheet.Phone)
	if !strings.Contains(with.Description, "The heater gives") || strings.Contains(without.Description, "heater") {
		t.Errorf("with a heater %q, without %q", with.Description, without.Description)
	}
	if with.Size.Height <= without.Size.Height {
		t.Error("a heater takes no room on the drawing")
	}
}

// firstRib is the section by the first rib of all.
func firstRib(w warmth.Result) *warmth.Detail {
	for _, l := range w.Lost {
		if len(l.Ribs) > 0 {
			return l.Ribs[0]
		}
	}
	return nil
}

func TestGoldenWarmth(t *testing.T) {
	r := demo(t, "dipper")
	for name, s := range map[string]draw.Scene{
		"warm-night": sheet.Night(r.Warmth.Nights[r.Warmth.Usual], r.Warmth.Told().Habit, r.Warmth.Told().Power, sheet.WideChart),
		"rib":        sheet.RibDetail(r, firstRib(r.Warmth), sheet.WideChart),
		"winter":     sheet.Winter(damp, sheet.WideChart),
	} {
		var text bytes.Buffer
		if err := s.SVG(&text, draw.SVGOptions{Standalone: true}); err != nil {
			t.Fatal(err)
		}
		golden.Equal(t, filepath.Join("testdata", "dipper-"+name+".golden.svg"), text.Bytes())
	}
}
