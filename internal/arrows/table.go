package arrows

import (
	"fmt"
	"strings"
)

// A Table says for each package what it may import. Paths are from the module's root.
type Table struct {
	code  map[string][]string // package, or solve/* for all below a folder
	tests map[string][]string // further imports of a package's tests
	sets  map[string][]string // @name
}

// Testing is the set of packages that every test may import.
const Testing = "@testing"

// Parse reads the text of docs/arrows.txt.
func Parse(text string) (Table, error) {
	t := Table{code: map[string][]string{}, tests: map[string][]string{}, sets: map[string][]string{}}
	for number, line := range joined(text) {
		if line == "" {
			continue
		}
		if err := t.add(line); err != nil {
			return Table{}, fmt.Errorf("line %d: %w", number+1, err)
		}
	}
	return t, nil
}

// joined gives the lines without comments, those that end in a comma joined to the next. The text of a joined
// line stands at the place of its first; the others are empty.
func joined(text string) []string {
	lines := strings.Split(text, "\n")
	first := -1 // where a line that goes on began
	for i, line := range lines {
		line, _, _ = strings.Cut(line, "#")
		line = strings.TrimSpace(line)
		if first < 0 {
			first = i
			lines[i] = line
		} else {
			lines[first] += " " + line
			lines[i] = ""
		}
		if !strings.HasSuffix(line, ",") {
			first = -1
		}
	}
	return lines
}

func (t Table) add(line string) error {
	left, right, isArrow := strings.Cut(line, "<-")
	into := t.code
	if !isArrow {
		var isSet bool
		left, right, isSet = strings.Cut(line, "=")
		if !isSet || !strings.HasPrefix(line, "@") {
			return fmt.Errorf("%q is neither 'package <- imports' nor '@name = packages'", line)
		}
		into = t.sets
	}
	left = strings.TrimSpace(left)
	if name, ok := strings.CutSuffix(left, " tests"); ok {
		left, into = strings.TrimSpace(name), t.tests
	}
	if _, again := into[left]; again {
		return fmt.Errorf("%s stands twice", left)
	}
	var all []string
	for _, word := range strings.Split(right, ",") {
		word = strings.TrimSpace(word)
		if members, ok := t.sets[word]; ok {
			all = append(all, members...)
		} else if strings.HasPrefix(word, "@") {
			return fmt.Errorf("%s is not a set named above", word)
		} else if word != "" {
			all = append(all, word)
		}
	}
	into[left] = all
	return nil
}

// Knows says whether the table has a line for the package.
func (t Table) Knows(pkg string) bool {
	_, ok := t.line(pkg)
	return ok
}

// Allows says whether the package's code may import the other.
func (t Table) Allows(pkg, imported string) bool {
	may, _ := t.line(pkg)
	return among(may, imported)
}

// AllowsTest says whether the package's tests may import the other.
func (t Table) AllowsTest(pkg, imported string) bool {
	return imported == pkg || t.Allows(pkg, imported) ||
		among(t.sets[Testing], imported) || among(t.tests[pkg], imported)
}

func (t Table) line(pkg string) (may []string, ok bool) {
	if may, ok = t.code[pkg]; ok {
		return may, true
	}
	for pattern, may := range t.code {
		if matches(pattern, pkg) {
			return may, true
		}
	}
	return nil, false
}

func among(patterns []string, pkg string) bool {
	for _, p := range patterns {
		if matches(p, pkg) {
			return true
		}
	}
	return false
}

func matches(pattern, pkg string) bool {
	folder, all := strings.CutSuffix(pattern, "/*")
	return pattern == pkg || all && strings.HasPrefix(pkg, folder+"/")
}
