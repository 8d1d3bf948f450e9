package reckon_test

import (
	"fmt"
	"math/rand/v2"
	"reflect"
	"runtime/debug"
	"strconv"
	"sync"
	"testing"

	"tumblehome/build"
	"tumblehome/build/begin"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/internal/faultcase"
)

// wildBuilds is how many changed documents are tried in a test; the fuzz target tries more.
const wildBuilds = 100

// Documents changed at random, so far as they can still be read, are reckoned without a panic, every number is a number, and every working ends
// in its figure.
func TestNoDocumentThatCanBeReadBreaksTheReckoning(t *testing.T) {
	for seed := range uint64(wildBuilds) {
		wild(t, seed)
	}
}

// tame are the documents that are changed: the sound build, the demonstration builds and one of the first hour.
var tame = sync.OnceValues(func() ([]*tree.Node, error) {
	sound, err := faultcase.Case{}.Base()
	if err != nil {
		return nil, err
	}
	begun, _, err := begin.Document(begin.Answers{Title: "Begun"})
	if err != nil {
		return nil, err
	}
	known, err := demos()
	all := []*tree.Node{build.Encode(sound), build.Encode(begun)}
	for _, b := range known {
		all = append(all, tree.Remove(build.Encode(b.doc), "/alternatives", "/jobs", "/evidence", "/calendar", "/spending"))
	}
	return all, err
})

func FuzzReckoning(f *testing.F) {
	f.Add(uint64(1))
	f.Fuzz(func(t *testing.T, seed uint64) { wild(t, seed) })
}

func wild(t *testing.T, seed uint64) {
	t.Helper()
	bases, err := tame()
	if err != nil {
		t.Fatal(err)
	}
	random := rand.New(rand.NewPCG(seed, 1))
	root, done := bases[seed%uint64(len(bases))], ""
	for range 1 + random.IntN(3) {
		var what string
		root, what = changed(root, random)
		done += what + "; "
	}
	doc, err := build.DecodeTree(root, catalogue.Builtin())
	if err != nil {
		return
	}
	defer func() {
		if wrong := recover(); wrong != nil {
			t.Errorf("seed %d, %s panics: %v %s", seed, done, wrong, debug.Stack())
		}
	}()
	r := reckoned(doc)
	for _, v := range []any{r.Figures, r.Findings, r.Places.Rest, r.Places.Modes, r.Lines} {
		for _, path := range notNumbers(fmt.Sprintf("%T", v), reflect.ValueOf(v)) {
			t.Errorf("seed %d, %s%s is no number", seed, done, path)
		}
	}
	for _, f := range r.Figures {
		if w, ok := r.Working(f.Code); !ok || differ(w.Last(), f.Value, 1e-9) {
			t.Errorf("seed %d, %s%s is %g, its working ends in %g", seed, done, f.Code, f.Value, w.Last())
		}
	}
}

// changed is a document with one thing in it taken away or written otherwise.
func changed(root *tree.Node, random *rand.Rand) (*tree.Node, string) {
	all := places(nil, "", root)
	p := all[random.IntN(len(all))]
	n := root.At(p)
	if like := alike(all, p); random.IntN(4) == 0 && len(like) > 0 {
		from := like[random.IntN(len(like))]
		return put(root, p.Steps(), root.At(from)), string(p) + " as " + string(from)
	}
	if n.Kind != tree.Scalar || random.IntN(4) == 0 {
		return tree.Remove(root, p), "without " + string(p)
	}
	text := otherwise(n.Text, random)
	return put(root, p.Steps(), tree.Plain(text)), string(p) + " is " + text
}

// alike are the places that end in the same key.
func alike(all []tree.Pointer, p tree.Pointer) []tree.Pointer {
	var out []tree.Pointer
	key := p.Steps()[len(p.Steps())-1]
	for _, q := range all {
		if steps := q.Steps(); q != p && steps[len(steps)-1] == key {
			out = append(out, q)
		}
	}
	return out
}

// otherwise is another text for one: a number grown, shrunk or turned about, or a word.
func otherwise(text string, random *rand.Rand) string {
	v, err := strconv.ParseFloat(text, 64)
	if err != nil {
		words := []string{"undecided", "none", "0", "left", "right", "roof", "front", "rear", "bench", "bench.rear", "mid 0", "front..rear", "rear - 100", "yes", "100 %"}
		return words[random.IntN(len(words))]
	}
	times := []float64{0, 0.001, 0.5, 0.9, 1.1, 2, 10, -1}
	return strconv.FormatFloat(v*times[random.IntN(len(times))], 'f', -1, 64)
}

// places are all places of a tree but the top.
func places(found []tree.Pointer, at tree.Pointer, n *tree.Node) []tree.Pointer {
	if at != "" {
		found = append(found, at)
	}
	for _, e := range n.Entries {
		found = places(found, at.Then(e.Key), e.Value)
	}
	for i, item := range n.Items {
		found = places(found, at.Then(strconv.Itoa(i)), item)
	}
	return found
}

// put is a tree with another node at a place, within lists as well.
func put(n *tree.Node, steps []string, to *tree.Node) *tree.Node {
	if len(steps) == 0 {
		return to
	}
	out := *n
	out.Entries, out.Items = append([]tree.Entry(nil), n.Entries...), append([]*tree.Node(nil), n.Items...)
	for i, e := range out.Entries {
		if e.Key == steps[0] {
			out.Entries[i].Value = put(e.Value, steps[1:], to)
		}
	}
	for i, item := range out.Items {
		if strconv.Itoa(i) == steps[0] {
			out.Items[i] = put(item, steps[1:], to)
		}
	}
	return &out
}
