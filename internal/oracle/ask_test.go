package oracle

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// shell is a stand-in program that every test machine has.
var shell = Program{path: "/bin/sh"}

var absent = Program{path: "/nowhere/sh"}

// question writes an input file that prints its answer, and gives its path.
func question(t *testing.T, script string) []string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "sum.sh")
	if err := os.WriteFile(path, []byte(script), 0o644); err != nil {
		t.Fatal(err)
	}
	return []string{path}
}

func recorded(t *testing.T, script string) []string {
	t.Helper()
	files := question(t, script)
	if _, err := ask(shell, t.TempDir(), files, true, false); err != nil {
		t.Fatal(err)
	}
	return files
}

func blankless(text []byte) string { return strings.Join(strings.Fields(string(text)), "") }

func TestARecordStandsInForAProgramThatIsNotInstalled(t *testing.T) {
	for _, script := range []string{`echo '{"sum": 3}'`, `echo three`} {
		files := recorded(t, script)
		live, err := ask(shell, t.TempDir(), files, false, true)
		if err != nil {
			t.Fatal(err)
		}
		kept, err := ask(absent, t.TempDir(), files, false, true)
		if err != nil {
			t.Fatal(err)
		}
		if blankless(live) != blankless(kept) {
			t.Errorf("the program says %q, the record %q", live, kept)
		}
	}
}

func TestARecordOfAnotherInputIsRefused(t *testing.T) {
	files := recorded(t, "echo 3")
	if err := os.WriteFile(files[0], []byte("echo 4"), 0o644); err != nil {
		t.Fatal(err)
	}
	for _, p := range []Program{shell, absent} {
		if answer, err := ask(p, t.TempDir(), files, false, false); err == nil {
			t.Errorf("%s answered %q from a changed input, want an error", p.path, answer)
		}
	}
}

func TestWithoutARecordCIFailsAndHomeGoesOn(t *testing.T) {
	files := question(t, "echo 3")
	if _, err := ask(shell, t.TempDir(), files, false, true); err == nil || errors.Is(err, errMissing) {
		t.Errorf("in CI a missing record gives %v, want an error that names it", err)
	}
	if answer, err := ask(shell, t.TempDir(), files, false, false); err != nil || string(answer) != "3\n" {
		t.Errorf("at home the program answers %q, %v", answer, err)
	}
	if _, err := ask(absent, t.TempDir(), files, false, false); !errors.Is(err, errMissing) {
		t.Errorf("at home without program and record: %v, want 'not installed'", err)
	}
}

func TestAProgramThatFailsIsNeverReplacedByItsRecord(t *testing.T) {
	files := recorded(t, `test -e further && { echo broken >&2; exit 1; }; echo 3`)
	further := filepath.Join(t.TempDir(), "further")
	if err := os.WriteFile(further, nil, 0o644); err != nil {
		t.Fatal(err)
	}
	_, err := ask(shell, t.TempDir(), append(files, further), true, false)
	if err == nil || !strings.Contains(err.Error(), "broken") {
		t.Errorf("got %v, want the program's own complaint", err)
	}
}

func TestAPythonInputWhoseLibraryIsMissingCountsAsNotInstalled(t *testing.T) {
	files := question(t, `echo "ModuleNotFoundError: No module named 'scipy'" >&2; exit 1`)
	if _, err := ask(shell, t.TempDir(), files, false, false); !errors.Is(err, errMissing) {
		t.Errorf("got %v, want 'not installed'", err)
	}
}
