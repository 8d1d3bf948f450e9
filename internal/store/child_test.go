package store_test

import (
	"bufio"
	"context"
	"fmt"
	"io"
	"os"
	"os/exec"
	"strings"
	"testing"
	"time"

	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/internal/store"
)

// The test program runs itself again as another program on the same file: one that can be killed, has no room or lacks a right.
const childVariable = "TUMBLEHOME_STORE_CHILD"

// children are what such a program does with a file; what it prints the parent reads line by line.
var children = map[string]func(path string) error{}

func TestMain(m *testing.M) {
	do, ok := children[os.Getenv(childVariable)]
	if !ok {
		os.Exit(m.Run())
	}
	if err := do(os.Args[1]); err != nil {
		fmt.Println("failed:", err)
		os.Exit(1)
	}
	os.Exit(0)
}

// child is a running copy of the test program.
type child struct {
	*exec.Cmd
	out *bufio.Reader
	in  io.WriteCloser
}

func startChild(t testing.TB, what, path string) *child {
	t.Helper()
	c := newChild(t, what, path)
	if err := c.Start(); err != nil {
		t.Fatal(err)
	}
	return c
}

func newChild(t testing.TB, what, path string) *child {
	t.Helper()
	c := &child{Cmd: exec.Command(os.Args[0], path)}
	c.Env = append(os.Environ(), childVariable+"="+what)
	c.Stderr = os.Stderr
	out, err := c.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	c.out = bufio.NewReader(out)
	if c.in, err = c.StdinPipe(); err != nil {
		t.Fatal(err)
	}
	return c
}

// lines are all that the child prints until it ends.
func (c *child) lines() []string {
	text, _ := io.ReadAll(c.out) // a killed child's pipe just ends
	_ = c.Wait()
	return strings.FieldsFunc(string(text), func(r rune) bool { return r == '\n' })
}

// runChild runs a child to its end, which must be a good one.
func runChild(t testing.TB, what, path string) []string {
	t.Helper()
	c := startChild(t, what, path)
	lines := c.lines()
	if !c.ProcessState.Success() {
		t.Fatalf("child %s: %v: %s", what, c.ProcessState, strings.Join(lines, "; "))
	}
	return lines
}

func childOptions() store.Options {
	return store.Options{Now: time.Now, Rows: catalogue.Builtin(), Wait: 5 * time.Second}
}

func openInChild(path string) (*store.Store, error) {
	return store.Open(context.Background(), path, childOptions())
}

// note is an edit that leaves a mark of its own in the document.
func note(base int, mark string) store.Edit {
	return store.Edit{Base: base, Patch: tree.Setting("/build/note", tree.Text(mark)), Words: mark, By: "child"}
}
