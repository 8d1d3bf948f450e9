package reckon

import (
	"sync"
	"testing"
)

// knot is a type that holds itself.
type knot struct {
	Name string
	Next *knot
	All  map[string][]knot
}

func TestADigestTellsValuesApartByTheirContent(t *testing.T) {
	one, other := 1.0, 1.0
	same := map[string][2]any{
		"pointers to equal numbers":     {&one, &other},
		"maps filled in another order":  {map[string]int{"a": 1, "b": 2}, map[string]int{"b": 2, "a": 1}},
		"a type that holds itself":      {knot{Next: &knot{Name: "b"}}, knot{Next: &knot{Name: "b"}}},
		"functions, which do not count": {func() {}, func() { panic("never") }},
		"a nil and an empty list":       {[]int{}, []int(nil)},
	}
	for name, pair := range same {
		if digestOf("s", 1, pair[0]) != digestOf("s", 1, pair[1]) {
			t.Errorf("%s differ", name)
		}
	}
	differ := map[string][2]any{
		"a text that ends elsewhere":       {[2]string{"ab", "c"}, [2]string{"a", "bc"}},
		"nothing and nought":               {(*float64)(nil), new(float64)},
		"a value under another key":        {map[string]int{"a": 1}, map[string]int{"b": 1}},
		"a number far down":                {knot{All: map[string][]knot{"a": {{Name: "b"}}}}, knot{All: map[string][]knot{"a": {{Name: "c"}}}}},
		"true and false":                   {true, false},
		"what stands behind an interface":  {[]any{1, "a"}, []any{1, "b"}},
		"a result with another digest":     {digestedRoom{key: Digest{1}}, digestedRoom{key: Digest{2}}},
		"a whole number and another kind":  {[]any{1}, []any{1.0}},
		"one element and two of the same":  {[]int{1}, []int{1, 1}},
		"a number and the number below it": {-1, -2},
	}
	for name, pair := range differ {
		if digestOf("s", 1, pair[0]) == digestOf("s", 1, pair[1]) {
			t.Errorf("%s have one digest", name)
		}
	}
	if digestOf("s", 1, 1) == digestOf("s", 2, 1) || digestOf("s", 1, 1) == digestOf("t", 1, 1) {
		t.Error("stages or versions share digests")
	}
}

// Many goroutines may meet a type for the first time at once.
func TestDigestsMayBeAskedForAtOnce(t *testing.T) {
	type fresh struct {
		Knot knot
		More []*struct{ Deep map[string]knot }
	}
	want, all := digestOf("s", 1, knot{Name: "a"}), sync.WaitGroup{}
	for range 8 {
		all.Go(func() {
			digestOf("s", 1, fresh{Knot: knot{Name: "a"}})
			if digestOf("s", 1, knot{Name: "a"}) != want {
				t.Error("digests differ")
			}
		})
	}
	all.Wait()
}
