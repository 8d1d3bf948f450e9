// Package golden answers: is this output, byte for byte, the one that was
// looked at and kept?
//
//	golden.Equal(t, "testdata/galley.golden.svg", drawing)
//
// go test with -update rewrites the kept files; look at the difference
// before committing it. A golden file proves that nothing changed, never that it was right.
package golden

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"testing"
)

var update = flag.Bool("update", false, "rewrite the golden files with what the tests got")

// Equal fails the test when got differs from the kept file at path, and
// says where.
func Equal[T ~string | ~[]byte](t testing.TB, path string, got T) {
	t.Helper()
	if err := compare(path, []byte(got), *update); err != nil {
		t.Error(err)
	}
}

func compare(path string, got []byte, update bool) error {
	if update {
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			return err
		}
		return os.WriteFile(path, got, 0o644)
	}
	want, err := os.ReadFile(path)
	if errors.Is(err, fs.ErrNotExist) {
		return fmt.Errorf("%s does not exist: run the test with -update, look at it and commit it", path)
	}
	if err != nil {
		return err
	}
	if bytes.Equal(got, want) {
		return nil
	}
	line, wantLine, gotLine := firstDifference(want, got)
	return fmt.Errorf("%s:%d differs\nkept: %s\n got: %s\n(if the new one is right, run the test with -update)",
		path, line, wantLine, gotLine)
}

// firstDifference gives the number of the first line that differs and both
// lines, shortened about the place where they part.
func firstDifference(want, got []byte) (number int, wantLine, gotLine string) {
	wantLines, gotLines := bytes.Split(want, []byte("\n")), bytes.Split(got, []byte("\n"))
	for i := range max(len(wantLines), len(gotLines)) {
		w, g := lineAt(wantLines, i), lineAt(gotLines, i)
		if w != g {
			w, g = about(w, g)
			return i + 1, w, g
		}
	}
	return 0, "", ""
}

const endOfFile = "(end of file)"

func lineAt(lines [][]byte, i int) string {
	if i < len(lines) {
		return string(lines[i])
	}
	return endOfFile
}

// about cuts both lines to 160 bytes beginning shortly before the difference:
// a line of a drawing can be very long.
func about(w, g string) (string, string) {
	same := 0
	for same < min(len(w), len(g)) && w[same] == g[same] {
		same++
	}
	return window(w, same), window(g, same)
}

func window(line string, at int) string {
	const before, width = 60, 160
	from := min(max(0, at-before), len(line))
	text := line[from:min(len(line), from+width)]
	if from > 0 {
		text = "…" + text
	}
	return text
}
