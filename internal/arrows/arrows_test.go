package arrows_test

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"tumblehome/internal/arrows"
)

const (
	module = "tumblehome/"
	root   = "../.."
)

// listed is what go list says of one package.
type listed struct {
	ImportPath                         string
	Imports, TestImports, XTestImports []string
}

func TestEveryImportIsInTheTable(t *testing.T) {
	text, err := os.ReadFile(filepath.Join(root, "docs", "arrows.txt"))
	if err != nil {
		t.Fatal(err)
	}
	table, err := arrows.Parse(string(text))
	if err != nil {
		t.Fatalf("docs/arrows.txt: %v", err)
	}
	for _, p := range packages(t) {
		pkg := strings.TrimPrefix(p.ImportPath, module)
		code, tests := ours(p.Imports), ours(append(p.TestImports, p.XTestImports...))
		if !table.Knows(pkg) {
			t.Errorf("docs/arrows.txt has no line for %s; if its imports are as they should be, add:\n%s <- %s",
				pkg, pkg, strings.Join(code, ", "))
			continue
		}
		for _, imported := range code {
			if !table.Allows(pkg, imported) {
				t.Errorf("%s imports %s, which docs/arrows.txt does not allow", pkg, imported)
			}
		}
		for _, imported := range tests {
			if !table.AllowsTest(pkg, imported) {
				t.Errorf("the tests of %s import %s; if they must, add to docs/arrows.txt:\n%s tests <- %s",
					pkg, imported, pkg, imported)
			}
		}
	}
}

func packages(t *testing.T) []listed {
	t.Helper()
	cmd := exec.Command("go", "list", "-e", "-json=ImportPath,Imports,TestImports,XTestImports", "./...")
	cmd.Dir = root
	var complaint bytes.Buffer
	cmd.Stderr = &complaint
	out, err := cmd.Output()
	if err != nil {
		t.Fatalf("go list: %v\n%s", err, complaint.Bytes())
	}
	var all []listed
	for decoder := json.NewDecoder(bytes.NewReader(out)); ; {
		var p listed
		if err := decoder.Decode(&p); errors.Is(err, io.EOF) {
			return all
		} else if err != nil {
			t.Fatal(err)
		}
		all = append(all, p)
	}
}

// ours keeps the module's own packages, from the module's root.
func ours(imports []string) (own []string) {
	for _, path := range imports {
		if rest, ok := strings.CutPrefix(path, module); ok {
			own = append(own, rest)
		}
	}
	return own
}

func TestMathematicsKnowsNoWordOfTheTrade(t *testing.T) {
	err := filepath.WalkDir(filepath.Join(root, "solve"), func(path string, _ fs.DirEntry, err error) error {
		if err != nil || filepath.Ext(path) != ".go" || strings.HasSuffix(path, "_test.go") {
			return err
		}
		source, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		for _, talk := range arrows.TradeTalk(string(source)) {
			t.Errorf("%s %s", strings.TrimPrefix(path, root+"/"), talk)
		}
		return nil
	})
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		t.Fatal(err)
	}
}

const sample = `
@testing = internal/proof   # for every test
quantity <-
solve/*  <-
@trade = quantity,
         solve/*
trade/weight <- @trade, build
trade/weight tests <- reckon
`

func TestTheTableIsReadAsItIsWritten(t *testing.T) {
	table, err := arrows.Parse(sample)
	if err != nil {
		t.Fatal(err)
	}
	tests := []struct {
		name, pkg, imported string
		code, test          bool
	}{
		{"a member of a set", "trade/weight", "quantity", true, true},
		{"a package of a family in a set", "trade/weight", "solve/beam", true, true},
		{"a package named itself", "trade/weight", "build", true, true},
		{"a package not named", "trade/weight", "trade/power", false, false},
		{"a testing package only in tests", "trade/weight", "internal/proof", false, true},
		{"what only its tests may", "trade/weight", "reckon", false, true},
		{"its own package, from an external test", "trade/weight", "trade/weight", false, true},
		{"a family on the left", "solve/beam", "quantity", false, false},
		{"an empty right side", "quantity", "build", false, false},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if got := table.Allows(tt.pkg, tt.imported); got != tt.code {
				t.Errorf("code of %s may import %s: %v, want %v", tt.pkg, tt.imported, got, tt.code)
			}
			if got := table.AllowsTest(tt.pkg, tt.imported); got != tt.test {
				t.Errorf("tests of %s may import %s: %v, want %v", tt.pkg, tt.imported, got, tt.test)
			}
		})
	}
	if table.Knows("trade/power") || !table.Knows("solve/solid") {
		t.Error("the table knows a package that it does not name, or not one of a family")
	}
}

func TestAFaultyTableNamesItsLine(t *testing.T) {
	for text, want := range map[string]string{
		"quantity <-\nquantity <-":         "line 2: quantity stands twice",
		"# nothing\n\nbuild -> quantity":   "line 3",
		"@a = b,\n     c\nbuild <- @trade": "line 3: @trade is not a set",
	} {
		if _, err := arrows.Parse(text); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%q: got %v, want %q", text, err, want)
		}
	}
}

func TestTradeWordsAreFoundWithinNames(t *testing.T) {
	tests := []struct {
		source string
		want   string
	}{
		{"// The bed is wide.", `[line 1: "bed"]`},
		{"x := 1\nvar bedWidth float64", `[line 2: "bed"]`},
		{"func RibAt(i int)", `[line 1: "rib"]`},
		{"// embedded, relevant, describe, ribbon", "[]"},
	}
	for _, tt := range tests {
		if got := fmt.Sprint(arrows.TradeTalk(tt.source)); got != tt.want {
			t.Errorf("%q: got %s, want %s", tt.source, got, tt.want)
		}
	}
}
