package quantity_test

import (
	"testing"

	"tumblehome/quantity"
)

func TestThousandsArePartedByANarrowBlank(t *testing.T) {
	for v, want := range map[float64]string{0: "0", -0.2: "0", 999.6: "1\u202f000", 1840: "1\u202f840", -3350: "−3\u202f350", 1234567: "1\u202f234\u202f567"} {
		if got := quantity.Parted(v); got != want {
			t.Errorf("%g: %q, want %q", v, got, want)
		}
	}
}
