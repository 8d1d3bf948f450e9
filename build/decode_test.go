package build_test

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/google/go-cmp/cmp"

	"tumblehome/build"
	"tumblehome/build/tree"
	"tumblehome/catalogue"
	"tumblehome/quantity"
)

// examples are whole documents: the demo builds and the one in the design.
func examples(t testing.TB) map[string][]byte {
	t.Helper()
	files, err := filepath.Glob("../examples/*.yaml")
	if err != nil {
		t.Fatal(err)
	}
	texts := map[string][]byte{}
	for _, file := range append(files, "testdata/dipper.yaml") {
		text, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		texts[file] = text
	}
	return texts
}

// same compares documents; the cents of money are not exported.
var same = cmp.Options{
	cmp.Comparer(func(a, b quantity.Money) bool { return a == b }),
	cmp.Comparer(func(a, b build.PatchFragment) bool { return a.Equal(b) }),
}

func TestExamplesSurviveTheRoundTrip(t *testing.T) {
	rows := catalogue.Builtin()
	for file, text := range examples(t) {
		doc, _, err := build.Decode(file, text, rows)
		if err != nil {
			t.Errorf("%v", err)
			continue
		}
		written := build.WriteYAML(doc)
		for name, form := range map[string][]byte{"YAML": written, "JSON": build.WriteJSON(doc)} {
			again, _, err := build.Decode(file, form, rows)
			if err != nil {
				t.Errorf("%s written as %s is refused:\n%v", file, name, err)
				continue
			}
			if diff := cmp.Diff(doc, again, same); diff != "" {
				t.Errorf("%s comes back from %s as another document:\n%s", file, name, diff)
			}
			if twice := build.WriteYAML(again); string(twice) != string(written) {
				t.Errorf("%s is not written twice alike:\n%s", file, cmp.Diff(string(written), string(twice)))
			}
		}
	}
}

func BenchmarkDecodeTree(b *testing.B) {
	rows := catalogue.Builtin()
	source, err := tree.Parse("dipper", examples(b)["../examples/dipper.yaml"])
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := build.DecodeTree(source.Root, rows); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkEncode(b *testing.B) {
	doc, _, err := build.Decode("dipper", examples(b)["../examples/dipper.yaml"], catalogue.Builtin())
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		build.Encode(doc)
	}
}
