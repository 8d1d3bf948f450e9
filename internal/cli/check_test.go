package cli_test

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"tumblehome/examples"
	"tumblehome/internal/cli"
)

// Sixty boxes in one another bring hundreds of proposals: only those for the gravest are tried at once, and each of the rest says where it is tried.
func TestACheckOfManyFoulsTriesOnlySoMuch(t *testing.T) {
	text, err := examples.Document("dipper")
	if err != nil {
		t.Fatal(err)
	}
	var boxes strings.Builder
	for i := range 60 {
		fmt.Fprintf(&boxes, "  box-%d: {make: box, size: [100, 100, 100], at: {x: %d, y: 0, z: 400}}\n", i, 600+10*i)
	}
	file := filepath.Join(t.TempDir(), "many.yaml")
	if err := os.WriteFile(file, bytes.Replace(text, []byte("\nfittings:\n"), []byte("\nfittings:\n"+boxes.String()), 1), 0o644); err != nil {
		t.Fatal(err)
	}
	var out, errs bytes.Buffer
	cli.Run([]string{"check", file}, strings.NewReader(""), &out, &errs)
	said := out.String()
	tried := strings.Count(said, "\n          clears it: ") + strings.Count(said, "\n          eases it: ") + strings.Count(said, "\n          tried in vain: ")
	if tried == 0 || tried > 40 {
		t.Errorf("%d proposals were tried, want at most 40 and more than none\n%s", tried, errs.String())
	}
	if !strings.Contains(said, "was not tried here: tumblehome finding fit.") {
		t.Error("nothing says where the others are tried")
	}
	out.Reset()
	cli.Run([]string{"check", "--json", file}, strings.NewReader(""), &out, &errs)
	if untried := strings.Count(out.String(), `"untried": `); untried < 60 {
		t.Errorf("%d findings say in JSON that their proposals were not tried", untried)
	}
}

// A table that is dropped through the floor to drive, to sleep and to unload is one finding, which says its modes.
func TestACheckSaysInWhichModeSomethingIsFound(t *testing.T) {
	text, err := examples.Document("dipper")
	if err != nil {
		t.Fatal(err)
	}
	file := filepath.Join(t.TempDir(), "dropped.yaml")
	if err := os.WriteFile(file, bytes.Replace(text, []byte(`drop: {slide: "-z", by: 370}`), []byte(`drop: {slide: "-z", by: 900}`), 1), 0o644); err != nil {
		t.Fatal(err)
	}
	var out, errs bytes.Buffer
	cli.Run([]string{"check", file}, strings.NewReader(""), &out, &errs)
	for _, want := range []string{"(fit.sticks-out, in the mode drive)\n", `It is the same in the mode "night" and "unload".`} {
		if n := strings.Count(out.String(), want); n != 1 {
			t.Errorf("%d times %q\n%s", n, want, errs.String())
		}
	}
}
