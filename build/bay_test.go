package build_test

import (
	"testing"

	"tumblehome/build"
)

func TestBaysAreSaidAsOneFindsThem(t *testing.T) {
	for _, c := range []struct {
		ids  []string
		want string
	}{
		{[]string{"left-2"}, "on the left the second space between ribs"},
		{[]string{"left-3", "left-4", "right-4", "left-3"}, "on the left the third and fourth space between ribs; on the right the fourth space between ribs"},
		{[]string{"roof-1", "roof-2", "roof-3", "roof-5"}, "under the roof the first to third and fifth space between bows"},
		{[]string{"right-14"}, "on the right the 14th space between ribs"},
		{[]string{"rear-wheels"}, "rear wheels"},
		{[]string{"side"}, "side"},
		{[]string{"left-0", "left-x"}, "left 0; left x"},
		{nil, ""},
	} {
		if got := build.BayWords(c.ids...); got != c.want {
			t.Errorf("%v: %q, want %q", c.ids, got, c.want)
		}
	}
}
