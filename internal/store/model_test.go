package store_test

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"pgregory.net/rapid"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/internal/store"
)

// model is what a store must be like, kept in memory in the plainest way: every document there ever was, and two piles of documents for
// undo and redo. It knows no patches but the one an edit brings.
type model struct {
	texts []string // by revision; 0 is not used
	nodes []*tree.Node
	undo  []*tree.Node // the documents that undo would go back to
	redo  []*tree.Node
}

func (m *model) head() *tree.Node { return m.nodes[len(m.nodes)-1] }

func (m *model) push(n *tree.Node) {
	m.nodes = append(m.nodes, n)
	m.texts = append(m.texts, string(tree.Write(n)))
}

// edit applies a patch to the newest document, or says that the rules or sameness forbid it.
func (m *model) edit(p tree.Patch) (refused bool) {
	doc, err := build.DecodeTree(tree.Merge(m.head(), p), catalogue.Builtin())
	if err != nil {
		return true
	}
	after := build.Encode(doc)
	if tree.Equal(after, m.head()) {
		return true
	}
	m.undo, m.redo = append(m.undo, m.head()), nil
	m.push(after)
	return false
}

// places are where edits of the test go: values that are there, values that are not, things that others use, things that are nothing.
var places = []struct {
	path   string
	values []string // "-" deletes
}{
	{"build.budget", []string{"3000", "3100", "3200", "-"}},
	{"build.note", []string{"7", "yes", "12 %", "one: two", "-"}},
	{"people.child", []string{"{\"stature\":1100,\"mass\":20}", "{\"stature\":1200,\"mass\":22}", "-"}},
	{"people.child.mass", []string{"21", "{\"likely\":20,\"low\":15,\"high\":30}", "-"}},
	{"fittings.settle.size.y", []string{"600", "650", "-"}},
	{"fittings.settle", []string{"-"}},
	{"fittings.galley", []string{"-", "{\"make\":\"carcass\",\"at\":{\"x\":40,\"y\":\"right\"},\"size\":{\"x\":950,\"y\":450,\"z\":880}}"}},
	{"fittings.tap", []string{"-", "{\"buy\":\"tap-micro-switch\",\"upon\":\"galley\",\"at\":{\"x\":\"front\",\"y\":\"right\"}}"}},
	{"removed.racks", []string{"{\"mass\":36}", "{\"mass\":37,\"x\":0}", "-"}},
	{"lining.floor", []string{"[{\"lay\":\"ply-softwood-15\"}]", "[{\"lay\":\"ply-softwood-15\",\"times\":2}]", "-"}},
	{"no.such.place", []string{"1"}},
}

func drawPatch(t *rapid.T) (tree.Patch, string) {
	at := rapid.SampledFrom(places).Draw(t, "place")
	value := rapid.SampledFrom(at.values).Draw(t, "value")
	if value == "-" {
		return tree.Deleting(tree.Dotted(at.path)), at.path + " is deleted"
	}
	words := at.path + " = " + value
	if value[0] != '{' && value[0] != '[' {
		return tree.Setting(tree.Dotted(at.path), tree.Plain(value)), words
	}
	source, err := tree.Parse("value", []byte("{\"v\":"+value+"}"))
	if err != nil {
		t.Fatal(err)
	}
	return tree.Setting(tree.Dotted(at.path), source.Root.Get("v")), words
}

// TestTheStoreIsAsTheModel lets two writers on one file edit, undo, redo, open again and look back, at random, and holds all of it to the
// model.
func TestTheStoreIsAsTheModel(t *testing.T) {
	t.Parallel()
	if testing.Short() {
		if err := flag.Set("rapid.checks", "5"); err != nil {
			t.Fatal(err)
		}
	}
	folder := t.TempDir()
	doc := document(t)
	files := 0
	rapid.Check(t, func(t *rapid.T) {
		files++
		path := filepath.Join(folder, fmt.Sprintf("wherry-%d.tumblehome", files))
		c := &contest{T: t, path: path, m: &model{texts: []string{""}, nodes: []*tree.Node{nil}}}
		c.m.push(build.Encode(doc))
		first, err := store.Create(context.Background(), path, doc, childOptions())
		if err != nil {
			t.Fatal(err)
		}
		c.writers[0], c.writers[1] = first, c.open()
		defer func() {
			for _, w := range c.writers {
				w.Close()
			}
			os.Remove(path)
		}()
		t.Repeat(map[string]func(*rapid.T){
			"edit the newest": c.edit,
			"edit an old one": c.editOld,
			"undo":            c.undo,
			"redo":            c.redo,
			"open again":      c.openAgain,
			"look back":       c.lookBack,
			"":                c.same,
		})
	})
}

// contest is two writers against the model.
type contest struct {
	*rapid.T
	path    string
	writers [2]*store.Store
	m       *model
}

func (c *contest) open() *store.Store {
	kept, err := store.Open(context.Background(), c.path, childOptions())
	if err != nil {
		c.Fatal(err)
	}
	return kept
}

func (c *contest) writer(t *rapid.T) *store.Store {
	return c.writers[rapid.IntRange(0, 1).Draw(t, "writer")]
}

func (c *contest) edit(t *rapid.T) {
	patch, words := drawPatch(t)
	refused := c.m.edit(patch)
	r, err := c.writer(t).Save(context.Background(), store.Edit{Base: len(c.m.nodes) - 1 - boolean(!refused), Patch: patch, Words: words, By: "tall"})
	if refused != (err != nil) {
		t.Fatalf("%s: the model refuses it: %v; the store says %v", words, refused, err)
	}
	if err == nil && r.N != len(c.m.nodes)-1 {
		t.Fatalf("%s is revision %d, want %d", words, r.N, len(c.m.nodes)-1)
	}
}

func boolean(b bool) int {
	if b {
		return 1
	}
	return 0
}

// editOld edits while looking at an older revision. When it is taken, the result is the newest document with the edit, and what others
// have changed since is as they wanted it.
func (c *contest) editOld(t *rapid.T) {
	patch, words := drawPatch(t)
	base := rapid.IntRange(1, len(c.m.nodes)-1).Draw(t, "base")
	before, then := c.m.head(), c.m.nodes[base]
	_, err := c.writer(t).Save(context.Background(), store.Edit{Base: base, Patch: patch, Words: words, By: "small"})
	if err != nil {
		var conflict *store.Conflict
		var faults build.Faults
		if !errors.As(err, &conflict) && !errors.As(err, &faults) && !errors.Is(err, store.ErrNoChange) {
			t.Fatal(err)
		}
		return
	}
	if c.m.edit(patch) {
		t.Fatalf("%s on revision %d was taken and the model refuses it", words, base)
	}
	for _, p := range tree.Difference(then, before).Touches() { // what changed in between
		if !tree.Equal(c.m.head().At(p), before.At(p)) && !tree.Equal(tree.Merge(then, patch).At(p), before.At(p)) {
			t.Fatalf("%s on revision %d has overwritten %s", words, base, p)
		}
	}
}

func (c *contest) undo(t *rapid.T) {
	_, err := c.writer(t).Undo(context.Background(), "tall")
	if len(c.m.undo) == 0 {
		if !errors.Is(err, store.ErrNothingToUndo) {
			t.Fatal(err)
		}
		return
	}
	if err != nil {
		t.Fatal(err)
	}
	last := len(c.m.undo) - 1
	back := c.m.undo[last]
	c.m.undo, c.m.redo = c.m.undo[:last], append(c.m.redo, c.m.head())
	c.m.push(back)
}

func (c *contest) redo(t *rapid.T) {
	_, err := c.writer(t).Redo(context.Background(), "tall")
	if len(c.m.redo) == 0 {
		if !errors.Is(err, store.ErrNothingToRedo) {
			t.Fatal(err)
		}
		return
	}
	if err != nil {
		t.Fatal(err)
	}
	last := len(c.m.redo) - 1
	again := c.m.redo[last]
	c.m.redo, c.m.undo = c.m.redo[:last], append(c.m.undo, c.m.head())
	c.m.push(again)
}

func (c *contest) openAgain(t *rapid.T) {
	i := rapid.IntRange(0, 1).Draw(t, "writer")
	if err := c.writers[i].Close(); err != nil {
		t.Fatal(err)
	}
	c.writers[i] = c.open()
}

func (c *contest) lookBack(t *rapid.T) {
	n := rapid.IntRange(1, len(c.m.nodes)-1).Draw(t, "revision")
	doc, err := c.writer(t).At(context.Background(), n)
	if err != nil {
		t.Fatal(err)
	}
	if got := string(tree.Write(build.Encode(doc))); got != c.m.texts[n] {
		t.Fatalf("revision %d reads\n%s\nwant\n%s", n, got, c.m.texts[n])
	}
}

// same holds writers to the newest document of the model; one that does not look stays behind, and must find out when it next writes.
func (c *contest) same(t *rapid.T) {
	for i, w := range c.writers {
		if !rapid.Bool().Draw(t, "looks") {
			continue
		}
		if _, err := w.Refresh(context.Background()); err != nil {
			t.Fatal(err)
		}
		r, doc := w.Head()
		if got := string(tree.Write(build.Encode(doc))); r.N != len(c.m.nodes)-1 || got != c.m.texts[r.N] {
			t.Fatalf("writer %d is at revision %d and reads\n%s\nwant %d\n%s", i, r.N, got, len(c.m.nodes)-1, c.m.texts[len(c.m.texts)-1])
		}
		undo, redo, err := w.CanUndo(context.Background())
		if err != nil || undo != (len(c.m.undo) > 0) || redo != (len(c.m.redo) > 0) {
			t.Fatalf("writer %d can undo %v, redo %v, %v", i, undo, redo, err)
		}
	}
}
