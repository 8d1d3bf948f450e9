package build_test

import (
	"testing"

	"tumblehome/build"
	"tumblehome/quantity"
)

func TestAxisRulesSayWhatTheyMean(t *testing.T) {
	at := func(mm quantity.Length) build.Point { return build.Point{Plus: mm} }
	face := func(of, face string, plus quantity.Length) build.Point {
		return build.Point{Of: of, Face: face, Plus: plus}
	}
	tests := []struct {
		text, written string
		want          build.AxisRule
	}{
		{"40", "40", build.AxisRule{Form: build.LowAt, A: at(40)}},
		{"-0.4 m", "-400", build.AxisRule{Form: build.LowAt, A: at(-400)}},
		{"right", "right", build.AxisRule{Form: build.Against, A: face("", "right", 0)}},
		{"right-30", "right - 30", build.AxisRule{Form: build.Against, A: face("", "right", -30)}},
		{"galley-box.rear + 1 cm", "galley-box.rear + 10", build.AxisRule{Form: build.Against, A: face("galley-box", "rear", 10)}},
		{"from galley.front", "from galley.front", build.AxisRule{Form: build.From, A: face("galley", "front", 0)}},
		{"to rear - 5", "to rear - 5", build.AxisRule{Form: build.To, A: face("", "rear", -5)}},
		{"mid 0", "mid 0", build.AxisRule{Form: build.Mid, A: at(0)}},
		{"mid 1.5 m", "mid 1500", build.AxisRule{Form: build.Mid, A: at(1500)}},
		{"front..galley.front - 10", "front..galley.front - 10", build.AxisRule{Form: build.Between, A: face("", "front", 0), B: face("galley", "front", -10)}},
		{"-760 .. 760.5", "-760..760.5", build.AxisRule{Form: build.Between, A: at(-760), B: at(760.5)}},
		{"rear + 0", "rear", build.AxisRule{Form: build.Against, A: face("", "rear", 0)}},
	}
	for _, tt := range tests {
		got, err := build.ParseAxisRule(tt.text)
		if err != nil || got != tt.want || got.String() != tt.written {
			t.Errorf("%q: got %+v, written %q, %v; want %+v, %q", tt.text, got, got, err, tt.want, tt.written)
		}
	}
	for _, bad := range []string{"", "right -", "right + -5", "from", "from mid 0", "1..2..3", "5..5", "galley.", ".rear", "galley.rear.top", "top", "galley.roof", "right 30", "mid", "from  ", "a..b"} {
		if got, err := build.ParseAxisRule(bad); err == nil {
			t.Errorf("%q was read as %+v", bad, got)
		}
	}
}

func TestAmountsDirectionsAndEdges(t *testing.T) {
	var a build.Amount
	for text, want := range map[string]build.Amount{"full": {}, "60 cm": {Form: build.Slid, Length: 600}, "95°": {Form: build.Swung, Angle: 95}} {
		if err := a.UnmarshalText([]byte(text)); err != nil || a != want {
			t.Errorf("%q: got %+v, %v", text, a, err)
		}
	}
	var d build.Direction
	if err := d.UnmarshalText([]byte("+y")); err != nil || d.String() != "y" {
		t.Errorf("got %v, %v", d, err)
	}
	var e build.Edge
	if err := e.UnmarshalText([]byte("right  top")); err != nil || e.String() != "right top" {
		t.Errorf("got %v, %v", e, err)
	}
}
