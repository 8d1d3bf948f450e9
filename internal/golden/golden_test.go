package golden

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func TestADifferenceIsFoundAndShown(t *testing.T) {
	long := strings.Repeat("M 0 0 ", 200)
	tests := []struct {
		name, kept, got string
		says            []string // nothing means that it is equal
	}{
		{"equal files pass", "a\nb\n", "a\nb\n", nil},
		{"a changed line is named", "a\nb\n", "a\nc\n", []string{":2 ", "kept: b", " got: c"}},
		{"a missing end is named", "a\nb", "a", []string{":2 ", "kept: b", " got: (end of file)"}},
		{"a lost last newline counts", "a\n", "a", []string{":2 "}},
		{"a long line is cut to where it parts", long + "1", long + "2", []string{":1 ", "M 0 0 1\n", "M 0 0 2\n", "…"}},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			path := filepath.Join(t.TempDir(), "x.golden")
			if err := os.WriteFile(path, []byte(tt.kept), 0o644); err != nil {
				t.Fatal(err)
			}
			err := compare(path, []byte(tt.got), false)
			if (err == nil) != (tt.says == nil) {
				t.Fatalf("got error %v", err)
			}
			for _, want := range tt.says {
				if !strings.Contains(err.Error(), want) {
					t.Errorf("the message lacks %q: %v", want, err)
				}
			}
		})
	}
}

func TestUpdatingWritesTheFileAndItsFolder(t *testing.T) {
	path := filepath.Join(t.TempDir(), "testdata", "x.golden")
	if err := compare(path, []byte("a"), false); err == nil || !strings.Contains(err.Error(), "-update") {
		t.Errorf("a missing file gives %v, want a hint at -update", err)
	}
	if err := compare(path, []byte("a"), true); err != nil {
		t.Fatal(err)
	}
	if err := compare(path, []byte("a"), false); err != nil {
		t.Error(err)
	}
}

func TestBytesAndTextAreBothTaken(t *testing.T) {
	path := filepath.Join(t.TempDir(), "x.golden")
	if err := os.WriteFile(path, []byte("a"), 0o644); err != nil {
		t.Fatal(err)
	}
	Equal(t, path, "a")
	Equal(t, path, []byte("a"))
}
