package store_test

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/internal/store"
)

// shed is a throw-away place for builds, with a clock of its own.
type shed struct {
	testing.TB
	folder string
	clock  *clock
	wait   time.Duration // for a file that another holds
}

// clock goes on by a minute whenever it is looked at.
type clock struct {
	mu  sync.Mutex
	now time.Time
}

func (c *clock) Now() time.Time {
	c.mu.Lock()
	defer c.mu.Unlock()
	c.now = c.now.Add(time.Minute)
	return c.now
}

func (c *clock) set(t time.Time) {
	c.mu.Lock()
	defer c.mu.Unlock()
	c.now = t
}

func newShed(t testing.TB) *shed {
	t.Helper()
	return &shed{t, t.TempDir(), &clock{now: time.Date(2026, 9, 19, 18, 20, 0, 0, time.UTC)}, 500 * time.Millisecond}
}

func (s *shed) options() store.Options {
	return store.Options{Now: s.clock.Now, Rows: catalogue.Builtin(), Wait: s.wait}
}

func (s *shed) path(name string) string { return filepath.Join(s.folder, name) }

// document is the build that most tests begin with.
func document(t testing.TB) *build.Document {
	t.Helper()
	doc, err := readDocument()
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

func readDocument() (*build.Document, error) {
	text, err := os.ReadFile("testdata/build.yaml")
	if err != nil {
		return nil, err
	}
	doc, _, err := build.Decode("build.yaml", text, catalogue.Builtin())
	return doc, err
}

// begin makes a build and closes it when the test ends.
func (s *shed) begin(name string) *store.Store {
	s.Helper()
	made, err := store.Create(context.Background(), s.path(name), document(s), s.options())
	if err != nil {
		s.Fatal(err)
	}
	return s.closing(made)
}

func (s *shed) open(name string) *store.Store {
	s.Helper()
	opened, err := store.Open(context.Background(), s.path(name), s.options())
	if err != nil {
		s.Fatal(err)
	}
	return s.closing(opened)
}

func (s *shed) closing(kept *store.Store) *store.Store {
	s.Cleanup(func() {
		if err := kept.Close(); err != nil {
			s.Error(err)
		}
	})
	return kept
}

// refuses opens what must not open, and wants the kind of the error and pieces of its words.
func (s *shed) refuses(name string, kind error, pieces ...string) error {
	s.Helper()
	opened, err := store.Open(context.Background(), s.path(name), s.options())
	if err == nil {
		opened.Close()
		s.Fatalf("%s opened, want %v", name, kind)
	}
	wantTrouble(s, err, kind, pieces...)
	return err
}

func wantTrouble(t testing.TB, err, kind error, pieces ...string) {
	t.Helper()
	if !errors.Is(err, kind) {
		t.Fatalf("got %v, want %v", err, kind)
	}
	for _, piece := range pieces {
		if !strings.Contains(err.Error(), piece) {
			t.Errorf("the words %q do not say %q", err, piece)
		}
	}
	if strings.ContainsAny(err.Error(), "\n") {
		t.Errorf("the words are more than a line: %q", err)
	}
}

// set is an edit of one value, made while looking at the newest revision.
func set(kept *store.Store, path, value string) store.Edit {
	head, _ := kept.Head()
	return setAt(head.N, path, value)
}

func setAt(base int, path, value string) store.Edit {
	return store.Edit{Base: base, Patch: tree.Setting(tree.Dotted(path), tree.Plain(value)), Words: path + " to " + value, By: "tall"}
}

// save saves an edit that must succeed.
func save(t testing.TB, kept *store.Store, e store.Edit) store.Revision {
	t.Helper()
	r, err := kept.Save(context.Background(), e)
	if err != nil {
		t.Fatalf("%s: %v", e.Words, err)
	}
	return r
}

// widen saves a number of edits: the settle is made a millimetre wider each time.
func widen(t testing.TB, kept *store.Store, times int) {
	t.Helper()
	for range times {
		head, _ := kept.Head()
		save(t, kept, setAt(head.N, "fittings.settle.size.y", fmt.Sprint(500+head.N%400)))
	}
}

// text is the newest document as it is written.
func text(kept *store.Store) string {
	_, doc := kept.Head()
	return string(build.WriteYAML(doc))
}

func textAt(t testing.TB, kept *store.Store, n int) string {
	t.Helper()
	doc, err := kept.At(context.Background(), n)
	if err != nil {
		t.Fatal(err)
	}
	return string(build.WriteYAML(doc))
}

func bytesOf(t testing.TB, path string) []byte {
	t.Helper()
	content, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return content
}

func writeFile(t testing.TB, path string, content []byte) {
	t.Helper()
	if err := os.WriteFile(path, content, 0o600); err != nil {
		t.Fatal(err)
	}
}

// files are the names in a folder.
func files(t testing.TB, folder string) []string {
	t.Helper()
	entries, err := os.ReadDir(folder)
	if err != nil {
		t.Fatal(err)
	}
	names := make([]string, len(entries))
	for i, e := range entries {
		names[i] = e.Name()
	}
	return names
}

// notShort leaves a test out of short runs: those look for races, which make everything ten times slower, and this one has nothing at once.
func notShort(t *testing.T) {
	t.Helper()
	if testing.Short() {
		t.Skip("not in a short run")
	}
}
