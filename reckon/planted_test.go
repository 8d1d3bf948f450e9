package reckon_test

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"tumblehome/internal/faultcase"
	"tumblehome/trade/finding"
)

// testdata/planted holds one table for each demonstration build: how bad, which code, about what, in which mode, and after a bar why
// it is accepted.
func TestWhatWasPlantedIsFoundAndNothingElseThatMatters(t *testing.T) {
	eachDemo(t, func(t *testing.T, b tried) {
		want := planted(t, b.name)
		var got []string
		for _, f := range b.Findings {
			told := faultcase.Told(f)
			if f.Accepted != "" {
				told += " | " + f.Accepted
			}
			got = append(got, told)
			if f.Severity > finding.Note && !slices.Contains(want, told) {
				t.Errorf("nobody planted: %s: %s", told, f.Title)
			}
		}
		for _, w := range want {
			if !slices.Contains(got, w) {
				t.Errorf("planted, but not found: %s", w)
			}
		}
	})
}

func planted(t *testing.T, name string) []string {
	t.Helper()
	text, err := os.ReadFile(filepath.Join("testdata", "planted", name+".txt"))
	if err != nil {
		t.Fatal(err)
	}
	return slices.DeleteFunc(strings.Split(strings.TrimSpace(string(text)), "\n"), func(line string) bool { return strings.HasPrefix(line, "#") })
}
