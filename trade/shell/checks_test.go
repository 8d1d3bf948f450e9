package shell_test

import (
	"slices"
	"strings"
	"testing"

	"tumblehome/quantity"
	"tumblehome/trade/shell"
)

func TestWhatDoesNotFitTogetherIsFound(t *testing.T) {
	for _, c := range []struct {
		name  string
		spoil func(*shell.Inputs)
		code  string
		about string
		words string
	}{
		{"the fan is marked over a bow", func(in *shell.Inputs) { in.Openings[3].X, in.Openings[3].Made = span(1130, 1530), false },
			"shell.opening-over-rib", "/shell/openings/fan", "It overlaps the rib by 60 mm. Do not cut a rib or a bow: they carry the roof and the sides. Moved to x 1040..1440 it is clear."},
		{"the fan was cut through a bow", func(in *shell.Inputs) { in.Openings[3].X = span(1130, 1530) },
			"shell.opening-over-rib", "/shell/openings/fan", "Let somebody who welds bodies frame the hole"},
		{"a fan too long for any bay", func(in *shell.Inputs) { in.Openings[3].X, in.Openings[3].Made = span(1000, 1600), false },
			"shell.opening-over-rib", "/shell/openings/fan", "Nowhere between the ribs is there room for 600 mm."},
		{"a window beyond the rear", func(in *shell.Inputs) {
			in.Openings = append(in.Openings, shell.Opening{ID: "pane", Through: "right", X: span(2700, 3050), Z: span(800, 1200)})
		}, "shell.opening-outside", "/shell/openings/pane", "do not agree"},
		{"a rear door wider than the van", func(in *shell.Inputs) { in.Openings[1].Y = span(-900, 900) },
			"shell.opening-outside", "/shell/openings/rear", "do not agree"},
		{"a window in the door without saying so", func(in *shell.Inputs) { in.Openings[2].In = "" },
			"shell.openings-overlap", "/shell/openings/side", "say so with `in`"},
		{"an opening without its height", func(in *shell.Inputs) { in.Openings[0].Z = nil },
			"shell.opening-unsized", "/shell/openings/side", "left out"},
		{"the width between the arches written as the arch", func(in *shell.Inputs) { in.Arches[0].Inward = 1340 },
			"shell.arch-too-wide", "/shell/arches/rear-wheels", "Was the width between the arches written as the arch?"},
		{"an arch up to the eaves", func(in *shell.Inputs) { in.Arches[0].Up = 1700 },
			"shell.arch-too-high", "/shell/arches/rear-wheels", "1 700 mm high"},
		{"an arch behind the doors", func(in *shell.Inputs) { in.Arches[0].To = 3100 },
			"shell.arch-outside", "/shell/arches/rear-wheels", "load space from 0 mm to 2 950 mm"},
		{"a rib behind the doors", func(in *shell.Inputs) { in.Ribs[5].X = 3680 },
			"shell.rib-outside", "/shell/ribs/r5", "3 680 mm"},
		{"two ribs in one another", func(in *shell.Inputs) { in.Ribs[4].X = 780 },
			"shell.ribs-overlap", "/shell/ribs/r4", "overlap by 30 mm"},
		{"a slip of the pencil in the middle of the table", func(in *shell.Inputs) { in.Table.Stations[2].Half[3] = 834 },
			"shell.reading-doubtful", "/shell/offsets/stations/s2/half/3", "narrower"},
		{"a slip of the pencil at the end", func(in *shell.Inputs) { in.Table.Stations[4].Half[1] = 924 },
			"shell.reading-doubtful", "/shell/offsets/stations/s4/half/1", "wider"},
		{"two stations at one place", func(in *shell.Inputs) { in.Table.Stations[3].X = 1475 },
			"shell.table-unusable", "/shell/offsets/stations/s3", "stands in"},
		{"a crown below the sides", func(in *shell.Inputs) { in.Table.Stations[1].Crown = 1176 },
			"shell.table-unusable", "/shell/offsets/stations/s1", "stands in"},
		{"nothing measured", func(in *shell.Inputs) { in.Table = nil },
			"shell.not-measured", "/shell", "ten minutes"},
		{"arches further apart than the sides", func(in *shell.Inputs) {
			in.Table, in.Quick = nil, &shell.Quick{Body: "mid-mid", Knee: long(1300), BetweenArches: long(1350)}
		}, "shell.quick-contradiction", "/shell/quick/between-arches", "1 350 mm between the arches, but 1 300 mm between the sides"},
		{"a door higher than the van", func(in *shell.Inputs) {
			in.Table, in.Quick = nil, &shell.Quick{Body: "mid-mid", Height: long(1300), DoorHeight: long(1430)}
		}, "shell.quick-contradiction", "/shell/quick/door-height", "1 430 mm high, the van 1 300 mm"},
	} {
		in := dipper()
		c.spoil(&in)
		found := shell.Work(in).Findings
		i := slices.IndexFunc(codes(found), func(code string) bool { return code == c.code })
		if i < 0 {
			t.Errorf("%s: found %v, want %s", c.name, codes(found), c.code)
			continue
		}
		f := found[i]
		if f.About[0] != c.about || !strings.Contains(f.Words, c.words) || f.Source.Text == "" || f.Title == "" {
			t.Errorf("%s: got %+v, want about %s and %q", c.name, f, c.about, c.words)
		}
	}
}

// A hole that is not cut yet is moved between two bows, 30 off each; one that is cut stays.
func TestAHoleOverABowIsProposedBetweenTwo(t *testing.T) {
	for _, c := range []struct {
		name string
		made bool
		want string
	}{
		{"not cut yet", false, `move the hole fan 90 mm forwards, between two ribs {"shell":{"openings":{"fan":{"x":"1040..1440"}}}}; ` +
			`move the hole fan 430 mm rearwards, between two ribs {"shell":{"openings":{"fan":{"x":"1560..1960"}}}}`},
		{"cut", true, ""},
	} {
		in := dipper()
		in.Openings[3].X, in.Openings[3].Made = span(1130, 1530), c.made
		var got []string
		for _, f := range shell.Work(in).Findings {
			for _, p := range f.Proposals {
				got = append(got, p.Words+" "+string(p.Patch))
			}
		}
		if told := strings.Join(got, "; "); told != c.want {
			t.Errorf("%s: proposed is %s, not %s", c.name, told, c.want)
		}
	}
}

func TestEveryCodeIsExplained(t *testing.T) {
	all := shell.Explanations()
	for i, e := range all {
		if e.Meaning == "" || e.Why == "" || e.Clear == "" || i > 0 && all[i-1].Code >= e.Code {
			t.Errorf("%+v", e)
		}
	}
	if len(all) < 14 {
		t.Errorf("only %d codes are explained", len(all))
	}
}

// FuzzWork holds that no readings at all bring the shell down or out of numbers.
func FuzzWork(f *testing.F) {
	f.Add(2950.0, 1784.0, 896.0, 230.0, 310.0, 1030.0, 4.0)
	f.Add(-1.0, 0.0, 1e9, -5.0, 1e12, 0.0, -3.0)
	f.Fuzz(func(t *testing.T, x, crown, half, inward, up, fan, reading float64) {
		in := dipper()
		in.Table.Stations[4].X, in.Table.Stations[0].Half[2] = quantity.Length(x), quantity.Length(half)
		in.Table.Stations[2].Crown, in.Table.Error = quantity.Length(crown), quantity.Length(reading)
		in.Arches[0].Inward, in.Arches[0].Up = quantity.Length(inward), quantity.Length(up)
		in.Openings[3].X.From, in.Ribs[3].X = quantity.Length(fan), quantity.Length(x/2)
		for _, v := range []float64{x, crown, half, inward, up, fan, reading} {
			if !(v > -1e7 && v < 1e7) { // the document refuses what is larger
				return
			}
		}
		r := shell.Work(in)
		for _, figure := range r.Figures {
			if figure.Value != figure.Value || figure.Value > 1e30 || figure.Value < -1e30 {
				t.Fatalf("%s is %g", figure.Code, figure.Value)
			}
		}
		r.Body.Bays("left")
		r.Body.Doors()
	})
}
