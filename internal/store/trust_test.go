package store_test

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// TestThePageOfTrustNamesTestsThatThereAre holds docs/trust.md to the tests it points at.
func TestThePageOfTrustNamesTestsThatThereAre(t *testing.T) {
	t.Parallel()
	page, err := os.ReadFile("../../docs/trust.md")
	if err != nil {
		t.Fatal(err)
	}
	var sources []string
	for _, folder := range []string{".", "../web", "../../build", "../../build/tree"} {
		found, err := filepath.Glob(filepath.Join(folder, "*_test.go"))
		if err != nil {
			t.Fatal(err)
		}
		sources = append(sources, found...)
	}
	var code strings.Builder
	for _, name := range sources {
		code.Write(bytesOf(t, name))
	}
	named := regexp.MustCompile("`((?:Test|Fuzz)\\w+)`").FindAllStringSubmatch(string(page), -1)
	if len(named) < 40 {
		t.Errorf("the page names only %d tests", len(named))
	}
	for _, test := range named {
		if !strings.Contains(code.String(), "func "+test[1]+"(") {
			t.Errorf("there is no %s", test[1])
		}
	}
}
