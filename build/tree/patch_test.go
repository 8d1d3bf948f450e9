package tree_test

import (
	"fmt"
	"testing"

	"pgregory.net/rapid"

	"tumblehome/build/tree"
)

func readJSON(t testing.TB, text string) *tree.Node {
	t.Helper()
	n, err := tree.ReadJSON([]byte(text))
	if err != nil {
		t.Fatalf("%s: %v", text, err)
	}
	return n
}

func patchOf(t testing.TB, text string) tree.Patch {
	t.Helper()
	p, err := tree.ParsePatch([]byte(text))
	if err != nil {
		t.Fatalf("%s: %v", text, err)
	}
	return p
}

// The cases are those of RFC 7396, appendix A, all fifteen.
func TestMergeDoesWhatRFC7396Does(t *testing.T) {
	tests := []struct{ original, patch, want string }{
		{`{"a":"b"}`, `{"a":"c"}`, `{"a":"c"}`},
		{`{"a":"b"}`, `{"b":"c"}`, `{"a":"b","b":"c"}`},
		{`{"a":"b"}`, `{"a":null}`, `{}`},
		{`{"a":"b","b":"c"}`, `{"a":null}`, `{"b":"c"}`},
		{`{"a":["b"]}`, `{"a":"c"}`, `{"a":"c"}`},
		{`{"a":"c"}`, `{"a":["b"]}`, `{"a":["b"]}`},
		{`{"a":{"b":"c"}}`, `{"a":{"b":"d","c":null}}`, `{"a":{"b":"d"}}`},
		{`{"a":[{"b":"c"}]}`, `{"a":[1]}`, `{"a":[1]}`},
		{`["a","b"]`, `["c","d"]`, `["c","d"]`},
		{`{"a":"b"}`, `["c"]`, `["c"]`},
		{`{"a":"foo"}`, `null`, `null`},
		{`{"a":"foo"}`, `"bar"`, `"bar"`},
		{`{"e":null}`, `{"a":1}`, `{"e":null,"a":1}`},
		{`[1,2]`, `{"a":"b","c":null}`, `{"a":"b"}`},
		{`{}`, `{"a":{"bb":{"ccc":null}}}`, `{"a":{"bb":{}}}`},
	}
	for _, tt := range tests {
		original := readJSON(t, tt.original)
		if got := string(tree.JSON(tree.Merge(original, patchOf(t, tt.patch)))); got != tt.want {
			t.Errorf("%s with %s: got %s, want %s", tt.original, tt.patch, got, tt.want)
		}
		if string(tree.JSON(original)) != tt.original {
			t.Errorf("%s was changed by %s", tt.original, tt.patch)
		}
	}
}

func TestABadPatchIsRefused(t *testing.T) {
	tests := []struct{ name, text, want string }{
		{"a key that stands twice", `{"a":1,"a":2}`, "patch: `a` stands here for the second time, first in line 1; keep one"},
		{"null in a list", `{"a":[1,null]}`, "patch: `null` says nothing here; leave it out, or write `none` or `undecided`"},
		{"null in a map in a list", `{"a":[{"b":null}]}`, "patch: `null` says nothing here; leave it out, or write `none` or `undecided`"},
		{"two patches", `{} {}`, "patch: something follows the end"},
		{"half a patch", `{"a":`, "patch: not readable as JSON: EOF"},
	}
	for _, tt := range tests {
		if _, err := tree.ParsePatch([]byte(tt.text)); err == nil || err.Error() != tt.want {
			t.Errorf("%s: got %v, want %s", tt.name, err, tt.want)
		}
	}
}

func TestTouchedPlaces(t *testing.T) {
	p := patchOf(t, `{"fittings":{"bed":{"at":{"x":1}},"old":null},"gas":"none"}`)
	if got := fmt.Sprint(p.Touches()); got != "[/fittings/bed/at/x /fittings/old /gas]" {
		t.Errorf("got %s", got)
	}
	tests := []struct {
		name, other string
		want        bool
	}{
		{"another fitting", `{"fittings":{"settle":{"of":"ply"}}}`, true},
		{"another axis of the same place", `{"fittings":{"bed":{"at":{"y":1}}}}`, true},
		{"the same axis", `{"fittings":{"bed":{"at":{"x":2}}}}`, false},
		{"the place as a whole", `{"fittings":{"bed":{"at":"undecided"}}}`, false},
		{"the fitting itself", `{"fittings":{"bed":null}}`, false},
		{"something below what is deleted", `{"fittings":{"old":{"mass":1}}}`, false},
		{"an id that begins alike", `{"fittings":{"older":{"mass":1}}}`, true},
	}
	for _, tt := range tests {
		if got := tree.Disjoint(p, patchOf(t, tt.other)); got != tt.want {
			t.Errorf("%s: got %v, want %v", tt.name, got, tt.want)
		}
	}
}

func TestRemoveTakesAwayPlaces(t *testing.T) {
	doc := readJSON(t, `{"a":{"b":1,"c":[1,{"d":2,"e":3}]},"f":4}`)
	got := string(tree.JSON(tree.Remove(doc, "/a/b", "/a/c/1/d", "/nowhere", "/f")))
	if got != `{"a":{"c":[1,{"e":3}]}}` {
		t.Errorf("got %s", got)
	}
}

// nodes draws small documents with few keys, so that they often meet.
func nodes(t *rapid.T, name string, depth int, gone bool) *tree.Node {
	kind := rapid.IntRange(0, 5).Draw(t, name)
	switch {
	case kind >= 4 && depth > 0:
		m := &tree.Node{Kind: tree.Map}
		for _, key := range []string{"a", "b", "c"} {
			if rapid.Bool().Draw(t, name+key) {
				m.Entries = append(m.Entries, tree.Entry{Key: key, Value: nodes(t, name+key, depth-1, gone)})
			}
		}
		return m
	case kind == 3 && depth > 0:
		return tree.ListOf(nodes(t, name+"0", depth-1, false))
	case kind == 2 && gone:
		return &tree.Node{Kind: tree.Gone}
	}
	return tree.Plain(rapid.SampledFrom([]string{"1", "2"}).Draw(t, name+"text"))
}

func document(t *rapid.T, name string) *tree.Node {
	m := &tree.Node{Kind: tree.Map}
	for _, key := range []string{"a", "b", "c"} {
		m.Entries = append(m.Entries, tree.Entry{Key: key, Value: nodes(t, name+key, 3, false)})
	}
	return m
}

func patch(t *rapid.T, name string) tree.Patch {
	m := &tree.Node{Kind: tree.Map}
	for _, key := range []string{"a", "b", "c"} {
		if rapid.Bool().Draw(t, name+key) {
			m.Entries = append(m.Entries, tree.Entry{Key: key, Value: nodes(t, name+key, 3, true)})
		}
	}
	p, err := tree.ParsePatch(tree.JSON(m))
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func TestPatchesKeepTheirPromises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b, p, q := document(t, "a"), document(t, "b"), patch(t, "p"), patch(t, "q")
		if got := tree.Merge(a, tree.Difference(a, b)); !tree.Equal(got, b) {
			t.Fatalf("the difference of %s and %s makes %s", tree.JSON(a), tree.JSON(b), tree.JSON(got))
		}
		if !tree.Difference(a, a).Empty() {
			t.Fatal("a document differs from itself")
		}
		if got := tree.Merge(tree.Merge(a, p), tree.Inverse(a, p)); !tree.Equal(got, a) {
			t.Fatalf("%s with %s taken back is %s", tree.JSON(a), p.JSON(), tree.JSON(got))
		}
		again, err := tree.ParsePatch(p.JSON())
		if err != nil || !tree.Equal(tree.Merge(a, again), tree.Merge(a, p)) {
			t.Fatalf("%s does not read back: %v", p.JSON(), err)
		}
		if tree.Disjoint(p, q) != tree.Disjoint(q, p) {
			t.Fatal("disjoint one way only")
		}
		if tree.Disjoint(p, q) {
			pq, qp := tree.Merge(tree.Merge(a, p), q), tree.Merge(tree.Merge(a, q), p)
			if !tree.Equal(pq, qp) {
				t.Fatalf("%s and %s on %s: %s or %s", p.JSON(), q.JSON(), tree.JSON(a), tree.JSON(pq), tree.JSON(qp))
			}
		}
	})
}
