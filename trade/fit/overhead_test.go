package fit_test

import (
	"strings"
	"testing"

	"tumblehome/trade/fit"
)

func TestWhoStoopsOrSitsUnderALockerIsToldOfIt(t *testing.T) {
	for _, tt := range []struct {
		name, does, code, want, words string
		at                            int
	}{
		{"a cook", "cooks", "fit.headroom.stand", "move locker 125 mm up; move locker 261 mm rearwards", "What is so low over the head is locker, not the roof: raise it by 125 mm", 1},
		{"a sitter", "sits", "fit.headroom.sit", "move locker 321 mm to the left; move locker 341 mm rearwards", "What is so low over the head is locker, not the roof", 2},
	} {
		v := in(high).put(fit.Fitting{ID: "locker", Make: "locker"}, box(900, 2100, -200, 890, 1640, 1800)).put(fit.Fitting{ID: "galley", Make: "carcass"}, box(1000, 2000, 450, 890, 40, 900)).
			put(fit.Fitting{ID: "bench", Rests: true}, box(1000, 2000, 450, 890, 900, 1000)).person("ada", 1700)
		v.in.Nudge = anywhere
		v.mode("day", nil, fit.Pose{Person: "ada", Does: tt.does, At: v.in.Fittings[tt.at].ID})
		r := fit.Work(v.in)
		if got := offered(r, tt.code); got != tt.want {
			t.Errorf("%s: %q is proposed, not %q", tt.name, got, tt.want)
		}
		found := false
		for _, f := range r.Findings {
			found = found || f.Code == tt.code && strings.Contains(f.Words, tt.words) && !strings.Contains(f.Words, "Only a higher roof")
		}
		if !found {
			t.Errorf("%s: nothing says %q: %+v", tt.name, tt.words, r.Findings)
		}
	}
}
