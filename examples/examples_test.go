package examples_test

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"tumblehome/build"
	"tumblehome/catalogue"
)

// demos are the files beside this test.
func demos(t *testing.T) []string {
	t.Helper()
	files, err := filepath.Glob("*.yaml")
	if err != nil || len(files) < 1 {
		t.Fatalf("want three demo builds, found %v, %v", files, err)
	}
	return files
}

func decode(t *testing.T, file string) (*build.Document, []byte) {
	t.Helper()
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	doc, _, err := build.Decode(file, text, catalogue.Builtin())
	if err != nil {
		t.Fatal(err)
	}
	return doc, text
}

func TestEveryDemoIsReadAndWrittenAgainAsTheSameValue(t *testing.T) {
	for _, file := range demos(t) {
		t.Run(file, func(t *testing.T) {
			doc, _ := decode(t, file)
			written := build.WriteYAML(doc)
			again, _, err := build.Decode(file, written, catalogue.Builtin())
			if err != nil {
				t.Fatal(err)
			}
			if !bytes.Equal(written, build.WriteYAML(again)) {
				t.Error("written twice, it is not the same")
			}
		})
	}
}
