package fit_test

import (
	"testing"

	"tumblehome/solve/solid"
	"tumblehome/trade/fit"
)

// What a drawer met in one mode is taken for another only where all about it is the same: by day a block stands 50 before it, by night it
// stands so near that it opens still less, in the evening it is away.
func TestAPartIsJudgedAnewInAModeInWhichSomethingAboutItMoved(t *testing.T) {
	v := in(high).put(fit.Fitting{ID: "chest"}, box(1000, 1400, -200, 200, 40, 400)).put(fit.Fitting{ID: "block"}, box(1000, 1400, 250, 500, 40, 400)).
		put(fit.Fitting{ID: "far"}, box(100, 300, -200, 200, 40, 400))
	v.mode("day", nil).mode("night", map[int]solid.Bounds{1: box(1000, 1400, 210, 460, 40, 400)}).
		mode("evening", map[int]solid.Bounds{2: box(400, 600, -200, 200, 40, 400)}).mode("guests", map[int]solid.Bounds{1: box(2000, 2400, 250, 500, 40, 400)})
	reach := func(_ int, share float64) solid.Solid {
		if share == 0 {
			return nil
		}
		return solid.Solid{solid.Box(box(1000, 1400, 200, 200+300*share, 40, 400))}
	}
	v.in.Parts = []fit.Part{{Fitting: 0, Kind: "drawer", Ways: 1, Key: "drawer", Swept: reach, Opened: reach}}
	for _, c := range []struct {
		named, want string
		modes       []int
	}{
		{"the block is away for guests", "note fit.opens chest block [day] 17", []int{0, 1, 2, 3}},
		{"it is barred in all", "fault fit.opens chest block [day] 17", []int{0, 1, 2}},
		{"only what is far off moved", "fault fit.opens chest block [day] 17", []int{0, 2}},
	} {
		some := v.in
		some.Modes = nil
		for _, m := range c.modes {
			some.Modes = append(some.Modes, v.in.Modes[m])
		}
		if got := told(fit.Work(some)); got != c.want {
			t.Errorf("%s: %s, want %s", c.named, got, c.want)
		}
	}
}
