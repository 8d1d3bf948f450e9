package fit_test

import (
	"strings"
	"testing"

	"tumblehome/trade/fit"
)

// rowsAt are the rows of the table at a place: what is done there, and "nobody" where nobody is said to.
func rowsAt(r fit.Result, at string) string {
	var out []string
	for _, row := range r.Suits.Rows {
		if row.At == at && (row.What == "length" || row.What == "headroom") {
			said := row.Does
			if row.Nobody {
				said += " nobody"
			}
			out = append(out, said)
		}
	}
	return strings.Join(out, ", ")
}

func TestBedsAndSeatsThatNobodyUsesAreJudgedToo(t *testing.T) {
	v := func(poses ...fit.Pose) fit.Result {
		return fit.Work(doors(in(flat).person("a", 1640)).
			put(fit.Fitting{ID: "bed", Make: "platform", Rests: true}, box(900, 2800, 200, 880, 40, 460)).
			put(fit.Fitting{ID: "mattress", Make: "cushions", Carrier: "bed", Rests: true, Gives: 0.5}, box(900, 2800, 200, 880, 460, 540)).
			put(fit.Fitting{ID: "stool", Make: "seat-box", Rests: true}, box(200, 700, 300, 880, 40, 470)).
			put(fit.Fitting{ID: "chest", Make: "box", Rests: true}, box(200, 700, -880, -400, 40, 470)).
			mode("day", nil).mode("night", nil, poses...).in)
	}
	for _, c := range []struct {
		name, at, want string
		poses          []fit.Pose
	}{
		{"a bed", "bed", "lie nobody", nil},
		{"a mattress is a part of its bed", "mattress", "", nil},
		{"a seat", "stool", "sit nobody", nil},
		{"a box to keep things in is no seat", "chest", "", nil},
		{"a bed somebody lies on", "bed", "lie", []fit.Pose{{Person: "a", Does: "lies", At: "bed", Head: "front"}}},
		{"a bed on whose mattress somebody lies", "bed", "", []fit.Pose{{Person: "a", Does: "lies", At: "mattress", Head: "front"}}},
	} {
		if got := rowsAt(v(c.poses...), c.at); got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}
