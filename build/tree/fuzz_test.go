package tree_test

import (
	"testing"

	"tumblehome/build/tree"
)

// What is read is written so that it reads back equal, and writing that gives
// the same bytes; in JSON as well.
func FuzzParse(f *testing.F) {
	for _, seed := range []string{
		"a: 1\nb: [x, {c: 12 ± 3}]\n", "{\"a\": [1, \"two\\n\", true]}", "a: |\n  x\n  y\n", "- 'it''s'\n- \"\\u2028\"\n",
		"a: &x 1\nb: *x\n", "? a\n: b", "a: -760..760\nb: 19:00\nc: '- x'\nd: 'a: b'\n", "x: 'a  b'\ny: '#'\nz: 'a #b'", "'': 1\n' ': 2\n'a:': {}\n", "'[': []\n'-': '-'\n'?': '? '\n",
	} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		first, err := tree.Parse("f", []byte(text))
		if err != nil {
			return
		}
		written := tree.Write(first.Root)
		again, err := tree.Parse("f", written)
		if err != nil {
			t.Fatalf("%q was written\n%s\nand not read back: %v", text, written, err)
		}
		if !tree.Equal(first.Root, again.Root) {
			t.Fatalf("%q was written\n%s\nand read back as %s", text, written, tree.JSON(again.Root))
		}
		if twice := tree.Write(again.Root); string(twice) != string(written) {
			t.Fatalf("%q was written\n%s\nand then\n%s", text, written, twice)
		}
		asJSON, err := tree.Parse("f", tree.JSON(first.Root))
		if err != nil || !tree.Equal(asJSON.Root, first.Root) {
			t.Fatalf("%q as JSON is %s, read back: %v", text, tree.JSON(first.Root), err)
		}
	})
}

func FuzzPatch(f *testing.F) {
	f.Add(`{"a":{"b":null,"c":[1,2]}}`, `{"a":{"b":1}}`)
	f.Add(`null`, `[]`)
	f.Fuzz(func(t *testing.T, patch, doc string) {
		p, err := tree.ParsePatch([]byte(patch))
		d, err2 := tree.ReadJSON([]byte(doc))
		if err != nil || err2 != nil {
			return
		}
		if again, err := tree.ParsePatch(p.JSON()); err != nil || string(again.JSON()) != string(p.JSON()) {
			t.Fatalf("%s does not read back: %v", p.JSON(), err)
		}
		tree.Merge(d, p)
	})
}
