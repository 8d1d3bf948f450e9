package store_test

import (
	"strings"
	"testing"

	"tumblehome/internal/oracle"
	"tumblehome/internal/store"
)

// TestAnotherProgramReadsTheFile lets a program that shares nothing with this one read a build's file and work everything out again: what
// a build says is not lost even if this program is.
func TestAnotherProgramReadsTheFile(t *testing.T) {
	t.Parallel()
	var got struct {
		Integrity    string
		Mark, Format int
		Revisions    int
		Seal, Newest string
		Width        string
		Photos       map[string]int
	}
	oracle.Decode(t, oracle.Python, "testdata/independent.py", &got, "testdata/format-2.tumblehome", "testdata/first.json")
	s := newShed(t)
	writeFile(t, s.path("wherry.tumblehome"), bytesOf(t, "testdata/format-2.tumblehome"))
	kept := s.open("wherry.tumblehome")
	head, _ := kept.Head()
	seal, digest := store.Sealed(kept)
	if got.Integrity != "ok" || got.Mark != 0x7468756d || got.Format != 2 {
		t.Errorf("as a database: %+v", got)
	}
	if got.Revisions != head.N || got.Seal != seal || got.Newest != digest {
		t.Errorf("it came to revision %d, seal %s, digest %s; the store to %d, %s, %s", got.Revisions, got.Seal, got.Newest, head.N, seal, digest)
	}
	if got.Width != "657" || !strings.Contains(text(kept), "y: 657") {
		t.Errorf("the settle is %s wide\n%s", got.Width, text(kept))
	}
	if len(got.Photos) != 1 || got.Photos["seam.jpg"] != 10_400 {
		t.Errorf("the photos are %v", got.Photos)
	}
}
