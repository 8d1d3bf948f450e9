package tree_test

import (
	"strings"
	"testing"

	"tumblehome/build/tree"
)

func mustParse(t testing.TB, text string) *tree.Node {
	t.Helper()
	s, err := tree.Parse("test.yaml", []byte(text))
	if err != nil {
		t.Fatalf("%v\n%s", err, text)
	}
	return s.Root
}

func TestAScalarKeepsItsText(t *testing.T) {
	tests := []struct{ name, text, want string }{
		{"a word YAML once took for yes", "a: on", "on"},
		{"a word YAML once took for no", "a: no", "no"},
		{"noughts in front", "a: 007", "007"},
		{"a clock time", "a: 19:00", "19:00"},
		{"a date", "a: 2026-03-07", "2026-03-07"},
		{"a nought after the point", "a: 126.00", "126.00"},
		{"a guess", "a: 12 ± 3", "12 ± 3"},
		{"an extent", "a: -760..760", "-760..760"},
		{"an axis rule", "a: right - 30", "right - 30"},
		{"a share in a flow map", "{a: 35 %}", "35 %"},
		{"a rate", "a: 2 /month", "2 /month"},
		{"double quotes", `a: "q\u00e9 \ud83d\ude90"`, "qé 🚐"},
		{"single quotes", "a: 'it''s'", "it's"},
		{"quoted null", `a: "null"`, "null"},
		{"a text over two lines", "a: one\n  two", "one two"},
		{"a block of lines", "a: |\n  one\n  two\n", "one\ntwo\n"},
		{"a folded block", "a: >-\n  one\n  two\n", "one two"},
		{"JSON", "{\"a\":\t1.50}", "1.50"},
		{"a byte order mark", "\uFEFFa: 1", "1"},
		{"line ends of other systems", "# c\r\na: 1\r\n", "1"},
		{"a mark of the document's beginning", "---\na: 1\n", "1"},
	}
	for _, tt := range tests {
		if got := mustParse(t, tt.text).Get("a").Text; got != tt.want {
			t.Errorf("%s: got %q, want %q", tt.name, got, tt.want)
		}
	}
}

func TestEveryNodeKnowsItsPlace(t *testing.T) {
	root := mustParse(t, "# first\r\na: {b: 1,\r\n    ü: [x, yé, z]}\r\nc:\r\n  - d: 4\r\n")
	for _, tt := range []struct {
		pointer      tree.Pointer
		line, column int
	}{
		{"", 2, 1}, {"/a", 2, 4}, {"/a/b", 2, 8}, {"/a/ü/2", 3, 16}, {"/c", 5, 3}, {"/c/0", 5, 5}, {"/c/0/d", 5, 8},
	} {
		n := root.At(tt.pointer)
		if n == nil || n.Line != tt.line || n.Column != tt.column {
			t.Errorf("%q: got %+v, want %d:%d", tt.pointer, n, tt.line, tt.column)
		}
	}
}

func TestJSONKnowsItsPlacesToo(t *testing.T) {
	root := mustParse(t, "{\r\n\t\"ü\": [1, \"x\"],\n \"b\": {\"c\" : true}}")
	for _, tt := range []struct {
		pointer      tree.Pointer
		line, column int
	}{{"", 1, 1}, {"/ü", 2, 7}, {"/ü/1", 2, 11}, {"/b/c", 3, 14}} {
		n := root.At(tt.pointer)
		if n == nil || n.Line != tt.line || n.Column != tt.column {
			t.Errorf("%q: got %+v, want %d:%d", tt.pointer, n, tt.line, tt.column)
		}
	}
	_, err := tree.Parse("f", []byte("{\"a\": null,\n\"b\": 1, \"b\": 2}"))
	const want = "f:1:7: `null` says nothing here; leave it out, or write `none` or `undecided`\nf:2:9: `b` stands here for the second time, first in line 2; keep one"
	if err == nil || err.Error() != want {
		t.Errorf("got %v", err)
	}
}

func TestCommentsAreCounted(t *testing.T) {
	s, err := tree.Parse("f", []byte("# one\na: 1 # two\n\n# three\nb: 'no # comment'\n"))
	if err != nil || s.Comments != 3 {
		t.Errorf("got %d comments, %v; want 3", s.Comments, err)
	}
}

func TestWhatHasNoPlaceIsRefusedWithAHint(t *testing.T) {
	tests := []struct{ name, text, want string }{
		{"a repeated key", "a: 1\nb: 2\na: 3", "f:3:1: `a` stands here for the second time, first in line 1; keep one"},
		{"an anchor and an alias, both at once", "a: &x 1\nb: *x", "f:1:4: an anchor (&); write the value out where it is needed\nf:2:4: an alias (*); write the value out, or put it in quotes if a star is meant"},
		{"a tag", "a: !!str 3", "f:1:4: a tag (!); leave it out, or put the text in quotes if a mark is meant"},
		{"a merge key", "<<: {a: 2}", "f:1:1: a merge key (<<); write the keys out"},
		{"null", "a: null", "f:1:4: `null` says nothing; leave the line out, or write `none` or `undecided`"},
		{"a tilde", "a: ~", "f:1:4: `~` says nothing; leave the line out, or write `none` or `undecided`"},
		{"nothing after a key", "a:\nb: 1", "f:1:3: nothing is written here; write a value or leave the line out"},
		{"a comma in a text", "{a: one, two}", "f:1:10: `two` has no value; a text with a comma in it stands in quotes"},
		{"no number", "a: .nan", "f:1:4: `.nan` is no number; write the number"},
		{"infinity", "a: -.inf", "f:1:4: `-.inf` is no number; write the number"},
		{"two documents", "a: 1\n---\nb: 2", "f:3:1: a second document begins here; keep one in a file"},
		{"a tab", "a:\n\tb: 1", "f:2:1: a tab; write blanks instead"},
		{"broken UTF-8", "a: \xff", "f:1:4: a character that is not UTF-8; save the file as UTF-8"},
		{"a control character", "a: x\x01", "f:1:5: a control character; take it out"},
		{"nothing", "# only a comment\n", "f:1:1: the document is empty"},
		{"a list that does not end", "a: [1, 2", "f:1:4: the list opened with [ is not closed"},
		{"a map that does not end", "a: {b: 1", "f:1:4: the { is not closed"},
		{"quotes that do not end", "a: \"b", "f:1:4: the text opened with \" is not closed"},
		{"two colons", "a: b: c", "f:1:4: a second colon in one line; put the text in quotes"},
		{"a minus apart from its number", "a: - 5", "f:1:4: a dash with a blank begins a list here; write `-5` without the blank, or begin a new line"},
		{"a marked key", "? a\n: b", "f:1:1: a key marked with ?; write `key: value`"},
		{"more than 32 levels", strings.Repeat("[", 33) + strings.Repeat("]", 33), "f:1:33: more than 32 levels inside one another"},
		{"more than 4 MiB", strings.Repeat("a", 4<<20+1), "f:1:1: the text is larger than 4 MiB; keep photos and papers beside the document, not in it"},
	}
	for _, tt := range tests {
		_, err := tree.Parse("f", []byte(tt.text))
		if err == nil || err.Error() != tt.want {
			t.Errorf("%s:\n got %v\nwant %s", tt.name, err, tt.want)
		}
	}
}

func TestDeepNestingIsNoDanger(t *testing.T) {
	for _, text := range []string{
		strings.Repeat("[", 1<<20), strings.Repeat("{a: ", 1<<18), strings.Repeat("- ", 1<<18), strings.Repeat("? ", 1<<16),
	} {
		if _, err := tree.Parse("f", []byte(text)); err == nil {
			t.Errorf("%.10q… was read", text)
		}
	}
	deep := strings.Repeat("{a: ", 32) + "1" + strings.Repeat("}", 32)
	mustParse(t, deep)
}

func TestTwentyFaultsAreEnough(t *testing.T) {
	_, err := tree.Parse("f", []byte(strings.Repeat("- ~\n", 50)))
	if faults, ok := err.(tree.Faults); !ok || len(faults) != 20 {
		t.Errorf("got %v", err)
	}
}

func TestTheWrittenFormIsReadable(t *testing.T) {
	const text = `tumblehome: 1
build: {title: Dipper, rules: gb, contingency: 12 %}
people:
  tall: {stature: 1830, mass: 84, free: {saturday: 6 h, sunday: 4 h}}
lining:
  floor:
    - {lay: xps-20, between: {batten: pse-20-5x44, every: 400}}
    - lay: xps-20
      note: a remark long enough that the layer no longer fits on one line, however one looks at it, so it breaks
fittings:
  galley:
    moves:
      lid: {hinge: right top, by: 95°}
    scribe: [right]
  rear-blind: {for: shell.openings.rear, mass: {likely: 1.2, low: 0.8, high: 2}}
modes:
  drive: {}
runs:
  conduit:
    points:
      - battery.top
      - {x: 1000, y: right}
odd: {a: "2008", b: "yes: no", c: "- x", d: "null", e: "", f: -760..760, g: "two\nlines", h: it's, i: "# x"}
`
	got := string(tree.Write(mustParse(t, text)))
	if got != text {
		t.Errorf("got\n%s\nwant\n%s", got, text)
	}
}

func TestIdsAreOrderedAsPeopleDo(t *testing.T) {
	order := []string{"a", "a-b", "s", "s2", "s10", "s010", "s10b", "t"}
	for i := range order {
		for j := range order {
			if got := tree.Compare(order[i], order[j]) < 0; got != (i < j) && i != j {
				if order[i] == "s10" || order[j] == "s10" {
					continue // s10 and s010 count the same and stand in order of text
				}
				t.Errorf("%s before %s: %v", order[i], order[j], got)
			}
		}
	}
	if tree.Compare("s10", "s010") == tree.Compare("s010", "s10") {
		t.Error("s10 and s010 have no order")
	}
}

func TestPointersAndPathsNameTheSamePlaces(t *testing.T) {
	root := mustParse(t, "a: {b-c: [x, {d: 1}]}\n'e/f~g': 2")
	tests := []struct {
		pointer tree.Pointer
		path    string
		want    string
	}{
		{"/a/b-c/0", "a.b-c.0", "x"}, {"/a/b-c/1/d", "a.b-c.1.d", "1"}, {"/e~1f~0g", "e/f~g", "2"},
	}
	for _, tt := range tests {
		if got := root.At(tt.pointer); got == nil || got.Text != tt.want {
			t.Errorf("%s: got %v, want %s", tt.pointer, got, tt.want)
		}
		if tt.pointer.Path() != tt.path || tree.Dotted(tt.path) != tt.pointer {
			t.Errorf("%s: path %s, back %s", tt.pointer, tt.pointer.Path(), tree.Dotted(tt.path))
		}
	}
	for _, nowhere := range []tree.Pointer{"/a/b-c/2", "/a/b-c/01", "/a/b-c/-1", "/x", "/a/b-c/0/y"} {
		if root.At(nowhere) != nil {
			t.Errorf("%s is somewhere", nowhere)
		}
	}
}
