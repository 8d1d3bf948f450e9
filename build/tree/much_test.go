package tree_test

import (
	"fmt"
	"strings"
	"testing"

	"tumblehome/build/tree"
)

// lines writes n lines.
func lines(n int, line func(i int) string) string {
	var b strings.Builder
	for i := range n {
		b.WriteString(line(i))
	}
	return b.String()
}

// What no van holds is refused before it costs minutes; what a big van might hold is read.
func TestATextOfTooMuchIsRefused(t *testing.T) {
	key := func(i int) string { return fmt.Sprintf("k%d: 1\n", i) }
	within := func(i int) string { return "  " + key(i) }
	item := func(i int) string { return "- 1\n" }
	small := func(i int) string { return fmt.Sprintf("k%d: {a: 1, b: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]}\n", i) }
	const manyEntries, manyValues = "more than 5000 entries", "more than 60 000 values"
	for _, c := range []struct {
		says, text, wrong string
	}{
		{"as many keys as may be", lines(5000, key), ""},
		{"one more", lines(5001, key), manyEntries},
		{"many more", lines(20_000, key), manyEntries},
		{"keys in a section", "a:\n" + lines(5001, within), manyEntries},
		{"keys in two sections", "a:\n" + lines(4000, within) + "b:\n" + lines(4000, within), ""},
		{"items of a list", lines(5001, item), manyEntries},
		{"a list at the column of its key", "a:\n" + lines(4000, item) + lines(1001, key), ""},
		{"a long list at the column of its key", "a:\n" + lines(5001, item), manyEntries},
		{"a list between brackets", "a: [" + lines(5000, func(int) string { return "1, " }) + "1]", manyEntries},
		{"JSON keys", "{" + lines(5000, func(i int) string { return fmt.Sprintf(`"k%d": 1, `, i) }) + `"last": 1}`, manyEntries},
		{"JSON items", `{"a": [` + lines(5000, func(int) string { return "1, " }) + "1]}", manyEntries},
		{"as many values as may be", lines(4000, small), ""},
		{"one more value", lines(4000, small) + "last: 1\n", manyValues},
		{"nothing but lines", lines(700_000, func(int) string { return "#\n" }), manyValues},
		{"nothing but commas", "a: [" + strings.Repeat(",", 700_000) + "]", manyValues},
		{"a long sentence", "a: " + strings.Repeat("well, ", 20_000), ""},
		{"a sentence of nothing but commas", `{"a": "` + strings.Repeat(",", 400_000) + `"}`, manyValues},
		{"many values of many maps", lines(4900, small), manyValues},
		{"JSON of many values", "{" + lines(4900, func(i int) string {
			return fmt.Sprintf(`"k%d": {"a": 1, "b": [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]}, `, i)
		}) + `"last": 1}`, manyValues},
	} {
		_, err := tree.Parse("big.yaml", []byte(c.text))
		if c.wrong == "" && err != nil || c.wrong != "" && (err == nil || !strings.Contains(err.Error(), c.wrong)) {
			t.Errorf("%s: got %.200v, want %q", c.says, err, c.wrong)
		}
	}
}

// What is read can be written, and then read again: a build that was saved must open.
func TestAsMuchAsMayBeIsReadAgain(t *testing.T) {
	for _, line := range []string{"k%d: {a: 1, b: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]}\n", "k%d:\n  a: 'x: y'\n  b: {c: {d: {e: {f: {g: {h: {i: {j: {k: {l: {m: 1}}}}}}}}}}}\n"} {
		first, err := tree.Parse("big.yaml", []byte(lines(4000, func(i int) string { return fmt.Sprintf(line, i) })))
		if err != nil {
			t.Fatal(err)
		}
		again, err := tree.Parse("written", tree.Write(first.Root))
		if err != nil || !tree.Equal(first.Root, again.Root) {
			t.Errorf("it is not read again: %.200v", err)
		}
		if again, err = tree.Parse("json", tree.JSON(first.Root)); err != nil || !tree.Equal(first.Root, again.Root) {
			t.Errorf("as JSON it is not read again: %.200v", err)
		}
	}
}
